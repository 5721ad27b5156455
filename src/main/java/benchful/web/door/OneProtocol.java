package benchful.web.door;

import io.quarkus.vertx.http.HttpServerOptionsCustomizer;
import io.vertx.core.http.HttpServerOptions;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * Speaks HTTP/1.1 and nothing else without encryption. A connection that changes its protocol half-way would pass what stands
 * before the program and asks for a log-in, and that would see nothing of what follows.
 */
@ApplicationScoped
class OneProtocol implements HttpServerOptionsCustomizer {
    @Override
    public void customizeHttpServer(HttpServerOptions options) {
        options.setHttp2ClearTextEnabled(false);
    }
}
