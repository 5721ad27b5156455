package benchful.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.MalformedURLException;
import java.net.URI;
import org.junit.jupiter.api.Test;

/** Trying a change on the page of a class in a browser: shown at once, compared with the class as it is, kept and taken back. */
@QuarkusTest
class TryAChangeTest {
    @TestHTTPResource
    URI address;

    @Inject
    SampleData data;

    private String strand;

    @Test
    void showsWhatIsTriedComparesItKeepsItAndTakesItBack() throws MalformedURLException {
        data.onlySamples();
        strand = "/classes/" + data.classTitled("Knotted strand, Saturday");
        try (Browser browser = Browser.open(); BrowserContext window = browser.window(1280)) {
            Page page = window.newPage();
            page.navigate(address.resolve(strand).toString());
            attempt(page, "10");
            comparesWithTheClassAsItIs(page);
            goesBack(page);
            keepsAndUndoes(page);
            keepsWhatIsTypedWhileTheAnswerIsOnItsWay(page);
        }
    }

    private void attempt(Page page, String students) throws MalformedURLException {
        students(page).fill(students);
        students(page).press("Tab");
        assertThat(page.locator("main header .lead")).containsText(students + " students");
        assertThat(page.locator("h1")).containsText("tried, not kept");
        assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
        assertThat(stored()).isEqualTo("9");
    }

    private void comparesWithTheClassAsItIs(Page page) {
        press(page, "Compare with now");
        assertThat(page.locator("table.comparison thead th")).hasText(new String[] {"As it is", "What if 1"});
        assertThat(page.locator("table.comparison")).containsText("headcount: 9 10");
        page.goBack();
        assertThat(page.locator("main header .lead")).containsText("10 students");
    }

    private void goesBack(Page page) {
        page.getByText("Back to how it was").click();
        assertThat(page.locator("main header .lead")).containsText("9 students");
        assertThat(students(page)).hasValue("9");
    }

    private void keepsAndUndoes(Page page) throws MalformedURLException {
        attempt(page, "10");
        press(page, "Keep");
        assertThat(page.locator(".panel.good").first()).containsText("Kept.");
        assertThat(stored()).isEqualTo("10");
        press(page, "Undo");
        assertThat(page.locator("main header .lead")).containsText("9 students");
        assertThat(stored()).isEqualTo("9");
    }

    private void keepsWhatIsTypedWhileTheAnswerIsOnItsWay(Page page) {
        page.route("**/trial", route -> {
            page.waitForTimeout(500);
            route.resume();
        });
        students(page).fill("11");
        students(page).press("Tab");
        page.getByLabel("Helpers").first().fill("3");
        page.waitForTimeout(2500);
        assertThat(page.getByLabel("Helpers").first()).hasValue("3");
        page.getByLabel("Helpers").first().press("Tab");
        assertThat(page.locator(".inputs .warn")).containsText("helpers: 1 3");
        assertThat(page.locator(".inputs .warn")).containsText("headcount: 9 11");
    }

    private String stored() throws MalformedURLException {
        return new Visitor(address.toURL()).open(strand + "/setup").field("/headcount");
    }

    private static Locator students(Page page) {
        return page.getByLabel("Students", new Page.GetByLabelOptions().setExact(false)).first();
    }

    private static void press(Page page, String button) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true)).click();
    }
}
