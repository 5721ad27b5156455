package benchful.core.lesson.order;

import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Proof.Method;
import benchful.core.lesson.order.model.Model;
import java.util.Optional;

/** Plans by a list schedule: fast and sound, proven shortest only where it meets a simple bound. */
public final class ListPlanner implements LessonPlanner {

    @Override
    public LessonOutcome plan(LessonRequest request) {
        return Planning.of(request, model -> outcome(model, SerialSchedule.best(model), new Bound(model).earliestFinish()));
    }

    public static LessonOutcome outcome(Model model, Optional<long[]> starts, long bound) {
        return starts.<LessonOutcome>map(found -> new Planned(new PlanWriter(model, found, Method.LIST, bound).plan()))
                .orElseGet(() -> NoOrder.notFound(model));
    }
}
