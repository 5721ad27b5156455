package benchful.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/**
 * The main job as a new tutor does it in a browser: take the samples, plan a class of nine beginners, read the plan, print
 * everything, type what happened and see which step ran over. Leaves screenshots in {@code target/screenshots}, or in the
 * folder {@code -Dbenchful.screenshots}.
 */
@QuarkusTest
class MainJobTest {
    private static final Path SCREENSHOTS = Path.of(System.getProperty("benchful.screenshots", "target/screenshots"));

    @TestHTTPResource
    URI address;

    @Inject
    SampleData data;

    @Test
    void fromTheFirstPageToTheReview() throws IOException {
        data.nothing();
        try (Browser browser = Browser.open(); BrowserContext window = browser.window(1280)) {
            Page page = window.newPage();
            takeTheSamples(page);
            planNineBeginners(page);
            readThePlan(page);
            Map<String, String> printed = printEverything(page);
            checkTheNumbers(page, printed);
            changeAnInput(page);
            review(page);
        }
    }

    private void takeTheSamples(Page page) {
        page.navigate(address.toString());
        shot(page, "welcome");
        press(page, "Load the sample classes");
        assertThat(page.locator("h1")).hasText("What to do next");
        shot(page, "home");
    }

    private void planNineBeginners(Page page) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Plan a class")).click();
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Knotted strand of amazonite and pearls")).click();
        page.getByLabel("Number of students").fill("9");
        page.getByLabel("Title of the class").fill("Nine beginners");
        page.getByLabel("Date").fill("2027-06-05");
        page.getByLabel("Starts").fill("12:30");
        page.getByLabel("Ends").fill("18:30");
        page.getByLabel("Venue").selectOption("Slipway boatshed studio");
        page.getByLabel("Helpers beside you").fill("1");
        page.getByLabel("magnifier").fill("9");
        press(page, "Save and show the plan");
        assertThat(page.locator("h1")).hasText("Nine beginners");
    }

    private void readThePlan(Page page) {
        assertThat(page.locator("#fit-answer")).containsText("Yes. Nine in ten of such classes end by");
        assertThat(page.locator(".picture svg").first()).isVisible();
        Locator reason = page.locator("#plan ~ .scroll details.reason").filter(new Locator.FilterOptions().setHasText("the last of 9")).first();
        reason.locator("summary").click();
        assertThat(reason.locator("p").first()).isVisible();
        shot(page, "class");
    }

    /** The text of every print-out, by its name; the one of them all tells its progress first. */
    private Map<String, String> printEverything(Page page) throws IOException {
        String classPage = page.url();
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Choose what to print")).click();
        shot(page, "documents");
        Map<String, String> printed = new TreeMap<>();
        for (String link : links(page)) {
            byte[] pdf = page.request().get(link).body();
            try (PDDocument document = Loader.loadPDF(pdf)) {
                printed.put(link.replaceAll(".*/([a-z]+)\\.pdf.*", "$1"), new PDFTextStripper().getText(document).replace('\u00a0', ' '));
            }
        }
        page.navigate(classPage);
        return printed;
    }

    @SuppressWarnings("unchecked")
    private static List<String> links(Page page) {
        return (List<String>) page.evaluate("""
                () => [...document.querySelectorAll('button[formaction]:not([formaction$="/all.pdf"])')].map(b =>
                  new URL(b.getAttribute('formaction'), location).href + '?' + new URLSearchParams(new FormData(b.form)))""");
    }

    private void checkTheNumbers(Page page, Map<String, String> printed) {
        assertThat(printed.keySet()).contains("handout", "labels", "checklist", "packing", "shopping", "plan");
        int beads = beadsInAKit(page);
        assertThat(beads).isBetween(30, 45);
        assertThat(rowOf(page, "amazonite round 6 mm")).startsWith("amazonite round 6 mm " + 11 * beads + " ");
        assertThat(spaced(printed.get("labels")).split(beads + " amazonite round 6 mm|" + beads + " × amazonite round 6 mm", -1)).hasSizeGreaterThan(9);
        assertThat(spaced(printed.get("packing"))).contains("amazonite round 6 mm " + toBring(page, "amazonite round 6 mm") + " 11 kits with " + beads);
        assertThat(spaced(printed.get("handout"))).contains("42 cm").contains("Knot the strand").contains("safety data sheet");
        assertThat(spaced(printed.get("checklist"))).contains("safety data sheet").contains("Nine beginners");
        Matcher total = Pattern.compile("£[0-9.,]+").matcher(page.locator("#buy + .lead").innerText());
        assertThat(total.find()).isTrue();
        for (String supplierTotal : page.locator("#buy ~ .panel tfoot strong").allInnerTexts()) {
            assertThat(spaced(printed.get("shopping"))).contains(supplierTotal);
        }
        Matcher end = Pattern.compile("end by (\\d\\d:\\d\\d)").matcher(page.locator("#fit-answer").innerText());
        assertThat(end.find()).isTrue();
        assertThat(spaced(printed.get("plan"))).contains(end.group(1));
    }

    private static int beadsInAKit(Page page) {
        Matcher beads = Pattern.compile("(\\d+) amazonite round 6 mm").matcher(page.locator(".kits details").first().innerText());
        assertThat(beads.find()).isTrue();
        return Integer.parseInt(beads.group(1));
    }

    private static String rowOf(Page page, String material) {
        return spaced(page.locator("#materials ~ .scroll tr").filter(new Locator.FilterOptions().setHasText(material)).first().innerText());
    }

    private static String toBring(Page page, String material) {
        return page.locator("#materials ~ .scroll tr").filter(new Locator.FilterOptions().setHasText(material)).first()
                .locator("td details summary").first().innerText();
    }

    private static String spaced(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private void changeAnInput(Page page) {
        page.getByLabel("Students", new Page.GetByLabelOptions().setExact(true)).fill("10");
        page.getByLabel("Helpers", new Page.GetByLabelOptions().setExact(false)).first().focus();
        assertThat(page.locator("main .lead").first()).containsText("10 students");
        page.getByLabel("Students", new Page.GetByLabelOptions().setExact(true)).fill("0");
        page.getByLabel("Helpers", new Page.GetByLabelOptions().setExact(false)).first().focus();
        assertThat(page.locator(".fault").first()).hasText("Enter a number of students from 1 to 200.");
        page.getByLabel("Students", new Page.GetByLabelOptions().setExact(true)).fill("9");
        page.getByLabel("Helpers", new Page.GetByLabelOptions().setExact(false)).first().focus();
        assertThat(page.locator(".fault")).hasCount(0);
    }

    private void review(Page page) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Review").setExact(true)).last().click();
        page.getByLabel("Welcome, and what we make, took").fill("8 min");
        page.getByLabel("Knot the strand, took").fill("3 h");
        page.getByLabel("knot cover 4 mm, broken").fill("2 pcs");
        press(page, "Save the review");
        assertThat(page.locator(".panel.warn li")).hasCount(1);
        assertThat(page.locator(".panel.warn li")).containsText("Knot the strand: 3 h instead of");
        shot(page, "review");
    }

    private static void press(Page page, String button) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).click();
    }

    private static void shot(Page page, String name) {
        page.evaluate("window.scrollTo(0, 0)");
        page.screenshot(new Page.ScreenshotOptions().setPath(SCREENSHOTS.resolve(name + ".png")));
    }
}
