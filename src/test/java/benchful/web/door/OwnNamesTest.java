package benchful.web.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OwnNamesTest {
    private static final Optional<List<String>> ADDED = Optional.of(List.of("plans.example", " Studio.Example "));
    private static final Optional<String> PUBLIC = Optional.of("https://codes.example/benchful");

    @ParameterizedTest
    @CsvSource({"localhost", "127.0.0.1", "[::1]", "::1", "plans.example", "PLANS.example", "studio.example", "codes.example"})
    void areThisMachineAndWhatWasAdded(String host) {
        assertThat(names(false).include(host)).isTrue();
        assertThat(names(true).include(host)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"stranger.example", "plans.example.stranger.example", "127.0.0.1.stranger.example", "127.0.0.1.nip.example", "1.2.3", "''"})
    void areNoOthersThoughTheNetworkIsOpen(String host) {
        assertThat(names(false).include(host)).isFalse();
        assertThat(names(true).include(host)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"192.0.2.7", "[2001:db8::7]", "2001:db8::7"})
    void areFiguresOnAnOpenNetworkOnly(String host) {
        assertThat(names(true).include(host)).isTrue();
        assertThat(names(false).include(host)).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"192.168.1.20:8080", "plans.example", "'http:// plans'"})
    void areNotToBeReadFromHalfAnAddress(String address) {
        assertThatThrownBy(() -> new OwnNames(ADDED, Optional.of(address), false))
                .hasMessageContaining("“" + address + "”").hasMessageContaining("benchful.public-address");
    }

    private static OwnNames names(boolean openNetwork) {
        return new OwnNames(ADDED, PUBLIC, openNetwork);
    }
}
