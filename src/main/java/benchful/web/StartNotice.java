package benchful.web;

import io.quarkus.vertx.http.HttpServer;
import io.quarkus.vertx.http.HttpServerStart;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.ObservesAsync;
import org.jboss.logging.Logger;

/** Tells the person who started the program where to find it. */
@ApplicationScoped
class StartNotice {
    private static final Logger LOG = Logger.getLogger(StartNotice.class);

    void say(@ObservesAsync HttpServerStart start, HttpServer server) {
        LOG.infof("Benchful is ready. Open %s in your browser; Ctrl+C here stops it.", server.getLocalBaseUri());
    }
}
