package benchful.documents.lists;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.core.quantity.Quantity;
import benchful.documents.PrintSamples;
import benchful.documents.checklist.ChecklistContent;
import benchful.documents.checklist.Checklists;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.Amounts;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.plans.materials.MaterialsPlan;
import benchful.studio.Paper;
import benchful.web.Formats;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The lists say the numbers of the plan, no others. */
class ListsTest {
    private static PrintSource source;
    private static final PrintOptions LETTER = new PrintOptions(Paper.LETTER, Version.NORMAL, false, null, null);
    private static final PrintOptions A4 = new PrintOptions(Paper.A4, Version.NORMAL, false, null, null);

    @BeforeAll
    static void strand() {
        source = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
    }

    @Test
    void packsEveryKitAndAddsUpToWhatIsBrought() {
        PackingContent sheet = PackingContent.of(source, A4);
        List<PackingContent.KitCard> cards = sheet.kits().stream().flatMap(row -> row.cards().stream()).toList();
        assertThat(cards).extracting(PackingContent.KitCard::title).hasSize(11).startsWith("Zofia Błażejewska").endsWith("Spare 1");
        assertThat(cards.get(2).about()).isEqualTo("seat 3, 42 cm");
        assertThat(cards.get(2).contents()).contains("39 amazonite round 6 mm", "1 × 124 cm bead silk 0.6 mm, ivory", "2 × 10 mm coiled wire guard");
        assertThat(sheet.materials()).filteredOn(material -> material.name().equals("hook clasp with eye")).singleElement()
                .satisfies(material -> assertThat(material.kits()).isEqualTo("11 kits with 1"));
        assertThat(sheet.bench()).contains("5 ml jewellery cement");
    }

    /** Nine students, three of whom can watch at once. */
    @Test
    void saysHowOftenSomethingIsShown() {
        ClassFile strand = PrintSamples.strand();
        ClassFile close = strand.with(strand.project().withSteps(strand.project().steps().stream().map(step -> step.id().equals("show_knot") ? step.withWatchers(3) : step).toList()));
        List<PlanTable.Row> rows = PlanContent.of(PrintSamples.source(close, "knotted-strand"), A4, new PictureBag(Version.NORMAL)).plan().days().stream().flatMap(day -> day.rows().stream()).toList();
        assertThat(rows).extracting(PlanTable.Row::title).filteredOn(title -> title.endsWith("times")).singleElement().isEqualTo(close.project().step("show_knot").orElseThrow().title() + ", 3 times");
    }

    @Test
    void buysWhatThePlanBuysAndTakesTheRestFromTheShelf() {
        ShoppingContent sheet = ShoppingContent.of(source, A4);
        MaterialsPlan plan = source.materials();
        assertThat(sheet.total()).isEqualTo(Formats.words(plan.total()));
        assertThat(sheet.orders()).hasSameSizeAs(plan.orders());
        plan.materials().forEach(material -> {
            long bought = sheet.orders().stream().flatMap(order -> order.lines().stream()).filter(line -> line.material().equals(material.name())).count();
            long shelved = sheet.shelf().stream().filter(words -> words.endsWith(" " + material.name()) || words.endsWith(" " + material.name() + ", to be cut")).count();
            boolean cutFromStock = material.cutting() != null && material.cutting().lengths().stream().anyMatch(length -> !length.bought());
            boolean counted = material.cutting() == null && material.bought().need().compareTo(material.bought().missing()) > 0;
            assertThat(bought).as("bought " + material.name()).isEqualTo(material.bought().bought().signum());
            assertThat(shelved).as("on the shelf " + material.name()).isEqualTo(cutFromStock || counted ? 1 : 0);
        });
        assertThat(sheet.shelf()).contains("74 of 436 amazonite round 6 mm");
        assertThat(sheet.orders()).filteredOn(order -> order.supplier().equals("Ninepin Bead Loft")).singleElement().satisfies(order -> {
            assertThat(order.by()).isEqualTo("Mon 1 Mar 2027");
            assertThat(order.lines()).extracting(ShoppingContent.Line::material).contains("freshwater pearl 8 mm");
            assertThat(order.lines()).extracting(ShoppingContent.Line::material).contains("bead silk 0.6 mm, sea green", "bead silk 0.6 mm, ivory", "bead silk 0.6 mm, grey")
                    .doesNotContain("bead silk 0.6 mm");
        });
    }

