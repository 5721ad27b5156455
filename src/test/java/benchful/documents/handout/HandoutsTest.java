package benchful.documents.handout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import benchful.classes.ClassFile;
import benchful.core.sizing.Strand;
import benchful.documents.DocumentService;
import benchful.documents.PrintOut;
import benchful.documents.PrintSamples;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.Amounts;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.OutlineReader;
import benchful.documents.pdf.PdfReading;
import benchful.plans.materials.kits.Kit;
import benchful.plans.materials.sizes.PieceSizer;
import benchful.plans.materials.sizes.SizedPiece;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.projects.pictures.Picture;
import benchful.studio.Paper;
import benchful.studio.StudioSpec;
import benchful.web.Formats;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandoutsTest {
    private static PrintSource source;

    @BeforeAll
    static void strand() {
        source = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
    }

    /** Of two who make the small dish one glazes it green and one clear: their sheet is for both. */
    @Test
    void leavesOpenWhatThoseOfASizeChoseDifferently() {
        PrintSource dishes = PrintSamples.source(PrintSamples.others().get(6));
        HandoutContent forBoth = alone(dishes);
        assertThat(forBoth.needed().bench()).contains(new HandoutContent.KitLine(Formats.unparted("25 ml"), "brush-on glaze, lead-free", "your choice of colour"));
        Kit own = dishes.needs().kits().stream().filter(kit -> "Ottoline Karsk".equals(kit.name())).findFirst().orElseThrow();
        HandoutContent hers = new Handouts(dishes, new PrintOptions(Paper.A4, Version.NORMAL, false, null, null)).sheet(Readers.of(dishes, own, Version.NORMAL), new PictureBag(Version.NORMAL));
        assertThat(hers.needed().bench()).contains(new HandoutContent.KitLine(Formats.unparted("25 ml"), "brush-on glaze, lead-free, celadon", ""));
    }

    /**
     * The oval takes 18 x 25 x pi / 4 x 4 mm and 10 ml to spare, 11.41 ml of a mix of 100 g at 1.117 g/ml with 47 g at 1.05 g/ml:
     * 12.49 g, of which 8.50 g and 3.99 g, each rounded up to what the scale shows.
     */
    @Test
    void tellsHowMuchWaitsOnTheBenchForThisSize() {
        PrintSource resin = PrintSamples.source(PrintSamples.others().get(3));
        Kit oval = resin.materials().kits().stream().filter(kit -> kit.size().equals("Oval 18 x 25 mm")).findFirst().orElseThrow();
        HandoutContent sheet = new Handouts(resin, new PrintOptions(Paper.A4, Version.NORMAL, true, null, null)).sheet(Readers.of(resin, oval, Version.NORMAL), new PictureBag(Version.NORMAL));
        assertThat(sheet.needed().bench()).contains(line("8.5 g", "casting resin part a"), line("4.0 g", "casting resin part b"),
                line("6", "nitrile gloves"));
        assertThat(sheet.needed().kit()).noneMatch(line -> line.material().startsWith("casting resin"));
        assertThat(sheet.about()).isEqualTo("Resin pendants, two Thursday evenings, Thu 18 Mar 2027, 18:30 to 21:00; Thu 25 Mar 2027, 18:30 to 20:30");
    }

    @Test
    void numbersStepsAsThePlanDoesAndFillsWaits() {
        List<HandoutContent.Step> steps = sheet(kit(1)).steps();
        assertThat(steps).extracting(HandoutContent.Step::number).isSorted().startsWith(1, 2, 3);
        HandoutContent.Step hang = step(steps, "The silk hangs straight");
        assertThat(hang.leave()).isEqualTo("Leave it for 15 min.");
        assertThat(hang.meanwhile()).isEqualTo("Meanwhile do step %d.".formatted(step(steps, "Lay out your strand").number()));
    }

    @Test
    void namesWhatIsSharedAndLeavesOutWhatOnlyTheTutorUses() {
        PrintSource book = PrintSamples.source(PrintSamples.others().get(7));
        Needed needed = new Handouts(book, new PrintOptions(Paper.A4, Version.NORMAL, true, null, null))
                .sheet(Readers.of(book, book.materials().kits().get(0), Version.NORMAL), new PictureBag(Version.NORMAL)).needed();
        assertThat(needed.toShare()).containsExactly(Formats.unparted("PVA glue for bookbinding"));
        assertThat(needed.tools()).contains(Formats.unparted("bone folder"), "pencil").doesNotContain(Formats.unparted("board cutter"));
        assertThat(needed.kit()).extracting(HandoutContent.KitLine::amount).contains(Formats.unparted("8 of 148 × 210 mm"), Formats.unparted("30 × 60 mm"));
    }

    /** Its sheet says what dries at home last but one: nobody opens at the table what has a day to lie. */
    @Test
    void numbersWhatGoesOnAtHomeLast() {
        PrintSource book = PrintSamples.source(PrintSamples.others().get(7));
        List<HandoutContent.Step> steps = new Handouts(book, new PrintOptions(Paper.A4, Version.NORMAL, true, null, null))
                .sheet(Readers.of(book, book.materials().kits().get(0), Version.NORMAL), new PictureBag(Version.NORMAL)).steps();
        assertThat(steps.get(steps.size() - 1).title()).isEqualTo("The spine dries through at home");
    }

    /** Its class pours one by one, the first while the last lets it rest. */
    @Test
    void numbersAWaitBeforeWhatMustWaitForItAndFillsItWithOtherWork() {
        PrintSource resin = PrintSamples.source(PrintSamples.others().get(3));
        List<HandoutContent.Step> steps = new Handouts(resin, new PrintOptions(Paper.A4, Version.NORMAL, true, null, null))
                .sheet(Readers.of(resin, resin.materials().kits().get(0), Version.NORMAL), new PictureBag(Version.NORMAL)).steps();
        assertThat(step(steps, "Bubbles rise").number()).isLessThan(step(steps, "Pour, place, pour").number());
        assertThat(step(steps, "Bubbles rise").meanwhile()).isEmpty();
    }

    /** Against an improver a beginner takes half as long again: 10 min become 15. */
    @Test
    void givesTheReadersOwnMinutesNotTheClasss() {
        PrintSource resin = PrintSamples.alone(PrintSamples.others().get(3));
        assertThat(step(alone(resin).steps(), "Arrange the flowers dry").time()).isEqualTo("about 15 min");
        assertThat(step(alone(resin).steps(), "Shown: weigh, stir, scrape, stir").time()).isEqualTo("8 min");
        assertThat(step(alone(resin).steps(), "The resin cures").time()).as("a wait says how long it is by itself").isEmpty();
    }

    @Test
    void ofAProjectAloneListsAllThatIsNeededAndTheStepsInTheirOrder() {
        PrintSource resin = PrintSamples.alone(PrintSamples.others().get(3));
        HandoutContent sheet = alone(resin);
        assertThat(sheet.needed().title()).isEqualTo("You will need");
        assertThat(sheet.needed().kit()).extracting(HandoutContent.KitLine::material).contains(Formats.unparted("jump ring 6 mm")).doesNotContain("casting resin part a");
        assertThat(sheet.needed().bench()).contains(line("9.0 g", "casting resin part a"));
        assertThat(sheet.needed().sentence()).contains("; 9.0 g casting resin part a; ").contains("; 1 jump ring 6 mm").endsWith("bubble level.");
        assertThat(sheet.steps()).extracting(HandoutContent.Step::title).startsWith("Welcome, and what cures when")
                .doesNotContain("Warm the bottles, level the shelf").endsWith("Hang it on its cord", "Look and tidy up");
        assertThat(sheet.maker()).isEmpty();
        assertThat(sheet.about()).isEqualTo("resin casting");
    }

    @Test
    void ofAKitForSaleTellsWhatIsInItWhatIsNotAndWhoMadeIt() {
        StudioSpec studio = StudioSpec.NONE.withName("Boatshed").withAddress("1 Quay\nHarbour").withMail("hello@boatshed.example");
        PrintSource kits = PrintSamples.alone(PrintSamples.others().get(3)).of(studio, null).forSale("Batch 12");
        HandoutContent sheet = alone(kits);
        assertThat(sheet.needed().kit()).extracting(HandoutContent.KitLine::material).contains(Formats.unparted("jump ring 6 mm")).doesNotContain("casting resin part a");
        assertThat(sheet.needed().bench()).extracting(HandoutContent.KitLine::material).contains("casting resin part a", "nitrile gloves");
        assertThat(sheet.needed().sentence()).as("a buyer has what is in the kit").doesNotContain("jump ring 6 mm;");
        assertThat(sheet.maker()).containsExactly("Batch 12", "Boatshed", "1 Quay", "Harbour", "hello@boatshed.example");
    }

    private static HandoutContent alone(PrintSource source) {
        return new Handouts(source, new PrintOptions(Paper.A4, Version.NORMAL, false, null, null)).sheet(Readers.eachSize(source, Version.NORMAL).get(0), new PictureBag(Version.NORMAL));
    }

    @Test
    void tellsHowToMakeWhatWasDoneForTheStudents() {
        assertThat(sheet(kit(1)).prepared()).as("what is always prepared is the tutor's").isEmpty();
        ClassFile prepared = PrintSamples.strand();
        PrintSource ahead = PrintSamples.source(prepared.with(prepared.setup().withPreparedAhead(List.of("stretch"))), "knotted-strand");
        HandoutContent sheet = new Handouts(ahead, new PrintOptions(Paper.A4, Version.NORMAL, true, null, null)).sheet(Readers.of(ahead, kit(1), Version.NORMAL), new PictureBag(Version.NORMAL));
        assertThat(sheet.steps()).extracting(HandoutContent.Step::title).contains("Lay out your strand").doesNotContain("Stretch your silk and look it over", "The silk hangs straight");
        assertThat(sheet.prepared()).extracting(HandoutContent.Prepared::title).containsExactly("Stretch your silk and look it over", "The silk hangs straight");
        assertThat(sheet.prepared().get(0).text().toString()).contains("silk");
        assertThat(sheet.prepared().get(1).leave()).isEqualTo("Leave it for 15 min.");
    }

    /** A beginner usually takes half as long again as the improver of whom the minutes are. */
    @Test
    void tellsHowToDoAtHomeWhatTheClassLeavesToThem() {
        ClassFile strand = PrintSamples.strand();
        PrintSource home = PrintSamples.source(strand.with(strand.setup().withHomework(List.of("check"))), "knotted-strand");
        HandoutContent sheet = new Handouts(home, new PrintOptions(Paper.A4, Version.NORMAL, true, null, null)).sheet(Readers.of(home, kit(1), Version.NORMAL), new PictureBag(Version.NORMAL));
        HandoutContent.Step check = step(sheet.steps(), "Measure and look over");
        assertThat(check.number()).as("after tidying up").isEqualTo(sheet.steps().size());
        assertThat(check.time()).isEqualTo("2 to 6 min, at home");
        assertThat(check.text().toString()).isEqualTo(step(sheet(kit(1)).steps(), "Measure and look over").text().toString());
        assertThat(sheet.atHome()).contains("Step %d, Measure and look over: at home.".formatted(check.number()));
    }

    @Test
    void saysACautionInFullBeforeTheStepThatFirstMeetsItAndWhereThatWasAfterwards() {
        List<HandoutContent.Step> steps = sheet(kit(1)).steps();
        List<HandoutContent.Step> sharp = steps.stream().filter(step -> step.cautions().stream().anyMatch(c -> c.name().startsWith("Sharp tools"))).toList();
        assertThat(sharp).hasSize(1);
        assertThat(sharp.get(0).cautions()).allSatisfy(caution -> assertThat(caution.sentences()).isNotEmpty());
        assertThat(step(steps, "Knot the strand").again()).endsWith(": as at step %d.".formatted(sharp.get(0).number())).startsWith("Sharp tools");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Cut away from you and from the hand that holds. | true
            Keep from children under three. | true
            Ask students for known allergies before the class and offer another metal. | false
            Children sort beads in a tray with a rim, one adult within reach. | false
            Ask for allergies when students book. | false
            """)
    void leavesOutWhatIsSaidToTheTutor(String caution, boolean printed) {
        assertThat(ReaderCautions.isForTheReader(caution)).isEqualTo(printed);
    }

    @Test
    void takesALineForWhatIsOnlyWatchedAndGivesItsPictureToTheStepThatDoesIt() {
        List<HandoutContent.Step> steps = sheet(kit(1)).steps();
        assertThat(steps.stream().filter(HandoutContent.Step::brief)).isNotEmpty().allSatisfy(step -> {
            assertThat(step.pictures()).isEmpty();
            assertThat(step.time()).matches("(watch|all together), .+");
        });
        PrintSource resin = PrintSamples.source(PrintSamples.others().get(3));
        List<HandoutContent.Step> poured = new Handouts(resin, new PrintOptions(Paper.A4, Version.NORMAL, true, null, null))
                .sheet(Readers.of(resin, resin.materials().kits().get(0), Version.NORMAL), new PictureBag(Version.NORMAL)).steps();
        assertThat(step(poured, "Weigh both parts").pictures().get(0).name()).contains("mix");
        assertThat(step(poured, "Sand the back wet").pictures().get(0).name()).as("again, as it is needed again").contains("sand");
    }

    @Test
    void putsTwoPicturesOfAStepBesideItsWordsAndMoreBelowThem() {
        PrintSource resin = PrintSamples.source(PrintSamples.others().get(3));
        List<String> names = resin.pictures().keySet().stream().filter(name -> !name.equals("cover")).sorted().toList();
        assertThat(names).hasSizeGreaterThanOrEqualTo(4);
        HandoutContent.Step two = step(poured(resin, names.subList(0, 2)), "Weigh both parts");
        assertThat(two.beside()).extracting(HandoutContent.Figure::name).containsExactly("project-" + names.get(0) + ".svg", "project-" + names.get(1) + ".svg");
        assertThat(two.below()).isEmpty();
        HandoutContent.Step four = step(poured(resin, names.subList(0, 4)), "Weigh both parts");
        assertThat(four.beside()).isEmpty();
        assertThat(four.below()).extracting(List::size).containsExactly(2, 2);
    }

    private static List<HandoutContent.Step> poured(PrintSource resin, List<String> pictures) {
        ClassFile file = resin.file();
        List<Step> steps = file.project().steps().stream().map(step -> step.title().equals("Weigh both parts") ? step.withPictures(pictures) : step).toList();
        ClassFile changed = new ClassFile(file.project().withSteps(steps), file.setup(), file.venue(), file.materials(), file.suppliers());
        PrintSource source = new PrintSource(changed, resin.plan(), resin.pictures(), resin.hazards(), null);
        return new Handouts(source, new PrintOptions(Paper.A4, Version.NORMAL, true, null, null))
                .sheet(Readers.of(source, source.materials().kits().get(0), Version.NORMAL), new PictureBag(Version.NORMAL)).steps();
    }

    /** The oval's 8.5 g and 4.0 g, where they are weighed. */
    @Test
    void fillsInTheReadersOwnFiguresWhereTheTextLeavesThemBlank() {
        PrintSource resin = PrintSamples.source(PrintSamples.others().get(3));
        Kit oval = resin.materials().kits().stream().filter(kit -> kit.size().equals("Oval 18 x 25 mm")).findFirst().orElseThrow();
        HandoutContent sheet = new Handouts(resin, new PrintOptions(Paper.A4, Version.NORMAL, true, null, null)).sheet(Readers.of(resin, oval, Version.NORMAL), new PictureBag(Version.NORMAL));
        assertThat(step(sheet.steps(), "Weigh both parts").text().toString()).contains("<strong>8.5\u00a0g</strong> of part a").contains("<strong>4.0\u00a0g</strong> of part b");
    }

    @Test
    void fillsInMeasuresAnswersPiecesAndWhatASizeTakesNoneOfInTextsAndDrawings() {
        ClassFile file = PrintSamples.strand();
        ProjectSpec project = file.project();
        SizedPiece piece = PieceSizer.size(project, project.sizes().get(0));
        OwnFigures figures = new OwnFigures(project, piece, Amounts.on(new PrintOptions(Paper.A4, Version.NORMAL, true, null, null)));
        String size = project.measures().get(0).label();
        assertThat(figures.in("<%s>, <%s>".formatted(project.measures().get(0).name(), size)).replace('\u00a0', ' ')).isEqualTo("42 cm, 42 cm");
        assertThat(figures.in("<strand_knots> knots")).matches("\\d+ knots");
        assertThat(figures.in("cut <bead silk 0.6 mm>").replace('\u00a0', ' ')).isEqualTo("cut 124 cm");
        assertThat(figures.in("<coiled wire guard>").replace('\u00a0', ' ')).isEqualTo("2 × 10 mm");
        assertThat(figures.in("a < b, <3, <br/>, <b>, <https://a.example>")).isEqualTo("a < b, <3, <br/>, <b>, <https://a.example>");
        Picture drawing = new Picture("a", "image/svg+xml", "<strand_knots> knots", "<svg><text>&lt;coiled wire guard&gt; &lt;b</text></svg>".getBytes(StandardCharsets.UTF_8));
        assertThat(new String(figures.in(drawing).content(), StandardCharsets.UTF_8).replace('\u00a0', ' ')).isEqualTo("<svg><text>2 × 10 mm &lt;b</text></svg>");
        assertThat(figures.in(drawing).alt()).matches("\\d+ knots");
    }

    @Test
    void givesLeftHandedTextsToThoseWhoAskedForThem() {
        assertThat(step(sheet(kit(3)).steps(), "Knot the strand").text().toString()).contains("right thumb nail");
        assertThat(step(sheet(kit(1)).steps(), "Knot the strand").text().toString()).doesNotContain("right thumb nail");
    }

    @Test
    void countsTheKitOfTheStudentsOwnSize() {
        HandoutContent small = sheet(kit(4));
        assertThat(small.size()).isEqualTo("Size 40 cm");
        assertThat(small.needed().kit()).contains(line("36", "amazonite round 6 mm"), line("1 × 120 cm", "bead silk 0.6 mm, ivory"));
    }

    @Test
    void printsEachStudentsNameAndOwnPageNumbersAndLargePrintForThoseWhoAsked() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintOptions each = new PrintOptions(Paper.A4, Version.NORMAL, true, null, null);
        new DocumentService(PrintSamples.templates()).write(PrintOut.HANDOUT, source, each, out);
        try (PdfReading pdf = PdfReading.of(out.toByteArray())) {
            String text = pdf.text();
            assertThat(text).contains("for Zofia Błażejewska, seat 1").contains("for Ελένη Καρρά, seat 2").contains("for Harriet Dunmore, seat 7").doesNotContain("Spare 1");
            assertThat(pdf.document().getDocumentCatalog().getStructureTreeRoot().getKids()).isNotEmpty();
            List<PdfReading.Glyph> harriet = pdf.glyphs().stream().filter(glyph -> glyph.size() >= 17.9).toList();
            assertThat(harriet.stream().map(PdfReading.Glyph::page).distinct().count()).isGreaterThan(10);
        }
    }

    @Test
    void opensItselfByItsCode() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintOptions options = new PrintOptions(Paper.LETTER, Version.NORMAL, false, null, "https://craft.example/classes/7/documents");
        new DocumentService(PrintSamples.templates()).writeHandout(source, options, 2, out);
        try (PdfReading pdf = PdfReading.of(out.toByteArray())) {
            assertThat(pdf.codes(0)).containsExactly("https://craft.example/classes/7/documents/handout.pdf?kit=2");
        }
    }

    /** Beads stand where the strand's sizing places them, in real millimetres on the paper. */
    @Test
    void drawsTheStrandAtItsRealSize() throws IOException {
        Strand strand = source.materials().sizes().stream().filter(size -> size.name().equals("42 cm")).findFirst().orElseThrow().piece().strands().get("strand");
        PrintOptions options = new PrintOptions(Paper.A4, Version.NORMAL, false, null, null);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new DocumentService(PrintSamples.templates()).writeHandout(source, options, 1, out);
        try (PdfReading pdf = PdfReading.of(out.toByteArray())) {
            int page = 0;
            while (!pdf.text(page + 1).contains("At full size")) {
                page++;
            }
            List<Rectangle2D> shapes = OutlineReader.rectangles(pdf.document().getPage(page));
            List<Rectangle2D> row = firstRow(shapes.stream().filter(s -> Math.abs(s.getWidth() - s.getHeight()) < 0.1 && s.getWidth() > 5.5 && s.getWidth() < 8.2).toList());
            List<Double> drawn = row.stream().map(shape -> shape.getX() - row.get(0).getX()).distinct().sorted().toList();
            List<Double> placed = strand.beads().stream().map(bead -> bead.at().base().doubleValue()).filter(at -> at < 160).toList();
            assertThat(drawn.size()).isGreaterThanOrEqualTo(placed.size());
            for (int i = 0; i < placed.size(); i++) {
                assertThat(drawn.get(i)).as("bead %d", i + 1).isCloseTo(placed.get(i), offset(0.2));
            }
        }
    }

    /** The first beads at one height: the page's pictures have round shapes too, but no long row of them. */
    private static List<Rectangle2D> firstRow(List<Rectangle2D> round) {
        return round.stream().map(first -> round.stream().filter(s -> Math.abs(s.getCenterY() - first.getCenterY()) < 0.5).toList())
                .filter(row -> row.size() > 15).findFirst().orElseThrow();
    }

    /** A number is never parted from its unit. */
    private static HandoutContent.KitLine line(String amount, String material) {
        return new HandoutContent.KitLine(Formats.unparted(amount), Formats.unparted(material), "");
    }

    private static Kit kit(int number) {
        return source.materials().kits().get(number - 1);
    }

    private static HandoutContent sheet(Kit kit) {
        PrintOptions options = new PrintOptions(Paper.A4, Version.NORMAL, true, null, null);
        return new Handouts(source, options).sheet(Readers.of(source, kit, Version.NORMAL), new PictureBag(Version.NORMAL));
    }

    private static HandoutContent.Step step(List<HandoutContent.Step> steps, String title) {
        return steps.stream().filter(step -> step.title().equals(title)).findFirst().orElseThrow();
    }
}
