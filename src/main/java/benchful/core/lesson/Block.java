package benchful.core.lesson;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;

/**
 * One step on the clock. A make step that a break or the end of a meeting interrupts has more than one segment.
 *
 * @param step     id of the step
 * @param group    0 for the whole class, else the group from 1
 * @param start    when it begins
 * @param end      when the class moves on; for a wait, when it is ready at the earliest
 * @param segments the times really worked, in order; one if not interrupted
 * @param uses     tools and equipment kept busy, in units in all
 * @param slack    how much later it could begin without a later finish [working time in whole minutes; of what the class does not work
 *                 on clock time]; zero, though not critical, of what goes on when the class has made all
 * @param critical whether a delay of a minute delays the finish
 * @param tutorShare share of the tutor's time it takes [0 to 1]
 * @param reasons  why it is as long as it is, and why it stands where it stands
 */
public record Block(String step, String title, StepKind kind, Lane lane, int group, LocalDateTime start, LocalDateTime end,
        List<Segment> segments, List<ToolUse> uses, Duration slack, boolean critical, double tutorShare, List<Reason> reasons) {

    public Block {
        Guard.named(step, title);
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(lane, "lane");
        Guard.atLeast(0, group, "The group");
        segments = List.copyOf(segments);
        uses = List.copyOf(uses);
        Guard.notNegative(slack, "slack of " + title);
        reasons = List.copyOf(reasons);
        if (end.isBefore(start)) {
            throw new IllegalArgumentException("\"" + title + "\" ends at " + end + " before it starts at " + start);
        }
    }

    /** Whether somebody takes part in both. */
    public boolean sharesStudents(Block other) {
        return group == other.group || group == 0 || other.group == 0;
    }

    /** The same step at other times. */
    public Block at(List<Segment> times, Lane otherLane) {
        return new Block(step, title, kind, otherLane, group, times.get(0).start(), times.get(times.size() - 1).end(), times, uses, slack,
                critical, tutorShare, reasons);
    }

    /** The time worked, breaks left out. */
    public Duration length() {
        return segments.stream().map(Segment::length).reduce(Duration.ZERO, Duration::plus);
    }
}
