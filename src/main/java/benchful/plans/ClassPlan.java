package benchful.plans;

import benchful.core.lesson.Break;
import benchful.core.lesson.Conflict;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.risk.Risk;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.Requirements;
import java.util.List;

/**
 * Everything that is computed for a class: what its page shows, what is printed, and what the API answers.
 *
 * @param lesson the steps on the clock, with the times to promise; null where {@code conflicts} keep the class from being planned
 * @param risk what many simulated classes after this plan came to; null where there is no plan
 * @param breaks the breaks of the class on their dates, in which nobody works
 * @param conflicts what no plan can meet, each naming the steps at fault and the mend
 * @param materials sizes, kits, totals, cutting and buying
 * @param advice what to decide or bring before printing
 */
public record ClassPlan(
        LessonPlan lesson, Risk risk, List<Break> breaks, List<Conflict> conflicts, MaterialsPlan materials, List<Advice> advice)
        implements PlanParts {
    public ClassPlan {
        breaks = List.copyOf(breaks);
        conflicts = List.copyOf(conflicts);
        advice = List.copyOf(advice);
    }

    public static ClassPlan of(Timing timing, MaterialsPlan materials, List<Advice> advice) {
        return new ClassPlan(timing.lesson(), timing.risk(), timing.breaks(), timing.conflicts(), materials, advice);
    }

    @Override
    public Requirements needs() {
        return materials.required();
    }

    @Override
    public Timing timing() {
        return new Timing(lesson, risk, breaks, conflicts);
    }

    /** Whether it fits; null where there is no plan. */
    public HoursVerdict verdict() {
        return timing().verdict();
    }
}