    /** What the cutting sheet cuts from the shelf is what the shopping list takes from it; nobody packs a part of a sheet. */
    @Test
    void takesSheetsAndLengthsWhole() {
        PrintSource cards = PrintSamples.source(PrintSamples.others().get(0));
        MaterialsPlan.MaterialPlan leather = cards.materials().materials().stream().filter(material -> material.sheets() != null).findFirst().orElseThrow();
        long onHand = leather.sheets().sheets().stream().filter(sheet -> !sheet.bought()).count();
        assertThat(onHand).isPositive();
        assertThat(ShoppingContent.of(cards, A4).shelf()).anyMatch(words -> words.endsWith(leather.name() + ", to be cut"));
        int all = leather.sheets().sheets().size();
        String brought = new Taken(Amounts.briefly(A4)).brought(leather);
        assertThat(brought).startsWith(all + " of ").doesNotContain(".");
        assertThat(PackingContent.of(cards, A4).materials()).filteredOn(material -> material.name().equals(leather.name())).singleElement()
                .satisfies(material -> assertThat(material.total()).isEqualTo(brought));
        assertThat(ReviewContent.of(cards, A4).materials()).contains(new ReviewContent.Brought(leather.name(), brought));
    }

    /** Packs of two sizes, what is left of them said once. */
    @Test
    void saysOnceWhatIsLeftOfAMaterial() {
        for (PrintSource each : List.of(source, PrintSamples.source(PrintSamples.others().get(5)))) {
            ShoppingContent.of(each, A4).orders().stream().flatMap(order -> order.lines().stream()).collect(Collectors.groupingBy(ShoppingContent.Line::material)).values()
                    .forEach(lines -> assertThat(lines.stream().map(ShoppingContent.Line::left).filter(left -> !left.isEmpty())).hasSize(1));
        }
    }

    @Test
    void cutsEveryPieceOfThePlanOnce() {
        CuttingContent sheet = CuttingContent.of(source, A4, new PictureBag(Version.NORMAL));
        assertThat(sheet.materials()).extracting(CuttingContent.Material::name).contains("bead silk 0.6 mm, sea green", "practice cord 1 mm");
        CuttingContent.Material silk = sheet.materials().get(0);
        assertThat(silk.name()).startsWith("bead silk 0.6 mm, ");
        assertThat(silk.proof()).startsWith("Proven least");
        assertThat(source.materials().warnings()).noneMatch(w -> w.toString().contains("silk"));
        int drawn = silk.patterns().stream().flatMap(pattern -> pattern.rows().stream()).mapToInt(row -> times(row.count()) * pieces(row.cuts())).sum();
        int planned = source.materials().materials().stream().filter(m -> m.name().equals(silk.name())).findFirst().orElseThrow()
                .cutting().lengths().stream().mapToInt(length -> length.cuts().size()).sum();
        assertThat(drawn).isEqualTo(planned);
    }

    @Test
    void checksWhatProjectAndVenueReallyNeed() {
        ChecklistContent sheet = Checklists.sheet(source, A4, new PictureBag(Version.NORMAL));
        assertThat(sheet.sections()).extracting(ChecklistContent.Section::title)
                .containsExactly("Days before", "Packing", "Setting out", "Safety briefing", "If it happens", "During the class", "Closing");
        assertThat(texts(sheet, "Days before")).anyMatch(text -> text.startsWith("By Mon 1 Mar 2027: order from Ninepin Bead Loft"))
                .anyMatch(text -> text.contains("Sort the pearls and cut the guard")).anyMatch(text -> text.contains("1 with left-handed texts"));
        assertThat(texts(sheet, "Packing")).anyMatch(text -> text.contains("6 × magnifier")).noneMatch(text -> text.contains("first aid kit"));
        assertThat(texts(sheet, "Setting out")).anyMatch(text -> text.contains("Windows open easily")).anyMatch(text -> text.contains("No naked flame"))
                .anyMatch(text -> text.contains("8 sockets"));
        assertThat(texts(sheet, "Setting out")).anyMatch(text -> text.contains("task lamp")).anyMatch(text -> text.contains("flexible needle"));
        assertThat(texts(sheet, "If it happens")).anyMatch(text -> text.startsWith(" Solvent vapour") || text.contains("Solvent vapour"));
        assertThat(texts(sheet, "During the class")).anyMatch(text -> text.contains("The cement dries; ready"));
    }

    /** 5 to 8 planned minutes bear one or two of speech, at 130 words a minute; what can't be said then stands on the handouts. */
    @Test
    void saysAloudInAMinuteForEachFiveThatArePlanned() {
        for (List<String> files : PrintSamples.others()) {
            ChecklistContent sheet = Checklists.sheet(PrintSamples.source(files), A4, new PictureBag(Version.NORMAL));
            ChecklistContent.Section briefing = sheet.sections().stream().filter(s -> s.title().equals("Safety briefing")).findFirst().orElseThrow();
            int minutes = Integer.parseInt(briefing.lead().replaceAll("\\D", ""));
            int words = briefing.items().stream().skip(2).mapToInt(item -> (item.at() + " " + item.text()).split(" ").length).sum();
            assertThat(words).as(files.get(0)).isBetween(1, 130 * minutes);
        }
    }

