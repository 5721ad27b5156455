package benchful.documents.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.hostile.HostileFiles;
import benchful.projects.pictures.Picture;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Drawings made to break whoever draws them, as if they had been stored before they were checked. */
@Timeout(60)
class DrawingsLeftOutTest {
    private static final int SHORT = 60;
    private static final int LONG = 500;
    private static final String PAGE = "<html lang=\"en\"><head><title>t</title><style>body { font-family: 'DejaVu Sans Condensed' } img { width: 60mm }</style></head><body><p>before</p>%s<p>behind</p></body></html>";

    @ParameterizedTest
    @MethodSource("hostile")
    void printsTheRestAndNamesWhatIsLeftOut(HostileFiles.File file) throws IOException {
        PictureBag bag = new PictureBag(Version.NORMAL);
        String name = bag.picture(new Picture("knot-close-up", "image/svg+xml", "a knot", file.content()));
        long start = System.nanoTime();
        String text = text(new PdfRenderer(), bag.all(), List.of(name));
        assertThat(Duration.ofNanos(System.nanoTime() - start)).as(file.name()).isLessThan(Duration.ofSeconds(20));
        assertThat(text).contains("before", "behind");
        assertThat(text.contains("“knot-close-up” is left out")).as(file.name()).isIn(file.refused(), true);
    }

    static Stream<HostileFiles.File> hostile() {
        int count = "long".equals(System.getProperty("benchful.lives")) ? LONG : SHORT;
        return Stream.concat(HostileFiles.drawings(), HostileFiles.anyDrawings(count));
    }

    @Test
    void givesUpADrawingThatTakesTooLongAndKeepsTheOthers() throws IOException {
        byte[] slow = svg("<g transform=\"rotate(3)\"><text font-size=\"9\">a</text><path d=\"M0 0 L3 3\" stroke=\"#000\"/></g>".repeat(120_000));
        String text = text(new PdfRenderer(Duration.ofSeconds(2)), Map.of("project-slow.svg", slow, "project-quick.svg", svg("<rect width=\"9\" height=\"9\"/>")),
                List.of("project-quick.svg", "project-slow.svg"));
        assertThat(text).contains("before", "behind", "“slow” is left out").doesNotContain("“quick”");
    }

    @Test
    void namesADrawingThatTakesAllTheStack() throws IOException {
        String itself = "<mask id=\"a\"><rect width=\"2\" height=\"2\" mask=\"url(#a)\"/></mask><rect width=\"9\" height=\"9\" mask=\"url(#a)\"/>";
        String text = text(new PdfRenderer(), Map.of("project-deep.svg", svg(itself)), List.of("project-deep.svg"));
        assertThat(text).contains("before", "behind", "“deep” is left out");
    }

    private static byte[] svg(String inside) {
        return ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 90 90\" width=\"90\" height=\"90\">" + inside + "</svg>").getBytes(StandardCharsets.UTF_8);
    }

    private static String text(PdfRenderer renderer, Map<String, byte[]> pictures, List<String> names) throws IOException {
        StringBuilder images = new StringBuilder();
        names.forEach(name -> images.append("<div><img src=\"picture:%s\" alt=\"a\"/></div>".formatted(name)));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        renderer.write(new Manuscript(PAGE.formatted(images), pictures), out);
        try (PdfReading pdf = PdfReading.of(out.toByteArray())) {
            return pdf.text().replaceAll("\\s+", " ");
        }
    }
}
