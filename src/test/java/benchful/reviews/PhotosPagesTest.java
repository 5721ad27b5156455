package benchful.reviews;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Photographs of the finished pieces, on a review and wherever its project is shown. */
@QuarkusTest
class PhotosPagesTest {
    private static final String WHERE = "taken at 51.5 N, 0.1 W";

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private Visitor tutor;
    private String craftClass;

    @BeforeEach
    void samples() {
        data.onlySamples();
        craftClass = "/classes/" + data.classTitled("Knotted strand, Saturday");
        tutor = new Visitor(address);
    }

    /** A JPEG in whose notes a camera wrote where it was. */
    private static byte[] noted(int width, int height) throws IOException {
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "jpeg", plain);
        byte[] note = WHERE.getBytes(StandardCharsets.ISO_8859_1);
        ByteArrayOutputStream noted = new ByteArrayOutputStream();
        noted.write(plain.toByteArray(), 0, 2);
        noted.write(new byte[] {(byte) 0xFF, (byte) 0xFE, 0, (byte) (note.length + 2)});
        noted.write(note);
        noted.write(plain.toByteArray(), 2, plain.size() - 2);
        return noted.toByteArray();
    }

    private void add(String caption, byte[] photo) {
        tutor.open(craftClass + "/review").pick("photo", "IMG_0001.JPG", "image/jpeg", photo).type("caption", caption).press("Add the photograph");
    }

    private List<String> captions(String page) {
        return tutor.open(page).page().select(".gallery figcaption").eachText();
    }

    private List<byte[]> photos(String page) {
        return tutor.open(page + "/photos").page().select(".gallery img").eachAttr("src").stream().map(src -> tutor.open(src).bytes()).toList();
    }

    private Visitor bring(byte[] file) {
        return tutor.open("/classes/imports").pick("file", "class.yaml", "application/yaml", file).press("Import");
    }

    @Test
    void carriesThemInTheFileOfTheClassAndBringsThemBackByteForByte() throws IOException {
        add("Six strands", noted(640, 480));
        add("", noted(30, 20));
        List<byte[]> photos = photos(craftClass);
        byte[] file = tutor.open(craftClass + "/file").bytes();
        assertThat(bring(file).status()).isEqualTo(200);
        String brought = tutor.path();
        assertThat(brought).isNotEqualTo(craftClass);
        assertThat(tutor.open(brought + "/photos").page().select(".gallery img").eachAttr("alt")).containsExactly("Six strands", "Finished pieces");
        assertThat(photos(brought)).hasSize(2).zipSatisfy(photos, (here, there) -> assertThat(here).isEqualTo(there));
        assertThat(new String(tutor.open(brought + "/file").bytes(), StandardCharsets.UTF_8)).isEqualTo(new String(file, StandardCharsets.UTF_8));
    }

    @Test
    void keepsNoMoreThanTheFileOfTheClassCanCarry() throws IOException {
        data.sql("insert into class_photo (class_id, caption, media_type, content) values (%s, '', 'image/png', decode(repeat('00', 9 * 1024 * 1024 - 1), 'hex'))"
                .formatted(craftClass.replace("/classes/", "")));
        add("One more", noted(640, 480));
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().text()).contains("The photographs of a class have at most 9 MB together");
    }

    @Test
    void saysWhichPhotographOfAFileIsNone() {
        String file = new String(tutor.open(craftClass + "/file").bytes(), StandardCharsets.UTF_8);
        assertThat(file).doesNotContain("photos:");
        String drawing = Base64.getEncoder().encodeToString("<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(StandardCharsets.UTF_8));
        bring((file + "\nphotos: [{media_type: image/png, content: %s}, {media_type: image/png, content: AAAA}]\n".formatted(drawing)).getBytes(StandardCharsets.UTF_8));
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".summary.faulty").text()).contains("This is a drawing. Pick a photograph", "This is no SVG, PNG or JPEG picture");
    }

    @Test
    void showsThemOnTheReviewAndWithTheirProjectFreedOfWhatTheCameraNoted() throws IOException {
        byte[] photo = noted(3200, 1600);
        assertThat(new String(photo, StandardCharsets.ISO_8859_1)).contains(WHERE);
        add("Six strands, two of them left-handed", photo);
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.path()).isEqualTo(craftClass + "/review");
        assertThat(tutor.page().select(".gallery img").eachAttr("alt")).containsExactly("Six strands, two of them left-handed");

        tutor.open(tutor.page().selectFirst(".gallery img").attr("src"));
        assertThat(tutor.answer().contentType()).isEqualTo("image/jpeg");
        assertThat(tutor.answer().header("X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(new String(tutor.bytes(), StandardCharsets.ISO_8859_1)).doesNotContain(WHERE);
        assertThat(ImageIO.read(new ByteArrayInputStream(tutor.bytes())).getWidth()).isEqualTo(1600);

        String project = tutor.open(craftClass).page().selectFirst("main a[href~=^/projects/\\d+$]").attr("href");
        assertThat(captions(project)).containsExactly("Sat 6 Mar 2027: Six strands, two of them left-handed");
        assertThat(captions(project + "/reviews")).isEqualTo(captions(project));
        assertThat(tutor.open("/privacy").type("name", "left-handed").press("Find").page().select("main a[href=%s/photos]".formatted(craftClass)).text()).contains("photograph of a class");
    }

    @Test
    void saysWhatIsNoPhotographAndKeepsItsCaption() throws IOException {
        add("Earrings", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"/>".getBytes(StandardCharsets.UTF_8));
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select("[role=alert]").text()).contains("This is a drawing. Pick a photograph, a PNG or JPEG file.");
        assertThat(tutor.field("caption")).isEqualTo("Earrings");
        tutor.press("Add the photograph");
        assertThat(tutor.page().select("[role=alert]").text()).contains("Pick a photograph first");
        add("Notes", "no picture".getBytes(StandardCharsets.UTF_8));
        assertThat(tutor.page().select("#photo-fault").text()).contains("This is no SVG, PNG or JPEG picture");
        add("x".repeat(201), noted(20, 20));
        assertThat(tutor.page().select("#photo-fault").text()).contains("in at most 200 letters");
        assertThat(captions(craftClass + "/review")).isEmpty();
    }

    @Test
    void keepsTwelveAndNoMore() throws IOException {
        byte[] photo = noted(20, 20);
        IntStream.rangeClosed(1, 13).forEach(i -> add("No " + i, photo));
        assertThat(tutor.page().select("[role=alert]").text()).contains("A class keeps at most 12 photographs");
        assertThat(captions(craftClass + "/review")).hasSize(12);
    }

    @Test
    void takesOneBackOutOfTheBin() throws IOException {
        add("First", noted(20, 20));
        add("Second", noted(30, 20));
        String second = tutor.open(craftClass + "/photos").page().select(".gallery img").get(1).attr("src");
        byte[] before = tutor.open(second).bytes();
        tutor.open(craftClass + "/photos").press(tutor.page().selectFirst("form[action=%s/removal] button".formatted(second)));
        assertThat(captions(craftClass + "/photos")).containsExactly("First");
        assertThat(tutor.open(second).status()).isEqualTo(404);
        tutor.open("/bin").press("Put back");
        assertThat(captions(craftClass + "/photos")).containsExactly("First", "Second");
        assertThat(tutor.open(second).bytes()).isEqualTo(before);
    }
}
