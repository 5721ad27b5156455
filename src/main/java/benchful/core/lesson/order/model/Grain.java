package benchful.core.lesson.order.model;

import benchful.core.lesson.ClosedTime;
import java.util.List;

/**
 * The largest number of seconds that divides all lengths, gaps and hours of a model. Steps begin on whole grains only: nobody
 * begins a step a second before the break; and the solver searches small numbers faster. With whole minutes it is a minute or more.
 */
record Grain(long seconds) {

    /** A model in seconds, counted in its grains instead. */
    static Model coarsen(Model model) {
        Grain grain = of(model);
        List<Activity> activities = model.activities().stream().map(grain::coarsen).toList();
        List<Gap> gaps = model.gaps().stream().map(grain::coarsen).toList();
        return new Model(model.request(), model.hours().in(grain.seconds()), activities, gaps, model.capacity(), model.names(),
                model.preparation(), model.horizon() / grain.seconds() + 1);
    }

    private static Grain of(Model model) {
        long common = 0;
        for (Activity activity : model.activities()) {
            common = divisor(divisor(common, activity.work()), activity.notBefore());
        }
        for (Gap gap : model.gaps()) {
            common = gap.hasLeast() ? divisor(common, gap.least()) : common;
            common = gap.hasGreatest() ? divisor(common, gap.greatest()) : common;
        }
        for (ClosedTime part : model.hours().closed()) {
            common = divisor(divisor(common, part.from()), part.to());
        }
        if (model.activities().stream().anyMatch(activity -> activity.presence().isOutside())) {
            common = divisor(common, model.hours().bookedEnd());
        }
        return new Grain(Math.max(1, common));
    }

    private static long divisor(long one, long other) {
        return other == 0 ? Math.abs(one) : divisor(other, one % other);
    }

    private Activity coarsen(Activity activity) {
        return activity.lasting(activity.work() / seconds).between(activity.notBefore() / seconds, activity.notAfter());
    }

    private Gap coarsen(Gap gap) {
        return new Gap(gap.from(), gap.fromStart(), gap.to(), gap.hasLeast() ? gap.least() / seconds : Gap.NO_LEAST,
                gap.hasGreatest() ? gap.greatest() / seconds : Gap.NO_GREATEST);
    }
}
