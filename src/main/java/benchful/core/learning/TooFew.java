package benchful.core.learning;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/**
 * That students waited for a tool: so many were too few for so many students. What is enough is not known from it, only that it is more
 * for as many; so one more is tried, and the next class tells. Exact, in whole numbers.
 *
 * @param there    how many there were, 0 or more
 * @param students how many there were for, above 0
 */
public record TooFew(int there, int students) {
    public TooFew {
        if (there < 0 || students < 1) {
            throw new IllegalArgumentException("Some tools or none are too few for some students, not %d for %d".formatted(there, students));
        }
    }

    /** The one that had the most for each student. */
    public static Optional<TooFew> atBest(Collection<TooFew> all) {
        return all.stream().max(Comparator.comparing((TooFew one) -> one, (a, b) -> Long.compare((long) a.there * b.students, (long) b.there * a.students)).thenComparing(TooFew::students));
    }

    /** The fewest that are more for each of so many students. */
    public int more(int forStudents) {
        return Math.toIntExact((long) there * forStudents / students + 1);
    }
}
