package benchful.lives;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Requests that no browser sends, by a bare socket: each is answered or turned away in words, and the program goes on. */
@QuarkusTest
class OddRequestsTest {
    private static final long FIRST = Long.getLong("benchful.lives.first", 1);
    private static final int REQUESTS = Effort.of(400, 5000);
    private static final String[] PATHS = {
        "/", "/classes", "/classes/1", "/classes/0", "/classes/99999999999999999999", "/classes/-1", "/classes/1/packing", "/classes/new?project=x", "/projects/1/pictures/%00",
        "/hazards/%00", "/hazards/%2e%2e%2f", "/materials/lists/prices.csv", "/materials/lists/nothing.exe", "/orders/new?class=x", "/api/plan", "/api/nothing", "/css/tokens.css",
        "/q/health", "/q/openapi", "/classes/1/documents/labels.pdf?paper=%C3%28&sheet=-1&start=99999", "/classes/1/comparison?with=%25%25", "/%", "/%zz", "//", "/./..//", "/?%00=%00",
        "/materials?page=-1&find=%00", "/materials?page=99999999999&find=%25_%27", "/classes?page=x", "/orders/1/order.csv", "/batches/new?project=9", "/schema/project-1.json", "/samples", "*"
    };

    @TestHTTPResource
    URI address;

    @Test
    void areAnsweredOrTurnedAwayInWords() throws IOException {
        Outcomes requests = new Outcomes("requests");
        for (long seed = FIRST; seed < FIRST + REQUESTS; seed++) {
            String request = request(new Chance(seed));
            long before = System.nanoTime();
            String answer = sent(request);
            requests.answered("request " + seed, request.lines().findFirst().orElse(""), Duration.ofNanos(System.nanoTime() - before));
            requests.count(answer.isEmpty() ? "not answered" : "answered " + answer.substring(0, Math.min(12, answer.length())).replaceAll("^\\S+ ", ""));
            if (answer.isEmpty() && !promisesMore(request)) {
                requests.fault("request %d is not answered: %s".formatted(seed, request.lines().limit(8).toList()));
            }
            if (answer.matches("(?s)HTTP/1\\.[01] 5(?!03).*") || !Words.foreign(answer).isEmpty()) {
                requests.fault("request %d: %s%n  %s".formatted(seed, request.lines().limit(8).toList(), answer.lines().limit(1).toList() + " " + Words.foreign(answer)));
            }
        }
        requests.tell();
        assertThat(requests.faults()).isEmpty();
        assertThat(requests.of("not answered")).as("most get an answer").isLessThan(REQUESTS / 2);
        assertThat(sent("GET / HTTP/1.1\r\nHost: " + address.getAuthority() + "\r\nConnection: close\r\n\r\n")).startsWith("HTTP/1.1 200");
    }

    private String request(Chance chance) {
        String method = chance.of("GET", "GET", "GET", "POST", "POST", "HEAD", "OPTIONS", "PUT", "DELETE", "PATCH", "TRACE", "BREW");
        StringBuilder request = new StringBuilder(method).append(' ').append(chance.of(PATHS)).append(chance.of("", "", "?a=%FF", "#x")).append(" HTTP/1.1\r\n");
        if (!chance.once(10)) {
            request.append("Host: ").append(chance.once(8) ? chance.of("evil.example", "", "[::1", "127.0.0.1:99999") : address.getAuthority()).append("\r\n");
        }
        request.append("Connection: close\r\n");
        header(request, chance, "Accept", "text/html", "application/json", "image/*;q=x", "", "*/*, text/html;level=1");
        header(request, chance, "Content-Type", "", "text/plain", "application/x-www-form-urlencoded", "multipart/form-data", "multipart/form-data; boundary=", "application/json", "x", "a/b;c", "text/html; charset=nothing");
        header(request, chance, "Cookie", "csrf-token=x", "a", "=;=;", "csrf-token=" + "y".repeat(4000), "csrf-token=\"");
        header(request, chance, "Origin", "null", "http://evil.example", "x");
        header(request, chance, "Range", "bytes=0-0", "bytes=9-1", "x");
        header(request, chance, "X-Forwarded-For", "1.2.3.4", "<script>");
        header(request, chance, "If-None-Match", "*", "\"x");
        body(request, chance, method);
        return request.toString();
    }

    private static void header(StringBuilder request, Chance chance, String name, String... values) {
        if (chance.once(3)) {
            request.append(name).append(": ").append(chance.of(values)).append("\r\n");
        }
    }

    private static void body(StringBuilder request, Chance chance, String method) {
        if (method.equals("GET") || method.equals("HEAD") || chance.once(4)) {
            request.append("\r\n");
            return;
        }
        String body = chance.of("", "a=b", "%%%=%%%", "name=%00", "{", "--\r\nContent-Disposition: form-data\r\n\r\n", "benchful: class/1", "csrf-token=&x=1", "&".repeat(3000));
        String length = chance.once(10) ? chance.of("-1", "x", "99999999999999", "1") : Integer.toString(body.length());
        request.append(chance.once(12) ? "Transfer-Encoding: " + chance.of("chunked", "x", "chunked, chunked") : "Content-Length: " + length).append("\r\n\r\n").append(body);
    }

    /** What comes back before the connection is closed; nothing where the rest of a body that was promised is waited for. */
    private String sent(String request) throws IOException {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            // Who closes one half would be taken for gone; it is done only where the rest of a body that is not there is waited for.
            if (promisesMore(request)) {
                socket.shutdownOutput();
            }
            return read(socket.getInputStream());
        }
    }

    private static boolean promisesMore(String request) {
        return request.matches("(?s).*(Transfer-Encoding: |Content-Length: (-1|x|9{5,})).*");
    }

    private static String read(InputStream in) {
        StringBuilder answer = new StringBuilder();
        byte[] part = new byte[8192];
        try {
            for (int n = in.read(part); n >= 0 && answer.length() < 100_000; n = in.read(part)) {
                answer.append(new String(part, 0, n, StandardCharsets.ISO_8859_1));
            }
        } catch (IOException e) {
            return answer.toString();
        }
        return answer.toString();
    }
}
