package benchful.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.assertions.LocatorAssertions.HasCountOptions;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jboss.logging.Logger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * From a tutor's untidy notes to the first printed handout, every field, click and key counted. The notes are invented; their times
 * and amounts are what somebody might write down, no source. They are typed, not pasted, so the keys count in full.
 */
@QuarkusTest
class NotesToHandoutTest {
    private static final Logger LOG = Logger.getLogger(NotesToHandoutTest.class);
    private static final Path SCREENSHOTS = Path.of(System.getProperty("benchful.screenshots", "target/screenshots"));
    private static final int MOST_FIELDS = 70;
    private static final int MOST_CLICKS = 90;

    private static final Notes POUCH = new Notes("Stitched belt pouch", "leather", """
            Small: height 9 cm, width 7 cm
            Medium: height 12 cm, width 9
            Large - height 15 cm; width 11""", """
            veg tan leather 2 mm: 2 pieces of height + 3 cm by width + 2 cm
            linen thread 18/3 60 cm + 8 x height
            sam browne stud 1
            beeswax, one for the class, 5 g
            edge paint 2 ml
            harness needles 2
            sandpaper 1/4 sheet""", """
            cutting mat, steel rule, craft knife
            stitching pony 4
            safety glasses, each their own
            pricking iron, mallet, awl""", """
            1. Welcome, look at the finished pouches 10 min
            2. Show how to cut safely - 5 min
            3. Cut back and front, 10-15-25 min, craft knife, steel rule, cutting mat, hazard sharp-tools
               Template on the grain side. Three light cuts, not one deep one.
            4. Bevel the edges 4-6-10 min, edge beveller
            5. Mark the stitch line 3-4-6 min, wing divider
            6. Prick the holes, 8/12/20 min, pricking iron, mallet, hazard hammering
            7. show: saddle stitch, 8 min
            8. Wax the thread and thread both needles 3-5-8 min
            9. Sew the sides 25-40-65 min, stitching pony, 2 awls
               Right needle first, pull until the leather dimples.
            10. Tap the seam flat 1.5-2-4 min, mallet
            11. Sand edges, 5-8-12 min
            12. Edge paint, two coats 6-8-12 min
            13. dries 20 min, at most 1 h
            14. Punch and set the stud 3-5-9 min, hole punch
            15. Tidy up, 10 min""");

    private static final Notes SUN_CATCHER = new Notes("Sun catcher", "stained glass", """
            Small: width 12 cm
            Middle: width 16 cm
            Big: width 20 cm""", """
            cathedral glass clear 20 x 15 cm
            streaky glass, amber; 12 x 10 cm; choose colour
            copper foil tape 5.6 mm 1,2 m
            solder 60/40 about 25 g
            flux 3 ml, one for the class
            copper wire 0.8 mm: ½ m
            chain 0.3 m""", """
            glass cutter\t6
            soldering iron\t4
            safety glasses\teach their own
            running pliers
            grinder\t1""", """
            together: Welcome and safety, 15 min
            show: Scoring and breaking 10 min
            Cut the template 5-8-15 min, scissors
            Score and break the glass, 20-30-50 min, glass cutter, running pliers, hazard sharp-edges
            Grind the edges 8-12-20 min, grinder
            Wash and dry the pieces 3-5-8 min
            show: foil, 5 min
            Foil all edges 15-25-40 min, hazard lead-cadmium
            Burnish 4-6-10 min, fid
            show: Soldering, 10 min
            Tack and solder the front, 15-20-35 min, soldering iron, hazard hot-surface
            Solder the back 10-15-25 min, soldering iron
            Cools 5 min
            Bend and solder the loop 4-6-12 min, round-nose pliers
            Clean and patina 6-10-15 min; gloves
            Tidy up, wash hands 10 min""");

