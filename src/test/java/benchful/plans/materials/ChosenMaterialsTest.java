package benchful.plans.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.ClassSetupBuilder;
import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.buying.Purchase;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import benchful.plans.materials.kits.Kit;
import benchful.projects.MaterialLine;
import benchful.projects.Measure;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What students choose and what stands in for it is packed, cut, counted and bought for itself. */
class ChosenMaterialsTest {
    private static final List<String> COLOURS = List.of("White", "Ochre", "Moss");
    private static final MaterialLine CORD = MaterialLine.of("White", "1 m").withPieces("2").withChoice("colour")
            .withAlternatives(List.of("Ochre", "Moss"));
    private static final MaterialLine RING = MaterialLine.of("Ring", "1");
    private static final MaterialLine GLUE = MaterialLine.of("Glue", "10 ml").withShared(true);

    @Test
    void countsEachChosenColourByItself() {
        MaterialsPlan plan = plan(setup(List.of(chooses("Ann", "Ochre"), chooses("Ben", "Ochre"), chooses("Cem", "Moss")), "White", List.of()));

        assertThat(plan.kits()).extracting(k -> k.contents().get(0).material())
                .containsExactly("Ochre", "Ochre", "Moss", "White", "White", "White", "White");
        assertThat(plan.materials()).extracting(MaterialsPlan.MaterialPlan::name, m -> m.need().total()).containsExactly(
                tuple("White", q("8 m")), tuple("Ochre", q("4 m")), tuple("Moss", q("2 m")), tuple("Ring", q("7")), tuple("Glue", q("10 ml")));
        assertThat(plan.materials().stream().limit(3)).allSatisfy(m -> assertThat(m.cutting().isProven()).isTrue());
        assertThat(plan.orders().get(0).purchases()).extracting(Purchase::material, Purchase::packs)
                .containsExactlyInAnyOrder(tuple("White", 2), tuple("Ochre", 1), tuple("Moss", 1), tuple("Ring", 7), tuple("Glue", 1));
        assertThat(plan.warnings()).isEmpty();
    }

    @Test
    void saysWhoHasNotChosenYet() {
        MaterialsPlan plan = plan(setup(List.of(chooses("Ann", "Ochre")), null, List.of()));

        assertThat(plan.warnings()).extracting(Sentence::toString)
                .containsExactly("4 of 5 have not chosen their colour of “White”; it is counted as “White”.");
        assertThat(plan.kits().get(0).contents().get(0).open()).isNull();
        assertThat(plan.kits().get(1).contents().get(0).open()).isEqualTo("colour");
    }

    @Test
    void takesWhatStandsInForTheStudentBeforeWhatStandsInForTheClass() {
        ClassSetup.Student ann = ClassSetup.Student.named("Ann").withChoices(Map.of("White", "Ochre"))
                .withInstead(List.of(new ClassSetup.Instead("Ring", "Wooden ring")));
        MaterialsPlan plan = plan(setup(List.of(ann), "White", List.of(new ClassSetup.Instead("Ring", "Brass ring"), new ClassSetup.Instead("Ochre", "Rust"),
                new ClassSetup.Instead("Glue", "Paste"))));

        assertThat(plan.faults()).isEmpty();
        assertThat(plan.kits().get(0).contents()).extracting(Kit.Content::material, Kit.Content::detail)
                .containsExactly(tuple("Rust", "instead of Ochre"), tuple("Wooden ring", "instead of Ring"));
        assertThat(plan.kits().get(1).contents()).extracting(Kit.Content::material, Kit.Content::detail)
                .containsExactly(tuple("White", null), tuple("Brass ring", "instead of Ring"));
        assertThat(plan.bench()).extracting(Kit.Content::material).containsExactly("Paste");
        assertThat(plan.materials()).extracting(MaterialsPlan.MaterialPlan::name, m -> m.need().total()).containsExactly(
                tuple("White", q("12 m")), tuple("Rust", q("2 m")), tuple("Wooden ring", q("1")), tuple("Brass ring", q("6")), tuple("Paste", q("10 ml")));
    }

    @Test
    void refusesWhatIsNotOfferedAndWhatIsCountedOtherwise() {
        ClassSetup.Student ann = ClassSetup.Student.named("Ann").withChoices(Map.of("White", "Pink", "Ring", "round"));
        MaterialsPlan plan = plan(setup(List.of(ann), "White", List.of(new ClassSetup.Instead("Ring", "Glue"), new ClassSetup.Instead("Clasp", "Ring"))));

        assertThat(plan.faults()).containsExactlyInAnyOrder(
                new Fault("/class/instead/1/of", "“Hanger” takes no “Clasp”. Choose one of its materials: White, Ochre, Moss, Ring, Glue."),
                new Fault("/class/students/0/choices/White", "“Pink” is not offered as colour of “White”. Choose one of: White, Ochre, Moss."),
                new Fault("/class/students/0/choices/Ring", "“Hanger” gives no choice of “Ring”. It gives one of: “White”."),
                new Fault("/class/instead", "“Glue” is counted by volume, but a count is asked of it here. It can't be taken for “Ring”."));
        assertThat(plan.kits()).allSatisfy(kit -> assertThat(kit.contents()).extracting(Kit.Content::material).containsExactly("White", "Ring"));
    }

