package benchful.core.lesson.order;

/**
 * A time before which no plan can finish: the longest chain of steps in the hours, and the work of the class (or of the busiest
 * group) one after the other in the hours.
 */
final class Bound {

    private final Model model;

    Bound(Model model) {
        this.model = model;
    }

    long earliestFinish() {
        return Math.max(chain(), seats());
    }

    private long chain() {
        Windows windows = new Windows(model, new long[model.size()]);
        windows.tighten();
        long[] earliest = new long[model.size()];
        for (int i = 0; i < earliest.length; i++) {
            earliest[i] = windows.earliest(i);
        }
        return model.finish(earliest);
    }

    private long seats() {
        long most = 0;
        for (int seat = model.firstSeat(); seat < model.capacity().length; seat++) {
            int resource = seat;
            most = Math.max(most, model.activities().stream().filter(activity -> activity.uses()[resource] > 0)
                    .mapToLong(Activity::work).sum());
        }
        Activity all = new Activity(0, null, 0, most, true, true, false, new int[0], 0, java.util.List.of());
        return model.hours().end(all, model.hours().earliestStart(all, 0));
    }
}
