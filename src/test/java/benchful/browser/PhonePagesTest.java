package benchful.browser;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jboss.logging.Logger;
import org.junit.jupiter.api.Test;

/** On a phone, 360 px wide, with the samples and a class of twelve: no page opens longer than six screens, nothing to press is lower than 24 px (WCAG 2.2, 2.5.8). */
@QuarkusTest
class PhonePagesTest {
    private static final Logger LOG = Logger.getLogger(PhonePagesTest.class);
    private static final int LONGEST = 5000;
    private static final int LOWEST = 24;
    /** What can be pressed and is lower, but for ticks and choices that their words make large. */
    private static final String LOW = """
            () => [...document.querySelectorAll('a, button, input:not([type=hidden]), select, summary')]
                .filter(e => e.checkVisibility() && !e.closest('.skip, svg') && e.getBoundingClientRect().height > 0 && e.getBoundingClientRect().left > -100)
                .filter(e => Math.max(...[...e.getClientRects()].map(r => r.height)) < 23.5)
                .map(e => e.tagName + ' ' + (e.textContent || e.name || '').trim().slice(0, 30) + ' ' + Math.round(e.getBoundingClientRect().height))""";

    @TestHTTPResource("/")
    URI address;

    @TestHTTPResource
    URL start;

    @Inject
    SampleData data;

    @Test
    void openWithinSixScreensAndCanBePressed() {
        data.onlySamples();
        String twelve = classOfTwelve();
        List<String> wrong = new ArrayList<>();
        try (Browser browser = Browser.open(); BrowserContext window = browser.window(360)) {
            Page page = window.newPage();
            for (String path : paths(twelve)) {
                page.navigate(address.resolve(path).toString());
                int height = ((Number) page.evaluate("document.documentElement.scrollHeight")).intValue();
                @SuppressWarnings("unchecked")
                List<String> low = (List<String>) page.evaluate(LOW);
                LOG.infof("%s: %d px, %d low", path, height, low.size());
                if (height > LONGEST) {
                    wrong.add(path + " is " + height + " px");
                }
                if (path.equals(twelve) && !page.isVisible("#fit-answer")) {
                    wrong.add(path + " does not say at once whether it fits");
                }
                if (!low.isEmpty()) {
                    wrong.add(path + " has " + low.stream().limit(6).toList());
                }
            }
        }
        assertThat(wrong).as("lower than %d px or longer than %d px", LOWEST, LONGEST).isEmpty();
    }

    private String classOfTwelve() {
        Visitor tutor = new Visitor(start).open("/classes");
        String path = tutor.page().select("main a[href~=/classes/\\d+$]").first().attr("href");
        int named = tutor.open(path + "/setup").page().select("[name^=/students/][name$=/name]").not("[value='']").not("[name*=emergency]").size();
        String names = IntStream.rangeClosed(named + 1, 12).mapToObj(i -> "Student Number " + i).collect(Collectors.joining("\n"));
        tutor.type("pasted", names).press("Add these students").type("/headcount", "12").press("Save and show the plan");
        assertThat(tutor.path()).as(tutor.toString()).isEqualTo(path);
        return path;
    }

    private List<String> paths(String twelve) {
        Visitor tutor = new Visitor(start).open("/projects");
        String project = tutor.page().select(".card a[href^=/projects/]").first().attr("href");
        String material = tutor.open("/materials").page().select("main a[href~=/materials/\\d+$]").first().attr("href");
        return List.of("/", "/classes", "/projects", "/materials", "/orders", "/orders/new", "/venues", "/hazards", "/studio", "/bin", "/privacy", "/backups",
                "/projects/new", "/projects/new?from=piece:leather", project, project + "/edit", project + "/handouts", material, material + "/edit",
                twelve, twelve + "/setup", twelve + "/documents", twelve + "/packing", twelve + "/cutting", twelve + "/review", twelve + "/reservation", twelve + "/assessment", twelve + "/day");
    }
}
