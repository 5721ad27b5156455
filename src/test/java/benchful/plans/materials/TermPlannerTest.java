package benchful.plans.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.ClassSetupBuilder;
import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.buying.Purchase;
import benchful.core.needs.Need;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Several classes bought for together. */
class TermPlannerTest {
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 6);
    private static final List<SupplierSpec> SUPPLIERS = List.of(
            new SupplierSpec("Rope loft", "GBP", null, new BigDecimal("3.95"), new BigDecimal("50"), 3, false, new BigDecimal("20"), null, null),
            new SupplierSpec("Bead barn", "GBP", null, new BigDecimal("2.50"), null, 10, false, null, null, null));

    @Test
    void buysOnePackForTwoClassesAndSaysEachShare() {
        MaterialSpec bead = material("Bead", Unit.PIECE, null, offer("Bead barn", "25", "3.00"));
        TermPlan plan = plan(null, List.of(bead), part("Saturday", MARCH, 2, pieces("Bead", "6")), part("Sunday", MARCH.plusDays(1), 2, pieces("Bead", "5")));

        TermPlan.TermMaterial beads = plan.materials().get(0);
        assertThat(beads.shares()).containsExactly(new TermPlan.Share("Saturday", Quantity.parse("12"), MARCH.minusDays(1)),
                new TermPlan.Share("Sunday", Quantity.parse("10"), MARCH));
        assertThat(beads.need().total()).isEqualTo(Quantity.parse("22"));
        assertThat(beads.need().reasons()).extracting(Sentence::toString).containsExactly("Saturday takes 12 pcs.", "Sunday takes 10 pcs.");
        assertThat(beads.bought().leftover()).isEqualTo(Quantity.parse("3"));
        assertThat(plan.total()).isEqualTo(Money.parse("GBP 5.50"));
        assertThat(plan.faults()).isEmpty();
    }

    @Test
    void cutsThePiecesOfAllClassesFromTheSameLengths() {
        // 3 of 3 m and 3 of 2 m: three lengths of 5 m together, but 3 and 2 apart
        MaterialSpec cord = material("Cord", Unit.M, null, offer("Rope loft", "5 m", "2.00"));
        TermPlan plan = plan(null, List.of(cord), part("Saturday", MARCH, 3, cut("Cord", "3 m")), part("Sunday", MARCH.plusDays(1), 3, cut("Cord", "2 m")));

        assertThat(plan.materials().get(0).cutting().bought()).isEqualTo(3);
        assertThat(plan.materials().get(0).cutting().lengths()).allSatisfy(l ->
                assertThat(l.cuts()).extracting(c -> c.label()).containsExactly("Saturday: one size", "Sunday: one size"));
        assertThat(plan.orders().get(0).purchases()).extracting(Purchase::packs).containsExactly(3);
    }

    @Test
    void countsWhatOneClassDoesNotCutAsAPieceWhereAnotherCuts() {
        MaterialSpec cord = material("Cord", Unit.M, null, offer("Rope loft", "5 m", "2.00"));
        TermPlan plan = plan(null, List.of(cord), part("Saturday", MARCH, 1, cut("Cord", "3 m")), part("Sunday", MARCH, 2, pieces("Cord", "4 m")));

        assertThat(plan.materials().get(0).cutting().bought()).isEqualTo(3);
    }

    /** Cord can't be replaced by felt; that somebody tried makes no pieces of what others take as a mere area. */
    @Test
    void takesAMereAreaAsSuchThoughItWasChosenInPlaceOfWhatIsCutToLength() {
        MaterialSpec felt = material("Felt", Unit.CM2, null, offer("Rope loft", "1200 cm2", "2.00").withSheet(new Extent(Quantity.parse("40 cm"), Quantity.parse("30 cm"))));
        TermRequest.Part refused = part("Friday", MARCH, 1, cut("Cord", "3 m"), MaterialLine.of("Felt", "20 cm").withWidth("30 cm").withPieces("1"));
        TermRequest.Part wrongly = new TermRequest.Part("Friday", refused.file().with(refused.file().setup().withInstead(List.of(new ClassSetup.Instead("Cord", "Felt")))));

        TermPlan plan = plan(null, List.of(material("Cord", Unit.M, null), felt), wrongly, part("Sunday", MARCH, 1, pieces("Felt", "500 cm2")));

        assertThat(plan.faults()).singleElement().satisfies(f -> assertThat(f.detail()).contains("It can't be taken for “Cord”."));
        assertThat(plan.materials()).filteredOn(m -> m.name().equals("Felt")).singleElement().satisfies(m -> {
            assertThat(m.sheets().sheets()).singleElement().satisfies(s -> assertThat(s.cuts()).hasSize(1));
            assertThat(m.bought().bought()).isEqualTo(Quantity.parse("2400 cm2"));
        });
    }

    @Test
    void orderArrivesForTheFirstClassThatNeedsItAndSaysWhatCannot() {
        MaterialSpec bead = material("Bead", Unit.PIECE, null, offer("Bead barn", "25", "3.00"));
        MaterialSpec cord = material("Cord", Unit.M, null, offer("Rope loft", "5 m", "2.00"));
        TermPlan plan = plan(MARCH.minusDays(5), List.of(bead, cord), part("Saturday", MARCH, 1, pieces("Bead", "6")),
                part("Sunday", MARCH.plusDays(8), 1, pieces("Bead", "6"), pieces("Cord", "1 m")));

        assertThat(plan.materials()).extracting(TermPlan.TermMaterial::name, TermPlan.TermMaterial::arriveBy)
                .containsExactly(tuple("Bead", MARCH.minusDays(1)), tuple("Cord", MARCH.plusDays(7)));
        assertThat(plan.orderBy()).isEqualTo(MARCH.minusDays(11));
        assertThat(plan.late()).containsExactly(new TermPlan.Late("Bead", "Bead barn", MARCH.minusDays(1), MARCH.plusDays(5)));
    }

    @Test
    void buysNothingForWhatLiesOnTheShelf() {
        MaterialSpec bead = material("Bead", Unit.PIECE, "22", offer("Bead barn", "25", "3.00"));
        assertThat(plan(null, List.of(bead), part("Saturday", MARCH, 2, pieces("Bead", "6")), part("Sunday", MARCH, 2, pieces("Bead", "5"))).orders()).isEmpty();
    }

    @Test
    void namesTheClassWhoseAmountsCannotBeAdded() {
        TermPlan plan = plan(null, List.of(), part("Saturday", MARCH, 1, pieces("Dye", "6 g")), part("Sunday", MARCH, 1, pieces("Dye", "2 ml")));
        assertThat(plan.faults()).singleElement().satisfies(f -> assertThat(f.detail()).startsWith("“Dye”: "));
    }

    /** A card goes from one class to the next; where one class uses cards up, they are there beside the one that is lent. */
    @Test
    void countsWhatIsLentOnceForAllClasses() {
        TermPlan lent = plan(null, List.of(), part("Saturday", MARCH, 2, pieces("Card", "1").withLent(true)), part("Sunday", MARCH, 3, pieces("Card", "1").withLent(true)));
        assertThat(lent.materials()).singleElement().satisfies(m -> assertThat(m.need()).extracting(Need::lent, Need::total).containsExactly(true, Quantity.parse("3")));
        TermPlan both = plan(null, List.of(), part("Saturday", MARCH, 2, pieces("Card", "1").withLent(true)), part("Sunday", MARCH, 3, pieces("Card", "1")));
        assertThat(both.materials()).singleElement().satisfies(m -> assertThat(m.need()).extracting(Need::lent, Need::total).containsExactly(false, Quantity.parse("5")));
    }

    @Test
    void namesTheClassThatSomethingIsWrongWithAndLeavesOutWhatItTakesNothingOf() {
        Need none = new Need("Dye", Quantity.parse("0 g"), Quantity.parse("0 g"), Quantity.parse("0 g"), List.of(), List.of());
        Requirements required = new Requirements(List.of(), List.of(), List.of(), Map.of("Dye", none), List.of(new Fault("/project", "It lacks a name.")), List.of(Sentence.of("Nobody came.")));
        TermPlan plan = TermPlanner.plan(new TermRequest(List.of(part("Saturday", MARCH, 1)), new CatalogueSpec(List.of(), SUPPLIERS)), null, (file, cut) -> required);

        assertThat(plan.materials()).isEmpty();
        assertThat(plan.faults()).containsExactly(new Fault("/project", "Saturday: It lacks a name."));
        assertThat(plan.warnings()).extracting(Sentence::toString).containsExactly("Saturday: Nobody came.");
    }

    @Test
    void reckonsInTheCurrencyOfTheFirstClass() {
        TermRequest.Part pounds = part("Saturday", MARCH, 1, pieces("Bead", "6"));
        TermPlan mixed = plan(null, List.of(), paid(pounds, "EUR"), pounds, paid(pounds, "EUR"));
        assertThat(mixed.total().getCurrencyUnit()).isEqualTo(CurrencyUnit.EUR);
        assertThat(mixed.warnings()).extracting(Sentence::toString).startsWith("The classes are set in EUR, GBP; all is reckoned in EUR.");
        TermPlan one = plan(null, List.of(material("Bead", Unit.PIECE, null, offer("Bead barn", "25", "3.00"))), pounds, pounds);
        assertThat(one.warnings()).isEmpty();
        assertThat(plan(null, List.of(), paid(pounds, null)).total().getCurrencyUnit()).isEqualTo(CurrencyUnit.GBP);
    }

    private static TermRequest.Part paid(TermRequest.Part part, String currency) {
        return new TermRequest.Part(part.title(), part.file().with(ClassSetupBuilder.builder(part.file().setup()).currency(currency).build()));
    }

    /** Both come from one seller: the ring for Saturday, the bead that is ordered with it for the week after. */
    @Test
    void saysOfEachMaterialWhenItIsNeeded() {
        MaterialSpec bead = material("Bead", Unit.PIECE, null, offer("Bead barn", "25", "3.00"));
        MaterialSpec ring = material("Ring", Unit.PIECE, null, offer("Bead barn", "5", "3.00"));
        TermPlan plan = plan(MARCH.minusDays(2), List.of(bead, ring), part("Next", MARCH.plusDays(7), 1, pieces("Bead", "6")), part("Saturday", MARCH, 1, pieces("Ring", "1")));

        assertThat(plan.late()).containsExactly(new TermPlan.Late("Bead", "Bead barn", MARCH.plusDays(6), MARCH.plusDays(8)),
                new TermPlan.Late("Ring", "Bead barn", MARCH.minusDays(1), MARCH.plusDays(8)));
    }

    static List<Long> seeds() {
        return IntStream.range(0, 25).mapToObj(Long::valueOf).toList();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("seeds")
    void neverCostsMoreThanEachClassAloneAndCoversAll(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<MaterialSpec> catalogue = List.of(
                material("Bead", Unit.PIECE, null, offer("Bead barn", random.nextInt(5, 30) + "", price(random)), offer("Rope loft", random.nextInt(5, 30) + "", price(random))),
                material("Ring", Unit.PIECE, null, offer("Bead barn", random.nextInt(1, 9) + "", price(random)), offer("Rope loft", random.nextInt(1, 9) + "", price(random))),
                material("Cord", Unit.M, null, offer("Rope loft", "5 m", price(random))));
        List<TermRequest.Part> parts = new ArrayList<>();
        for (int i = 0; i < random.nextInt(2, 5); i++) {
            parts.add(part("Class " + i, MARCH.plusDays(i), random.nextInt(1, 9), pieces("Bead", random.nextInt(1, 20) + ""),
                    pieces("Ring", random.nextInt(1, 4) + ""), cut("Cord", random.nextInt(50, 450) + " cm")));
        }
        TermPlan together = plan(null, catalogue, parts.toArray(TermRequest.Part[]::new));
        Money alone = parts.stream().map(p -> plan(null, catalogue, p).total()).reduce(Money.zero(CurrencyUnit.GBP), Money::plus);

        assertThat(together.total()).isLessThanOrEqualTo(alone);
        assertThat(together.materials()).hasSize(3).allSatisfy(m -> {
            assertThat(m.bought().bought()).isGreaterThanOrEqualTo(m.need().total());
            assertThat(m.shares().stream().map(TermPlan.Share::amount).reduce(Quantity::plus)).contains(m.need().total());
        });
        assertThat(together.materials().get(2).cutting().lengths().stream().mapToLong(l -> l.cuts().size()).sum())
                .isEqualTo(parts.stream().mapToInt(p -> p.file().setup().headcount()).sum());
    }

    private static TermPlan plan(LocalDate today, List<MaterialSpec> catalogue, TermRequest.Part... parts) {
        return TermPlanner.plan(new TermRequest(List.of(parts), new CatalogueSpec(catalogue, SUPPLIERS)), today);
    }

    private static TermRequest.Part part(String title, LocalDate date, int students, MaterialLine... lines) {
        ProjectSpec project = ProjectSpecBuilder.builder().name(title).craft("craft").level(SkillLevel.BEGINNER)
                .sizes(List.of(new Size("one size", Map.of()))).materials(List.of(lines)).build();
        ClassSetup setup = ClassSetup.plain(title, List.of(new ClassSetup.Meeting(date, LocalTime.of(18, 0), LocalTime.of(21, 0))),
                students, SkillLevel.BEGINNER, null, "GBP");
        return new TermRequest.Part(title, new ClassFile(project, setup, null, null, null));
    }

    private static MaterialLine pieces(String material, String amount) {
        return MaterialLine.of(material, amount);
    }

    private static MaterialLine cut(String material, String length) {
        return MaterialLine.of(material, length).withPieces("1");
    }

    private static MaterialSpec material(String name, Unit unit, String onHand, Offer... offers) {
        return MaterialSpec.of(name, unit).withOnHand(onHand == null ? null : Quantity.parse(onHand)).withOffers(List.of(offers));
    }

    private static Offer offer(String supplier, String holds, String price) {
        return Offer.of(supplier, Quantity.parse(holds), new BigDecimal(price));
    }

    private static String price(SplittableRandom random) {
        return BigDecimal.valueOf(random.nextInt(50, 900), 2).toPlainString();
    }
}
