package benchful.web.door;

import io.quarkus.vertx.http.HttpServerStart;
import io.vertx.core.http.HttpServerOptions;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.ObservesAsync;
import org.jboss.logging.Logger;

/** Tells the person who started the program where to find it. */
@ApplicationScoped
public class StartNotice {
    private static final Logger LOG = Logger.getLogger(StartNotice.class);

    /** The address is taken from the event: the platform's own account of its server is at times not filled in yet. */
    void say(@ObservesAsync HttpServerStart start) {
        LOG.infof("Benchful is ready. Open %s in your browser; Ctrl+C here stops it.", address(start.options()));
    }

    /** Where a browser on this machine finds it. */
    public static String address(HttpServerOptions server) {
        String host = server.getHost().equals("0.0.0.0") ? "localhost" : server.getHost();
        return "%s://%s:%d".formatted(server.isSsl() ? "https" : "http", host, server.getPort());
    }
}
