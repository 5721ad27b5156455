package benchful.projects.writing;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.projects.Project;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.projects.pictures.HeldPicture;
import benchful.projects.pictures.Picture;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import javax.imageio.ImageIO;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Pictures put in on the step itself, in order, turned and cut, kept with the draft, by a person without JavaScript. */
@QuarkusTest
class StepPicturesTest {
    private static final Instant LATER = Instant.parse("2100-01-01T00:00:00Z");
    private static final String SHOTS = "file:/steps/0/pictures";

    @TestHTTPResource
    URL start;

    private Visitor tutor;

    @BeforeEach
    void writeALantern() throws IOException {
        tutor = new Visitor(start).open("/projects/new").type("/name", "Test lantern").type("/craft", "paper")
                .type("lines/steps", "make: Fold the sides, 4-6-10 min").press("Read these lines");
    }

    @AfterEach
    void clear() {
        QuarkusTransaction.requiringNew().run(() -> {
            ProjectDraft.deleteAll();
            HeldPicture.deleteAll();
            Project.delete("name like 'Test %'");
        });
    }

    /** Its left half red, its right half blue. */
    private static byte[] photo(int width, int height) throws IOException {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < width; x++) {
            for (int y = 0; y < height; y++) {
                picture.setRGB(x, y, x < width / 2 ? 0xFF0000 : 0x0000FF);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", out);
        return out.toByteArray();
    }

    private static BufferedImage read(byte[] picture) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(picture));
    }

    private Visitor put(byte[] picture) {
        return tutor.pick(SHOTS, "IMG_0815.png", "image/png", picture).press(tutor.page().selectFirst("button[value=/steps/0/pictures]"));
    }

    private ProjectSpec stored() {
        assertThat(tutor.path()).as(tutor.toString()).matches("/projects/\\d+");
        return QuarkusTransaction.requiringNew().call(() -> Project.byName("Test lantern").orElseThrow().toFullSheet());
    }

    @Test
    void takesPicturesOnTheStepNamesThemAfterItAndKeepsTheirOrder() throws IOException {
        put(photo(40, 30));
        assertThat(tutor.page().select(".shots li img")).hasSize(1);
        assertThat(tutor.page().select(".shots li").text()).contains("fold-the-sides");
        put(photo(20, 30));
        tutor.press(tutor.page().selectFirst("button[name=up][value=/steps/0/pictures/1]"));
        byte[] first = new Visitor(start).open(tutor.page().selectFirst(".shots li img").attr("src")).bytes();
        assertThat(read(first).getWidth()).as("moved up").isEqualTo(20);
        tutor.press("Save the project");
        ProjectSpec lantern = stored();
        assertThat(lantern.steps()).extracting(Step::pictures).containsExactly(List.of("fold-the-sides-2", "fold-the-sides"));
        assertThat(lantern.pictures()).extracting(Picture::name).containsExactly("fold-the-sides", "fold-the-sides-2");
        assertThat(tutor.page().select("ol.steps .gallery img")).hasSize(2);
    }

    @Test
    void savesAtOnceWhatWasPickedWithTheForm() throws IOException {
        tutor.pick(SHOTS, "one.png", "image/png", photo(40, 30)).press("Save the project");
        assertThat(stored().steps().get(0).pictures()).containsExactly("fold-the-sides");
    }

    @Test
    void saysAtTheStepWhatIsNoPicture() {
        tutor.pick(SHOTS, "film.mp4", "video/mp4", new byte[] {1, 2, 3}).press("Save the project");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults()).anySatisfy(f -> assertThat(f).contains("“film.mp4”: This is no SVG, PNG or JPEG picture."));
    }

    @Test
    void turnsAndCutsAPictureAndKeepsItWholeUntilItIsSaved() throws IOException {
        put(photo(40, 20));
        tutor.type("/pictures/0/turned", "90").type("/pictures/0/cut/bottom", "50 %").press(tutor.page().selectFirst("button[name=read][value=/pictures/0]"));
        BufferedImage shown = read(new Visitor(start).open(tutor.page().selectFirst("fieldset.picture img").attr("src")).bytes());
        assertThat(List.of(shown.getWidth(), shown.getHeight())).containsExactly(20, 20);
        assertThat(shown.getRGB(10, 10)).as("the left half stands on top").isEqualTo(0xFFFF0000);
        tutor.type("/pictures/0/cut/bottom", "").press(tutor.page().selectFirst("button[name=read][value=/pictures/0]"));
        assertThat(read(new Visitor(start).open(tutor.page().selectFirst("fieldset.picture img").attr("src")).bytes()).getHeight()).as("whole again").isEqualTo(40);
        tutor.type("/pictures/0/cut/top", "60").type("/pictures/0/cut/bottom", "60").press("Save the project");
        assertThat(tutor.faults()).anySatisfy(f -> assertThat(f).contains("Top and bottom together can be 90 % at most."));
        tutor.type("/pictures/0/cut/bottom", "").type("/pictures/0/cut/top", "50").press("Save the project");
        BufferedImage kept = read(stored().pictures().get(0).content());
        assertThat(List.of(kept.getWidth(), kept.getHeight())).containsExactly(20, 20);
        assertThat(kept.getRGB(10, 10)).isEqualTo(0xFF0000FF);
        tutor.follow("Edit").type("/pictures/0/turned", "180").press("Save the project");
        assertThat(read(stored().pictures().get(0).content()).getWidth()).as("a stored picture too").isEqualTo(20);
    }

    @Test
    void turnsAndCutsADrawingWhichStaysOne() {
        byte[] drawing = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40 20\"><text>‹length›</text></svg>".getBytes(StandardCharsets.UTF_8);
        tutor.press("Add a picture").pick("file:/pictures/0", "plan.svg", "image/svg+xml", drawing).type("/pictures/0/name", "plan").type("/pictures/0/alt", "A plan")
                .press("Keep as a draft");
        tutor.type("/pictures/0/turned", "90").type("/pictures/0/cut/top", "50").press(tutor.page().selectFirst("button[name=read][value=/pictures/0]"));
        String shown = new String(new Visitor(start).open(tutor.page().selectFirst("fieldset.picture img").attr("src")).bytes(), StandardCharsets.UTF_8);
        assertThat(shown).contains("viewBox=\"0 20 20 20\"", "matrix(0 1 -1 0 20 0)");
        tutor.press("Save the project");
        assertThat(new String(stored().pictures().get(0).content(), StandardCharsets.UTF_8)).isEqualTo(shown);
        assertThat(stored().pictures().get(0).mediaType()).isEqualTo("image/svg+xml");
    }

    @Test
    void putsAStoredPictureAndARowBackThatWereRemoved() throws IOException {
        put(photo(40, 20)).press("Save the project");
        byte[] whole = stored().pictures().get(0).content();
        tutor.open(tutor.path() + "/edit").press(row("remove", "/pictures/0")).press(row("remove", "/steps/0/pictures/0")).press(row("remove", "/steps/0"));
        assertThat(tutor.page().select(".removed").eachText()).containsExactly("Removed: Fold the sides Undo", "Removed: fold-the-sides Undo");
        tutor.type("/name", "").press("Save the project");
        assertThat(tutor.status()).isEqualTo(422);
        tutor.type("/name", "Test lantern").press(undo("Fold the sides")).press(undo("fold-the-sides"));
        assertThat(tutor.page().select(".removed")).isEmpty();
        assertThat(tutor.page().selectFirst(".picture img").attr("src")).contains("/pictures/fold-the-sides");
        tutor.type("/steps/0/pictures/0", "fold-the-sides").press("Save the project");
        assertThat(stored().pictures().get(0).content()).isEqualTo(whole);
        assertThat(stored().steps().get(0).title()).isEqualTo("Fold the sides");
    }

    private Element row(String button, String place) {
        return tutor.page().selectFirst("button[name=%s][value=%s]".formatted(button, place));
    }

    private Element undo(String name) {
        return tutor.page().selectFirst("button[aria-label=Undo: put “%s” back]".formatted(name));
    }

    @Test
    void keepsPicturesWithTheDraftWithoutTheirBytes() throws IOException {
        put(photo(40, 30));
        tutor.type("/steps/0/student/quick", "").press("Keep as a draft");
        String draft = tutor.path();
        String form = QuarkusTransaction.requiringNew().call(() -> ProjectDraft.latest().get(0).form.toString());
        assertThat(form).contains("held:").hasSizeLessThan(3000);
        assertThat(tutor.open(draft).page().select(".shots li img")).hasSize(1);
        QuarkusTransaction.requiringNew().run(() -> HeldPicture.sweep(LATER));
        assertThat(new Visitor(start).open(tutor.page().selectFirst(".shots li img").attr("src")).status()).as("a draft asks for it").isEqualTo(200);
        tutor.type("/steps/0/student/quick", "4 min").press("Save the project");
        assertThat(stored().pictures()).hasSize(1);
        QuarkusTransaction.requiringNew().run(() -> HeldPicture.sweep(LATER));
        long held = QuarkusTransaction.requiringNew().call(() -> HeldPicture.count());
        assertThat(held).isZero();
    }

    @Test
    void readsTheSinglePictureOfFilesFromBefore() throws IOException {
        put(photo(40, 30)).press("Save the project");
        String yaml = new Visitor(start).open(tutor.path() + "/file").answer().body().replace("Test lantern", "Test lamp")
                .replaceAll("pictures:\\s*\\n\\s*- \"?fold-the-sides\"?(\\s)", "picture: fold-the-sides$1");
        assertThat(yaml).contains("picture: fold-the-sides");
        tutor.open("/projects/imports").pick("file", "lamp.yaml", "text/yaml", yaml.getBytes(StandardCharsets.UTF_8)).press("Import");
        assertThat(tutor.path()).as(tutor.toString()).matches("/projects/\\d+");
        assertThat(QuarkusTransaction.requiringNew().call(() -> Project.byName("Test lamp").orElseThrow().toSpec()).steps().get(0).pictures()).containsExactly("fold-the-sides");
    }
}
