package benchful.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.Route;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is typed outlives a cut of the connection, is offered back, and leaves no trace once it is saved. */
@QuarkusTest
class TypedFormsTest {
    private static Browser browser;

    @TestHTTPResource("/")
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

    @BeforeEach
    void samples() {
        data.onlySamples();
    }

    @Test
    void areOfferedBackAfterTheConnectionWasLostWhileSaving() {
        inAWindow(page -> {
            type(page, "Lost and found cord");
            lose(page, Route::abort);
            open(page, "/materials/new");
            assertThat(offer(page)).containsText("What you typed here before was not saved");
            page.getByText("Put it back").click();
            assertThat(page.locator("[name='/name']")).hasValue("Lost and found cord");
            assertThat(page.locator("[name='/note']")).hasValue("two lines");
            save(page);
            assertThat(page.locator("h1")).hasText("Lost and found cord");
            nothingIsKept(page);
        });
    }

    @Test
    void areNotOfferedWhereTheyWereSavedAndOnlyTheAnswerWasLost() {
        inAWindow(page -> {
            type(page, "Saved after all");
            lose(page, route -> {
                route.fetch(new Route.FetchOptions().setMaxRedirects(0));
                route.abort();
            });
            open(page, "/materials/new");
            nothingIsKept(page);
            assertThat(offer(page)).hasCount(0);
        });
    }

    @Test
    void areThrownAwayWhenAskedTo() {
        inAWindow(page -> {
            type(page, "No more");
            lose(page, Route::abort);
            open(page, "/materials/new");
            page.getByText("Throw it away").click();
            open(page, "/materials/new");
            assertThat(offer(page)).hasCount(0);
            nothingIsKept(page);
        });
    }

    @Test
    void areNotOfferedOnAPageThatShowsThemAgain() {
        inAWindow(page -> {
            open(page, "/materials/new");
            page.locator("[name='/note']").fill("a material without a name");
            save(page);
            assertThat(page.locator(".summary.faulty")).isVisible();
            assertThat(offer(page)).hasCount(0);
            page.locator("[name='/name']").fill("Named at last");
            save(page);
            assertThat(page.locator("h1")).hasText("Named at last");
            nothingIsKept(page);
        });
    }

    @Test
    void areForgottenWhereStudentsAreNamedAsSoonAsAnotherPageIsShown() {
        inAWindow(page -> {
            open(page, "/classes/new?project=1");
            page.getByLabel("Title of the class").fill("Of Zofia and Søren");
            until(page, "Object.keys(sessionStorage).some(name => name.startsWith('typed '))");
            open(page, "/classes");
            nothingIsKept(page);
        });
    }

    private void inAWindow(Consumer<Page> visit) {
        try (BrowserContext window = browser.window(1280)) {
            visit.accept(window.newPage());
        }
    }

    private void open(Page page, String path) {
        page.navigate(address.resolve(path).toString());
    }

    private void type(Page page, String name) {
        open(page, "/materials/new");
        page.locator("[name='/name']").fill(name);
        page.locator("[name='/unit']").fill("m");
        page.locator("[name='/note']").fill("two lines");
    }

    /** Presses the button while something else becomes of the request. */
    private static void lose(Page page, Consumer<Route> cut) {
        page.route("**/materials", route -> {
            if ("POST".equals(route.request().method())) {
                cut.accept(route);
            } else {
                route.resume();
            }
        });
        try {
            save(page);
            page.waitForTimeout(500);
        } catch (PlaywrightException cutOff) {
            // The page that the press led to never came.
        }
        page.unroute("**/materials");
    }

    private static void save(Page page) {
        page.locator("main form.sheet button.first").first().click();
    }

    private static Locator offer(Page page) {
        return page.locator("main [role=status]").filter(new Locator.FilterOptions().setHasText("was not saved"));
    }

    private static void nothingIsKept(Page page) {
        until(page, "!Object.keys(sessionStorage).some(name => name.startsWith('typed '))");
        assertThat(page.evaluate("localStorage.length")).isEqualTo(0);
    }

    /** The driver's own waiting evaluates texts within the page, which the page's policy forbids. */
    private static void until(Page page, String holds) {
        for (int i = 0; i < 100 && !Boolean.TRUE.equals(page.evaluate(holds)); i++) {
            page.waitForTimeout(50);
        }
        assertThat(page.evaluate(holds)).as(holds).isEqualTo(true);
    }
}