    @Test
    void takesWhatNobodySellsForOneKindOfAmountOnly() {
        MaterialsPlan plan = plan(setup(List.of(), "White", List.of(new ClassSetup.Instead("White", "leftovers"), new ClassSetup.Instead("Ring", "leftovers"))));

        assertThat(plan.faults()).containsExactly(
                new Fault("/class/instead", "“leftovers” is counted by length, but a count is asked of it here. It can't be taken for “Ring”."));
        assertThat(plan.kits()).allSatisfy(kit -> assertThat(kit.contents()).extracting(Kit.Content::material).containsExactly("leftovers", "Ring"));
    }

    /** However the colours fall, the same length is cut in all, and each kit's colour is among what is brought. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void neitherLosesNorAddsAPieceByChoosing(long seed) {
        Random random = new Random(seed);
        List<ClassSetup.Student> students = IntStream.range(0, 5).mapToObj(i -> chooses("Student " + i, COLOURS.get(random.nextInt(3)))).toList();
        MaterialsPlan plan = plan(setup(students, COLOURS.get(random.nextInt(3)), List.of()));

        List<MaterialsPlan.MaterialPlan> cords = plan.materials().stream().filter(m -> m.cutting() != null).toList();
        assertThat(cords.stream().map(m -> m.need().net()).reduce(Quantity::plus)).contains(q("14 m"));
        cords.forEach(m -> assertThat(m.need().net()).isEqualTo(plan.kits().stream().flatMap(k -> k.contents().stream())
                .filter(c -> c.material().equals(m.name())).map(Kit.Content::amount).reduce(Quantity::plus).orElseThrow()));
    }

    private static final MaterialLine SILK = MaterialLine.of("Silk", "1.2 m").withPieces("1").withChoice("colour");

    @Test
    void cutsAndBuysEachVariantByItselfAndCountsInTurnWhatNobodyChose() {
        MaterialsPlan plan = plan(List.of(new Size("One", Map.of())), List.of(SILK), silk("ivory", "grey"),
                setup(List.of(colour("Ann", "ivory"), colour("Ben", "ivory")), null, List.of()));

        assertThat(plan.faults()).isEmpty();
        assertThat(plan.kits()).extracting(k -> k.contents().get(0).material())
                .containsExactly("Silk, ivory", "Silk, ivory", "Silk, ivory", "Silk, grey", "Silk, ivory", "Silk, ivory", "Silk, ivory");
        assertThat(plan.warnings()).extracting(Sentence::toString).containsExactly(
                "3 of 5 have not chosen their colour of “Silk”; its variants are counted in turn: Silk, ivory; Silk, grey. Say it for the class, or for each.");
        assertThat(plan.orders().get(0).purchases()).extracting(Purchase::material, Purchase::packs).containsExactlyInAnyOrder(tuple("Silk, ivory", 6), tuple("Silk, grey", 1));
        assertThat(plan.materials()).allSatisfy(m -> assertThat(m.cutting().isProven()).isTrue());
    }

    @Test
    void makesAVariantOfAWordThatSomebodyChose() {
        MaterialsPlan plan = plan(List.of(new Size("One", Map.of())), List.of(SILK), silk(), setup(List.of(colour("Ann", "teal")), null, List.of()));

        assertThat(plan.materials()).extracting(MaterialsPlan.MaterialPlan::name).containsExactly("Silk, teal");
        assertThat(plan.orders().get(0).purchases()).extracting(Purchase::material, Purchase::packs).containsExactly(tuple("Silk, teal", 7));
    }

    @Test
    void takesAnotherOrNoneBySize() {
        List<Size> sizes = List.of(new Size("Large", Map.of(), List.of(new Size.Taken("Frame", "Frame, large"))), new Size("Small", Map.of(), List.of(new Size.Taken("Frame", "Frame, small"))),
                new Size("Bare", Map.of(), List.of(new Size.Taken("Frame", null))));
        List<MaterialSpec> frames = List.of(sheet("Frame", Unit.PIECE, "1"), MaterialSpec.of("Frame, large", Unit.PIECE).withVariantOf("Frame"),
                MaterialSpec.of("Frame, small", Unit.PIECE).withVariantOf("Frame"), sheet("Ring", Unit.PIECE, "1"));
        ClassSetup setup = setup(List.of(), null, List.of()).withSizes(Map.of("Large", 1, "Small", 2, "Bare", 2)).withDemonstration("Bare").withSpares(0);
        MaterialsPlan plan = plan(sizes, List.of(MaterialLine.of("Frame", "1"), RING), frames, setup);

        assertThat(plan.faults()).isEmpty();
        assertThat(plan.warnings()).isEmpty();
        assertThat(plan.materials()).extracting(MaterialsPlan.MaterialPlan::name, m -> m.need().total())
                .containsExactly(tuple("Frame, large", q("1")), tuple("Frame, small", q("2")), tuple("Ring", q("6")));
        assertThat(plan.kits().get(4).contents()).extracting(Kit.Content::material).containsExactly("Ring");
    }

    /** A length of one colour gives no piece of another, so apart never takes fewer cards nor less money than all of one colour. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void neverTakesLessApartThanTogether(long seed) {
        Random random = new Random(seed);
        List<Size> sizes = List.of(new Size("One", Map.of("length", q(300 + random.nextInt(1000) + " mm"))));
        MaterialLine cut = SILK.withAmount("length").withPieces(String.valueOf(1 + random.nextInt(3)));
        List<ClassSetup.Student> students = IntStream.range(0, 5).mapToObj(i -> colour("Student " + i, List.of("ivory", "grey", "teal").get(random.nextInt(3)))).toList();
        MaterialsPlan apart = measured(sizes, cut, setup(students, null, List.of()));
        MaterialsPlan together = measured(sizes, cut, setup(students.stream().map(s -> s.withChoices(Map.of("Silk", "ivory"))).toList(), null, List.of()));

        assertThat(apart.faults()).isEmpty();
        assertThat(lengths(apart)).isGreaterThanOrEqualTo(lengths(together));
        assertThat(apart.total().getAmount()).isGreaterThanOrEqualTo(together.total().getAmount());
    }

    private static long lengths(MaterialsPlan plan) {
        return plan.materials().stream().mapToLong(m -> m.cutting().bought()).sum();
    }

    private static MaterialsPlan measured(List<Size> sizes, MaterialLine line, ClassSetup setup) {
        ProjectSpec project = ProjectSpecBuilder.builder().name("Strand").craft("stringing").level(SkillLevel.BEGINNER).sizes(sizes)
                .measures(List.of(new Measure("length", "Length", Unit.MM))).materials(List.of(line)).build();
        return MaterialsPlanner.plan(new ClassFile(project, setup, null, silk("grey", "ivory", "teal"), List.of(new SupplierSpec("Loft", "GBP", null, null, null, 3, false, null, null, null))));
    }

    private static MaterialsPlan plan(List<Size> sizes, List<MaterialLine> lines, List<MaterialSpec> materials, ClassSetup setup) {
        ProjectSpec project = ProjectSpecBuilder.builder().name("Strand").craft("stringing").level(SkillLevel.BEGINNER).sizes(sizes).materials(lines).build();
        return MaterialsPlanner.plan(new ClassFile(project, setup, null, materials, List.of(new SupplierSpec("Loft", "GBP", null, null, null, 3, false, null, null, null))));
    }

    /** On cards of 2 m. */
    private static List<MaterialSpec> silk(String... colours) {
        MaterialSpec silk = MaterialSpec.of("Silk", Unit.parse("cards of 2 m").orElseThrow()).withOffers(List.of(Offer.of("Loft", q("1 card"), new BigDecimal("1.35"))));
        return Stream.concat(Stream.of(silk), Arrays.stream(colours).map(c -> MaterialSpec.of("Silk, " + c, silk.unit()).withVariantOf("Silk"))).toList();
    }

