package benchful.web.door;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.net.HostAndPort;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/**
 * Answers only to the program's own names, at every address. A page of a stranger in the tutor's browser can let its own name lead
 * to this machine, and the browser would then let it read everything here; but it cannot change the name under which it asks.
 */
@ApplicationScoped
class OwnNameOnly {
    /** Before whatever else looks at a request, but after the headers that every answer bears. */
    private static final int ORDER = 250;
    private static final int MISDIRECTED = 421;
    private static final String REFUSAL = "Benchful does not answer under this name, only as 127.0.0.1 or localhost and as it was told to."
            + " Open the address that it shows when it starts; whoever runs it can add a name with the setting " + OwnNames.SETTING + ".";

    private final OwnNames names;

    OwnNameOnly(OwnNames names) {
        this.names = names;
    }

    void stand(@Observes Filters filters) {
        filters.register(this::check, ORDER);
    }

    private void check(RoutingContext routing) {
        HostAndPort asked = routing.request().authority();
        // Without a name there is no browser and so no stranger's page behind it.
        if (asked == null || names.include(asked.host())) {
            routing.next();
        } else {
            routing.response().setStatusCode(MISDIRECTED).putHeader("Content-Type", "text/plain;charset=UTF-8").end(REFUSAL);
        }
    }
}
