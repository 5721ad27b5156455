package benchful.core.learning;

import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One step, planned against actual.
 *
 * @param group 0 for the whole class, else the group from 1
 * @param actual null where nothing was typed
 * @param counts of who had finished when, where somebody counted
 */
public record StepReview(String step, int group, String title, Duration planned, @Nullable Duration actual, List<Count> counts) {
    /** Less than this over is not called running over; common practice, no source. */
    static final Duration LEAST_MARGIN = Duration.ofMinutes(2);

    private static final int TENTH = 10;

    public StepReview {
        counts = List.copyOf(counts);
    }

    StepReview(String step, int group, String title, Duration planned, @Nullable Duration actual) {
        this(step, group, title, planned, actual, List.of());
    }

    /** How one step went. */
    public enum Verdict {
        NOT_TYPED,
        AS_PLANNED,
        RAN_OVER,
        SHORTER
    }

    /** What several groups of one class needed for a step, together. */
    static StepReview together(List<StepReview> groups) {
        StepReview first = groups.get(0);
        return new StepReview(first.step, 0, first.title, groups.stream().map(StepReview::planned).reduce(Duration.ZERO, Duration::plus),
                groups.stream().map(StepReview::actual).reduce(Duration.ZERO, Duration::plus));
    }

    /** That of the planned step it is held against. */
    public String key() {
        return PlannedStep.key(step, group);
    }

    /** "Knot the strand, group 2". */
    public String name() {
        return PlannedStep.named(title, group);
    }

    /** Beyond two minutes and a tenth of the plan, whichever is more, it ran over, or was shorter. */
    public Verdict verdict() {
        if (actual == null) {
            return Verdict.NOT_TYPED;
        }
        int beyond = difference().abs().compareTo(margin());
        return beyond <= 0 ? Verdict.AS_PLANNED : difference().isNegative() ? Verdict.SHORTER : Verdict.RAN_OVER;
    }

    public boolean ranOver() {
        return verdict() == Verdict.RAN_OVER;
    }

    /** Actual less planned; zero where nothing was typed. */
    public Duration difference() {
        return actual == null ? Duration.ZERO : actual.minus(planned);
    }

    private Duration margin() {
        Duration tenth = planned.dividedBy(TENTH);
        return tenth.compareTo(LEAST_MARGIN) > 0 ? tenth : LEAST_MARGIN;
    }
}
