package benchful.core.lesson.order;

import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Model;
import java.util.ArrayList;
import java.util.List;

/** What is taken of the resources by the activities placed so far. Finding room costs O(placed x placed). */
final class Occupancy {

    private record Placed(Activity activity, long start, long end) {
    }

    private final Model model;
    private final List<Placed> placed = new ArrayList<>();

    Occupancy(Model model) {
        this.model = model;
    }

    void place(Activity activity, long start) {
        placed.add(new Placed(activity, start, model.hours().end(activity, start)));
    }

    /** The first start from {@code from} on at which the hours and the free resources allow the activity. */
    long firstRoom(Activity activity, long from) {
        long start = model.hours().earliestStart(activity, from);
        long blocked = blockedUntil(activity, start);
        while (blocked > start) {
            start = model.hours().earliestStart(activity, blocked);
            blocked = blockedUntil(activity, start);
        }
        return start;
    }

    /** The next time worth trying if the activity does not fit at {@code start}, else {@code start}. */
    private long blockedUntil(Activity activity, long start) {
        long end = model.hours().end(activity, start);
        List<Placed> rivals = placed.stream().filter(other -> other.start() < end && start < other.end()
                && sharesResource(activity, other.activity())).toList();
        for (Placed rival : rivals) {
            long instant = Math.max(start, rival.start());
            if (!fits(activity, rivals, instant)) {
                return rivals.stream().filter(other -> other.start() <= instant && instant < other.end())
                        .mapToLong(Placed::end).min().orElseThrow();
            }
        }
        return start;
    }

    private static boolean sharesResource(Activity one, Activity other) {
        for (int r = 0; r < one.uses().length; r++) {
            if (one.uses()[r] > 0 && other.uses()[r] > 0) {
                return true;
            }
        }
        return false;
    }

    private boolean fits(Activity activity, List<Placed> rivals, long instant) {
        for (int r = 0; r < activity.uses().length; r++) {
            int resource = r;
            int taken = rivals.stream().filter(other -> other.start() <= instant && instant < other.end())
                    .mapToInt(other -> other.activity().uses()[resource]).sum();
            if (activity.uses()[r] > 0 && taken + activity.uses()[r] > model.capacity()[r]) {
                return false;
            }
        }
        return true;
    }
}
