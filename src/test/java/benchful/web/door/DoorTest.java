package benchful.web.door;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.startsWith;

import benchful.SampleData;
import benchful.web.forms.Problem;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the program answers to no page but its own, and to nobody in any words but clear ones. */
@QuarkusTest
class DoorTest {
    private static final String FORM = "application/x-www-form-urlencoded";
    private static final byte[] NOTHING = {'{', '}'};
    private static final int MEGABYTE = 1 << 20;

    @TestHTTPResource("/") URI address;

    /** The first test takes away what other classes left. */
    private static boolean loaded;

    @Inject SampleData data;

    @BeforeEach
    void samples() {
        if (!loaded || given().get("/classes/1").statusCode() != 200) {
            data.onlySamples();
            loaded = true;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "/, text/html", "/classes/1, text/html", "/nothing-here, text/html", "/css/base.css, text/css", "/js/benchful.js, javascript",
        "/schema/class-1.json, json", "/classes/1/documents/register.pdf, application/pdf", "/classes/1/file, yaml", "/q/health, json",
        "/hazards/%00, text/html", "/api/plan, problem+json"})
    void sendsStrictHeadersWithEveryAnswer(String path, String type) {
        Response answer = given().urlEncodingEnabled(false).get(path);
        assertThat(answer.contentType()).contains(type);
        assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(answer.header("X-Frame-Options")).isEqualTo("DENY");
        assertThat(answer.header("Referrer-Policy")).isEqualTo("same-origin");
        assertThat(answer.header("Cross-Origin-Opener-Policy")).isEqualTo("same-origin");
        assertThat(answer.header("Cross-Origin-Resource-Policy")).isEqualTo("same-origin");
        assertThat(answer.header("Permissions-Policy")).contains("camera=()");
        assertThat(answer.header("Content-Security-Policy")).startsWith("default-src 'none'").contains("frame-ancestors 'none'", "base-uri 'none'");
        assertThat(answer.header("Cache-Control")).isEqualTo(path.matches("/(css|js|schema)/.*") ? "no-cache" : "no-store");
    }