    @Test
    void bringsGearForEverybodyAndNoAdvice() {
        ChecklistContent sheet = Checklists.sheet(PrintSamples.source(PrintSamples.others().get(4)), A4, new PictureBag(Version.NORMAL));
        List<String> gear = texts(sheet, "Packing").stream().filter(text -> text.contains("Protective gear")).toList();
        assertThat(gear).singleElement().satisfies(words -> assertThat(words).containsPattern("for \\d+, you included").doesNotContain("no gloves"));
    }

    @Test
    void setsOutForEachMeetingWhatItNeeds() {
        ChecklistContent sheet = Checklists.sheet(PrintSamples.source(PrintSamples.others().get(3)), A4, new PictureBag(Version.NORMAL));
        assertThat(texts(sheet, "Setting out")).filteredOn(text -> text.contains("water bowl")).isNotEmpty().allMatch(text -> text.startsWith("Thu 25 Mar 2027:"));
        assertThat(texts(sheet, "Setting out")).filteredOn(text -> text.contains("silicone mat")).isNotEmpty().allMatch(text -> text.startsWith("Thu 18 Mar 2027:"));
    }

    @Test
    void drawsWhatIsCutAlikeOnceWhoeverGetsIt() {
        CuttingContent sheet = CuttingContent.of(source, A4, new PictureBag(Version.NORMAL));
        assertThat(sheet.materials()).allSatisfy(material -> assertThat(material.patterns().stream().flatMap(p -> p.rows().stream())
                .map(row -> row.length() + row.from() + row.cuts().replaceAll(" \\([^)]*\\)", "") + row.offcut())).doesNotHaveDuplicates());
    }

    @Test
    void missesWhatTheRoomLacks() {
        PrintSource bare = new PrintSource(PrintSamples.file("classes/knotted-strand-saturday.yaml", "projects/knotted-strand.yaml", "venues/village-hall.yaml"),
                source.plan(), source.pictures(), source.hazards(), null);
        ChecklistContent sheet = Checklists.sheet(bare, A4, new PictureBag(Version.NORMAL));
        assertThat(texts(sheet, "Packing")).anyMatch(text -> text.contains("knotting awl") && text.contains("The room has none"));
    }

    @Test
    void keepsNeedsOnTheRegisterOnly() {
        RegisterContent register = RegisterContent.of(source, A4);
        assertThat(register.lines()).hasSize(9);
        assertThat(register.lines().get(6)).isEqualTo(new RegisterContent.Line("7", "Harriet Dunmore", "Reads large print; seat near the window. Large print.",
                "Piers Dunmore (invented)", "01632 960417"));
        assertThat(Checklists.sheet(source, A4, new PictureBag(Version.NORMAL)).sections().toString()).doesNotContain("hearing aids").doesNotContain("Harriet");
    }

    @Test
    void asksTheReviewForEveryStepOfThePlan() {
        ReviewContent sheet = ReviewContent.of(source, A4);
        assertThat(sheet.days().stream().flatMap(day -> day.rows().stream()).toList()).hasSameSizeAs(source.lesson().blocks()).allSatisfy(row -> assertThat(row.clock()).isNotEmpty());
        assertThat(sheet.materials()).hasSameSizeAs(source.materials().materials());
    }

    @Test
    void measuresInInchesFirstOnUsLetter() {
        Amounts letter = Amounts.on(LETTER);
        assertThat(letter.words(Quantity.parse("124 cm"))).isEqualTo("48.82 in (124 cm)");
        assertThat(Amounts.briefly(LETTER).words(Quantity.parse("5 ml"))).isEqualTo("0.17 fl oz");
        assertThat(Amounts.on(A4).words(Quantity.parse("0.01 m"))).isEqualTo("10 mm");
        assertThat(Amounts.on(A4).words(Quantity.parse("12 in"))).isEqualTo("12 in");
    }

    private static List<String> texts(ChecklistContent sheet, String title) {
        return sheet.sections().stream().filter(section -> section.title().equals(title)).flatMap(section -> section.items().stream())
                .map(item -> "%s %s %s %s".formatted(item.at(), item.text(), item.note(), item.signs().all())).toList();
    }

    private static int times(String count) {
        return Integer.parseInt(count.replace(" ×", ""));
    }

    private static int pieces(String cuts) {
        return Arrays.stream(cuts.split(", ")).mapToInt(cut -> times(cut.substring(0, cut.indexOf(" ×")) + " ×")).sum();
    }
}