    private static final Notes SOAP = new Notes("Bar of soap", "soap making", """
            Bar: mass 100 g
            Block: mass 300 g
            Loaf: mass 900 g""", """
            - olive oil 0.45 x mass
            - coconut oil 0.2 x mass
            - sodium hydroxide 0.095 x mass (weigh in a dry jar)
            - water 0.21 x mass
            - lavender oil 1/2 tsp
            - dried petals 1 tsp, choose petals
            - greaseproof paper 1 sheet""", """
            • scales 2
            • stick blender 3
            • goggles, each their own
            • gloves, each their own
            • mould""", """
            * ahead: Set out, weigh the hydroxide - 30 min
            * Welcome and safety, 15 min, hazard caustic
            * show: How lye is mixed 8 min
            * Weigh the oils 6-8-12 min, scales
            * Melt the oils 8-10-15 min, hot plate
            * Mix the lye. Always the hydroxide into the water. 4-5-8 min, goggles, gloves, hazard caustic
            * Lye cools 20 min, at most 45 min
            * Line the mould 5-7-12 min, mould
            * Chop petals 3-5-8 min
            * Blend to trace, 5-8-15 min, stick blender
            * Stir in scent and petals 2-3-5 min
            * Pour 2-3-5 min, mould
            * Wrap the mould 2-3-4 min
            * Rests 24 h, at home
            * Tidy and wash up, 15 min, gloves""");

    /** What a tutor has in her notebook. */
    private record Notes(String name, String craft, String sizes, String materials, String tools, String steps) {}

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
    void nothing() {
        data.nothing();
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 360})
    void becomeAPrintedHandoutWithinSeventyFieldsAndNinetyClicks(int width) {
        for (Notes notes : new Notes[] {POUCH, SUN_CATCHER, SOAP}) {
            try (BrowserContext window = browser.window(width)) {
                Hand hand = new Hand(window.newPage());
                write(hand, notes);
                assertThat(hand.fields()).isLessThanOrEqualTo(MOST_FIELDS);
                assertThat(hand.clicks()).isLessThanOrEqualTo(MOST_CLICKS);
                LOG.infof("%s at %d px: %s", notes.name, width, hand);
            }
        }
    }

    @Test
    void becomeAHandoutWithoutScripts() {
        try (BrowserContext window = browser.plainWindow(360)) {
            write(new Hand(window.newPage()), POUCH);
        }
    }

    private void write(Hand hand, Notes notes) {
        Page page = hand.page();
        page.navigate(address.toString());
        hand.press(page.locator("header.site a[href='/projects']"));
        hand.press(page.getByText("Write a project").first());
        hand.type(page.locator("[name='/name']"), notes.name);
        hand.type(page.locator("[name='/craft']"), notes.craft);
        hand.type(page.locator("[name='lines/sizes']"), notes.sizes);
        hand.type(page.locator("[name='lines/materials']"), notes.materials);
        hand.type(page.locator("[name='lines/tools']"), notes.tools);
        hand.type(page.locator("[name='lines/steps']"), notes.steps);
        hand.press(page.getByText("Read these lines").last());
        Locator rows = page.locator("details.step");
        assertThat(rows).hasCount((int) notes.steps.lines().filter(l -> !l.startsWith(" ")).count(), new HasCountOptions().setTimeout(30_000));
        shot(page, notes.name);
        hand.press(page.getByText("Save the project").last());
        assertThat(page.locator("h1")).hasText(notes.name);
        shot(page, notes.name + " saved");
        hand.press(page.getByText("Print handouts").first());
        List<Response> printed = new ArrayList<>();
        page.context().onResponse(answer -> Optional.of(answer).filter(a -> a.url().contains("handout.pdf")).ifPresent(printed::add));
        hand.press(page.locator("form[action$='handout.pdf'] button"));
        page.waitForCondition(() -> !printed.isEmpty());
        assertThat(printed.get(0).status()).isEqualTo(200);
        assertThat(printed.get(0).headerValue("content-type")).startsWith("application/pdf");
    }

    private static void shot(Page page, String name) {
        page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(SCREENSHOTS.resolve(name.toLowerCase(Locale.ROOT).replace(' ', '-') + "-" + page.viewportSize().width + ".png")));
    }
}
