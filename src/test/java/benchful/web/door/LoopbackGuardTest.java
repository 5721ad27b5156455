package benchful.web.door;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.vertx.core.http.HttpServerOptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LoopbackGuardTest {

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "localhost", "::1"})
    void listensOnThisMachine(String host) {
        assertThatCode(() -> listen(host, false)).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "::", "192.0.2.7", "no such host"})
    void refusesANetworkThatNobodyOpened(String host) {
        assertThatThrownBy(() -> listen(host, false))
                .hasMessageContaining("listen on " + host)
                .hasMessageContaining("benchful.open-network");
    }

    @Test
    void listensOnANetworkThatTheOperatorOpened() {
        assertThatCode(() -> listen("0.0.0.0", true)).doesNotThrowAnyException();
    }

    private static void listen(String host, boolean openNetwork) {
        LoopbackGuard guard = new LoopbackGuard(openNetwork);
        guard.customizeHttpServer(new HttpServerOptions().setHost(host));
        guard.customizeHttpsServer(new HttpServerOptions().setHost(host));
    }
}
