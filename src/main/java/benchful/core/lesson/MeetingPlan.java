package benchful.core.lesson;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;

/**
 * What falls into one meeting.
 *
 * @param number   from 1
 * @param start    booked start
 * @param end      booked end
 * @param finish   when the last work of the class in it ends; its start if there is none
 * @param steps    ids of the steps that begin or go on in it, by start
 */
public record MeetingPlan(int number, LocalDateTime start, LocalDateTime end, LocalDateTime finish, List<String> steps) {
    public MeetingPlan {
        steps = List.copyOf(steps);
    }

    /** Booked end less finish: negative if it runs over. */
    public Duration margin() {
        return Duration.between(finish, end);
    }
}
