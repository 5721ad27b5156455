package benchful.web;

import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.net.HostAndPort;
import java.net.URI;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Tells whether a page of another site, or of another program on this machine, stands behind a request. Browsers say so in
 * headers that a page can't set: {@code Origin} with everything that writes, {@code Sec-Fetch-*} with everything (Fetch
 * Metadata Request Headers, W3C). Another port of the same machine is another origin. A program that is no browser sends neither.
 */
public final class Stranger {
    private static final Set<String> OWN_SITE = Set.of("same-origin", "none");

    private Stranger() {}

    /** Sent by a foreign page: by its form, its script, or to show something of ours within itself. */
    public static boolean asks(HttpServerRequest request, Optional<String> publicAddress) {
        String origin = request.getHeader("Origin");
        return origin != null && !isOwn(origin, request, publicAddress) || isForeign(request) && !leadsHere(request);
    }

    /** A person followed a link on a foreign page to one of ours, which now fills the window. */
    public static boolean leadsHere(HttpServerRequest request) {
        return isForeign(request)
                && "GET".equals(request.method().name())
                && "navigate".equals(request.getHeader("Sec-Fetch-Mode"))
                && "document".equals(request.getHeader("Sec-Fetch-Dest"))
                && request.getHeader("Sec-Purpose") == null;
    }

    private static boolean isForeign(HttpServerRequest request) {
        String site = request.getHeader("Sec-Fetch-Site");
        return site != null && !OWN_SITE.contains(site);
    }

    private static boolean isOwn(String origin, HttpServerRequest request, Optional<String> publicAddress) {
        return origin(origin).filter(o -> o.equals(asked(o, request)) || publicAddress.flatMap(Stranger::origin).filter(o::equals).isPresent()).isPresent();
    }

    private record Origin(String scheme, String host, int port) {}

    private static Optional<Origin> origin(String address) {
        try {
            URI uri = URI.create(address);
            return uri.getHost() == null || uri.getScheme() == null ? Optional.empty()
                    : Optional.of(new Origin(uri.getScheme(), uri.getHost().toLowerCase(Locale.ROOT), port(uri.getPort(), uri.getScheme())));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** The origin under which we were asked. Something before us may have taken the HTTPS off, so that is believed of a page. */
    private static Origin asked(Origin said, HttpServerRequest request) {
        HostAndPort here = request.authority();
        String scheme = request.isSSL() ? "https" : said.scheme();
        return here == null ? null : new Origin(scheme, here.host().toLowerCase(Locale.ROOT), port(here.port(), scheme));
    }

    private static int port(int said, String scheme) {
        return said > 0 ? said : "https".equals(scheme) ? 443 : 80;
    }
}
