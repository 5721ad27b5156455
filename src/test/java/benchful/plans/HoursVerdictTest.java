package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.classes.Promise;
import benchful.plans.HoursVerdict.Answer;
import benchful.web.Formats;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HoursVerdictTest {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 6);
    private static final LocalTime TEN = LocalTime.of(10, 0);

    private final ClassPlanner planner = ComputedPlans.planner(new benchful.core.lesson.order.solver.SolverPlanner());

    /** Eight students who knot for 40 to 160 minutes; from a booking that nobody keeps to one that all keep, minute by minute. */
    @ParameterizedTest
    @EnumSource(Promise.class)
    void neverSaysOneThingAndShowsAnother(Promise promise) {
        Answer before = Answer.OVER;
        int chances = 0;
        for (int minutes = 90; minutes <= 170; minutes++) {
            ClassPlan plan = planner.plan(booked(minutes, promise));
            HoursVerdict verdict = plan.verdict();
            double chance = plan.risk().onTime();
            int shown = shown(chance);
            assertThat(verdict.fits()).isEqualTo(plan.lesson().fits()).isEqualTo(chance >= promise.share());
            assertThat(verdict.fits()).isEqualTo(shown >= promise.share() * 100);
            assertThat(verdict.answer() == Answer.OVER).isEqualTo(!verdict.fits() && chance < 0.5);
            assertThat(verdict.sentence() + verdict.more()).contains(shown + " %");
            assertThat(verdict.answer()).as("%d minutes", minutes).isLessThanOrEqualTo(before);
            before = verdict.answer();
            chances += chance > 0 && chance < 1 ? 1 : 0;
        }
        assertThat(before).isEqualTo(Answer.FITS);
        assertThat(chances).isGreaterThan(20);
    }

    private static ClassFile booked(int minutes, Promise promise) {
        return SmallClass.of(8).makes("knot", 55).promises(promise).meets(DAY, TEN, TEN.plusMinutes(minutes)).file();
    }

    @Test
    void saysEachAnswerInItsWords() {
        assertThat(planner.plan(booked(170, Promise.NINE_IN_TEN)).verdict().words()).startsWith("Yes. Nine in ten of such classes end by 12:").endsWith(" before the booked end.");
        assertThat(planner.plan(booked(126, Promise.THREE_IN_FOUR)).verdict().words()).contains(" % of such classes end by the booked end, 12:06.");
        assertThat(planner.plan(booked(95, Promise.HALF)).verdict().more()).startsWith("Nine in ten by 12:").contains(", half by ");
    }

    private static int shown(double chance) {
        return Integer.parseInt(Formats.chance(chance).replace(" %", ""));
    }

    /** A chance is rounded down, so that 89.9 % does not look like what was promised. */
    @Test
    void roundsAChanceDown() {
        assertThat(List.of(shown(0.8999), shown(0.9), shown(0.29), shown(1))).containsExactly(89, 90, 29, 100);
        assertThat(HoursVerdict.share(0.75)).isEqualTo("three in four");
    }
}
