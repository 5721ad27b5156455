package benchful.projects.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.hostile.HostileFiles;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(60)
class PictureFileTest {
    private static final String OPEN = "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 9 9\">";

    @ParameterizedTest
    @MethodSource("sampleDrawings")
    void keepsEverySampleDrawingAsItIs(Path drawing) throws IOException {
        byte[] bytes = Files.readAllBytes(drawing);
        assertFit(PictureFile.of(bytes), "image/svg+xml", bytes);
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<rect width=\"3\" height=\"3\" style=\"fill:url(#g)\"/><linearGradient id=\"g\"/>",
        "<use href=\"#a\"/><g id=\"a\"><title>A bead</title><text x=\"1\" y=\"2\">12 \u2013 &lt; &amp;</text></g>",
        "<style>.a{fill:#123}/* plain */</style><path stroke-dasharray=\"2 1\" d=\"M0 0 L9 9\"/>"
    })
    void keepsAPlainDrawingAsItIs(String inside) {
        byte[] bytes = svg(inside);
        assertFit(PictureFile.of(bytes), "image/svg+xml", bytes);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            <script>alert(1)</script>                                        | holds “script”
            <g><SCRIPT/></g>                                                 | holds “SCRIPT”
            <foreignObject><p/></foreignObject>                              | holds “foreignObject”
            <animate attributeName="href" to="javascript:alert(1)"/>         | holds “animate”
            <a href="#x"><rect/></a>                                         | holds “a”
            <rect onclick="alert(1)"/>                                       | acts on events (“onclick”)
            <rect ONLOAD="alert(1)"/>                                        | acts on events (“ONLOAD”)
            <use href="https://elsewhere.example/x.svg#a"/>                  | fetches “https://elsewhere.example/x.svg#a”
            <use xlink:href="file:///etc/passwd"/>                           | fetches “file:///etc/passwd”
            <image href="data:image/svg+xml;base64,AAAA"/>                   | fetches “data:image/svg+xml
            <image xlink:href=" javascript:alert(1)"/>                       | fetches “javascript:alert(1)”
            <rect fill="url(https://elsewhere.example/#a)"/>                 | “fill” refers to something outside it
            <rect style="fill:URL( 'https://elsewhere.example/')"/>          | “style” refers to something outside it
            <style>@import "https://elsewhere.example/a.css";</style>        | “style” refers to something outside it
            <style>.a{background:u\\72l(//elsewhere.example)}</style>        | “style” refers to something outside it
            <g xml:base="https://elsewhere.example/"/>                       | fetches “https://elsewhere.example/”
            """)
    void refusesADrawingThatActsOrFetches(String inside, String words) {
        assertUnfit(PictureFile.of(svg(inside)), words);
    }

    @ParameterizedTest
    @MethodSource("benchful.hostile.HostileFiles#drawings")
    void refusesADrawingThatAsksForTooMuchOrLeavesThatOut(HostileFiles.File file) {
        long start = System.nanoTime();
        PictureFile answer = PictureFile.of(file.content());
        assertThat(Duration.ofNanos(System.nanoTime() - start)).as(file.name()).isLessThan(Duration.ofSeconds(5));
        if (file.refused()) {
            assertUnfit(answer, "ave it as");
        } else {
            assertThat(answer).as(file.name()).isInstanceOf(PictureFile.Fit.class);
        }
    }

    @Test
    void leavesFiltersOutAndKeepsWhatTheyWereLaidOver() {
        byte[] blurred = svg("<filter id=\"b\"><feGaussianBlur stdDeviation=\"1e5\"/></filter><rect width=\"3\" height=\"2\" filter=\"url(#b)\"/>"
                + "<style>.a{fill:red;filter:url(#b)}</style><rect style=\"filter: url(#b); fill: blue\"/>");
        String kept = new String(((PictureFile.Fit) PictureFile.of(blurred)).content(), StandardCharsets.UTF_8);
        assertThat(kept).contains("width=\"3\"", "fill:red", "fill: blue").doesNotContain("filter", "feGaussianBlur", "url");
    }

    @Test
    void freesAPhotographInsideADrawing() throws IOException {
        byte[] noted = noted(photo(40, 20, "jpeg"), 6, true);
        String inside = "<image width=\"4\" height=\"4\" href=\"data:image/jpeg;base64,%s\"/>";
        PictureFile.Fit fit = (PictureFile.Fit) PictureFile.of(svg(inside.formatted(Base64.getEncoder().encodeToString(noted))));
        String left = new String(fit.content(), StandardCharsets.UTF_8);
        byte[] photo = Base64.getDecoder().decode(left.substring(left.indexOf("base64,") + 7, left.indexOf('"', left.indexOf("base64,"))));
        assertThat(new String(photo, StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
        assertFit(PictureFile.of(fit.content()), "image/svg+xml", fit.content());
        assertUnfit(PictureFile.of(svg("<image href=\"data:image/png;base64,iVBORw0KGgo=\"/>")), "embedded in this drawing is damaged");
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg"})
    void keepsNothingOfAPhotographButItsDots(String format) throws IOException {
        byte[] plain = photo(40, 20, format);
        byte[] trailing = Arrays.copyOf(plain, plain.length + 9);
        System.arraycopy(bytes("51.5N 0.1W"), 0, trailing, plain.length, 9);
        for (byte[] told : List.of(trailing, told(plain, format))) {
            PictureFile.Fit fit = (PictureFile.Fit) PictureFile.of(told);
            assertThat(new String(fit.content(), StandardCharsets.ISO_8859_1)).doesNotContain("51.5N");
            assertThat(new Color(read(fit).getRGB(20, 10)).getRed()).isGreaterThan(240);
            assertFit(PictureFile.of(fit.content()), "image/" + format, fit.content());
        }
    }

    /** The camera's green is not the screen's: its profile says which one it means. */
    @Test
    void bringsTheColoursOfAProfileToThoseOfScreens() throws IOException {
        BufferedImage grey = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
        grey.getGraphics().fillRect(0, 0, 0, 0);
        for (int i = 0; i < 64; i++) {
            grey.setRGB(i % 8, i / 8, 0x404040);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(grey, "png", out);
        ByteArrayOutputStream profile = new ByteArrayOutputStream();
        profile.writeBytes(new byte[] {'x', 0, 0});
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(profile)) {
            deflater.write(ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData());
        }
        PictureFile.Fit fit = (PictureFile.Fit) PictureFile.of(chunk(out.toByteArray(), "iCCP", profile.toByteArray()));
        assertThat(new Color(read(fit).getRGB(4, 4)).getRed()).isBetween(134, 140);
    }

    @Test
    void refusesABombAndTheColoursOfAPressInWords() throws IOException {
        byte[] huge = photo(8, 8, "png");
        ByteBuffer.wrap(huge).putInt(16, 60_000).putInt(20, 60_000);
        CRC32 sum = new CRC32();
        sum.update(huge, 12, 17);
        ByteBuffer.wrap(huge).putInt(29, (int) sum.getValue());
        assertUnfit(PictureFile.of(huge), "more than 100 million dots");
        byte[] press = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xC0, 0, 20, 8, 0, 8, 0, 8, 4, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0, 4, 0x11, 0, (byte) 0xFF, (byte) 0xD9};
        assertThat(PictureFile.of(press)).isInstanceOf(PictureFile.Unfit.class);
    }

    @Test
    void refusesEntitiesDocumentTypesAndStyleSheets() {
        String bomb = "<!DOCTYPE svg [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]>" + OPEN + "<text>&b;</text></svg>";
        assertUnfit(PictureFile.of(bytes(bomb)), "without a document type or entities");
        String theft = "<!DOCTYPE svg [<!ENTITY f SYSTEM \"file:///etc/hostname\">]>" + OPEN + "<text>&f;</text></svg>";
        assertUnfit(PictureFile.of(bytes(theft)), "without a document type or entities");
        assertUnfit(PictureFile.of(bytes("<?xml-stylesheet href=\"a.css\"?>" + OPEN + "</svg>")), "refers to a style sheet");
    }

    @Test
    void refusesWhatIsNoDrawing() {
        assertUnfit(PictureFile.of(bytes("<html><svg/></html>")), "is no SVG drawing");
        assertUnfit(PictureFile.of(bytes(OPEN)), "can't be read as SVG");
        assertUnfit(PictureFile.of(svg("<g>".repeat(5000) + "</g>".repeat(5000))), "can't be read as SVG");
        assertUnfit(PictureFile.of(svg(" ".repeat(1024 * 1024))), "more than 1 MB");
        assertUnfit(PictureFile.of(bytes("GIF89a")), "is no SVG, PNG or JPEG picture");
        assertUnfit(PictureFile.of(new byte[0]), "is no SVG, PNG or JPEG picture");
    }

    @Test
    void leavesOutWhatADrawingProgramNotesForItself() {
        byte[] noted = svg("<metadata>who</metadata><d:view xmlns:d=\"https://drawing.example/\" d:zoom=\"2\"/>"
                + "<rect xmlns:d=\"https://drawing.example/\" d:layer=\"1\" width=\"3\"/>");
        PictureFile.Fit fit = (PictureFile.Fit) PictureFile.of(noted);
        String left = new String(fit.content(), StandardCharsets.UTF_8);
        assertThat(left).contains("<rect").contains("width=\"3\"").doesNotContain("who", "zoom", "layer");
        assertFit(PictureFile.of(fit.content()), "image/svg+xml", fit.content());
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg"})
    void keepsAFittingPhotographAsItIs(String format) throws IOException {
        byte[] bytes = photo(1600, 900, format);
        assertFit(PictureFile.of(bytes), "image/" + format, bytes);
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg"})
    void shrinksALargePhotograph(String format) throws IOException {
        PictureFile.Fit fit = (PictureFile.Fit) PictureFile.of(photo(4000, 1000, format));
        BufferedImage small = read(fit);
        assertThat(new int[] {small.getWidth(), small.getHeight()}).containsExactly(1600, 400);
        assertThat(new Color(small.getRGB(10, 10)).getRed()).isGreaterThan(200);
        assertFit(PictureFile.of(fit.content()), "image/" + format, fit.content());
    }

    /** The stored picture, 40 by 20, has a red corner at its top left; the orientations of Exif put it where the camera saw it. */
    @ParameterizedTest
    @CsvSource({"1,40,20,left,top", "2,40,20,right,top", "3,40,20,right,bottom", "4,40,20,left,bottom",
        "5,20,40,left,top", "6,20,40,right,top", "7,20,40,right,bottom", "8,20,40,left,bottom"})
    void turnsAPhotographUprightAndForgetsTheCamerasNotes(int orientation, int width, int height, String side, String end) throws IOException {
        for (boolean little : new boolean[] {true, false}) {
            byte[] noted = noted(photo(40, 20, "jpeg"), orientation, little);
            PictureFile.Fit fit = (PictureFile.Fit) PictureFile.of(noted);
            BufferedImage upright = read(fit);
            assertThat(new int[] {upright.getWidth(), upright.getHeight()}).containsExactly(width, height);
            int x = side.equals("left") ? 3 : width - 4;
            int y = end.equals("top") ? 3 : height - 4;
            assertThat(new Color(upright.getRGB(x, y)).getGreen()).as("the red corner").isLessThan(90);
            assertThat(new Color(upright.getRGB(width - 1 - x, height - 1 - y)).getGreen()).as("the corner across").isGreaterThan(160);
            assertThat(new String(fit.content(), StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
        }
    }

    @Test
    void refusesAPictureThatOnlyClaimsToBeOne() throws IOException {
        byte[] whole = photo(300, 300, "png");
        assertUnfit(PictureFile.of(Arrays.copyOf(whole, 60)), "damaged or of a rare kind");
        assertUnfit(PictureFile.of(bytes("\u0089PNG\r\n\u001a\n<script>")), "is no SVG, PNG or JPEG picture");
        byte[] huge = whole.clone();
        huge[16] = 0x7F;
        huge[20] = 0x7F;
        assertThat(PictureFile.of(huge)).isInstanceOf(PictureFile.Unfit.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpeg"})
    void survivesAnyDamage(String format) throws IOException {
        byte[] whole = noted(photo(64, 48, format), 6, true);
        for (int seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            byte[] damaged = Arrays.copyOf(whole, random.nextInt(4, whole.length + 1));
            for (int i = 0; i < 6; i++) {
                damaged[random.nextInt(3, damaged.length)] = (byte) random.nextInt(256);
            }
            assertThat(PictureFile.of(damaged)).isInstanceOfAny(PictureFile.Fit.class, PictureFile.Unfit.class);
        }
    }

    static Stream<Path> sampleDrawings() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("sample-classes/pictures"))) {
            return files.filter(f -> f.toString().endsWith(".svg")).sorted().toList().stream();
        }
    }

    /** Yellow with a red corner at the top left. */
    private static byte[] photo(int width, int height, String format) throws IOException {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setColor(new Color(255, 220, 60));
        pen.fillRect(0, 0, width, height);
        pen.setColor(new Color(220, 0, 0));
        pen.fillRect(0, 0, 8, 8);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThat(ImageIO.write(picture, format, out)).isTrue();
        return out.toByteArray();
    }

    /** With a segment of camera notes after the start of a JPEG: one directory with the orientation alone. */
    private static byte[] noted(byte[] jpeg, int orientation, boolean little) {
        if ((jpeg[0] & 0xFF) != 0xFF) {
            return jpeg;
        }
        byte[] tiff = little
                ? new byte[] {'I', 'I', 42, 0, 8, 0, 0, 0, 1, 0, 0x12, 1, 3, 0, 1, 0, 0, 0, (byte) orientation, 0, 0, 0, 0, 0, 0, 0}
                : new byte[] {'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte) orientation, 0, 0, 0, 0, 0, 0};
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (2 + 6 + tiff.length), 'E', 'x', 'i', 'f', 0, 0});
        out.writeBytes(tiff);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    /** With a place in a chunk or segment that tells of the picture. */
    private static byte[] told(byte[] plain, String format) {
        byte[] place = bytes("GPS 51.5N");
        if (format.equals("png")) {
            return chunk(plain, "eXIf", place);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE5, 0, (byte) (2 + place.length)});
        out.writeBytes(place);
        out.write(plain, 2, plain.length - 2);
        return out.toByteArray();
    }

    /** The PNG with a chunk behind its head. */
    private static byte[] chunk(byte[] png, String type, byte[] content) {
        CRC32 sum = new CRC32();
        sum.update(bytes(type));
        sum.update(content);
        return ByteBuffer.allocate(png.length + 12 + content.length).put(png, 0, 33).putInt(content.length).put(bytes(type)).put(content)
                .putInt((int) sum.getValue()).put(png, 33, png.length - 33).array();
    }

    private static BufferedImage read(PictureFile.Fit fit) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(fit.content()));
    }

    private static void assertFit(PictureFile file, String mediaType, byte[] content) {
        assertThat(file).isInstanceOf(PictureFile.Fit.class);
        assertThat(((PictureFile.Fit) file).mediaType()).isEqualTo(mediaType);
        assertThat(((PictureFile.Fit) file).content()).isEqualTo(content);
    }

    private static void assertUnfit(PictureFile file, String words) {
        assertThat(file).isInstanceOf(PictureFile.Unfit.class);
        assertThat(((PictureFile.Unfit) file).sentence()).contains(words);
    }

    private static byte[] svg(String inside) {
        return bytes(OPEN + inside + "</svg>");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
