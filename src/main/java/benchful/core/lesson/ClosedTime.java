package benchful.core.lesson;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A time [from, to) in which the class does not work, in seconds from the start of the first meeting.
 *
 * @param away whether it lies between two meetings, when the room is empty; else it is a break
 */
public record ClosedTime(long from, long to, boolean away) {

    /** All of a request's closed times in order, those that touch made one. */
    public static List<ClosedTime> of(LessonRequest request) {
        List<ClosedTime> closed = new ArrayList<>();
        for (Break pause : request.breaks()) {
            closed.add(new ClosedTime(seconds(request, pause.start()), seconds(request, pause.end()), false));
        }
        for (int i = 1; i < request.meetings().size(); i++) {
            closed.add(new ClosedTime(seconds(request, request.meetings().get(i - 1).end()),
                    seconds(request, request.meetings().get(i).start()), true));
        }
        closed.removeIf(part -> part.from() == part.to());
        closed.sort(Comparator.comparingLong(ClosedTime::from));
        return merged(closed);
    }

    private static long seconds(LessonRequest request, LocalDateTime time) {
        return Duration.between(request.start(), time).toSeconds();
    }

    private static List<ClosedTime> merged(List<ClosedTime> sorted) {
        List<ClosedTime> merged = new ArrayList<>();
        for (ClosedTime next : sorted) {
            ClosedTime last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && next.from() <= last.to()) {
                merged.set(merged.size() - 1,
                        new ClosedTime(last.from(), Math.max(last.to(), next.to()), last.away() || next.away()));
            } else {
                merged.add(next);
            }
        }
        return List.copyOf(merged);
    }
}
