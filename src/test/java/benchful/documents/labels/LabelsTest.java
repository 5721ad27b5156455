package benchful.documents.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import benchful.core.needs.Take;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.documents.PrintOut;
import benchful.documents.PrintSamples;
import benchful.documents.paper.LabelKind;
import benchful.documents.paper.LabelSetting;
import benchful.documents.paper.LabelStock;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.OutlineReader;
import benchful.documents.pdf.PdfReading;
import benchful.plans.ClassPlan;
import benchful.plans.materials.kits.Kit;
import benchful.studio.Paper;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Labels read back from their PDF: where they are, what they say, what their codes open. */
class LabelsTest {
    private static final String ADDRESS = "http://192.168.1.20:8080/classes/7/documents";
    private static final double TOLERANCE = 0.2;

    static Stream<LabelStock> sheets() {
        return Stream.concat(LabelStock.COMMON.stream(), Stream.of(LabelStock.of(Paper.LETTER, 2, 3, 80, 60, 20, 30, 95, 70)));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void standsWithinAFifthOfAMillimetreOfItsPlace(LabelStock sheet) throws IOException {
        List<Kit> kits = kits(sheet.perPage());
        try (PdfReading pdf = labels(kits, LabelSetting.of(sheet))) {
            assertThat(pdf.pages()).isEqualTo(1);
            assertThat(pdf.document().getPage(0).getMediaBox().getWidth() * 25.4 / 72).isCloseTo(sheet.paper().width(), offset(0.1));
            double edge = new LabelFitter(sheet, true, 0).edge();
            List<PdfReading.Glyph> names = pdf.glyphs().stream().filter(glyph -> glyph.letters().equals("Ñ")).toList();
            assertThat(names).hasSize(sheet.perPage());
            for (int i = 0; i < names.size(); i++) {
                assertThat(names.get(i).x()).as("label %d", i + 1).isCloseTo(sheet.x(i) + edge, offset(TOLERANCE));
                assertThat(names.get(i).y() - names.get(0).y()).as("label %d", i + 1).isCloseTo(sheet.y(i) - sheet.y(0), offset(TOLERANCE));
            }
            assertThat(names.get(0).y()).isBetween(sheet.top() + edge, sheet.top() + edge + 5.5);
        }
    }

    @Test
    void drawsTheTestSheetsOutlinesWhereTheLabelsAre() throws IOException {
        LabelStock sheet = LabelStock.COMMON.get(0);
        try (PdfReading pdf = labels(kits(3), new LabelSetting(sheet, 1, 0.5, -1, LabelKind.TEST))) {
            assertThat(pdf.pages()).isEqualTo(1);
            List<PdfReading.Glyph> last = pdf.glyphs().stream().filter(glyph -> glyph.letters().equals("2")).toList();
            assertThat(pdf.text()).contains("A4, 3 x 7, 63.5 x 38.1 mm").contains(" 21");
            assertThat(last).isNotEmpty();
            List<Rectangle2D> outlines = OutlineReader.rectangles(pdf.document().getPage(0));
            for (int i = 0; i < sheet.perPage(); i++) {
                double x = sheet.x(i) + 0.5;
                double y = sheet.y(i) - 1;
                assertThat(outlines).as("outline %d", i + 1).anySatisfy(outline -> {
                    assertThat(outline.getX()).isCloseTo(x, offset(TOLERANCE));
                    assertThat(outline.getY()).isCloseTo(y, offset(TOLERANCE));
                });
            }
        }
    }

    @Test
    void beginsAtAnyPositionAndIsNudged() throws IOException {
        LabelStock sheet = LabelStock.COMMON.get(0);
        try (PdfReading pdf = labels(kits(21), new LabelSetting(sheet, 20, 1.5, -0.5, LabelKind.KITS))) {
            assertThat(pdf.pages()).isEqualTo(2);
            List<PdfReading.Glyph> names = pdf.glyphs().stream().filter(glyph -> glyph.letters().equals("Ñ")).toList();
            double edge = new LabelFitter(sheet, true, 0).edge();
            assertThat(names.get(0).x()).isCloseTo(sheet.x(19) + edge + 1.5, offset(TOLERANCE));
            assertThat(names.get(2).page()).isEqualTo(2);
            assertThat(names.get(2).x()).isCloseTo(sheet.x(0) + edge + 1.5, offset(TOLERANCE));
            assertThat(names.get(0).y() - names.get(2).y()).isCloseTo(sheet.y(19) - sheet.y(0), offset(TOLERANCE));
        }
    }

    @Test
    void keepsEveryLetterOfLongNamesAndTwentyContentsInsideItsLabel() throws IOException {
        LabelStock sheet = LabelStock.COMMON.get(4);
        List<Kit.Content> contents = new ArrayList<>();
        for (int i = 1; i <= 20; i++) {
            contents.add(content(i * 7, "hand-made lampwork bead with silver foil, series " + i));
        }
        List<Kit> kits = List.of(kit(1, "Ñ Wilhelmina Konstancja Brzęczyszczykiewicz-Papadopoulou 春日野", contents), kit(2, "Ñ", contents));
        try (PdfReading pdf = labels(kits, LabelSetting.of(sheet))) {
            assertThat(pdf.text()).contains("more: see packing list");
            double middle = (sheet.x(0) + sheet.width() + sheet.x(1)) / 2;
            assertThat(pdf.glyphs()).allSatisfy(glyph -> {
                int label = glyph.x() < middle ? 0 : 1;
                assertThat(glyph.x()).isGreaterThanOrEqualTo(sheet.x(label));
                assertThat(glyph.right()).isLessThanOrEqualTo(sheet.x(label) + sheet.width());
                assertThat(glyph.y()).isBetween(sheet.y(0), sheet.y(0) + sheet.height());
            });
        }
    }

    @Test
    void opensEachKitsOwnHandout() throws IOException {
        try (PdfReading pdf = labels(kits(4), LabelSetting.of(LabelStock.COMMON.get(1)))) {
            assertThat(pdf.codes(0)).containsExactlyInAnyOrder(ADDRESS + "/handout.pdf?kit=1", ADDRESS + "/handout.pdf?kit=2",
                    ADDRESS + "/handout.pdf?kit=3", ADDRESS + "/handout.pdf?kit=4");
        }
    }

    @Test
    void warnsOfWhatTheContentsCallForAndLeavesOutCodesWithoutAnAddress() throws IOException {
        PrintSource source = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
        PrintOptions options = new PrintOptions(Paper.A4, Version.NORMAL, false, LabelSetting.of(LabelStock.COMMON.get(1)), null);
        try (PdfReading pdf = PrintSamples.printed(PrintOut.LABELS, source, options)) {
            assertThat(pdf.text()).contains("Zofia Błażejewska").contains("Ελένη Καρρά").contains("Caution: small parts").contains("Spare 1");
            assertThat(pdf.codes(0)).isEmpty();
        }
    }

    @Test
    void showsTheSignsThatTheContentsCallFor() throws IOException {
        PrintSource strand = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
        List<Kit.Content> contents = List.of(poured("jewellery cement"), content(12, "amazonite round 6 mm"));
        LabelsContent sheet = new Labels(with(strand, List.of(kit(1, "Ñ", contents))), new PrintOptions(Paper.A4, Version.NORMAL, false,
                LabelSetting.of(LabelStock.COMMON.get(1)), ADDRESS)).bundle(0, new PictureBag(Version.NORMAL));
        LabelsContent.Label label = sheet.pages().get(0).labels().get(0);
        assertThat(label.signs()).extracting(LabelsContent.Sign::words).containsExactly("Keep out of the reach of children", "Flammable material", "No open flame");
        try (PdfReading pdf = labels(List.of(kit(1, "Ñ", contents)), LabelSetting.of(LabelStock.COMMON.get(1)))) {
            assertThat(pdf.text()).contains("Caution: small parts; solvent vapour and solvent-based glue");
            assertThat(pdf.codes(0)).containsExactly(ADDRESS + "/handout.pdf?kit=1");
        }
    }

    /** Beads that may hold nickel are no chemical; what is poured is. */
    @Test
    void showsAChemicalsPictogramOnlyWhereTheKitHoldsOne() {
        PrintSource strand = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
        LabelsContent sheet = new Labels(strand, new PrintOptions(Paper.A4, Version.NORMAL, false, LabelSetting.of(LabelStock.COMMON.get(1)), null))
                .bundle(0, new PictureBag(Version.NORMAL));
        assertThat(sheet.pages().get(0).labels().get(0).signs()).extracting(LabelsContent.Sign::picture).noneMatch(picture -> picture.contains("GHS") || picture.contains("-E"));
    }

    /** A packer ticks each thing off the label: of the samples, on the sheet that a tutor is likely to have, nothing is cut short. */
    @Test
    void listsEverythingThatAKitHoldsToBeTicked() throws IOException {
        for (List<String> files : PrintSamples.others()) {
            PrintSource source = PrintSamples.source(files);
            PrintOptions options = new PrintOptions(Paper.A4, Version.NORMAL, false, LabelSetting.of(LabelStock.COMMON.get(0)), ADDRESS);
            try (PdfReading pdf = PrintSamples.printed(PrintOut.LABELS, source, options)) {
                long things = source.needs().kits().stream().mapToLong(kit -> kit.contents().size()).sum();
                assertThat(pdf.text().chars().filter(c -> c == '☐').count()).as(files.get(0)).isEqualTo(things);
                assertThat(pdf.text()).doesNotContain("…").doesNotContain("see packing list");
            }
        }
    }

    @Test
    void saysOnAKitWhereItGoesAndWhatItIsFor() {
        PrintSource strand = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
        Labels labels = new Labels(strand, new PrintOptions(Paper.A4, Version.NORMAL, false, LabelSetting.of(LabelStock.COMMON.get(1)), null));
        Kit seated = kit(7, "Ñ", List.of(content(12, "bead")));
        Kit anywhere = new Kit(8, Take.Taker.SPARE, "Spare 1", null, null, "42 cm", List.of(), List.of(), null);

        assertThat(labels.label(seated)).isEqualTo(new KitLabel("Ñ", "Seat 7 · 42 cm", "Knotted strand of amazonite and pearls", List.of("12 bead"), "", List.of()));
        assertThat(labels.label(anywhere)).isEqualTo(new KitLabel("Spare 1", "42 cm", "Knotted strand of amazonite and pearls", List.of(), "", List.of()));
    }

    @Test
    void saysAtEachSeatWhoSitsThere() throws IOException {
        LabelStock sheet = LabelStock.COMMON.get(0);
        PrintSource strand = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
        LabelSetting seats = new LabelSetting(sheet, 1, 0, 0, LabelKind.SEATS);
        try (PdfReading pdf = PrintSamples.printed(PrintOut.LABELS, strand, new PrintOptions(Paper.A4, Version.NORMAL, false, seats, ADDRESS))) {
            assertThat(pdf.text()).contains("Seat 1 Zofia Błażejewska", "Seat 2 Ελένη Καρρά").doesNotContain("Spare", "Demonstration", "amazonite round");
            assertThat(pdf.codes(0)).hasSize(9).contains(ADDRESS + "/handout.pdf?kit=1");
            assertThat(pdf.document().getDocumentInformation().getTitle()).isEqualTo("Seat labels: Knotted strand, Saturday afternoon");
            assertThat(pdf.glyphs().stream().filter(glyph -> glyph.letters().equals("S")).mapToDouble(PdfReading.Glyph::size).max().orElseThrow()).isGreaterThan(20);
            double middle = (sheet.x(0) + sheet.width() + sheet.x(1)) / 2;
            assertThat(pdf.glyphs()).filteredOn(glyph -> glyph.x() < middle).allSatisfy(glyph -> assertThat(glyph.right()).isLessThanOrEqualTo(sheet.x(0) + sheet.width()));
        }
    }

    private static List<Kit> kits(int count) {
        List<Kit> kits = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            kits.add(kit(i, "Ñ " + i, List.of(content(12, "bead"), content(1, "clasp"))));
        }
        return kits;
    }

    private static Kit kit(int number, String name, List<Kit.Content> contents) {
        return new Kit(number, Take.Taker.STUDENT, name, name, String.valueOf(number), "42 cm", contents, List.of(), null);
    }

    private static Kit.Content content(int count, String material) {
        return new Kit.Content(material, Quantity.of(count, Unit.PIECE), null, null, null, null, null, null, null);
    }

    private static Kit.Content poured(String material) {
        return new Kit.Content(material, Quantity.of(5, Unit.ML), null, null, null, null, null, null, null);
    }

    private static PdfReading labels(List<Kit> kits, LabelSetting setting) throws IOException {
        PrintSource source = with(PrintSamples.source(PrintSamples.strand(), "knotted-strand"), kits);
        return PrintSamples.printed(PrintOut.LABELS, source, new PrintOptions(setting.sheet().paper(), Version.NORMAL, false, setting, ADDRESS));
    }

    private static PrintSource with(PrintSource strand, List<Kit> kits) {
        return new PrintSource(strand.file(), ClassPlan.of(strand.plan().timing(), strand.materials().withKits(kits), strand.plan().advice()), strand.pictures(), strand.hazards(), null);
    }
}
