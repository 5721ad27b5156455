package benchful.web.door;

import io.quarkus.runtime.configuration.ConfigurationException;
import io.quarkus.vertx.http.HttpServerOptionsCustomizer;
import io.vertx.core.http.HttpServerOptions;
import jakarta.enterprise.context.ApplicationScoped;
import java.net.InetAddress;
import java.net.UnknownHostException;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Keeps the program from listening to a network by accident: as long as there are no accounts, whoever reaches its port may read
 * and change everything. It listens on this machine alone unless the operator says otherwise in so many words.
 */
@ApplicationScoped
class LoopbackGuard implements HttpServerOptionsCustomizer {
    static final String SETTING = "benchful.open-network";

    private final boolean openNetwork;

    LoopbackGuard(@ConfigProperty(name = SETTING, defaultValue = "false") boolean openNetwork) {
        this.openNetwork = openNetwork;
    }

    @Override
    public void customizeHttpServer(HttpServerOptions options) {
        check(options.getHost());
    }

    @Override
    public void customizeHttpsServer(HttpServerOptions options) {
        check(options.getHost());
    }

    private void check(String host) {
        if (!openNetwork && !isLoopback(host)) {
            // Quarkus prints the message of this one alone, without a trace, and ends the program.
            throw new ConfigurationException("Benchful was told to listen on " + host + ", where other machines could reach"
                    + " it, and it has no accounts: whoever reaches it may read and change everything. Set quarkus.http.host to"
                    + " 127.0.0.1, or, if something in front of it asks for a log-in, set " + SETTING + " to true.");
        }
    }

    private static boolean isLoopback(String host) {
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