    private static ClassSetup.Student colour(String name, String colour) {
        return ClassSetup.Student.named(name).withChoices(Map.of("Silk", colour));
    }

    private static MaterialsPlan plan(ClassSetup setup) {
        ProjectSpec project = ProjectSpecBuilder.builder().name("Hanger").craft("macrame").level(SkillLevel.BEGINNER)
                .sizes(List.of(new Size("One", Map.of()))).materials(List.of(CORD, RING, GLUE)).build();
        List<MaterialSpec> materials = List.of(sheet("White", Unit.M, "5 m"), sheet("Ochre", Unit.M, "5 m"), sheet("Moss", Unit.CM, "500 cm"),
                sheet("Rust", Unit.M, "5 m"), sheet("Ring", Unit.PIECE, "1"), sheet("Brass ring", Unit.PIECE, "1"), sheet("Wooden ring", Unit.PIECE, "1"),
                sheet("Glue", Unit.ML, "50 ml"), sheet("Paste", Unit.ML, "50 ml"));
        return MaterialsPlanner.plan(new ClassFile(project, setup, null, materials, List.of(new SupplierSpec("Loft", "GBP", null, null, null, 3, false, null, null, null))));
    }

    private static ClassSetup setup(List<ClassSetup.Student> students, String colour, List<ClassSetup.Instead> instead) {
        return ClassSetupBuilder.builder().title("Evening")
                .meetings(List.of(new ClassSetup.Meeting(LocalDate.of(2027, 3, 6), LocalTime.of(18, 0), LocalTime.of(21, 0))))
                .headcount(5).level(SkillLevel.BEGINNER).students(students).demonstration("One").spares(1).currency("GBP")
                .choices(colour == null ? Map.of() : Map.of("White", colour)).instead(instead).build();
    }

    private static ClassSetup.Student chooses(String name, String colour) {
        return ClassSetup.Student.named(name).withChoices(Map.of("White", colour));
    }

    private static MaterialSpec sheet(String name, Unit unit, String holds) {
        return MaterialSpec.of(name, unit).withOffers(List.of(Offer.of("Loft", q(holds), new BigDecimal("2.00"))));
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
