package benchful.core.lesson.time;

import benchful.core.lesson.Reason;
import java.time.Duration;
import java.util.List;

/**
 * How long a make step is planned for the class, and why.
 *
 * @param length     whole seconds, rounded up
 * @param atOnce     students who can work at once with the tools there are
 * @param turns      how many turns they take, 1 if there are tools for all
 * @param tutorShare share of the time the tutor is expected to help [0 to 1]
 * @param reasons    a sentence for each part
 */
public record StepTime(Duration length, int atOnce, int turns, double tutorShare, List<Reason> reasons) {
    public StepTime {
        reasons = List.copyOf(reasons);
    }
}
