package benchful.core.lesson.order.model;

import benchful.core.lesson.Reason;
import benchful.core.lesson.Step;
import java.util.List;

/**
 * A step, or one group's share of it, on the time line.
 *
 * @param index      its place in the model
 * @param group      0 for the whole class, else the group from 1
 * @param work       time it takes [grains], breaks left out
 * @param hands      whether the class works on it; if not it is a wait, which closed times do not stop
 * @param pausable   whether a closed time may interrupt it
 * @param byItself   whether it is a wait that begins wherever the one before it ends, between meetings too
 * @param atHome     whether it does not count to the finish
 * @param uses       units of each of the model's resources kept busy
 * @param tutorShare share of the tutor's time it takes [0 to 1]
 * @param reasons    why it takes that long
 */
public record Activity(int index, Step step, int group, long work, boolean hands, boolean pausable, boolean byItself, boolean atHome, int[] uses,
        double tutorShare, List<Reason> reasons) {

    Activity lasting(long grains) {
        return new Activity(index, step, group, grains, hands, pausable, byItself, atHome, uses, tutorShare, reasons);
    }

    public String title() {
        return group == 0 ? step.title() : step.title() + " (group " + group + ")";
    }
}
