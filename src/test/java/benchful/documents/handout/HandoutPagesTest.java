package benchful.documents.handout;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.DocumentService;
import benchful.documents.PrintSamples;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.PdfReading;
import benchful.plans.materials.kits.Kit;
import benchful.studio.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Handouts on paper, of every sample: how many sides, and that no caution stands after the step it warns of. */
class HandoutPagesTest {
    private static final int SIDES = 4;
    private static final DocumentService SERVICE = new DocumentService(PrintSamples.templates());

    static Stream<List<String>> samples() {
        return PrintSamples.all().stream();
    }

    /** In every size, for either hand; but in large print. */
    @ParameterizedTest
    @MethodSource("samples")
    void takesFewSides(List<String> files) throws IOException {
        PrintSource source = PrintSamples.source(files);
        for (Paper paper : Paper.values()) {
            for (Kit kit : oneOfEach(source)) {
                try (PdfReading pdf = printed(source, kit, Version.NORMAL, paper)) {
                    assertThat(pdf.pages()).as("sides of %s for %s, size %s", paper, kit.name(), kit.size()).isBetween(2, SIDES);
                    assertThat(plain(pdf.text(pdf.pages()))).as("room for notes is not all of a side").contains("Athome", "Mynotes");
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void warnsBeforeTheStepOnTheSamePage(List<String> files) throws IOException {
        PrintSource source = PrintSamples.source(files);
        for (Version version : List.of(Version.NORMAL, Version.LARGE)) {
            HandoutContent sheet = sheet(source, version);
            assertThat(sheet.steps()).anyMatch(step -> !step.cautions().isEmpty());
            try (PdfReading pdf = printed(source, source.needs().kits().get(0), version, Paper.A4)) {
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

    private static String plain(String words) {
        return words.replaceAll("[\\s\u00a0]+", "");
    }

    private static Collection<Kit> oneOfEach(PrintSource source) {
        Map<String, Kit> kits = new LinkedHashMap<>();
        for (Kit kit : source.needs().kits()) {
            Handouts.Reader reader = Readers.of(source, kit, Version.NORMAL);
            if (reader.version() == Version.NORMAL) {
                kits.putIfAbsent(kit.size() + reader.leftHanded(), kit);
            }
        }
        return kits.values();
    }

    private static HandoutContent sheet(PrintSource source, Version version) {
        Kit first = source.needs().kits().get(0);
        return new Handouts(source, options(version, Paper.A4)).sheet(Readers.of(source, first, version), new PictureBag(version));
    }

    private static PdfReading printed(PrintSource source, Kit kit, Version version, Paper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SERVICE.writeHandout(source, options(version, paper), kit.number(), out);
        return PdfReading.of(out.toByteArray());
    }

    private static PrintOptions options(Version version, Paper paper) {
        return new PrintOptions(paper, version, true, null, "http://192.168.1.20:8080/classes/7/documents");
    }
}
