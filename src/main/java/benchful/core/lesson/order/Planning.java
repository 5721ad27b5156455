package benchful.core.lesson.order;

import benchful.core.lesson.Conflict;
import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.order.check.OrderCheck;
import benchful.core.lesson.order.check.RequestCheck;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.ModelBuilder;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What every planner does first: refuse a request that contradicts itself, and put a sound one on the time line. */
public final class Planning {

    private Planning() {
    }

    public static LessonOutcome of(LessonRequest request, Function<Model, LessonOutcome> search) {
        List<Conflict> conflicts = RequestCheck.conflicts(request);
        if (!conflicts.isEmpty()) {
            return new Contradiction(conflicts, true);
        }
        Model model = new ModelBuilder(request).build();
        Optional<Conflict> fault = OrderCheck.gaps(model).or(() -> NoMeeting.conflict(model));
        return fault.isPresent() ? new Contradiction(List.of(fault.get()), true) : search.apply(model);
    }
}
