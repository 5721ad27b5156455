package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.core.buying.SupplierOrder;
import benchful.core.lesson.Block;
import benchful.core.lesson.Break;
import benchful.core.lesson.Conflict;
import benchful.core.lesson.Step;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.risk.StepLengths;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One file in, the whole plan out. */
class ClassPlannerTest {
    private static final LocalDateTime SIX = LocalDateTime.of(2027, 3, 6, 18, 0);
    private final ClassPlanner planner = ComputedPlans.planner(new ListPlanner());

    @Test
    void plansTheLessonTheMaterialsAndTheAdvice() {
        ClassPlan plan = planner.plan(SmallClass.of(2).makes("knot", 10).takes("Cord", "1 m").rests(LocalTime.of(19, 0), 10).file());

        assertThat(plan.lesson().blocks()).extracting(Block::step).containsExactly("knot");
        assertThat(plan.conflicts()).isEmpty();
        assertThat(plan.breaks()).containsExactly(new Break("Break", SIX.plusMinutes(60), SIX.plusMinutes(70)));
        assertThat(plan.materials().kits()).hasSize(2);
        assertThat(plan.advice()).extracting(Advice::about).containsExactly("Venue");
        assertThat(plan.risk().onTime()).isEqualTo(1);
    }

    @Test
    void saysWhatContradictsItselfAndPlansTheMaterialsAllTheSame() {
        ClassFile file = SmallClass.of(2).makes("knot", 10).takes("Cord", "1 m").rests(LocalTime.of(19, 0), 181).file();
        ClassPlan plan = planner.plan(file);

        assertThat(plan.lesson()).isNull();
        assertThat(plan.conflicts()).extracting(Conflict::sentence).singleElement().asString().contains("The break at 19:00 takes ");
        assertThat(plan.breaks()).hasSize(1);
        assertThat(plan.materials().kits()).hasSize(2);
        assertThat(plan.advice()).extracting(Advice::about).containsExactly("Venue");
        assertThat(plan.risk()).isNull();
        assertThat(planner.fits(file)).isFalse();
    }

    @Test
    void tellsWhetherItEndsWithinItsHours() {
        assertThat(planner.fits(SmallClass.of(2).makes("knot", 60).file())).isTrue();
        assertThat(planner.fits(SmallClass.of(2).makes("knot", 180).file())).isFalse();
    }

    /** "Loft" takes three days for what must be there on 5 March. */
    @Test
    void tellsOnADayWhatCantArriveAnyMore() {
        ClassFile file = SmallClass.of(2).takes("Cord", "1 m").sold("Cord", "10 m", "4.00").file();

        assertThat(planner.plan(file).materials().orders()).extracting(SupplierOrder::late).containsExactly(false);
        assertThat(planner.plan(file, LocalDate.of(2027, 3, 2)).materials().orders()).extracting(SupplierOrder::late).containsExactly(false);
        assertThat(planner.plan(file, LocalDate.of(2027, 3, 3)).materials().orders()).extracting(SupplierOrder::late).containsExactly(true);
    }

    @Test
    void repeatsNoStepMoreThanTenThousandTimes() {
        SmallClass knots = SmallClass.of(1).size("endless", "length", "90 m").repeats("knot", 1, "length / 1 mm");
        assertThat(ClassPlanner.request(knots.file()).steps()).singleElement()
                .extracting(step -> ((Step.Make) step).time().repeats(0)).isEqualTo(10_000);
    }

    /** Two groups of two; who came is believed only where each group has somebody. */
    @Test
    void usesTheNumberOfThoseWhoCameForTheUsualLengths() {
        ClassFile file = SmallClass.of(4).groups(2).makes("knot", 10).file();
        List<StepLengths.Length> all = planner.stepLengths(file, null);

        assertThat(all).isNotEmpty().isEqualTo(planner.stepLengths(file, 4)).isEqualTo(planner.stepLengths(file, 1)).isEqualTo(planner.stepLengths(file, 0));
        assertThat(planner.stepLengths(file, 2)).hasSameSizeAs(all).isNotEqualTo(all);
    }

    @Test
    void handsOnWhatTheClassNeeds() {
        ClassPlan plan = ComputedPlans.of(SmallClass.of(4).takes("cord", "2 m").shows("knot", 10).file());
        assertThat(plan.needs()).isEqualTo(plan.materials().required());
    }
}
