package benchful.plans;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.lesson.Break;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.Planned;
import benchful.core.lesson.order.BenchWork;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.order.Rest;
import benchful.core.lesson.order.RestPlacer;
import benchful.core.lesson.risk.Calls;
import benchful.core.lesson.risk.ClassSimulation;
import benchful.core.lesson.risk.Promised;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The rule of a class for breaks, and where it puts them in a quickly made plan. */
final class Rests {
    private static final int CLASSES = 200;
    private static final int FEWEST_CLASSES = 20;
    /** Students x steps x classes in a quick simulation. */
    private static final double QUICK_WORK = 150_000;
    private static final int MOST_PLANS = 60;
    /** Quick plans, times steps. */
    private static final int MOST_WORK = 6_000;
    /** What one class costs, times quick plans, where each is played by the fewest classes. */
    private static final double MOST_PLAYED = 1_000_000;
    private static final int MOST_WHOLE = 12;
    private static final int FEWEST_WHOLE = 3;
    /** Simulated classes, times what one costs, times whole plans: two seconds or so. */
    private static final double WHOLE_WORK = 20_000_000;

    private Rests() {}

    /** As the engine takes it; empty where the class has none. */
    static Optional<Rest> of(ClassFile file) {
        return Optional.ofNullable(file.setup().rest()).map(rule -> new Rest(rule.after(), rule.lasts(), Optional.ofNullable(rule.meeting()).map(number -> meeting(file, number))));
    }

    private static Meeting meeting(ClassFile file, int number) {
        ClassSetup.Meeting m = file.setup().meetings().get(number - 1);
        return new Meeting(m.date().atTime(m.starts()), m.date().atTime(m.ends()));
    }

    /** What the engine is asked, with the breaks that a quick plan and a few simulated classes ask for; nearly all that the plan itself will. */
    static RestPlacer.Rested roughly(ClassFile file) {
        RestPlacer.Rested none = new RestPlacer.Rested(ClassPlanner.request(file));
        return of(file).map(rule -> RestPlacer.placed(none, rule, Rests::quickly, quickPlans(none.fixed()))).orElse(none);
    }

    private static int quickPlans(LessonRequest request) {
        int steps = Math.max(1, request.steps().size());
        return (int) Math.max(1, Math.min(Math.min(MOST_PLANS, MOST_WORK / steps), MOST_PLAYED / Calls.cost(request, steps)));
    }

    /** What the engine is asked, with the breaks that the plan itself asks for. */
    static LessonRequest wholly(ClassFile file, RestPlacer.Rested roughly, Function<LessonRequest, Optional<LessonPlan>> planner) {
        return of(file).map(rule -> RestPlacer.placed(roughly, rule, planner, wholePlans(roughly.fixed()))).orElse(roughly).request();
    }

    /** Where so many breaks would keep a rule, in a quick plan of a class without any of its own; empty where they don't. */
    static Optional<List<Break>> enough(ClassFile without, Rest rule, int breaks) {
        RestPlacer.Rested none = new RestPlacer.Rested(ClassPlanner.request(without));
        RestPlacer.Rested rested = RestPlacer.placed(none, rule, Rests::quickly, quickPlans(none.fixed()));
        boolean kept = quickly(rested.request()).filter(plan -> BenchWork.tooLong(plan, rule).isEmpty()).isPresent();
        return Optional.of(rested.rests()).filter(rests -> kept && rests.size() == breaks);
    }

    private static int wholePlans(LessonRequest request) {
        int steps = request.steps().size();
        double each = ClassSimulation.classes(request, steps) * Calls.cost(request, steps);
        return (int) Math.max(FEWEST_WHOLE, Math.min(MOST_WHOLE, WHOLE_WORK / each));
    }

    private static Optional<LessonPlan> quickly(LessonRequest request) {
        int classes = (int) Math.max(FEWEST_CLASSES, Math.min(CLASSES, QUICK_WORK / Calls.cost(request, request.steps().size())));
        LessonRequest few = request.toBuilder().replications(Math.min(classes, request.replications())).build();
        return new ListPlanner().plan(few) instanceof Planned planned ? Optional.of(Promised.of(few, planned.plan()).plan()) : Optional.empty();
    }
}
