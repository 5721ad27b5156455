package benchful.documents;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.paper.LabelSetting;
import benchful.documents.paper.LabelStock;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.Manuscript;
import benchful.documents.pdf.PageLook;
import benchful.documents.pdf.PdfReading;
import benchful.documents.pdf.PdfRenderer;
import benchful.studio.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every print-out of every sample on both papers in all versions (low ink, which differs by its tints, on one of them), as somebody sees it who leafs through it: no page under half full save the
 * last, no heading and no row of a table alone at a page's foot or head, nothing cut. Labels have no footer and are as full as the sheet they are
 * stuck on ({@code LabelsTest} measures them).
 */
@Tag("long")
class PageFillTest {
    private static final Set<PrintOut> PAGED = EnumSet.complementOf(EnumSet.of(PrintOut.LABELS));
    private static final DocumentService SERVICE = new DocumentService(PrintSamples.templates());
    private static final PdfRenderer RENDERER = new PdfRenderer();
    /** What most printers leave white beside the text [mm]. */
    private static final double MARGIN = 8;

    static Stream<List<String>> samples() {
        return PrintSamples.all().stream();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void fillsItsPagesAndLeavesNothingAloneOrCut(List<String> files) throws IOException {
        PrintSource source = PrintSamples.source(files);
        List<String> faults = new ArrayList<>();
        for (PrintOut what : PAGED) {
            for (Paper paper : Paper.values()) {
                for (Version version : paper == Paper.A4 ? List.of(Version.values()) : List.of(Version.NORMAL, Version.LARGE)) {
                    look(source, what, paper, version).forEach(fault -> faults.add("%s, %s, %s: %s".formatted(what, paper, version, fault)));
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    private static List<String> look(PrintSource source, PrintOut what, Paper paper, Version version) throws IOException {
        List<String> faults = new ArrayList<>();
        PrintOptions options = new PrintOptions(paper, version, true, LabelSetting.of(LabelStock.COMMON.get(0)), "http://192.168.1.20:8080/classes/7/documents");
        for (DocumentService.Part part : SERVICE.parts(what, source, options).subList(0, 1)) {
            Manuscript manuscript = part.manuscript().get();
            Document page = Jsoup.parse(manuscript.xhtml());
            try (PdfReading pdf = typeset(manuscript)) {
                PageLook look = PageLook.of(pdf);
                List<String> headings = page.select("h1, h2, h3").stream().map(Element::text).map(PageLook::plain).toList();
                for (int n = 1; n < look.pages(); n++) {
                    double fill = look.fill(n);
                    if (fill < least(what, version)) {
                        faults.add("page %d of %d is %.0f %% full".formatted(n, look.pages(), fill * 100));
                    }
                    if (headings.contains(look.lastLine(n))) {
                        faults.add("page %d ends with a heading, %s".formatted(n, look.lastLine(n)));
                    }
                }
                if (version != Version.LARGE && what != PrintOut.HANDOUT) {
                    look.tornRows().forEach(row -> faults.add("a row torn on " + row));
                }
                look.loneRows().forEach(row -> faults.add("a row alone on " + row));
                look.outside(MARGIN).stream().limit(3).forEach(faults::add);
                lost(page, look.words()).forEach(word -> faults.add("cut: " + word));
            }
        }
        return faults;
    }

    /** In large print a step of a handout and its cautions take most of a page, and being on one page comes first. */
    private static double least(PrintOut what, Version version) {
        return what == PrintOut.HANDOUT && version == Version.LARGE ? 0.2 : 0.5;
    }

    /** Words of three letters or more that stand less often on the pages than in what was typeset. */
    private static List<String> lost(Document page, String printed) {
        page.select(".foot").remove();
        String letters = letters(printed);
        Map<String, Long> written = Arrays.stream(page.body().text().split("[\\s\u00a0]+")).map(PageFillTest::letters).filter(word -> word.length() > 2)
                .collect(Collectors.groupingBy(word -> word, Collectors.counting()));
        return written.entrySet().stream().filter(e -> times(e.getKey(), letters) < e.getValue()).map(Map.Entry::getKey).sorted().toList();
    }

    private static int times(String word, String letters) {
        int times = 0;
        for (int at = letters.indexOf(word); at >= 0; at = letters.indexOf(word, at + word.length())) {
            times++;
        }
        return times;
    }

    private static String letters(String words) {
        return PageLook.plain(words).replaceAll("[^\\p{L}\\p{N}]", "");
    }

    private static PdfReading typeset(Manuscript manuscript) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        RENDERER.write(manuscript, out);
        return PdfReading.of(out.toByteArray());
    }
}
