package benchful.core.sizing;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;

/** Checks of what a sizing is asked, with messages for the person who wrote it. */
final class Guard {
    private Guard() {}

    static Quantity positive(Quantity q, Dimension dimension, String what) {
        if (of(q, dimension, what).signum() <= 0) {
            throw new IllegalArgumentException(Sentence.of("%s must be more than nothing, but is %s.", what, q).toString());
        }
        return q;
    }

    static Quantity notNegative(Quantity q, Dimension dimension, String what) {
        if (of(q, dimension, what).signum() < 0) {
            throw new IllegalArgumentException(Sentence.of("%s can't be negative, but is %s.", what, q).toString());
        }
        return q;
    }

    static void between(int n, int least, int most, String what) {
        if (n < least || n > most) {
            throw new IllegalArgumentException("%s must be from %d to %d, but is %d.".formatted(what, least, most, n));
        }
    }

    private static Quantity of(Quantity q, Dimension dimension, String what) {
        if (!q.dimension().equals(dimension)) {
            throw new IllegalArgumentException(
                    "%s must be %s, but is %s.".formatted(what, dimension.words(), q.dimension().words()));
        }
        return q;
    }
}
