package benchful.core.lesson.order;

import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Gap;
import benchful.core.lesson.order.model.Model;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Earliest and latest starts of all activities under the gaps and the hours, tightened as starts are fixed. For an upper bound
 * it is remembered which fixed activity it comes from, so that a planner knows what to move.
 */
final class Windows {

    /** What does not come from a fixed activity but from the time that the tutor asks for. */
    private static final int ASKED_FOR = -2;

    private final Model model;
    private final List<List<Gap>> touching = new ArrayList<>();
    private final long[] earliest;
    private final long[] latest;
    private final int[] cause;
    private final Deque<Integer> changed = new ArrayDeque<>();

    Windows(Model model, long[] release) {
        this.model = model;
        this.earliest = new long[model.size()];
        this.latest = new long[model.size()];
        this.cause = new int[model.size()];
        Arrays.fill(latest, model.horizon());
        Arrays.fill(cause, -1);
        for (int i = 0; i < model.size(); i++) {
            touching.add(new ArrayList<>());
            earliest[i] = model.hours().earliestStart(model.activity(i), release[i]);
            lower(i, model.activity(i).notAfter(), ASKED_FOR);
            changed.add(i);
        }
        for (Gap gap : model.gaps()) {
            touching.get(gap.from()).add(gap);
            touching.get(gap.to()).add(gap);
        }
    }

    /** Bounds every activity that counts to end by a time. */
    void endBy(long deadline) {
        model.activities().stream().filter(activity -> !activity.atHome()).forEach(activity -> lower(activity.index(),
                model.hours().latestStartEndingBy(activity, deadline, model.horizon() + 1), -1));
    }

    long earliest(int activity) {
        return earliest[activity];
    }

    long latest(int activity) {
        return latest[activity];
    }

    /** The fixed activity that the latest start comes from, less than 0 if none. */
    int cause(int activity) {
        return cause[activity];
    }

    /** Whether its latest start comes from a fixed activity, or from a time asked for. */
    boolean isPressed(int activity) {
        return cause[activity] >= 0 || cause[activity] == ASKED_FOR;
    }

    /** Fixes a start inside its window. */
    void fix(int activity, long start) {
        earliest[activity] = start;
        latest[activity] = start;
        cause[activity] = activity;
        changed.add(activity);
    }

    /** The earliest starts after tightening. */
    long[] tightened() {
        tighten();
        return earliest.clone();
    }

    /** Tightens all windows; an activity whose window is empty, or -1 if all are open. */
    int tighten() {
        while (!changed.isEmpty()) {
            int next = changed.poll();
            for (Gap gap : touching.get(next)) {
                int empty = gap.from() == next ? forward(gap) : backward(gap);
                if (empty >= 0) {
                    changed.clear();
                    return empty;
                }
            }
        }
        return -1;
    }

    private int forward(Gap gap) {
        if (gap.hasLeast()) {
            raise(gap.to(), model.end(gap.from(), earliest[gap.from()]) + gap.least());
        }
        if (gap.hasGreatest()) {
            long anchor = gap.fromStart() ? latest[gap.from()] : latestEnd(gap.from());
            lower(gap.to(), anchor + gap.greatest(), cause[gap.from()]);
        }
        return earliest[gap.to()] > latest[gap.to()] ? gap.to() : -1;
    }

    /** A latest start may lie in a closed time, where the activity could not begin; no end before it is later than this. */
    private long latestEnd(int activity) {
        return model.end(activity, model.hours().earliestStart(model.activity(activity), latest[activity]));
    }

    private int backward(Gap gap) {
        Activity from = model.activity(gap.from());
        if (gap.hasLeast()) {
            long end = latest[gap.to()] - gap.least();
            lower(gap.from(), model.hours().latestStartEndingBy(from, end, model.horizon() + 1), cause[gap.to()]);
        }
        if (gap.hasGreatest()) {
            long anchor = earliest[gap.to()] - gap.greatest();
            raise(gap.from(), gap.fromStart() ? anchor
                    : model.hours().earliestStartEndingFrom(from, anchor, model.horizon() + 1));
        }
        return earliest[gap.from()] > latest[gap.from()] ? gap.from() : -1;
    }

    private void raise(int activity, long start) {
        if (start > earliest[activity]) {
            earliest[activity] = model.hours().earliestStart(model.activity(activity), start);
            changed.add(activity);
        }
    }

    private void lower(int activity, long start, int because) {
        if (start < latest[activity]) {
            latest[activity] = start;
            cause[activity] = because;
            changed.add(activity);
        }
    }
}
