package benchful.core.lesson.order;

import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Model;
import java.util.List;

/** How long an order leaves the class without work: what a planner makes less of among orders that finish as soon. */
public final class Load {

    private record Stretch(Activity activity, long from, long to) {
    }

    private final Model model;
    private final List<Stretch> stretches;

    public Load(Model model, long[] starts) {
        this.model = model;
        this.stretches = model.activities().stream().filter(Activity::hands).flatMap(activity ->
                model.hours().segments(activity, starts[activity.index()]).stream()
                        .map(part -> new Stretch(activity, part[0], part[1]))).toList();
    }

    /** Averaged over the groups [grains]. */
    public long idle() {
        long until = stretches.stream().mapToLong(Stretch::to).max().orElse(0);
        long busy = 0;
        for (int seat = model.firstSeat(); seat < model.capacity().length; seat++) {
            int resource = seat;
            busy += stretches.stream().filter(part -> part.activity().uses()[resource] > 0)
                    .mapToLong(part -> part.to() - part.from()).sum();
        }
        return Math.max(0, model.hours().open(0, until) - busy / model.request().groups());
    }
}
