package benchful.core.lesson.order;

import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.Presence;
import java.util.List;

/**
 * A time before which no plan can finish: the longest chain of steps in the hours; the work of the class (or of the busiest group)
 * one after the other in the hours; and for each resource what its users take of it, spread over all its units, between the
 * shortest chain before and the shortest chain behind them.
 */
public final class Bound {

    private final Model model;
    private final long[] earliest;
    private final long[] tails;

    public Bound(Model model) {
        this.model = model;
        this.tails = new Tails(model).tails();
        this.earliest = new Windows(model, new long[model.size()]).tightened();
    }

    public long earliestFinish() {
        long most = Math.max(chain(), seats());
        for (int resource = 0; resource < model.firstSeat(); resource++) {
            most = Math.max(most, spread(resource));
        }
        return most;
    }

    /** No plan misses the times asked for by less, all together [grains]. */
    public long leastLate() {
        return model.late(earliest);
    }

    private long spread(int resource) {
        List<Activity> users = model.activities().stream()
                .filter(activity -> activity.uses()[resource] > 0 && activity.work() > 0 && !activity.atHome()).toList();
        if (users.isEmpty()) {
            return 0;
        }
        long taken = users.stream().mapToLong(user -> user.work() * user.uses()[resource]).sum();
        long before = users.stream().mapToLong(user -> earliest[user.index()]).min().orElseThrow();
        long behind = users.stream().mapToLong(user -> tails[user.index()] - user.work()).min().orElseThrow();
        return before + (taken + model.capacity()[resource] - 1) / model.capacity()[resource] + Math.max(0, behind);
    }

    private long chain() {
        return model.finish(earliest);
    }

    private long seats() {
        long most = 0;
        for (int seat = model.firstSeat(); seat < model.capacity().length; seat++) {
            int resource = seat;
            most = Math.max(most, model.activities().stream().filter(activity -> activity.uses()[resource] > 0)
                    .mapToLong(Activity::work).sum());
        }
        if (most == 0) {
            return 0;
        }
        Activity all = model.activities().get(0).at(Presence.CLASS_WITH_BREAKS).lasting(most).between(0, Activity.ANY_TIME);
        return model.hours().end(all, model.hours().earliestStart(all, 0));
    }
}
