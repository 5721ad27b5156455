package benchful.core.lesson.order.model;

import benchful.core.lesson.ClosedTime;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * When the class works, in grains from the start of the first meeting: it is open at all times except in breaks and between
 * meetings, and stays open after the last meeting, so that a plan that runs over is still a plan.
 */
public final class Hours {

    /** Later than all plans, yet small enough to count on from. */
    private static final long NEVER = Long.MAX_VALUE / 4;

    private final LocalDateTime origin;
    private final long grain;
    private final List<ClosedTime> closed;
    private final List<ClosedTime> met;
    private final List<ClosedTime> away;
    private final List<ClosedTime> beforeLast;
    private final List<ClosedTime> afterLast;

    private Hours(LocalDateTime origin, long grain, List<ClosedTime> closed, List<ClosedTime> met) {
        this.origin = origin;
        this.grain = grain;
        this.closed = List.copyOf(closed);
        this.met = List.copyOf(met);
        this.away = closed.stream().filter(ClosedTime::away).toList();
        this.beforeLast = met.stream().map(part -> part.from() < lastMeeting() ? part : new ClosedTime(part.from(), NEVER, false)).toList();
        this.afterLast = List.of(new ClosedTime(-1, bookedEnd(), false));
    }

    /** In seconds at first. */
    static Hours of(LessonRequest request) {
        return new Hours(request.start(), 1, ClosedTime.of(request), request.meetings().stream().map(meeting -> met(request, meeting)).toList());
    }

    private static ClosedTime met(LessonRequest request, Meeting meeting) {
        return new ClosedTime(Duration.between(request.start(), meeting.start()).toSeconds(), Duration.between(request.start(), meeting.end()).toSeconds(), false);
    }

    /** When the last meeting begins. */
    public long lastMeeting() {
        return met.get(met.size() - 1).from();
    }

    /** When the last meeting is booked to end. */
    public long bookedEnd() {
        return met.get(met.size() - 1).to();
    }

    /** The times in which an activity can't be begun, or not be done. */
    public List<ClosedTime> closedTo(Activity activity) {
        return switch (activity.presence()) {
            case CLASS, CLASS_WITH_BREAKS -> closed;
            case BEGUN_IN_MEETING -> away;
            case NOBODY -> List.of();
            case OUTSIDE -> met;
            case BEFORE_LAST_MEETING -> beforeLast;
            case AFTER_LAST_MEETING -> afterLast;
        };
    }

    public List<ClosedTime> closed() {
        return closed;
    }

    /** The same hours counted in grains of so many seconds. */
    Hours in(long seconds) {
        return new Hours(origin, seconds, in(seconds, closed), in(seconds, met));
    }

    private static List<ClosedTime> in(long seconds, List<ClosedTime> times) {
        return times.stream().map(part -> new ClosedTime(part.from() / seconds, part.to() / seconds, part.away())).toList();
    }

    public LocalDateTime toTime(long grains) {
        return origin.plusSeconds(grains * grain);
    }

    public Duration toLength(long grains) {
        return Duration.ofSeconds(grains * grain);
    }

    /** The first time at or after {@code from} at which the activity may begin. */
    public long earliestStart(Activity activity, long from) {
        long start = Math.max(from, activity.notBefore());
        for (ClosedTime part : closedTo(activity)) {
            if (clashes(activity, start, part)) {
                start = part.to();
            }
        }
        return start;
    }

    private static boolean clashes(Activity activity, long start, ClosedTime part) {
        if (activity.presence() == Presence.BEGUN_IN_MEETING) {
            return part.from() < start && start < part.to();
        }
        if (activity.pausable() && activity.work() > 0) {
            return part.from() <= start && start < part.to();
        }
        return start < part.to() && start + activity.work() > part.from();
    }

    /** When an activity ends that begins at a time it may begin. */
    public long end(Activity activity, long start) {
        long end = start + activity.work();
        if (activity.hands() && activity.pausable()) {
            for (ClosedTime part : closed) {
                if (start < part.from() && part.from() < end) {
                    end += part.to() - part.from();
                }
            }
        }
        return end;
    }

    /** The first start from which the activity ends at or after {@code end}, not looking past {@code horizon}. */
    public long earliestStartEndingFrom(Activity activity, long end, long horizon) {
        return Math.min(horizon, latestStartEndingBy(activity, end - 1, horizon) + 1);
    }

    /** No start after this one, which is before {@code horizon}, lets the activity end by {@code end}; -1 if none does at all. */
    public long latestStartEndingBy(Activity activity, long end, long horizon) {
        long start = activity.hands() && activity.pausable() && activity.work() > 0 ? startOfInterrupted(activity.work(), end)
                : startOfWhole(activity, end);
        return Math.max(-1, Math.min(start, horizon - 1));
    }

    /** Backwards from the end, over the closed times, until all is worked. */
    private long startOfInterrupted(long work, long end) {
        long until = end;
        long left = work;
        for (int i = closed.size() - 1; i >= 0; i--) {
            ClosedTime part = closed.get(i);
            if (part.to() <= until) {
                if (until - part.to() >= left) {
                    return until - left;
                }
                left -= until - part.to();
            }
            until = Math.min(until, part.from());
        }
        return until - left;
    }

    /** Backwards from the end, before each closed time that is in the way. */
    private long startOfWhole(Activity activity, long end) {
        long start = end - activity.work();
        List<ClosedTime> times = closedTo(activity);
        for (int i = times.size() - 1; i >= 0; i--) {
            if (clashes(activity, start, times.get(i))) {
                start = times.get(i).from() - (activity.presence() == Presence.BEGUN_IN_MEETING ? 0 : activity.work());
            }
        }
        return start;
    }

    /** The stretches in which an activity is really worked on. */
    public List<long[]> segments(Activity activity, long start) {
        long end = end(activity, start);
        List<long[]> segments = new ArrayList<>();
        long from = start;
        for (ClosedTime part : closed) {
            if (activity.hands() && from < part.from() && part.from() < end) {
                segments.add(new long[] {from, part.from()});
                from = part.to();
            }
        }
        segments.add(new long[] {from, end});
        return segments;
    }

    /** Time the class is open between two instants. */
    public long open(long from, long to) {
        long open = Math.max(0, to - from);
        for (ClosedTime part : closed) {
            open -= Math.max(0, Math.min(to, part.to()) - Math.max(from, part.from()));
        }
        return Math.max(0, open);
    }
}
