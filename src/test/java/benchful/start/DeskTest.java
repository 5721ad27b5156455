package benchful.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DeskTest {
    @TempDir
    Path place;

    private Path folder;

    @BeforeEach
    void name() {
        folder = place.resolve("data");
    }

    private Desk desk(Map<String, String> more) {
        return Desk.of(name -> Optional.ofNullable(name.equals("benchful.data") ? folder.toString() : more.get(name)));
    }

    @Test
    void takesAPortThatIsFreeAndTellsWhatItDoesToAFile() throws IOException {
        String free = desk(Map.of()).platform().get("quarkus.http.port");
        try (ServerSocket taken = new ServerSocket()) {
            taken.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), Integer.parseInt(free)));
            Map<String, String> platform = desk(Map.of()).platform();
            assertThat(Integer.parseInt(platform.get("quarkus.http.port"))).isGreaterThan(Integer.parseInt(free)).isLessThan(8100);
            assertThat(platform).containsEntry("quarkus.log.file.path", folder.resolve("benchful.log").toString());
        }
        assertThat(folder).isDirectory();
    }

    @Test
    void leavesThePortThatSomebodySet() {
        assertThat(desk(Map.of("quarkus.http.port", "9000")).platform()).doesNotContainKey("quarkus.http.port");
    }

    @Test
    void findsNoneWhereItEndedWithoutAWord() throws IOException {
        assertThat(desk(Map.of()).running()).isEmpty();
        Files.createDirectory(folder);
        try (ServerSocket once = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Files.writeString(folder.resolve("address"), "http://127.0.0.1:" + once.getLocalPort());
        }
        assertThat(desk(Map.of()).running()).isEmpty();
        Files.writeString(folder.resolve("address"), "torn");
        assertThat(desk(Map.of()).running()).isEmpty();
    }

    @Test
    void findsTheOneThatAnswers() throws IOException {
        com.sun.net.httpserver.HttpServer running = com.sun.net.httpserver.HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 1);
        running.createContext("/q/health/ready", exchange -> {
            exchange.sendResponseHeaders(200, -1);
            exchange.close();
        });
        running.start();
        String address = "http://127.0.0.1:" + running.getAddress().getPort();
        Files.createDirectory(folder);
        Files.writeString(folder.resolve("address"), address + "\n");
        assertThat(desk(Map.of()).running()).contains(address);
        running.stop(0);
    }

    @Test
    void writesDownWholeWhatNobodyForesaw() throws IOException {
        Files.createDirectory(folder);
        assertThat(desk(Map.of()).unforeseen(new IllegalStateException("odd"))).contains("nobody foresaw", folder.resolve("benchful.log").toString());
        assertThat(Files.readString(folder.resolve("benchful.log"), StandardCharsets.UTF_8)).contains("IllegalStateException: odd", "DeskTest");
    }

    @Test
    void asksEachSystemInItsOwnWay() {
        assertThat(Browser.command("Linux", "http://127.0.0.1:8080")).containsExactly("xdg-open", "http://127.0.0.1:8080");
        assertThat(Browser.command("Mac OS X", "a")).containsExactly("open", "a");
        assertThat(Browser.command("Windows 11", "a")).containsExactly("rundll32", "url.dll,FileProtocolHandler", "a");
    }
}
