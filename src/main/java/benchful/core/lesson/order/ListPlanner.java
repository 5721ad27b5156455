package benchful.core.lesson.order;

import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Proof.Method;
import java.util.Optional;

/** Plans by a list schedule: fast and sound, proven shortest only where it meets a simple bound. */
public final class ListPlanner implements LessonPlanner {

    @Override
    public LessonOutcome plan(LessonRequest request) {
        return Planning.of(request, ListPlanner::plan);
    }

    private static LessonOutcome plan(Model model) {
        Optional<long[]> starts = new SerialSchedule(model).starts();
        return starts.isEmpty() ? NoOrder.of(model, false)
                : new Planned(new PlanWriter(model, starts.get(), Method.LIST, new Bound(model).seconds()).plan());
    }
}
