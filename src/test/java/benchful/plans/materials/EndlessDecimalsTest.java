package benchful.plans.materials;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.plans.BroughtHazards;
import benchful.plans.ClassFileReader;
import benchful.projects.MaterialLine;
import benchful.projects.Measure;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import benchful.projects.Step;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Divisions that do not end: feet for metres, thirds of a length, packs of three. */
class EndlessDecimalsTest {
    private static final Step SHOW = Step.of("show", "Show", StepKind.SHOW).withLasts(Duration.ofMinutes(10));

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6, 7, 9, 11, 12})
    void buysPacksThatDoNotDivideEvenly(int lengths) {
        MaterialsPlan plan = MaterialsPlanner.plan(file(Unit.MM, "40 mm", null, Offer.of("Works", q("700 mm"), BigDecimal.TEN).withLengths(lengths)));

        assertThat(plan.faults()).isEmpty();
        assertThat(plan.materials().get(0).bought().unmet().signum()).isZero();
        assertThat(plan.orders()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"mm, 1234.567 in", "ft, 1234.567 in", "in, 1000.0007 mm", "m, 7 yd", "yd, 9.99 m"})
    void buysLengthsInWhateverUnit(String symbol, String holds) {
        Unit unit = Unit.parse(symbol).orElseThrow();
        MaterialsPlan plan = MaterialsPlanner.plan(file(unit, "40 mm", null, Offer.of("Works", q(holds), BigDecimal.TEN).withLengths(1)));

        assertThat(plan.faults()).isEmpty();
        assertThat(plan.materials().get(0).bought().unmet().signum()).isZero();
    }

    @Test
    void cutsWhatIsOnHandInFeetAsIfItWereInMillimetres() {
        for (Unit unit : List.of(Unit.MM, Unit.FOOT, Unit.YARD, Unit.INCH)) {
            Quantity onHand = q("2 m").in(unit).measurable();
            MaterialsPlan.MaterialPlan plan = MaterialsPlanner.plan(file(unit, "500 mm", onHand,
                    Offer.of("Works", q("500 mm"), BigDecimal.TEN).withLengths(1)))
                    .materials().get(0);
            assertThat(plan.cutting().lengths()).as("from %s", onHand).filteredOn(l -> !l.bought()).hasSize(4);
        }
    }

    @Test
    void needsWhatItsKitsHoldAndNoMoreThanThereIs() {
        for (String amount : List.of("length / 3", "sqrt(2) * length", "5 ml / 5 ml * length")) {
            MaterialsPlan plan = MaterialsPlanner.plan(uncut(amount, Unit.FOOT, null));
            Quantity need = plan.materials().get(0).need().total();
            Quantity kits = plan.kits().stream().map(k -> k.contents().get(0).amount()).reduce(Quantity::plus).orElseThrow();
            assertThat(kits).isEqualTo(need).isEqualTo(need.measurable());
            assertThat(MaterialsPlanner.plan(uncut(amount, Unit.FOOT, need)).orders()).isEmpty();
        }
    }

    @Test
    void takesItsOwnFileBackAndThoseWrittenWithEndlessDecimals() {
        ClassFileReader files = BroughtHazards.reader();
        Quantity endless = q("2 m").in(Unit.FOOT);
        ClassFile file = file(Unit.FOOT, "length / 3", endless, Offer.of("Works", q("700 mm"), BigDecimal.TEN).withLengths(3));

        String written = files.yaml(file);
        assertThat(written).contains("on_hand: 6.56168 ft");
        assertThat(read(files, written).materials().get(0).onHand()).isEqualTo(endless.measurable());
        assertThat(read(files, written.replace("6.56168 ft", endless.toString())).materials().get(0).onHand()).isEqualTo(endless);
    }

    @Test
    void answersNoNumberThatNobodyCouldMeasure() throws Exception {
        MaterialsPlan plan = MaterialsPlanner.plan(file(Unit.FOOT, "length / 3", q("2 m").in(Unit.FOOT),
                Offer.of("Works", q("700 mm"), BigDecimal.TEN).withLengths(3)));
        assertThat(SpecFormat.json().writeValueAsString(plan)).doesNotContainPattern("\\d\\.\\d{13}");
    }

    private static ClassFile read(ClassFileReader files, String written) {
        return ((SpecReader.Read<ClassFile>) files.read(written.getBytes(StandardCharsets.UTF_8))).sheet();
    }

    private static ClassFile uncut(String amount, Unit unit, Quantity onHand) {
        return file(MaterialLine.of("Rod", amount), unit, onHand, Offer.of("Works", q("10 m"), BigDecimal.TEN));
    }

    private static ClassFile file(Unit unit, String amount, Quantity onHand, Offer offer) {
        return file(MaterialLine.of("Rod", amount).withPieces("2"), unit, onHand, offer);
    }

    private static ClassFile file(MaterialLine line, Unit unit, Quantity onHand, Offer offer) {
        ProjectSpec project = ProjectSpecBuilder.builder().name("Rods").craft("metal").level(SkillLevel.BEGINNER)
                .measures(List.of(new Measure("length", "Length", Unit.CM)))
                .sizes(List.of(new Size("one", Map.of("length", q("20 cm"))))).materials(List.of(line)).steps(List.of(SHOW)).build();
        ClassSetup setup = ClassSetup.plain("Evening", List.of(new ClassSetup.Meeting(LocalDate.of(2027, 3, 6), LocalTime.of(18, 0), LocalTime.of(21, 0))), 7,
                SkillLevel.BEGINNER, Map.of(), "GBP");
        return new ClassFile(project, setup, null,
                List.of(MaterialSpec.of("Rod", unit).withCutLoss(q("1 mm")).withOnHand(onHand).withOffers(List.of(offer))),
                List.of(new SupplierSpec("Works", "GBP", null, null, null, 3, false, null, null, null)));
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
