package benchful.web.phones;

import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.net.Inet4Address;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Where a phone reaches the program: at its public address; else where the page that shows it was asked, if that is no address of
 * this machine to itself; else, on a network that was opened, at this machine's own address there.
 */
@Singleton
public class PhoneAddress {
    private static final Pattern OWN_MACHINE = Pattern.compile("https?://(localhost|127\\.|\\[::1|\\[0:0:0:0:0:0:0:1).*");

    private final Optional<String> publicAddress;
    private final boolean openNetwork;
    private final String host;
    private final int port;
    private final Supplier<List<InetAddress>> machine;

    @Inject
    PhoneAddress(@ConfigProperty(name = "benchful.public-address") Optional<String> publicAddress,
            @ConfigProperty(name = "benchful.open-network", defaultValue = "false") boolean openNetwork,
            @ConfigProperty(name = "quarkus.http.host") String host, @ConfigProperty(name = "quarkus.http.port") int port) {
        this(publicAddress, openNetwork, host, port, PhoneAddress::ofThisMachine);
    }

    PhoneAddress(Optional<String> publicAddress, boolean openNetwork, String host, int port, Supplier<List<InetAddress>> machine) {
        this.publicAddress = publicAddress;
        this.openNetwork = openNetwork;
        this.host = host;
        this.port = port;
        this.machine = machine;
    }

    /**
     * The address without a slash at its end; empty where only this machine reaches the program.
     *
     * @param asked under which the page was asked
     */
    public Optional<String> of(URI asked) {
        return Stream.of(publicAddress, Optional.of(asked.resolve("/").toString()), onTheNetwork()).flatMap(Optional::stream)
                .filter(address -> !isOwnMachine(address)).map(address -> address.replaceAll("(?<!/)/++$", "")).findFirst();
    }

    /** Whether an address leads from a phone to the phone itself. */
    public static boolean isOwnMachine(String address) {
        return OWN_MACHINE.matcher(address).matches();
    }

    private Optional<String> onTheNetwork() {
        return openNetwork ? listening().map(address -> "http://%s:%d/".formatted(figures(address), port)) : Optional.empty();
    }

    /** The address that it listens on; where that is any, the first of this machine in a network of its own kind. */
    private Optional<InetAddress> listening() {
        try {
            InetAddress named = InetAddress.getByName(host);
            return named.isAnyLocalAddress() ? machine.get().stream().filter(address -> address instanceof Inet4Address && address.isSiteLocalAddress()).findFirst() : Optional.of(named);
        } catch (UnknownHostException e) {
            return Optional.empty();
        }
    }

    private static String figures(InetAddress address) {
        return address instanceof Inet6Address ? "[%s]".formatted(address.getHostAddress()) : address.getHostAddress();
    }

    private static List<InetAddress> ofThisMachine() {
        try {
            return NetworkInterface.networkInterfaces().filter(PhoneAddress::isUp).flatMap(NetworkInterface::inetAddresses).toList();
        } catch (SocketException e) {
            return List.of();
        }
    }

    private static boolean isUp(NetworkInterface network) {
        try {
            return network.isUp() && !network.isLoopback() && !network.isVirtual();
        } catch (SocketException e) {
            return false;
        }
    }
}
