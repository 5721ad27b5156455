package benchful.projects.writing;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.projects.Project;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class ProjectDraftsPagesTest {
    @TestHTTPResource
    URL start;

    private Visitor tutor;

    @BeforeEach
    void meet() {
        tutor = new Visitor(start);
    }

    @AfterEach
    void clear() {
        QuarkusTransaction.requiringNew().run(() -> {
            ProjectDraft.deleteAll();
            Project.delete("name like 'Test %'");
        });
    }

    private void keepALantern() {
        tutor.open("/projects/new").type("/name", "Test lantern").type("lines/materials", "paper\ncandle 1").type("lines/steps", "make: Fold, 4-6-10 min").press("Keep as a draft");
    }

    @Test
    void keepsWhatIsThereAndSaysWhatItCanDoAndWhatIsMissing() {
        keepALantern();
        assertThat(tutor.path()).as(tutor.toString()).matches("/projects/drafts/\\d+");
        assertThat(tutor.page().select(".draft li").eachText()).satisfiesExactly(
                print -> assertThat(print).isEqualTo("Print a handout: ready, without paper. Print it"),
                kit -> assertThat(kit).startsWith("Count a kit: not yet. Give an amount"),
                plan -> assertThat(plan).startsWith("Plan a class: not yet.").contains("Say which craft it is"));
        String pdf = tutor.page().select(".draft a[href$=handout.pdf]").attr("href");
        byte[] printed = new Visitor(start).open(pdf).bytes();
        assertThat(new String(printed, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        assertThat(tutor.open("/projects").page().select(".panel").text()).contains("Not finished yet: Test lantern");
    }

    @Test
    void goesOnWithADraftUntilItIsSaved() {
        keepALantern();
        String draft = tutor.path();
        tutor.type("/craft", "paper").press("Keep as a draft");
        assertThat(tutor.path()).as("the same draft").isEqualTo(draft);
        tutor.type("lines/materials", "paper 2\ncandle 1").press("Save the project");
        assertThat(tutor.path()).as(tutor.toString()).matches("/projects/\\d+");
        assertThat(new Visitor(start).open(draft).status()).isEqualTo(404);
    }

    @Test
    void keepsWhatWasRemovedSoThatItCanBePutBackAnotherDay() {
        keepALantern();
        tutor.press(tutor.page().selectFirst("button[name=remove][value=/steps/0]")).press("Keep as a draft");
        Visitor another = new Visitor(start).open(tutor.path());
        assertThat(another.page().select(".removed").eachText()).containsExactly("Removed: Fold Undo");
        another.press(another.page().selectFirst(".removed button"));
        assertThat(another.page().selectFirst("[name=/steps/0/title]").attr("value")).isEqualTo("Fold");
        assertThat(another.press("Keep as a draft").page().select(".removed")).isEmpty();
    }

    @Test
    void keepsSignsThatCantBeStoredAsAMark() {
        tutor.open("/projects/new").type("/name", "Test lantern \u0000 " + "\uD83E\uDDF5".repeat(60)).type("/summary", "a\u0000b").press("Keep as a draft");
        assertThat(tutor.path()).as(tutor.toString()).matches("/projects/drafts/\\d+");
        assertThat(tutor.field("/summary")).isEqualTo("a\uFFFDb");
    }

    @Test
    void showsInABoxWhereASignWasThatCantBeShown() {
        tutor.open("/projects/new").type("lines/materials", "paper\u0000 2\ncandle 1").press("Add a picture");
        assertThat(new String(tutor.bytes(), StandardCharsets.UTF_8)).contains("paper\uFFFD 2\ncandle 1").doesNotContain("\0");
    }

    @Test
    void keepsChangesOfAStoredProjectBesideIt() {
        keepALantern();
        tutor.type("/craft", "paper").type("lines/materials", "candle 1").press("Save the project");
        String project = tutor.path();
        tutor.open(project + "/edit").type("/summary", "With a door.").press("Keep as a draft");
        assertThat(new Visitor(start).open(project).page().text()).doesNotContain("With a door.");
        assertThat(tutor.open(project + "/edit").page().select(".panel.warn").text()).contains("Changes to this project were left unfinished");
        tutor.open(tutor.page().select(".panel.warn a").attr("href"));
        assertThat(tutor.field("/summary")).isEqualTo("With a door.");
        tutor.press("Save the project");
        assertThat(tutor.path()).isEqualTo(project);
        assertThat(tutor.page().text()).contains("With a door.");
    }

    @Test
    void throwsADraftAwaySoThatItCanBePutBack() {
        keepALantern();
        String draft = tutor.path();
        tutor.press("Throw the draft away");
        assertThat(new Visitor(start).open(draft).status()).isEqualTo(404);
        tutor.press("Undo");
        assertThat(new Visitor(start).open(draft).status()).isEqualTo(200);
    }

    @Test
    void startsFromAPieceOfACraftAndFromACopy() {
        tutor.open("/projects/new?from=piece:leather");
        assertThat(tutor.field("/craft")).isEqualTo("leather");
        assertThat(tutor.field("lines/steps")).contains("make: Sew the seam, 20-30-50 min");
        tutor.type("/name", "Test pouch").press("Save the project");
        String stored = tutor.path();
        assertThat(stored).as(tutor.toString()).matches("/projects/\\d+");
        tutor.open("/projects/new?from=project:" + stored.replaceFirst("/projects/", ""));
        assertThat(tutor.field("/name")).isEqualTo("Test pouch (copy)");
        assertThat(tutor.open("/projects/new?from=nothing").field("/name")).isEmpty();
    }
}
