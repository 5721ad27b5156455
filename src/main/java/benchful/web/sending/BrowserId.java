package benchful.web.sending;

import benchful.web.Stranger;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.CookieSameSite;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import java.time.Duration;
import java.util.Optional;

/**
 * A random name for a browser, in a cookie that scripts can't read and other sites can't send: keys of forms are signed for it,
 * so that a key seen in one browser is worth nothing in another. It says nothing about the person.
 */
final class BrowserId {
    private static final String NAME = "benchful";
    /** The longest that browsers keep a cookie; a form may be open that long. */
    private static final Duration KEPT = Duration.ofDays(400);
    private static final String DRAWN = "[A-Za-z0-9_-]{22}";

    private BrowserId() {}

    /** The browser's name; where it has none yet it is given one with the answer. */
    static String of(RoutingContext routing) {
        return sent(routing.request()).orElseGet(() -> given(routing));
    }

    static Optional<String> sent(HttpServerRequest request) {
        return Optional.ofNullable(request.getCookie(name(request))).map(Cookie::getValue).filter(id -> id.matches(DRAWN));
    }

    private static String given(RoutingContext routing) {
        String before = routing.get(NAME);
        if (before != null) {
            return before;
        }
        String id = Keys.random();
        routing.put(NAME, id);
        // A browser that comes by a link on another site keeps its cookie to itself; a new one would put its open forms out.
        if (!Stranger.leadsHere(routing.request())) {
            routing.response().addCookie(cookie(routing.request(), id));
        }
        return id;
    }

    private static Cookie cookie(HttpServerRequest request, String id) {
        return Cookie.cookie(name(request), id).setPath("/").setHttpOnly(true).setSecure(request.isSSL())
                .setSameSite(CookieSameSite.STRICT).setMaxAge(KEPT.toSeconds());
    }

    /** Over HTTPS a browser lets nobody but this very host set a cookie of such a name. */
    private static String name(HttpServerRequest request) {
        return request.isSSL() ? "__Host-" + NAME : NAME;
    }
}