    @Test
    void letsPagesRunAndStyleNothingThatIsWrittenInThem() {
        assertThat(RestAssured.get("/").header("Content-Security-Policy")).contains("script-src 'self'; style-src 'self';", "form-action 'self'").doesNotContain("unsafe");
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://evil.example", "null", "http://127.0.0.1:1", "http://localhost", "https://127.0.0.1:1", "file://", "http://127.0.0.1.evil.example:%d"})
    void takesNothingThatAForeignPageSends(String origin) {
        String foreign = origin.formatted(RestAssured.port);
        from(foreign).contentType(FORM).body("").post("/samples/removal").then().statusCode(403).body(containsString("Not taken from another site"));
        from(foreign).contentType("application/yaml").body(NOTHING).post("/api/plan").then().statusCode(403).contentType(Problem.MEDIA_TYPE);
        from(foreign).get("/classes/1").then().statusCode(403);
    }

    @Test
    void takesWhatItsOwnPagesAndOtherProgramsSend() {
        String own = "http://" + address.getAuthority();
        from(own).header("Sec-Fetch-Site", "same-origin").contentType("application/yaml").body(NOTHING).post("/api/plan").then().statusCode(422);
        given().contentType("application/yaml").body(NOTHING).post("/api/plan").then().statusCode(422);
        from(own).get("/").then().statusCode(200);
    }

    /** On plain HTTP a proxy may have taken the HTTPS off; the name and the port still have to be ours. */
    @Test
    void takesWhatItsOwnPagesSendThroughAProxyWithHttps() {
        from("https://localhost").header("Host", "localhost").contentType("application/yaml").body(NOTHING).post("/api/plan").then().statusCode(422);
        from("https://evil.example").header("Host", "localhost").contentType("application/yaml").body(NOTHING).post("/api/plan").then().statusCode(403);
    }

    @ParameterizedTest
    @CsvSource({"cross-site, no-cors, image", "same-site, no-cors, script", "cross-site, navigate, iframe", "cross-site, navigate, embed", "same-site, cors, empty", "cross-site, navigate, "})
    void showsNothingWithinAnotherSite(String site, String mode, String as) {
        fetched(site, mode, as).get("/classes/1").then().statusCode(403);
        fetched(site, mode, as).get("/classes/1/documents/register.pdf").then().statusCode(403);
        fetched(site, mode, as).get("/css/base.css").then().statusCode(403);
    }

    @Test
    void opensAPageByALinkOnAnotherSiteAndAsksBeforeLongWork() {
        fetched("cross-site", "navigate", "document").get("/classes/1").then().statusCode(200).body(containsString("Will it fit"));
        fetched("cross-site", "navigate", "document").header("Sec-Purpose", "prefetch;prerender").get("/classes/1").then().statusCode(403);
        fetched("cross-site", "navigate", "document").get("/classes/1/documents/register.pdf?paper=letter").then()
                .statusCode(200).contentType("text/html").body(containsString("Open this?"), containsString("register.pdf?paper=letter"));
        fetched("same-origin", "navigate", "document").get("/classes/1/documents/register.pdf").then().statusCode(200).contentType("application/pdf");
        fetched("none", "navigate", "document").get("/classes/1/documents/register.pdf").then().statusCode(200).contentType("application/pdf");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x"})
    void computesNothingForATypeThatAnyPageMaySend(String type) throws IOException {
        String post = "POST /api/plan HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: " + type + "\r\nContent-Length: 2\r\n\r\n{}";
        assertThat(raw(post)).startsWith("HTTP/1.1 415").contains("problem+json", "application/yaml");
    }

    @Test
    void answersOddRequestsInWords() throws IOException {
        for (String path : new String[] {"/hazards/%00", "/hazards/%00/edit", "/projects/1/pictures/%00", "/projects?q=%00"}) {
            given().urlEncodingEnabled(false).get(path).then().statusCode(404).body(containsString("There is nothing at this address"));
        }
        assertThat(raw("GET / HTTP/1.1\r\nConnection: close\r\n\r\n")).startsWith("HTTP/1.1 400").contains("Host header");
        assertThat(raw("GET / HTTP/1.0\r\n\r\n")).startsWith("HTTP/1.0 400").contains("Host header");
        for (String type : new String[] {"Content-Type:\r\n", "Content-Type: yaml\r\n", "Content-Type: /\r\n", ""}) {
            String post = " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + type + "Content-Length: 2\r\n\r\n{}";
            assertThat(raw("POST /api/plan" + post)).startsWith("HTTP/1.1 415").contains("problem+json", "Content-Type header");
            assertThat(raw("POST /samples" + post)).startsWith("HTTP/1.1 415").contains("This page takes a form only");
        }
    }

    @Test
    void speaksToProgramsOfHeadersAndToPeopleOfPages() {
        given().contentType("application/yaml").accept("image/png").body(NOTHING).post("/api/plan").then()
                .statusCode(406).body("detail", containsString("application/json"));
        given().contentType("image/png").body(NOTHING).post("/api/plan").then().statusCode(415).body("detail", startsWith("This address takes a class file"));
        given().get("/api/plan").then().statusCode(405).body("detail", containsString("does not take that method"));
    }

    @Test
    void saysInWordsThatWhatIsSentIsTooLarge() throws IOException {
        assertThat(upload("POST /materials/lists/previews", "multipart/form-data; boundary=x", 30 * MEGABYTE))
                .startsWith("HTTP/1.1 413").contains("the limit is 24 MB", "text/html", "frame-ancestors");
        assertThat(upload("POST /api/plan", "application/yaml", 30 * MEGABYTE)).startsWith("HTTP/1.1 413").contains("the limit is 24 MB", "problem+json");
    }

    @Test
    void takesLargeFilesOnlyWhereTheyGoToTheDisk() throws IOException {
        assertThat(upload("POST /backups/files", "multipart/form-data; boundary=x", 30 * MEGABYTE)).doesNotContain("413", "the limit is");
        assertThat(firstLine("POST /backups/files HTTP/1.1\r\nHost: localhost\r\nContent-Type: multipart/form-data; boundary=x\r\nContent-Length: 1073741825\r\n\r\n"))
                .startsWith("HTTP/1.1 413");
    }

    @Test
    void boundsWhatDoesNotSayHowMuchItIs() throws IOException {
        assertThat(raw("POST /materials/lists/previews HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: multipart/form-data; boundary=x\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n"))
                .startsWith("HTTP/1.1 411").contains("Content-Length");
        String chunk = "100000\r\n" + " ".repeat(MEGABYTE) + "\r\n";
        assertThat(raw("POST /api/plan HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/yaml\r\nTransfer-Encoding: chunked\r\n\r\n" + chunk.repeat(25) + "0\r\n\r\n"))
                .startsWith("HTTP/1.1 413");
    }

    private static RequestSpecification from(String origin) {
        return given().redirects().follow(false).header("Origin", origin);
    }

    private static RequestSpecification fetched(String site, String mode, String as) {
        RequestSpecification request = given().header("Sec-Fetch-Site", site).header("Sec-Fetch-Mode", mode);
        return as == null ? request : request.header("Sec-Fetch-Dest", as);
    }

    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Of an answer that comes while more is announced than is sent. */
    private String firstLine(String request) throws IOException {
        try (Socket socket = new Socket(address.getHost(), address.getPort())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8)).readLine();
        }
    }

    /** As a browser sends a file: all of it, and only then looks for the answer. */
    private String upload(String line, String type, int size) throws IOException {
        try (Socket socket = new Socket(address.getHost(), address.getPort()); OutputStream out = socket.getOutputStream(); InputStream in = socket.getInputStream()) {
            socket.setSoTimeout(20_000);
            out.write("%s HTTP/1.1\r\nHost: localhost\r\nContent-Type: %s\r\nConnection: close\r\nContent-Length: %d\r\n\r\n".formatted(line, type, size).getBytes(StandardCharsets.ISO_8859_1));
            for (int sent = 0; sent < size; sent += MEGABYTE) {
                out.write(new byte[MEGABYTE]);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
