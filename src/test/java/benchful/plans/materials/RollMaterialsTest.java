package benchful.plans.materials;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.cutting.CutSheet;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Cloth off a roll 140 cm wide, measured off by 10 cm at 1.20 or by the metre at 12.00. */
class RollMaterialsTest {
    private static final MaterialSpec CLOTH = MaterialSpec.of("Cloth", Unit.parse("m x 140 cm").orElseThrow());
    private static final MaterialSpec BY_TEN = CLOTH.withOffers(List.of(offer("0.1 m", "1.20")));
    private static final MaterialLine APRON = piece("60 cm", "40 cm", 1);

    /** Two of 60 cm lie beside each other, 40 cm deep; along the grain three of 40 cm do, 60 cm deep. */
    @Test
    void buysTheShortestLengthThatHoldsThePieces() {
        MaterialsPlan.MaterialPlan across = plan(4, BY_TEN, APRON).materials().get(0);
        assertThat(across.bought().bought()).hasToString("0.8 m x 140 cm");
        assertThat(across.sheets().sheets()).singleElement().extracting(CutSheet::size).isEqualTo(new Extent(q("80 cm"), q("140 cm")));

        MaterialsPlan along = plan(4, BY_TEN, APRON.withGrain(true));
        assertThat(along.materials().get(0).bought().bought()).hasToString("1.2 m x 140 cm");
        assertThat(along.total()).isEqualTo(Money.parse("GBP 14.40"));
        assertThat(along.orders().get(0).purchases()).singleElement().satisfies(p -> {
            assertThat(p.packs()).isEqualTo(1);
            assertThat(p.holds()).hasToString("1.2 m x 140 cm");
        });
    }

    /** The area of four, 9,600 cm2, is 0.69 m of the roll: so much costs 8.23 or, in whole steps, 8.40. */
    @Test
    void claimsNoMoreThanThatNoAreaCostsLess() {
        MaterialsPlan plan = plan(4, BY_TEN, APRON);
        assertThat(plan.total()).isEqualTo(Money.parse("GBP 9.60"));
        assertThat(plan.bound()).isEqualTo(Money.parse("GBP 8.40"));
        assertThat(plan.proof()).isEqualTo("Best choice found; another might cost up to GBP 1.20 less.");
        assertThat(plan.materials().get(0).sheets().proof()).isEqualTo("Lengths off the roll were tried in turn; a shorter one might do.");
        MaterialsPlan whole = plan(4, BY_TEN, piece("70 cm", "30 cm", 1));
        assertThat(whole.total()).isEqualTo(whole.bound()).isEqualTo(Money.parse("GBP 7.20"));
        assertThat(whole.materials().get(0).sheets().proof()).isEqualTo("Proven least: no smaller area holds all pieces.");
    }

    @Test
    void cutsWhatLiesThereFirstInOneLength() {
        MaterialsPlan.MaterialPlan cloth = plan(8, BY_TEN.withOnHand(q("1 m x 140 cm")), APRON).materials().get(0);
        assertThat(cloth.bought().bought()).hasToString("0.6 m x 140 cm");
        assertThat(cloth.sheets().sheets()).extracting(CutSheet::bought).containsExactly(false, true);
        assertThat(plan(4, CLOTH.withOnHand(q("80 cm").sized(CLOTH.unit())), APRON).materials().get(0).bought().unmet().signum()).isZero();
    }

    @Test
    void buysWholeMetresWhereNoLessIsMeasuredOff() {
        assertThat(plan(4, CLOTH.withOffers(List.of(offer("1 m", "12"))), APRON.withGrain(true)).materials().get(0).bought().bought()).hasToString("2 m x 140 cm");
    }

    @Test
    void takesALengthForSoMuchOfTheWidth() {
        MaterialsPlan plan = plan(8, BY_TEN, MaterialLine.of("Cloth", "50 cm"));
        assertThat(plan.kits().get(0).contents()).singleElement().satisfies(c -> assertThat(c.amount()).hasToString("0.5 m x 140 cm"));
        assertThat(plan.materials().get(0).bought().bought()).hasToString("4 m x 140 cm");
        assertThat(plan(1, BY_TEN, MaterialLine.of("Cloth", "5 g")).faults()).contains(
                new Fault("/project/materials/0/amount", "In “5 g”: it gives a mass, but a length off the roll is needed here."));
    }

    @Test
    void saysWhatIsTooWideForTheRoll() {
        assertThat(plan(1, BY_TEN, piece("160 cm", "150 cm", 1)).warnings()).singleElement()
                .satisfies(w -> assertThat(w.toString()).contains("“Cloth” can't be cut"));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 25);
    }

    /** The length lies between what the area takes and what the pieces take one above the other, and every piece lies on it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void alwaysHoldsEveryPieceOnNoMoreThanRowsOfThemTake(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int long1 = random.nextInt(20, 141);
        int wide1 = random.nextInt(5, 141);
        int long2 = random.nextInt(10, 90);
        int wide2 = random.nextInt(5, 60);
        int students = random.nextInt(1, 9);
        MaterialsPlan plan = plan(students, BY_TEN, piece(long1 + " cm", wide1 + " cm", 1), piece(long2 + " cm", wide2 + " cm", 2));

        MaterialsPlan.MaterialPlan cloth = plan.materials().get(0);
        BigDecimal bought = cloth.bought().bought().amount();
        assertThat(cloth.bought().unmet().signum()).isZero();
        assertThat(cloth.sheets().sheets().stream().mapToInt(s -> s.pieces().size()).sum()).isEqualTo(3 * students);
        assertThat(bought).isGreaterThanOrEqualTo(cloth.need().total().amount())
                .isLessThanOrEqualTo(BigDecimal.valueOf(students).multiply(BigDecimal.valueOf(Math.min(long1, wide1) + 2L * Math.min(long2, wide2))).movePointLeft(2).add(new BigDecimal("0.1")));
        assertThat(plan.bound()).isLessThanOrEqualTo(plan.total());
        assertThat(plan.total()).isEqualTo(Money.of(plan.total().getCurrencyUnit(), bought.multiply(new BigDecimal("12"))));
    }

    private static MaterialsPlan plan(int students, MaterialSpec cloth, MaterialLine... lines) {
        ClassSetup setup = ClassSetup.plain("Aprons", List.of(new ClassSetup.Meeting(LocalDate.of(2027, 3, 6), LocalTime.of(10, 0), LocalTime.of(13, 0))),
                students, SkillLevel.BEGINNER, null, "GBP");
        return MaterialsPlanner.plan(new ClassFile(ProjectSpecBuilder.builder().name("Apron").craft("sewing").level(SkillLevel.BEGINNER)
                .sizes(List.of(new Size("one size", Map.of()))).materials(List.of(lines)).build(), setup, null, List.of(cloth),
                List.of(new SupplierSpec("Mill", "GBP", null, null, null, 0, false, null, null, null))));
    }

    private static MaterialLine piece(String length, String width, int pieces) {
        return MaterialLine.of("Cloth", length).withWidth(width).withPieces(String.valueOf(pieces));
    }

    private static Offer offer(String holds, String price) {
        return Offer.of("Mill", q(holds).sized(CLOTH.unit()), new BigDecimal(price));
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
