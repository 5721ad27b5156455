package benchful.web.door;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.MultiMap;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Map;

/**
 * The headers that every answer bears, whatever it is: a browser runs and loads only what this program serves, shows it in no
 * other site's frame, guesses no types, tells no other site where it was, and keeps no copy of pages with data.
 */
@ApplicationScoped
class StrictHeaders {
    private static final String POLICY = "Content-Security-Policy";
    private static final String NOTHING = "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
    private static final String PAGE = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self';"
            + " base-uri 'none'; form-action 'self'; frame-ancestors 'none'";
    /** A drawing that is opened by itself may style its shapes; it runs nothing. */
    private static final String DRAWING = NOTHING + "; style-src 'unsafe-inline'; img-src data:; sandbox";
    /** Chromium shows a PDF by an object and a style of its own. */
    private static final String PDF = NOTHING + "; object-src 'self'; style-src 'unsafe-inline'";

    /** What works for a page without belonging to one asks the program too. */
    private static final String SCRIPT = NOTHING + "; connect-src 'self'";

    private static final Map<String, String> ALWAYS = Map.of(
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            // Not "no-referrer": browsers would then say "null" for the origin of our own forms.
            "Referrer-Policy", "same-origin",
            "Cross-Origin-Opener-Policy", "same-origin",
            "Cross-Origin-Resource-Policy", "same-origin",
            "Permissions-Policy", "camera=(), display-capture=(), geolocation=(), microphone=(), midi=(), payment=(), serial=(), usb=()");

    void stand(@Observes Filters filters) {
        filters.register(StrictHeaders::add, Order.HEADERS);
    }

    private static void add(RoutingContext routing) {
        on(routing);
        routing.next();
    }

    static void on(RoutingContext routing) {
        routing.addHeadersEndHandler(ignored -> complete(routing));
    }

    private static void complete(RoutingContext routing) {
        MultiMap headers = routing.response().headers();
        ALWAYS.forEach(headers::set);
        headers.set(POLICY, policy(headers.get("Content-Type")));
        headers.set("Cache-Control", cached(headers.get("Cache-Control")));
        if (routing.request().isSSL()) {
            headers.set("Strict-Transport-Security", "max-age=31536000");
        }
    }

    /** The platform lets browsers keep scripts and styles for a day unasked: a page of a newer program would run with old ones. */
    private static String cached(String said) {
        return said == null ? "no-store" : said.contains("immutable") ? "no-cache" : said;
    }

    private static String policy(String type) {
        if (type == null) {
            return NOTHING;
        }
        if (type.contains("javascript")) {
            return SCRIPT;
        }
        return type.startsWith("text/html") ? PAGE : type.startsWith("image/svg+xml") ? DRAWING : type.startsWith("application/pdf") ? PDF : NOTHING;
    }
}
