package benchful.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchful.SampleData;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.LocatorAssertions.ContainsTextOptions;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is typed of a project is there again, however its page ends. */
@QuarkusTest
class DraftsTest {
    @TestHTTPResource("/")
    URI address;

    @Inject
    SampleData data;

    /** A program that is away for a while, and a browser that forgot its name, so that the key of the form has run out. */
    @Test
    void outliveThePageTheBrowserTheProgramAndTheirKey() {
        data.nothing();
        try (Browser browser = Browser.open()) {
            try (BrowserContext window = browser.window(1280)) {
                Page page = window.newPage();
                page.navigate(address.resolve("/projects/new").toString());
                page.locator("[name='/name']").fill("Half a lantern");
                page.route("**/projects/drafts", Route::abort);
                page.locator("[name='lines/steps']").fill("make: Fold it, 4-6-10 min\nmake: Light it");
                page.waitForRequest("**/projects/drafts", () -> { });
                page.unroute("**/projects/drafts");
                Locator kept = page.locator("[data-part=draft] [role=status]");
                assertThat(kept).containsText("Kept", new ContainsTextOptions().setTimeout(20_000));
                window.clearCookies();
                page.waitForResponse(answer -> answer.url().matches(".*/projects/drafts/\\d+") && answer.ok(), () ->
                        page.waitForResponse(answer -> answer.status() == 403, () ->
                                page.locator("[name='lines/tools']").fill("scissors")));
                page.locator("[name='/craft']").fill("paper");
                page.locator("header.site a[href='/projects']").click();
            }
            try (BrowserContext window = browser.window(360)) {
                Page page = window.newPage();
                page.navigate(address.resolve("/projects").toString());
                page.getByText("Half a lantern").click();
                assertThat(page.locator("[name='/craft']")).hasValue("paper");
                assertThat(page.locator("[name='lines/tools']")).hasValue("scissors");
                assertThat(page.locator("[name='lines/steps']")).hasValue("make: Fold it, 4-6-10 min\nmake: Light it");
                Locator can = page.locator("[data-part=draft] li");
                assertThat(can.first()).containsText("Print a handout: not yet. Give one student's quick, usual and slow times.");
                assertThat(can.nth(1)).containsText("Count a kit: ready");
                page.locator("[name='lines/steps']").fill("make: Fold it, 4-6-10 min\nmake: Light it, 1-2-3 min");
                page.getByText("Save the project").first().click();
                assertThat(page.locator("h1")).hasText("Half a lantern");
                page.navigate(address.resolve("/projects").toString());
                assertThat(page.locator("main")).not().containsText("Not finished yet");
            }
        }
    }

    /** Drawn by the page itself: a red square of 90 dots. */
    private static final String TRANSFER = """
            async () => {
              const square = new OffscreenCanvas(90, 90);
              const pen = square.getContext('2d');
              pen.fillStyle = 'red';
              pen.fillRect(0, 0, 90, 90);
              const files = new DataTransfer();
              files.items.add(new File([await square.convertToBlob({type: 'image/png'})], 'photo.png', {type: 'image/png'}));
              return files;
            }""";

    @Test
    void takePicturesThatAreDroppedOnTheirStepOrPasted() {
        data.nothing();
        try (Browser browser = Browser.open(); BrowserContext window = browser.window(1280)) {
            Page page = window.newPage();
            page.navigate(address.resolve("/projects/new").toString());
            page.locator("[name='/name']").fill("Half a lantern");
            page.locator("[name='lines/steps']").fill("make: Fold it, 4-6-10 min\nmake: Light it, 1-2-3 min");
            assertThat(page.locator("[id='f-steps-1']")).isAttached();
            page.locator("[id='f-steps-rows'] > summary").click();
            page.locator("[id='f-steps-1'] > summary").dispatchEvent("drop", Map.of("dataTransfer", page.evaluateHandle(TRANSFER)));
            Locator shots = page.locator("[id='f-steps-1'] .shots li");
            assertThat(shots).hasCount(1);
            assertThat(shots).containsText("light-it");
            page.locator("[name='/steps/1/text']").fill("With a match.");
            page.locator("[name='/steps/1/text']").evaluate("(field, files) => field.dispatchEvent(new ClipboardEvent('paste', {clipboardData: files, bubbles: true}))", page.evaluateHandle(TRANSFER));
            assertThat(shots).hasCount(2);
            page.locator("[name=remove][value='/steps/1']").press("Enter");
            Locator undo = page.getByText("Undo").first();
            assertThat(undo).isFocused();
            undo.press("Enter");
            assertThat(page.locator("[id='f-steps-1'] > summary")).isFocused();
            assertThat(shots).hasCount(2);
            assertThat(page.locator("[name='/steps/1/text']")).hasValue("With a match.");
            assertThat(page.locator("[data-part=draft] [role=status]")).containsText("Kept", new ContainsTextOptions().setTimeout(20_000));
            page.navigate(address.resolve("/projects").toString());
            page.getByText("Half a lantern").click();
            assertThat(shots).hasCount(2);
        }
    }

    @Test
    void showBesideTheFormWhatTheyWillPrint() {
        data.nothing();
        try (Browser browser = Browser.open(); BrowserContext window = browser.window(1400)) {
            Page page = window.newPage();
            page.navigate(address.resolve("/projects/new").toString());
            page.locator("[name='/name']").fill("Half a lantern");
            page.locator("[name='lines/materials']").fill("candle 1\npaper");
            page.locator("[name='lines/steps']").fill("make: Fold it, 4-6-10 min\nmake: Light it");
            Locator seen = page.locator("#preview");
            assertThat(seen).containsText("1 candle", new ContainsTextOptions().setTimeout(30_000));
            assertThat(seen).containsText("Not shown, as it is not whole yet: paper, Light it.");
            Locator first = seen.locator(".page img").first();
            double before = first.boundingBox().width;
            first.click();
            assertTrue(first.boundingBox().width > 1.5 * before, "larger");
            assertThat(seen.locator(".smaller").first()).isVisible();
            page.keyboard().press("Escape");
            assertThat(seen.locator(".smaller").first()).not().isVisible();
            page.locator("[name='lines/materials']").fill("candle 3\npaper 2 sheets");
            assertThat(seen).containsText("3 candle", new ContainsTextOptions().setTimeout(30_000));
            page.setViewportSize(360, 740);
            assertTrue(seen.boundingBox().y > page.locator("form.sheet").boundingBox().y, "below the form");
        }
    }
}
