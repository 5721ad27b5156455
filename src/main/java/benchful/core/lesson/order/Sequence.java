package benchful.core.lesson.order;

import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Gap;
import benchful.core.lesson.order.model.Model;
import java.util.ArrayList;
import java.util.List;

/**
 * The order that start times give to activities that share a resource (or the tutor), kept as gaps. What did not overlap before
 * then cannot overlap, so capacities hold whenever the gaps do: intervals that overlap pairwise have an instant in common.
 */
public final class Sequence {

    private final Model model;
    private final long[] starts;

    public Sequence(Model model, long[] starts) {
        this.model = model;
        this.starts = starts;
    }

    /** The earliest start of every activity that keeps all gaps and this order. */
    public long[] earliest() {
        return windows().tightened();
    }

    /** The latest start of every activity that keeps all gaps, this order and the finish. */
    long[] latest() {
        Windows windows = windows();
        long[] latest = new long[starts.length];
        for (int i = 0; i < starts.length; i++) {
            latest[i] = Math.max(starts[i], windows.latest(i));
        }
        return latest;
    }

    private Windows windows() {
        List<Gap> gaps = new ArrayList<>(model.gaps());
        model.activities().forEach(one -> model.activities().stream().filter(other -> isBefore(one, other))
                .forEach(other -> gaps.add(new Gap(one.index(), false, other.index(), 0, Gap.NO_GREATEST))));
        Model ordered = new Model(model.request(), model.hours(), model.activities(), gaps, model.capacity(), model.names(),
                model.preparation(), model.horizon());
        Windows windows = new Windows(ordered, new long[starts.length]);
        windows.endBy(model.finish(starts));
        windows.tighten();
        return windows;
    }

    private boolean isBefore(Activity one, Activity other) {
        return one != other && one.work() > 0 && other.work() > 0
                && model.end(one.index(), starts[one.index()]) <= starts[other.index()] && share(one, other);
    }

    private static boolean share(Activity one, Activity other) {
        boolean share = one.tutorShare() > 0 && other.tutorShare() > 0;
        for (int r = 0; r < one.uses().length; r++) {
            share |= one.uses()[r] > 0 && other.uses()[r] > 0;
        }
        return share;
    }
}
