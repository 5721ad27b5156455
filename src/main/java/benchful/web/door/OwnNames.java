package benchful.web.door;

import io.quarkus.runtime.configuration.ConfigurationException;
import jakarta.inject.Singleton;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The names under which the program may be asked: those of this machine, the one in its public address, and those that whoever
 * runs it adds by a setting. On a network that was opened, addresses in figures are its own, too: a stranger's page can let a
 * name lead here, but no figures.
 */
@Singleton
public class OwnNames {
    static final String SETTING = "benchful.host-names";
    private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Pattern FIGURES = Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|\\[[0-9a-f:.]+\\]");

    private final Set<String> names = new HashSet<>(THIS_MACHINE);
    private final boolean openNetwork;

    OwnNames(@ConfigProperty(name = SETTING) Optional<List<String>> added,
            @ConfigProperty(name = "benchful.public-address") Optional<String> publicAddress,
            @ConfigProperty(name = LoopbackGuard.SETTING, defaultValue = "false") boolean openNetwork) {
        added.orElse(List.of()).forEach(name -> names.add(plain(name)));
        publicAddress.ifPresent(address -> names.add(plain(host(address))));
        this.openNetwork = openNetwork;
    }

    /** @param host as a request or an address says it, without the port */
    public boolean include(String host) {
        String name = plain(host);
        return names.contains(name) || openNetwork && FIGURES.matcher(name).matches();
    }

    private static String host(String address) {
        try {
            String host = new URI(address.strip()).getHost();
            if (host != null) {
                return host;
            }
        } catch (URISyntaxException e) {
            // told below, as is an address without a host
        }
        throw new ConfigurationException("The setting benchful.public-address has the value “" + address + "”, which is no address of a"
                + " page. Write it whole, such as http://192.168.1.20:8080, or leave it out.");
    }

    private static String plain(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT);
        return plain.contains(":") && !plain.startsWith("[") ? "[" + plain + "]" : plain;
    }
}
