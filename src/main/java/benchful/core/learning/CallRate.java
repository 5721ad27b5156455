package benchful.core.learning;

import java.time.LocalDate;
import java.util.List;

/**
 * How often one student asks for help at a step. The model is explained at the package.
 *
 * @param classes in which hands were counted while the step was made
 * @param calls   that were seen in all of them
 * @param after   what is believed of the calls of one student in an hour of work, all classes counted [1/h]
 */
public record CallRate(int classes, int calls, Gamma after) {
    /** What was typed counts like so many calls that were seen: it is off by a factor of 1.7 or so (common practice, no source). */
    private static final double TYPED = 3;

    /** Where less was typed, or nothing, about this many are believed to come [1/h] (common practice, no source). */
    private static final double LEAST_TYPED = 0.25;

    /**
     * A step in one class.
     *
     * @param calls hands that went up
     * @param hours that students worked at it, one after the other added up, without those in which they asked; above 0 [h]
     */
    public record Seen(LocalDate day, int calls, double hours) {
        public Seen {
            if (calls < 0 || !(hours > 0)) {
                throw new IllegalArgumentException("In hours above 0 some calls or none can be seen, not %s in %s".formatted(calls, hours));
            }
        }
    }

    /** @param typed calls of one student in an hour of work, as the tutor typed them, 0 or more [1/h] */
    public static CallRate of(List<Seen> classes, double typed, LocalDate today) {
        double calls = classes.stream().mapToDouble(s -> Ageing.weight(s.day(), today) * s.calls()).sum();
        double hours = classes.stream().mapToDouble(s -> Ageing.weight(s.day(), today) * s.hours()).sum();
        return new CallRate(classes.size(), classes.stream().mapToInt(Seen::calls).sum(), new Gamma(TYPED, TYPED / Math.max(typed, LEAST_TYPED)).updated(calls, hours));
    }
}
