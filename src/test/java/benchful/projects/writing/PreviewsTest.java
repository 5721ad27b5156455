package benchful.projects.writing;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.projects.Project;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URL;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a project prints as, seen while it is written, by a person without JavaScript. */
@QuarkusTest
class PreviewsTest {
    @TestHTTPResource
    URL start;

    private Visitor tutor;

    @BeforeEach
    void writeALantern() {
        tutor = new Visitor(start).open("/projects/new").type("/name", "Test lantern").type("lines/sizes", "Small: height 15 cm\nTall: height 30 cm")
                .type("lines/materials", "candle 1\nwire 2 x height").type("lines/tools", "pliers")
                .type("lines/steps", "make: Bend the wire, 4-6-10 min, pliers\nmake: Light it");
    }

    @AfterEach
    void clear() {
        QuarkusTransaction.requiringNew().run(() -> {
            ProjectDraft.deleteAll();
            Project.delete("name like 'Test %'");
        });
    }

    @Test
    void showsKitAndHandoutOfWhatIsThereAndSaysWhatIsMissingForMore() throws IOException {
        tutor.press("Show the handout");
        String seen = tutor.page().select("[data-seen]").text();
        assertThat(seen).contains("Size Small.", "1 candle", "30 cm wire", "pliers", "Not shown, as it is not whole yet: Light it.", "Say which craft it is");
        String page = tutor.page().selectFirst("[data-seen] .page img").attr("src");
        assertThat(page).startsWith("data:image/png;base64,");
        assertThat(ImageIO.read(new ByteArrayInputStream(Base64.getDecoder().decode(page.substring(page.indexOf(',') + 1)))).getWidth()).as("A4 at 84 dots an inch").isBetween(690, 700);
        assertThat(tutor.field("/name")).as("the form is there as it was").isEqualTo("Test lantern");
    }

    @Test
    void showsAnotherSizeOnceItIsChosen() {
        tutor.press("Show the handout").type("preview-size", "Tall").press("Show the handout");
        assertThat(tutor.page().select("[data-seen]").text()).contains("Size Tall.", "60 cm wire");
    }

    @Test
    void saysWhatOfTheKitCannotBeWorkedOut() {
        tutor.type("lines/materials", "candle 1\npaper 2 sheets").press("Show the handout");
        assertThat(tutor.page().select("[data-seen]").text()).contains("1 candle", "In “2 sheets”: “sheets” is neither a measure of this project nor a unit.");
    }

    @Test
    void storesNothing() {
        tutor.press("Show the handout");
        assertThat(QuarkusTransaction.requiringNew().call(() -> Project.byName("Test lantern"))).isEmpty();
        assertThat(QuarkusTransaction.requiringNew().call(() -> ProjectDraft.latest())).isEmpty();
    }

    @Test
    void saysThatNothingCanBeShownWhereNoStepIsWhole() {
        tutor.type("lines/steps", "").press("Show the handout");
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().select("[data-seen]").text()).contains("Give the project at least one step.", "Nothing can be shown yet.");
    }
}
