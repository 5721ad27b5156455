package benchful.core.lesson.risk;

import benchful.core.lesson.ClosedTime;
import benchful.core.lesson.LessonRequest;
import java.time.Duration;
import java.time.LocalDateTime;

/**
 * Clock time and working time, both in seconds from the start of the first meeting. Working time stands still in breaks and
 * between meetings, and runs on after the last booked end.
 */
final class Clock {

    private final LocalDateTime origin;
    private final double[] from;
    private final double[] to;
    private final double[] meetings;
    private final double[] ends;

    Clock(LessonRequest request) {
        origin = request.start();
        from = ClosedTime.of(request).stream().mapToDouble(ClosedTime::from).toArray();
        to = ClosedTime.of(request).stream().mapToDouble(ClosedTime::to).toArray();
        ends = request.meetings().stream().mapToDouble(meeting -> seconds(meeting.end())).toArray();
        meetings = request.meetings().stream().mapToDouble(meeting -> seconds(meeting.start())).toArray();
    }

    double seconds(LocalDateTime time) {
        return Duration.between(origin, time).toSeconds();
    }

    /** Rounded up to the minute, but for what reckoning adds. */
    LocalDateTime time(double seconds) {
        return origin.plusMinutes((long) Math.ceil((seconds - 1e-3) / 60));
    }

    /** The start of the meeting that a planned time lies in. */
    double meetingOf(double clock) {
        double start = 0;
        for (double meeting : meetings) {
            start = meeting <= clock ? meeting : start;
        }
        return start;
    }

    /** The first clock time at which something of a length can be done with no meeting in it. */
    double outsideFrom(double clock, double length) {
        double start = clock;
        for (int i = 0; i < meetings.length; i++) {
            if (start < ends[i] && start + length > meetings[i]) {
                start = ends[i];
            }
        }
        return start;
    }

    double toWorking(double clock) {
        double working = clock;
        for (int i = 0; i < from.length && from[i] < clock; i++) {
            working -= Math.min(clock, to[i]) - from[i];
        }
        return working;
    }

    /** The clock time at which so much working time has passed; at the beginning of a break, not its end. */
    double toClock(double working) {
        double clock = working;
        for (int i = 0; i < from.length && from[i] < clock; i++) {
            clock += to[i] - from[i];
        }
        return clock;
    }

    /** The same, but at the end of a break. */
    double toClockOnward(double working) {
        double clock = working;
        for (int i = 0; i < from.length && from[i] <= clock; i++) {
            clock += to[i] - from[i];
        }
        return clock;
    }

    /** The first clock time at which something of a length can be done without a break in it. */
    double wholeFrom(double clock, double length) {
        double start = clock;
        for (int i = 0; i < from.length; i++) {
            if (start < to[i] && start + length > from[i]) {
                start = to[i];
            }
        }
        return start;
    }
}
