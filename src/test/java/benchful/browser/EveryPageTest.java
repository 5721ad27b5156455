package benchful.browser;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.home.Guide;
import benchful.web.Visitor;
import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.MalformedURLException;
import java.net.URI;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Follows every link from the first page and looks at each kind of page once: no accessibility fault by axe, nothing wider
 * than the window at 360 px, nothing missing without JavaScript, nothing that the policy of the page forbids.
 */
@QuarkusTest
class EveryPageTest {
    private static Browser browser;

    @TestHTTPResource
    URI address;

    @Inject
    SampleData data;

    @BeforeAll
    static void openBrowser() {
        browser = Browser.open();
    }

    @AfterAll
    static void closeBrowser() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void canBeReadAndUsedByEverybody() throws MalformedURLException {
        data.onlySamples();
        storeAnOrderAndABatch();
        new Visitor(address.toURL()).open("/backups").press("Back up into the folder now");
        String comparison = "/classes/%d/comparison?with=%%2Fhelpers%%3D2%%26%%2Fgroups%%3D2".formatted(data.classTitled("Knotted strand, Saturday"));
        Map<String, String> kinds = new LinkedHashMap<>();
        List<String> faults = new ArrayList<>();
        try (BrowserContext window = browser.window(1280); BrowserContext phone = browser.window(360); BrowserContext plain = browser.plainWindow(360)) {
            Page wide = window.newPage();
            wide.onConsoleMessage(said -> refused(wide, said.text()).ifPresent(faults::add));
            Deque<String> open = new ArrayDeque<>(List.of("/", "/classes/new?project=1", "/projects/new", "/nothing-here", comparison));
            Set<String> met = new TreeSet<>();
            while (!open.isEmpty()) {
                String path = open.poll();
                if (kinds.putIfAbsent(kind(path), path) != null) {
                    continue;
                }
                look(wide, path, faults);
                links(wide).stream().filter(met::add).forEach(open::add);
                narrow(phone, path, faults);
                withoutScripts(plain, path, faults);
            }
        }
        assertThat(faults).isEmpty();
        assertThat(kinds.keySet()).contains("/", "/classes", "/classes/N", "/classes/N/setup", "/classes/N/review", "/projects", "/projects/N",
                "/materials", "/venues", "/hazards", "/classes/N/documents", "/classes/N/comparison", "/classes/N/suggestions", "/orders/N", "/batches/N", "/bin", "/privacy",
                "/backups", "/backups/files/N");
        assertThat(kinds.keySet()).as("what the guide says nothing of").filteredOn(kind -> Guide.sentences(kind.replace("/N", "/1")).isEmpty())
                .containsExactlyInAnyOrder("/nothing-here", "/words", "/licences");
    }

    private void storeAnOrderAndABatch() throws MalformedURLException {
        Visitor tutor = new Visitor(address.toURL());
        tutor.open("/orders/new").press("Write these orders");
        String project = tutor.open("/batches/new").page().selectFirst("main a[href^=/batches/new?]").attr("href");
        tutor.open(project).type("/kits", "6").press("Save");
        assertThat(tutor.path()).matches("/batches/\\d+");
        tutor.open("/venues/1/edit").type("/notes", "The key hangs by the door.").press("Save");
        tutor.open("/hazards/new").type("/id", "own-melt").type("/name", "Hot melt").type("/harm", "Burns.").type("lines/cautions", "Take care.")
                .type("lines/first_response", "Cool with water.").type("lines/ghs", "H315 Causes skin irritation").press("Save");
        tutor.open("/hazards/own-melt").press("Remove this hazard");
    }

    private void look(Page page, String path, List<String> faults) {
        page.navigate(address.resolve(path).toString());
        new AxeBuilder(page).setLegacyMode(true).options(violationsAlone()).analyze().getViolations().stream().map(EveryPageTest::words).map(w -> path + ": " + w).forEach(faults::add);
    }

    /** Of what is as it should be nothing is told, which on long pages takes longer than looking. */
    private static AxeRunOptions violationsAlone() {
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        return options;
    }

    /** What the browser would not run, style or load, because the page's own policy forbids it. */
    private static Optional<String> refused(Page page, String said) {
        return said.contains("Content Security Policy") ? Optional.of(page.url() + ": " + said) : Optional.empty();
    }

    private static String words(Rule rule) {
        return rule.getId() + " " + rule.getHelp() + " "
                + rule.getNodes().stream().limit(3).map(n -> n.getHtml()).collect(Collectors.joining(" … "));
    }

    private void narrow(BrowserContext phone, String path, List<String> faults) {
        try (Page page = phone.newPage()) {
            page.navigate(address.resolve(path).toString());
            Number over = (Number) page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            if (over.intValue() > 0) {
                faults.add("%s: %d px wider than a window of 360 px".formatted(path, over.intValue()));
            }
        }
    }

    private void withoutScripts(BrowserContext plain, String path, List<String> faults) {
        try (Page page = plain.newPage()) {
            Response answer = page.navigate(address.resolve(path).toString());
            boolean expected = path.equals("/nothing-here") ? answer.status() == 404 : answer.status() == 200;
            if (!expected || page.locator("main h1").count() != 1) {
                faults.add("%s: answers %d with %d headings".formatted(path, answer.status(), page.locator("main h1").count()));
            }
        }
    }

    @SuppressWarnings("unchecked")
    private static List<String> links(Page page) {
        return (List<String>) page.evaluate("""
                [...document.querySelectorAll('a[href^="/"]')].map(a => a.getAttribute('href').split('#')[0])
                  .filter(h => h && !/\\.(pdf|yaml|csv|json|svg|png|xlsx)(\\?|$)|\\/file$|\\/pictures\\/|^\\/q\\/|^\\/schema/.test(h))""");
    }

    /** Pages that differ only by a number are of one kind. */
    private static String kind(String path) {
        return path.replaceAll("\\?.*", "").replaceAll("/\\d+", "/N").replaceAll("^/hazards/(?!new)[^/]+", "/hazards/N").replaceAll("^/backups/files/[^/]+", "/backups/files/N");
    }
}
