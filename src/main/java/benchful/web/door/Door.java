package benchful.web.door;

import benchful.web.Stranger;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Turns away, before any page sees it, what no person and no program of the tutor's would send: what a foreign page asks in her
 * name, forms that are no forms, addresses that can't be. A link on another site may lead to a page; nothing of ours is shown
 * within another site, and nothing is written or computed for it.
 */
@ApplicationScoped
class Door {
    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private static final Pattern CONTENT_TYPE = Pattern.compile("[\\w.+-]+/[\\w.+-]+\\s*(;.*)?");
    /** What is said to come in parts, without the mark between them; reading it would fail on any method. */
    private static final Pattern PARTLESS = Pattern.compile("(?i)multipart/(?!.*boundary\\s*=\\s*\"?[^\\s\";]).*");
    private static final Pattern FORM = Pattern.compile("(?i)(application/x-www-form-urlencoded|multipart/form-data)\\s*(;.*)?");

    static final Refusal NO_HOST = new Refusal(400, "Not possible", "The request does not say in a Host header whom it asks.");
    private static final Refusal NOWHERE = new Refusal(404, "Not found", "There is nothing at this address. It may have been removed.");
    private static final Refusal FOREIGN = new Refusal(403, "Not taken from another site",
            "A page of another site or program asked for this. Benchful writes, computes and shows things for its own pages only."
                    + " If it was you, open the page here and do it from there.");
    private static final Refusal NO_FORM = new Refusal(415, "Not possible", "This page takes a form only. Go back, load the page again and repeat it.");
    private static final Refusal NO_TYPE = new Refusal(415, "No content type",
            "Say what is sent in a Content-Type header, such as application/yaml or application/json.");

    private final Optional<String> publicAddress;

    Door(@ConfigProperty(name = "benchful.public-address") Optional<String> publicAddress) {
        this.publicAddress = publicAddress;
    }

    void stand(@Observes Filters filters) {
        filters.register(this::check, Order.DOOR);
    }

    private void check(RoutingContext routing) {
        refusal(routing.request()).ifPresentOrElse(refusal -> refusal.end(routing), routing::next);
    }

    private Optional<Refusal> refusal(HttpServerRequest request) {
        if (request.authority() == null) {
            return Optional.of(NO_HOST);
        }
        if (request.uri().contains("%00")) {
            return Optional.of(NOWHERE);
        }
        if (Stranger.asks(request, publicAddress)) {
            return Optional.of(FOREIGN);
        }
        String type = type(request);
        if (PARTLESS.matcher(type).matches()) {
            return Optional.of(NO_FORM);
        }
        return READING.contains(request.method().name()) ? Optional.empty() : body(request, type);
    }

    static boolean isForm(HttpServerRequest request) {
        return FORM.matcher(type(request)).matches();
    }

    private static String type(HttpServerRequest request) {
        return Optional.ofNullable(request.getHeader("Content-Type")).orElse("").strip();
    }

    private static Optional<Refusal> body(HttpServerRequest request, String type) {
        if (Refusal.isForPrograms(request.path())) {
            return CONTENT_TYPE.matcher(type).matches() ? Optional.empty() : Optional.of(NO_TYPE);
        }
        return FORM.matcher(type).matches() ? Optional.empty() : Optional.of(NO_FORM);
    }
}
