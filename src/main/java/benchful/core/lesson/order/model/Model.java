package benchful.core.lesson.order.model;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Preparation;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.StepKind;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A sound request on the time line, counted in grains, see {@link Grain}. The resources are the room's tools; then the tutor, where
 * something is shown to one group after the other; then the hands of the
 * tutor and of a student outside the meetings, where something asks for them; then one seat for each group, which every step of that
 * group's hands takes; so "the class does one thing at a time" is a capacity like any other.
 *
 * @param capacity units of each resource
 * @param names    of the resources
 * @param horizon  a time by which everything can be done [grains]
 */
public record Model(LessonRequest request, Hours hours, List<Activity> activities, List<Gap> gaps, int[] capacity,
        List<String> names, Preparation preparation, long horizon) {

    /** The same with another count of one resource. */
    public Model with(int resource, int units) {
        int[] other = capacity.clone();
        other[resource] = units;
        return new Model(request, hours, activities, gaps, other, names, preparation, horizon);
    }

    /** The same with no end to the time for what a meeting waits for. */
    public Model outsideAtAnyTime() {
        return each(activity -> activity.presence() == Presence.BEFORE_LAST_MEETING ? activity.at(Presence.OUTSIDE) : activity);
    }

    /** Whether the tutor asks for the time of a step. */
    public boolean hasTimesAskedFor() {
        return activities.stream().anyMatch(Activity::isAskedFor);
    }

    /** The same where each activity whose time is asked for begins by these starts at the latest. */
    public Model noLaterThan(long[] starts) {
        return each(activity -> activity.isAskedFor() ? activity.between(activity.notBefore(), starts[activity.index()]) : activity);
    }

    private Model each(UnaryOperator<Activity> change) {
        return new Model(request, hours, activities.stream().map(change).toList(), gaps, capacity, names, preparation, horizon);
    }

    /** By how much later than asked for the activities begin, together. */
    public long late(long[] starts) {
        return activities.stream().filter(Activity::isAskedFor).mapToLong(activity -> starts[activity.index()] - activity.notBefore()).sum();
    }

    public int size() {
        return activities.size();
    }

    public Activity activity(int index) {
        return activities.get(index);
    }

    /** When an activity ends that begins at {@code start}. */
    public long end(int index, long start) {
        return hours.end(activity(index), start);
    }

    /** The end of the last activity that counts, 0 if there is none. */
    public long finish(long[] starts) {
        return activities.stream().filter(activity -> !activity.atHome())
                .mapToLong(activity -> hours.end(activity, starts[activity.index()])).max().orElse(0);
    }

    /** How many of the resources, the first of them, are tools of the room. */
    public int tools() {
        return (int) request.room().stream().map(RoomTool::name).distinct().count();
    }

    /** The resources that are seats of groups begin here. */
    public int firstSeat() {
        return capacity.length - request.groups();
    }

    /** From each demonstration to the work of the class that follows it. */
    public List<Gap> showings() {
        return gaps.stream().filter(gap -> !gap.fromStart() && gap.hasLeast() && gap.least() >= 0 && activity(gap.to()).hands()
                && activity(gap.from()).step().kind() == StepKind.SHOW).toList();
    }
}
