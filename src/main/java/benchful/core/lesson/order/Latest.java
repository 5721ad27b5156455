package benchful.core.lesson.order;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * How late each activity could begin without a later finish, the others keeping the order that the plan gives them: a backward
 * pass over the gaps and over the order in which activities take their turn at a resource.
 */
final class Latest {

    private final Model model;
    private final long[] starts;
    private final long finish;
    private final long[] latest;

    Latest(Model model, long[] starts) {
        this.model = model;
        this.starts = starts;
        this.finish = model.finish(starts);
        this.latest = starts.clone();
        List<Activity> backward = model.activities().stream()
                .sorted(Comparator.<Activity>comparingLong(activity -> starts[activity.index()])
                        .thenComparingLong(activity -> model.hours().end(activity, starts[activity.index()])).reversed()).toList();
        backward.forEach(activity -> latest[activity.index()] = Math.max(starts[activity.index()], latest(activity)));
    }

    long[] starts() {
        return Arrays.copyOf(latest, latest.length);
    }

    private long latest(Activity activity) {
        long end = activity.atHome() ? model.horizon() : finish;
        long start = model.horizon();
        for (Gap gap : model.gaps()) {
            if (gap.from() == activity.index() && gap.hasLeast()) {
                end = Math.min(end, latest[gap.to()] - gap.least());
            }
            if (gap.to() == activity.index() && gap.hasGreatest()) {
                start = Math.min(start, anchor(gap) + gap.greatest());
            }
        }
        end = Math.min(end, resourcesUntil(activity));
        return Math.min(start, model.hours().latestStartEndingBy(activity, end, model.horizon() + 1));
    }

    private long anchor(Gap gap) {
        return gap.fromStart() ? starts[gap.from()] : model.end(gap.from(), starts[gap.from()]);
    }

    /** The latest start of the next activity that leaves no room beside this one. */
    private long resourcesUntil(Activity activity) {
        long end = model.end(activity.index(), starts[activity.index()]);
        return model.activities().stream().filter(next -> next.work() > 0 && starts[next.index()] >= end && crowds(activity, next))
                .mapToLong(next -> latest[next.index()]).min().orElse(Long.MAX_VALUE / 2);
    }

    private boolean crowds(Activity activity, Activity next) {
        for (int r = 0; r < activity.uses().length; r++) {
            if (activity.uses()[r] > 0 && next.uses()[r] > 0
                    && activity.uses()[r] + mostUsed(r, next) > model.capacity()[r]) {
                return true;
            }
        }
        return false;
    }

    private int mostUsed(int resource, Activity during) {
        long from = starts[during.index()];
        long to = model.end(during.index(), from);
        return model.activities().stream().filter(other -> starts[other.index()] < to
                        && model.end(other.index(), starts[other.index()]) > from)
                .mapToInt(other -> other.uses()[resource]).sum();
    }
}
