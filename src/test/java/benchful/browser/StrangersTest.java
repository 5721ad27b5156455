package benchful.browser;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Frame;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.sun.net.httpserver.HttpServer;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.vertx.http.runtime.filters.Filters;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jsoup.Connection;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * A page of another program on this machine, at another port of 127.0.0.1, open in the tutor's browser beside the program. The
 * browser counts it to the same site and shares cookies with it; still it can change, load and show nothing.
 */
@QuarkusTest
class StrangersTest {
    @TestHTTPResource("/")
    URI address;

    @Inject
    SampleData data;

    @Inject
    Answers answers;

    private HttpServer stranger;
    private String cookie = "";
    private String html = "";

    @BeforeEach
    void start() throws IOException {
        data.onlySamples();
        stranger = HttpServer.create(new InetSocketAddress(InetAddress.getByName("127.0.0.1"), 0), 0);
        stranger.createContext("/", exchange -> {
            byte[] page = ("<!DOCTYPE html><title>Stranger</title>" + html).getBytes(StandardCharsets.UTF_8);
            exchange.getResponseHeaders().set("Content-Type", "text/html;charset=UTF-8");
            if (!cookie.isEmpty()) {
                exchange.getResponseHeaders().set("Set-Cookie", cookie);
            }
            exchange.sendResponseHeaders(200, page.length);
            exchange.getResponseBody().write(page);
            exchange.close();
        });
        stranger.start();
    }

    @AfterEach
    void stop() {
        stranger.stop(0);
    }

    /** The stranger fetches a key for a browser name of its own and plants that name in the tutor's browser. */
    @Test
    void removeNothingWithAPlantedCookieAndAFormOfTheirOwn() throws IOException {
        Connection.Response first = Jsoup.connect(address.toString()).execute();
        cookie = "benchful=" + first.cookie("benchful") + "; Path=/";
        html = "<form method=post action='%ssamples/removal'><input name=form-key value='%s'><button>Win a prize</button></form>"
                .formatted(address, first.parse().select("form[action=/samples/removal] input[name=form-key]").val());
        try (Browser browser = Browser.open(); BrowserContext window = browser.window(1280)) {
            Page page = window.newPage();
            page.navigate(there());
            Response answer = page.waitForNavigation(() -> page.click("button"));
            assertThat(answer.status()).isEqualTo(403);
            assertThat(page.locator("h1").textContent()).isEqualTo("Not taken from another site");
            assertThat(window.cookies(address.toString())).extracting(c -> c.value).contains(first.cookie("benchful"));
        }
        assertThat(data.classTitled("Knotted strand, Saturday")).isPositive();
    }

    @Test
    void showNoPageWithinTheirs() {
        html = "<iframe src='%s'></iframe><embed src='%sclasses'><object data='%sprojects'></object>".formatted(address, address, address);
        try (Browser browser = Browser.open(); BrowserContext window = browser.window(1280)) {
            Page page = window.newPage();
            page.navigate(there());
            page.waitForTimeout(500);
            assertThat(page.frames().stream().filter(frame -> frame != page.mainFrame()).map(StrangersTest::text))
                    .as("what is shown within the stranger's page").noneMatch(text -> text.contains("Benchful") && !text.contains("Not taken"))
                    .noneMatch(text -> text.contains("What to do next"));
        }
    }

    private static String text(Frame frame) {
        return frame.url().startsWith("chrome-error") ? "" : frame.locator("body").textContent();
    }

    @Test
    void makeItComputeNothing() {
        List<String> asked = List.of("/api/plan", "/classes/1/documents/register.pdf", "/classes/1/suggestions", "/orders/new", "/css/base.css");
        html = """
                <script>
                  const here = '%s';
                  const posts = ['text/plain', ''].map(type => fetch(here + 'api/plan', {method: 'POST', mode: 'no-cors', body: new Blob(['a: b'], {type})}));
                  const reads = ['classes/1/documents/register.pdf', 'classes/1/suggestions', 'orders/new'].map(path => fetch(here + path, {mode: 'no-cors', credentials: 'include'}));
                  const shown = ['classes/1/documents/register.pdf', 'css/base.css'].map(path => new Promise(done => Object.assign(new Image(), {src: here + path, onload: done, onerror: done})));
                  Promise.allSettled([...posts, ...reads, ...shown]).then(() => document.title = 'done');
                </script>""".formatted(address);
        try (Browser browser = Browser.open(); BrowserContext window = browser.window(1280)) {
            Page page = window.newPage();
            answers.given.clear();
            page.navigate(there());
            page.waitForFunction("document.title === 'done'");
            assertThat(answers.given).allMatch(answer -> answer.startsWith("403 "));
            assertThat(answers.given.stream().map(answer -> answer.substring(4))).containsAll(asked);
        }
    }

    /** The other way round: a link on another page opens a page here, and from there everything works. */
    @Test
    void mayLeadToAPage() {
        html = "<a href='%smaterials/new'>To the workshop</a>".formatted(address);
        try (Browser browser = Browser.open(); BrowserContext window = browser.window(1280)) {
            Page page = window.newPage();
            page.navigate(address + "materials/new");
            page.navigate(there());
            page.click("a");
            page.getByLabel("Name").first().fill("Cord by a link");
            page.locator("main form.sheet button.first").first().click();
            // The browser kept its name to itself when it came by the link, so this form is asked about once.
            if (page.locator("h1").textContent().startsWith("Nothing was lost")) {
                page.click("text=Send it again");
            }
            assertThat(page.content()).contains("Cord by a link");
        }
    }

    /** What the program answered last, as it left; the browser hides much of it from its driver. */
    @Singleton
    public static class Answers {
        private final List<String> given = new CopyOnWriteArrayList<>();

        void stand(@Observes Filters filters) {
            filters.register(routing -> {
                routing.addHeadersEndHandler(end -> given.add(routing.response().getStatusCode() + " " + routing.request().path()));
                routing.next();
            }, 1000);
        }
    }

    private String there() {
        return "http://127.0.0.1:%d/".formatted(stranger.getAddress().getPort());
    }
}
