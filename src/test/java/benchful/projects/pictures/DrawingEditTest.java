package benchful.projects.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.StringJoiner;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawings are drawn to see what became of them: 40 wide and 20 high, in quarters red, green, blue and black (from the left on top). */
class DrawingEditTest {
    private static final String QUARTERS = """
            <g><rect x="%1$s" y="%2$s" width="20" height="10" fill="red"/><rect x="%3$s" y="%2$s" width="20" height="10" fill="lime"/>
            <rect x="%1$s" y="%4$s" width="20" height="10" fill="blue"/><rect x="%3$s" y="%4$s" width="200" height="100" fill="black"/></g>""";

    private static byte[] drawing(String head, int x, int y) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" %s><title>Four</title>%s</svg>".formatted(head, QUARTERS.formatted(x, y, x + 20, y + 10)).getBytes(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 | 0  | 0  | 0  | 0  | 20x40 BRKL
            2 | 0  | 0  | 0  | 0  | 40x20 KBLR
            3 | 0  | 0  | 0  | 0  | 20x40 LKRB
            0 | 50 | 0  | 0  | 0  | 20x20 LLKK
            0 | 0  | 50 | 0  | 0  | 40x10 BKBK
            1 | 0  | 0  | 0  | 50 | 20x20 BRBR
            3 | 0  | 0  | 50 | 0  | 10x40 LLRR
            """)
    void areTurnedFirstAndThenCut(int quarters, double left, double top, double right, double bottom, String seen) {
        PictureEdit edit = new PictureEdit(quarters, left, top, right, bottom);
        for (String head : new String[] {"viewBox=\"-5 7 40 20\"", "viewBox=\"-5 7 40 20\" width=\"40\" height=\"20\"", "viewBox=\"-5 7 40 20\" width=\"40px\""}) {
            assertThat(seen(edit.on(drawing(head, -5, 7), "image/svg+xml"))).as(head).isEqualTo(seen);
        }
        assertThat(seen(edit.on(drawing("width=\"40\" height=\"20\"", 0, 0), "image/svg+xml"))).isEqualTo(seen);
    }

    @Test
    void areTurnedAgain() {
        byte[] drawing = drawing("viewBox=\"0 0 40 20\"", 0, 0);
        for (int i = 0; i < 4; i++) {
            drawing = new PictureEdit(1, 0, 0, 0, 0).on(drawing, "image/svg+xml");
        }
        assertThat(seen(drawing)).isEqualTo("40x20 RLBK");
    }

    @Test
    void keepTheirSizeOnPaper() {
        String turned = new String(new PictureEdit(1, 0, 50, 0, 0).on(drawing("viewBox=\"0 0 40 20\" width=\"8cm\" height=\"4cm\"", 0, 0), "image/svg+xml"), StandardCharsets.UTF_8);
        assertThat(turned).contains("width=\"151.1811\"", "height=\"151.1811\"", "<title>Four</title>");
    }

    @Test
    void areStillFitToBeStored() {
        byte[] turned = new PictureEdit(3, 1, 2, 3, 4).on("<s:svg xmlns:s=\"http://www.w3.org/2000/svg\"><s:path d=\"M0 0h5\"/></s:svg>".getBytes(StandardCharsets.UTF_8), "image/svg+xml");
        assertThat(PictureFile.of(turned)).isEqualTo(new PictureFile.Fit("image/svg+xml", turned));
        assertThat(new String(turned, StandardCharsets.UTF_8)).contains("viewBox=\"1.5 6 144 282\"", "<s:g transform=\"matrix(0 -1 1 0 0 300)\">");
    }

    @ParameterizedTest
    @ValueSource(strings = {"<svg", "", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 0.02 0.02\"/>"})
    void stayAsTheyAreWhereTheyCouldNotBeStoredAfterwards(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        assertThat(new PictureEdit(0, 80, 0, 0, 0).on(bytes, "image/svg+xml")).isEqualTo(bytes);
    }

    /** Its size, and the colours in the middle of each quarter. */
    private static String seen(byte[] drawing) {
        BufferedImage image = image(drawing);
        StringJoiner colours = new StringJoiner("");
        for (double y : new double[] {0.25, 0.75}) {
            for (double x : new double[] {0.25, 0.75}) {
                colours.add(switch (image.getRGB((int) (x * image.getWidth()), (int) (y * image.getHeight()))) {
                    case 0xFFFF0000 -> "R";
                    case 0xFF00FF00 -> "L";
                    case 0xFF0000FF -> "B";
                    case 0xFF000000 -> "K";
                    default -> "?";
                });
            }
        }
        return "%dx%d %s".formatted(image.getWidth(), image.getHeight(), colours);
    }

    private static BufferedImage image(byte[] drawing) {
        try {
            String text = new String(drawing, StandardCharsets.UTF_8);
            String[] box = text.replaceFirst("(?s).*?viewBox=\"([^\"]*)\".*", "$1").split(" ");
            PNGTranscoder transcoder = new PNGTranscoder();
            transcoder.addTranscodingHint(PNGTranscoder.KEY_WIDTH, Float.valueOf(box[2]));
            transcoder.addTranscodingHint(PNGTranscoder.KEY_HEIGHT, Float.valueOf(box[3]));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            transcoder.transcode(new TranscoderInput(new ByteArrayInputStream(drawing)), new TranscoderOutput(out));
            return ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (TranscoderException e) {
            throw new AssertionError(e);
        }
    }
}
