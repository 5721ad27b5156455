package benchful.documents.handout;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.DocumentService;
import benchful.documents.PrintSamples;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.OutlineReader;
import benchful.documents.pdf.PdfReading;
import benchful.plans.materials.kits.Kit;
import benchful.studio.Paper;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handouts on paper, of every sample: how many sides, how full, and that nothing stands alone or after the step it warns of. */
class HandoutPagesTest {
    private static final int SIDES = 4;
    private static final List<String> STRAND = List.of("classes/knotted-strand-saturday.yaml", "projects/knotted-strand.yaml", "venues/boatshed-studio.yaml");

    static Stream<List<String>> samples() {
        return Stream.concat(Stream.of(STRAND), PrintSamples.others().stream());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void takesFewSidesEachAtLeastHalfFullAndLeavesNoHeadingAlone(List<String> files) throws IOException {
        PrintSource source = PrintSamples.source(files);
        HandoutContent sheet = sheet(source, Version.NORMAL);
        try (PdfReading pdf = printed(source, Version.NORMAL)) {
            assertThat(pdf.pages()).as("sides, with one for a guide of several rows").isLessThanOrEqualTo(SIDES + (isLong(sheet) ? 1 : 0));
            for (int page = 1; page < pdf.pages(); page++) {
                assertThat(fill(pdf, page)).as("how full page %d is", page).isGreaterThan(0.5);
                assertThat(lastLine(pdf, page)).as("the last line of page %d", page).isNotIn(headings(sheet));
            }
            assertThat(plain(pdf.text(pdf.pages()))).as("room for notes is not all of a side").contains("Athome", "Mynotes");
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void warnsBeforeTheStepOnTheSamePage(List<String> files) throws IOException {
        PrintSource source = PrintSamples.source(files);
        for (Version version : List.of(Version.NORMAL, Version.LARGE)) {
            HandoutContent sheet = sheet(source, version);
            assertThat(sheet.steps()).anyMatch(step -> !step.cautions().isEmpty());
            try (PdfReading pdf = printed(source, version)) {
                List<String> pages = new ArrayList<>();
                for (int page = 1; page <= pdf.pages(); page++) {
                    pages.add(plain(pdf.text(page)));
                }
                sheet.steps().stream().filter(step -> !step.cautions().isEmpty()).forEach(step -> assertThat(pages).as("%s, %s", step.title(), version).anyMatch(page -> warnsFirst(page, step)));
            }
        }
    }

    /** Its title, then each caution, whose box is never torn, then the first words of what to do. */
    private static boolean warnsFirst(String page, HandoutContent.Step step) {
        int at = page.indexOf(plain(step.number() + step.title()));
        for (HandoutContent.Caution caution : step.cautions()) {
            at = at < 0 ? at : page.indexOf(first(plain("⚠ " + caution.name())), at);
        }
        String text = plain(step.leave().isEmpty() ? Jsoup.parse(step.text().toString()).text() : step.leave());
        return at >= 0 && page.indexOf(first(text), at) > at;
    }

    /** What surely stands in one line. */
    private static String first(String words) {
        return words.substring(0, Math.min(8, words.length()));
    }

    private static boolean isLong(HandoutContent sheet) {
        return sheet.strands().stream().anyMatch(strand -> strand.rows().size() > 2);
    }

    private static List<String> headings(HandoutContent sheet) {
        return Stream.concat(Stream.of("At home", "Step by step", "My notes", sheet.needed().title()),
                sheet.steps().stream().filter(step -> !step.brief()).map(step -> step.number() + step.title() + step.time())).map(HandoutPagesTest::plain).toList();
    }

    /** Above the footer, which is the same height on every page. */
    private static String lastLine(PdfReading pdf, int page) throws IOException {
        List<PdfReading.Glyph> body = body(pdf, page);
        double last = body.stream().mapToDouble(PdfReading.Glyph::y).max().orElseThrow();
        StringBuilder line = new StringBuilder();
        body.stream().filter(glyph -> glyph.y() > last - 2).forEach(glyph -> line.append(glyph.letters()));
        return plain(line.toString());
    }

    private static List<PdfReading.Glyph> body(PdfReading pdf, int page) throws IOException {
        return pdf.glyphs().stream().filter(glyph -> glyph.page() == page && glyph.y() < 274 && !glyph.letters().isBlank()).toList();
    }

    /** From the upper margin to the lowest letter or line of a drawing, of what lies above the footer. */
    private static double fill(PdfReading pdf, int page) throws IOException {
        double letters = body(pdf, page).stream().mapToDouble(PdfReading.Glyph::y).max().orElse(0);
        double drawings = OutlineReader.rectangles(pdf.document().getPage(page - 1)).stream().mapToDouble(Rectangle2D::getMaxY).filter(y -> y < 274).max().orElse(0);
        return (Math.max(letters, drawings) - 12) / (274 - 12);
    }

    private static String plain(String words) {
        return words.replaceAll("[\\s\u00a0]+", "");
    }

    private static HandoutContent sheet(PrintSource source, Version version) {
        Kit first = source.needs().kits().get(0);
        return new Handouts(source, options(version)).sheet(Readers.of(source, first, version), new PictureBag(version));
    }

    private static PdfReading printed(PrintSource source, Version version) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new DocumentService(PrintSamples.templates()).writeHandout(source, options(version), source.needs().kits().get(0).number(), out);
        return PdfReading.of(out.toByteArray());
    }

    private static PrintOptions options(Version version) {
        return new PrintOptions(Paper.A4, version, true, null, null);
    }
}
