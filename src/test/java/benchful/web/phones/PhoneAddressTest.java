package benchful.web.phones;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PhoneAddressTest {
    private static final URI HERE = URI.create("http://127.0.0.1:8080/classes/7/day");
    private static final URI THERE = URI.create("https://plans.example/classes/7/day");

    @Test
    void isThePublicOneWhereverThePageWasAsked() {
        PhoneAddress phones = new PhoneAddress(Optional.of("https://classes.example/"), true, "0.0.0.0", 8080, () -> machine("192.168.1.20"));
        assertThat(phones.of(HERE)).contains("https://classes.example");
        assertThat(phones.of(THERE)).contains("https://classes.example");
    }

    @Test
    void isTheOneThatWasAskedUnlessItMeansThisMachine() {
        PhoneAddress closed = new PhoneAddress(Optional.empty(), false, "127.0.0.1", 8080, () -> machine("192.168.1.20"));
        assertThat(closed.of(THERE)).contains("https://plans.example");
        assertThat(closed.of(HERE)).isEmpty();
        assertThat(closed.of(URI.create("http://localhost:8080/"))).isEmpty();
        assertThat(closed.of(URI.create("http://[::1]:8080/"))).isEmpty();
        assertThat(new PhoneAddress(Optional.of("http://localhost:8080"), false, "127.0.0.1", 8080, List::of).of(HERE)).isEmpty();
    }

    @Test
    void isThisMachinesOwnInANetworkThatWasOpened() {
        PhoneAddress open = new PhoneAddress(Optional.empty(), true, "0.0.0.0", 8090, () -> machine("fe80::1", "203.0.113.5", "10.1.2.3", "192.168.1.20"));
        assertThat(open.of(HERE)).contains("http://10.1.2.3:8090");
        assertThat(new PhoneAddress(Optional.empty(), true, "0.0.0.0", 8090, List::of).of(HERE)).isEmpty();
        assertThat(new PhoneAddress(Optional.empty(), true, "192.168.1.20", 8090, List::of).of(HERE)).contains("http://192.168.1.20:8090");
        assertThat(new PhoneAddress(Optional.empty(), true, "fd00::7", 8090, List::of).of(HERE)).contains("http://[fd00:0:0:0:0:0:0:7]:8090");
        assertThat(new PhoneAddress(Optional.empty(), true, "127.0.0.1", 8090, () -> machine("10.1.2.3")).of(HERE)).isEmpty();
    }

    private static List<InetAddress> machine(String... figures) {
        return Arrays.stream(figures).map(PhoneAddressTest::address).toList();
    }

    private static InetAddress address(String figures) {
        try {
            return InetAddress.getByName(figures);
        } catch (UnknownHostException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
