package benchful.core.learning;

import benchful.core.learning.NormalInverseGamma.Weighted;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * How long a break of so many planned minutes really takes, as a multiple of them. The model is explained at the package.
 *
 * @param seen  one for each class that had such a break and of which it is known how long it was, in order of time
 * @param after what is believed of the logarithm of the multiple, all classes counted
 */
public record BreakLength(List<Seen> seen, NormalInverseGamma after) implements Multiple {
    /**
     * Planned breaks are off by a factor of 1.5 or so (sqrt(v / k) = 0.43 on the logarithmic scale), and the same break takes two
     * classes times that differ by a quarter (v = 0.25 squared): common practice, no source. So one class counts three times as much as the plan.
     */
    static final NormalInverseGamma PRIOR = new NormalInverseGamma(0, 1 / 3.0, 3, 2 * 0.25 * 0.25);

    public BreakLength {
        seen = List.copyOf(seen);
    }

    /**
     * Such a break in one class.
     *
     * @param multiple of the minutes planned, above 0
     */
    public record Seen(LocalDate day, double multiple) {
        public Seen {
            if (!(multiple > 0)) {
                throw new IllegalArgumentException("A break must have taken a multiple above 0, not " + multiple);
            }
        }
    }

    public static BreakLength of(List<Seen> classes, LocalDate today) {
        List<Seen> inOrder = classes.stream().sorted(Comparator.comparing(Seen::day)).toList();
        return new BreakLength(inOrder, PRIOR.updated(inOrder.stream().map(s -> new Weighted(Math.log(s.multiple()), Ageing.weight(s.day(), today))).toList()));
    }

    /** To the minute, and one at least: nobody plans a break closer. */
    public Duration of(Duration planned) {
        return minutes(planned, multiple());
    }

    /** With nine chances in ten such breaks usually take at least this long, and at most {@link #longest}. */
    public Duration shortest(Duration planned) {
        return minutes(planned, least());
    }

    public Duration longest(Duration planned) {
        return minutes(planned, most());
    }

    private static Duration minutes(Duration planned, double multiple) {
        return Duration.ofMinutes(Math.max(1, Math.round(planned.toSeconds() / 60.0 * multiple)));
    }
}
