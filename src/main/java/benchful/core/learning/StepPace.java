package benchful.core.learning;

import benchful.core.learning.NormalInverseGamma.Weighted;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * At what pace a step really goes, as a multiple of the minutes that were typed for one student. The model is explained at the package.
 *
 * @param seen  one for each class in which the step was noted, in order of time
 * @param after what is believed of the logarithm of the multiple, all classes counted
 */
public record StepPace(List<Seen> seen, NormalInverseGamma after) implements Multiple {
    /**
     * Typed minutes are off by a factor of 1.5 or so (sqrt(v / k) = 0.38 on the logarithmic scale, about that of a factor drawn evenly
     * from a half to two), and the same step takes two classes times that differ by an eighth (v = 0.12 squared): common practice,
     * no source. So one class counts ten times as much as what was typed, and how unlike classes are is believed as if it had been
     * seen in six.
     */
    public static final NormalInverseGamma PRIOR = new NormalInverseGamma(0, 0.1, 3, 2 * 0.12 * 0.12);

    /** By how much more than typed a step must take to be said to run over; as {@link StepReview} has it. */
    private static final double RUNS_OVER = Math.log(1.1);

    public StepPace {
        seen = List.copyOf(seen);
    }

    /**
     * A step in one class.
     *
     * @param multiple of the minutes typed, above 0
     * @param precision how many times as much it tells as the end of the step alone would, above 0
     */
    public record Seen(LocalDate day, double multiple, double precision) {
        public Seen {
            if (!(multiple > 0)) {
                throw new IllegalArgumentException("A step must have taken a multiple above 0, not " + multiple);
            }
        }

        public Seen(LocalDate day, double multiple) {
            this(day, multiple, 1);
        }

        Weighted weighted(LocalDate today) {
            return new Weighted(Math.log(multiple), Ageing.weight(day, today), precision);
        }
    }

    public static StepPace of(List<Seen> classes, LocalDate today) {
        List<Seen> inOrder = classes.stream().sorted(Comparator.comparing(Seen::day)).toList();
        return new StepPace(inOrder, PRIOR.updated(inOrder.stream().map(s -> s.weighted(today)).toList()));
    }

    /** The chance that it takes a tenth longer than these minutes at least; they are a multiple of those typed. */
    public double chanceOfRunningOver(double minutes) {
        return after.chanceAbove(Math.log(minutes) + RUNS_OVER);
    }

    /** A time for one student, as it was typed, made what classes showed, and rounded to what can be read off a clock. */
    public Duration of(Duration typed) {
        return rounded(typed.toSeconds() * multiple());
    }

    private static Duration rounded(double seconds) {
        int grain = seconds < 120 ? 1 : seconds < 600 ? 10 : 30;
        return Duration.ofSeconds(Math.round(seconds / grain) * grain);
    }
}
