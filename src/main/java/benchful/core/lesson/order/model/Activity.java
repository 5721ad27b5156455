package benchful.core.lesson.order.model;

import benchful.core.lesson.LessonRequest.Turn;
import benchful.core.lesson.Reason;
import benchful.core.lesson.Step;
import java.util.List;

/**
 * A step, or one group's share of it, on the time line.
 *
 * @param index      its place in the model
 * @param group      0 for the whole class, else the group from 1
 * @param work       time it takes [grains], breaks left out
 * @param presence   who has to be there
 * @param atHome     whether it does not count to the finish
 * @param uses       units of each of the model's resources kept busy
 * @param tutorShare share of the tutor's time it takes [0 to 1]
 * @param reasons    why it takes that long
 * @param notBefore  the time asked for, before which it does not begin [grains]; 0 where none is
 * @param notAfter   a time after which it does not begin [grains]; {@link #ANY_TIME} where there is none
 */
public record Activity(int index, Step step, int group, long work, Presence presence, boolean atHome, int[] uses,
        double tutorShare, List<Reason> reasons, long notBefore, long notAfter) {

    /** Later than all plans. */
    public static final long ANY_TIME = Long.MAX_VALUE;

    /** One that may begin at any time. */
    public Activity(int index, Step step, int group, long work, Presence presence, boolean atHome, int[] uses, double tutorShare, List<Reason> reasons) {
        this(index, step, group, work, presence, atHome, uses, tutorShare, reasons, 0, ANY_TIME);
    }

    /** Whether a time is asked for. */
    public boolean isAskedFor() {
        return notBefore > 0;
    }

    /** Whether the class works on it; if not, breaks do not stop it. */
    public boolean hands() {
        return presence == Presence.CLASS || pausable();
    }

    /** Whether a closed time may interrupt it. */
    public boolean pausable() {
        return presence == Presence.CLASS_WITH_BREAKS;
    }

    /** The same with others there. */
    public Activity at(Presence other) {
        return new Activity(index, step, group, work, other, atHome, uses, tutorShare, reasons, notBefore, notAfter);
    }

    /** The same with other work. */
    public Activity lasting(long grains) {
        return new Activity(index, step, group, grains, presence, atHome, uses, tutorShare, reasons, notBefore, notAfter);
    }

    /** The same within other times. */
    public Activity between(long earliest, long latest) {
        return new Activity(index, step, group, work, presence, atHome, uses, tutorShare, reasons, earliest, latest);
    }

    public Turn turn() {
        return new Turn(step.id(), group);
    }

    public String title() {
        return group == 0 ? step.title() : step.title() + " (group " + group + ")";
    }
}
