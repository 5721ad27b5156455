package benchful.web.door;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Speaks to the port byte by byte: a log-in in front of the program and the program must read each request alike. */
@QuarkusTest
class FrontDoorTest {
    private static final int PATIENCE_MS = 1500;

    @TestHTTPResource
    URI address;

    @Test
    void staysWithHttp1WhereAnUpgradeIsAskedFor() throws IOException {
        String answer = answer("""
                GET /q/health/ready HTTP/1.1
                Host: localhost
                Connection: Upgrade, HTTP2-Settings
                Upgrade: h2c
                HTTP2-Settings: AAMAAABkAARAAAAAAAIAAAAA

                """);

        assertThat(answer).startsWith("HTTP/1.1 200 ").doesNotContain("101 Switching");
    }

    @Test
    void doesNotUnderstandHttp2() throws IOException {
        // The client's preface and its empty settings; a server of HTTP/2 answers with a frame of settings, of type 4.
        String answer = answer("PRI * HTTP/2.0\n\nSM\n\n" + "\0\0\0\4\0\0\0\0\0");

        assertThat(answer).as("a line of text, as HTTP/1 answers to what it does not know").matches("(?s)(HTTP/\\d\\.\\d 400 .*)?");
    }

    @Test
    void takesNoSecondRequestOutOfABodyOfUnclearLength() throws IOException {
        String answer = answer("""
                POST /api/plan HTTP/1.1
                Host: localhost
                Content-Type: application/json
                Transfer-Encoding: chunked, xchunked

                0

                GET /q/health/ready HTTP/1.1
                Host: localhost

                """);

        assertThat(answer).startsWith("HTTP/1.1 400 ");
        assertThat(answer.split("HTTP/1\\.1 ", -1)).as("answers").hasSize(2);
    }

    private String answer(String request) throws IOException {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(PATIENCE_MS);
            socket.getOutputStream().write(request.replace("\n", "\r\n").getBytes(StandardCharsets.ISO_8859_1));
            return readable(socket.getInputStream());
        }
    }

    /** What comes until the other side closes or falls silent. */
    private static String readable(InputStream in) throws IOException {
        ByteArrayOutputStream read = new ByteArrayOutputStream();
        try {
            in.transferTo(read);
        } catch (SocketTimeoutException silent) {
            // a connection kept open; what was answered is here
        }
        return read.toString(StandardCharsets.ISO_8859_1);
    }
}
