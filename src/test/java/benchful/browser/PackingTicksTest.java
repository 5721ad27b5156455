package benchful.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.MalformedURLException;
import java.net.URI;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Packing in a browser: a tick is kept as it is made, however fast, with a poor network, and by several people at once. */
@QuarkusTest
class PackingTicksTest {
    private static final String CLASP = "hook clasp with eye";
    private static final String KEPT = "Every tick is kept.";
    private static Browser browser;

    @TestHTTPResource
    URI address;

    @Inject
    SampleData data;

    private BrowserContext window;
    private String packing;
    private Page page;

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
    void open() {
        data.onlySamples();
        packing = "/classes/" + data.classTitled("Knotted strand, Saturday") + "/packing";
        window = browser.window(360);
        page = opened(window);
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void keepsEachTickAsItIsMade() throws MalformedURLException {
        assertThat(page.getByText("Keep all ticks").last()).isHidden();
        tick(page, 1).check();
        assertThat(state(page)).hasText(KEPT);
        assertThat(page.locator("#box-1")).containsText(": 1 of");
        assertThat(page.locator("[data-summary]")).containsText("1 of ");
        assertThat(ticked()).containsExactly("1");

        tick(page, 1).uncheck();
        assertThat(page.locator("#box-1")).containsText(": 0 of");
        assertThat(state(page)).hasText(KEPT);
        tick(page, 1).check();
        assertThat(page.locator("#box-1")).containsText(": 1 of");
        assertThat(ticked()).containsExactly("1");
    }

    @Test
    void losesNothingOfAFastSequenceThoughThePageIsLeftAtOnce() throws Exception {
        int boxes = page.locator("input[value='%s']".formatted(CLASP)).count();
        page.evaluate("document.querySelectorAll('input[value=\"%s\"]').forEach(box => box.click())".formatted(CLASP));
        page.navigate("about:blank");
        for (int looks = 0; looks < 100 && ticked().size() < boxes; looks++) {
            Thread.sleep(100);
        }
        assertThat(ticked()).hasSize(boxes).hasSizeGreaterThan(10);
    }

    @Test
    void saysWhatIsNotKeptYetAndKeepsItWhenTheNetworkIsBack() throws MalformedURLException {
        window.setOffline(true);
        tick(page, 1).check();
        tick(page, 2).check();
        assertThat(state(page)).containsText("2 ticks are not kept yet");
        assertThat(page.locator(".field.waiting")).hasCount(2);
        assertThat(ticked()).isEmpty();

        window.setOffline(false);
        tryNowUnlessItIsKeptAlready();
        assertThat(state(page)).hasText(KEPT);
        assertThat(page.locator(".field.waiting")).hasCount(0);
        assertThat(ticked()).containsExactly("1", "2");
    }

    /** The browser tells the page of the network too, which may be quicker than a hand. */
    private void tryNowUnlessItIsKeptAlready() {
        page.evaluate("[...document.querySelectorAll('button')].find(b => b.textContent === 'Try now')?.click()");
    }

    @Test
    void keepsWhatCouldNotBeSentWhenThePageIsOpenedNext() throws MalformedURLException {
        window.setOffline(true);
        tick(page, 3).check();
        assertThat(state(page)).containsText("1 tick is not kept yet");
        page.close();
        window.setOffline(false);
        Page next = opened(window);
        assertThat(tick(next, 3)).isChecked();
        assertThat(state(next)).hasText(KEPT);
        assertThat(ticked()).containsExactly("3");
    }

    @Test
    void goesOnWithAPageThatIsKnownNoMore() throws MalformedURLException {
        window.clearCookies();
        tick(page, 1).check();
        assertThat(state(page)).hasText(KEPT);
        assertThat(ticked()).containsExactly("1");
    }

    @Test
    void letsTwoPeoplePackAndShowsEachWhatTheOtherDid() throws MalformedURLException {
        try (BrowserContext second = browser.window(1280)) {
            Page colleague = opened(second);
            tick(page, 1).check();
            assertThat(state(page)).hasText(KEPT);
            tick(colleague, 2).check();
            assertThat(tick(colleague, 1)).isChecked();
            tick(colleague, 1).uncheck();
            assertThat(state(colleague)).hasText(KEPT);
            tick(page, 3).check();
            assertThat(tick(page, 1)).not().isChecked();
            assertThat(tick(page, 2)).isChecked();
            assertThat(state(page)).hasText(KEPT);
            assertThat(ticked()).containsExactly("2", "3");
        }
    }

    @Test
    void packsABoxAndTheWholeClassWithOnePress() throws MalformedURLException {
        page.locator("section:has(#box-1) button[name=whole]").click();
        assertThat(page.locator("#box-1")).containsText(": packed");
        assertThat(page.locator("section:has(#box-1) button[name=none]")).isFocused();
        page.getByText("Everything is packed").click();
        assertThat(page.locator("[data-summary]")).containsText("13 of 13 boxes complete");
        page.locator("section:has(#box-2) button[name=none]").click();
        assertThat(page.locator("#box-2")).containsText(": 0 of");
        assertThat(new Visitor(address.toURL()).open(packing).page().select("[data-summary]").text()).contains("12 of 13 boxes complete");
    }

    private Page opened(BrowserContext in) {
        Page opened = in.newPage();
        opened.navigate(address.resolve(packing).toString());
        assertThat(state(opened)).isVisible();
        return opened;
    }

    private static Locator state(Page page) {
        return page.locator("[data-state]");
    }

    /** The clasp in the box of this number. */
    private static Locator tick(Page page, int box) {
        return page.locator("section:has(#box-%d) input[value='%s']".formatted(box, CLASP));
    }

    /** The numbers of the boxes whose clasp is ticked, as somebody else sees them. */
    private List<String> ticked() throws MalformedURLException {
        return new Visitor(address.toURL()).open(packing).page().select("input[value=%s][checked]".formatted(CLASP)).eachAttr("name").stream()
                .map(name -> name.replace("ticked-", "")).toList();
    }
}
