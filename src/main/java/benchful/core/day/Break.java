package benchful.core.day;

import benchful.core.day.Course.Pause;
import benchful.core.day.Running.Stage;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;

/**
 * A break as it stands. Where nobody says anything of it, it is taken by the clock. One that is said to begin goes on until it is said to be
 * over, or until somebody tells of work once its time is up: then it is taken to have been as long as planned.
 *
 * @param planned when it was to be
 * @param begins  when it began, or is likely to
 * @param ends    when it ended, or is likely to
 * @param due     when it is over if it is as long as planned
 * @param begun   whether somebody said that it begins
 * @param said    whether somebody said that it is over, so that its length is known
 */
public record Break(Pause planned, Stage stage, LocalDateTime begins, LocalDateTime ends, LocalDateTime due, boolean begun, boolean said) {

    /** @param worked when somebody told of work that students do */
    static Break of(Pause planned, Told told, List<LocalDateTime> worked, LocalDateTime now) {
        LocalDateTime begins = told.began != null ? told.began : planned.start();
        LocalDateTime due = begins.plus(length(planned, told));
        if (told.ended != null) {
            return new Break(planned, Stage.OVER, begins.isAfter(told.ended) ? told.ended : begins, told.ended, due, told.began != null, true);
        }
        boolean goesOn = told.began != null && worked.stream().allMatch(at -> at.isBefore(due));
        Stage stage = told.skipped ? Stage.LEFT_OUT : begins.isAfter(now) ? Stage.TO_COME : goesOn || due.isAfter(now) ? Stage.NOW : Stage.OVER;
        return new Break(planned, stage, begins, goesOn && now.isAfter(due) ? now : due, due, told.began != null, false);
    }

    private static Duration length(Pause planned, Told told) {
        Duration length = planned.length().plusMinutes(told.more);
        return length.isNegative() ? Duration.ZERO : length;
    }

    public String key() {
        return planned.key();
    }

    Pause asItIs() {
        return new Pause(key(), begins, ends);
    }
}
