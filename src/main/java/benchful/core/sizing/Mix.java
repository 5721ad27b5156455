package benchful.core.sizing;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * The proportion of two parts, and whether it is of their weights or their volumes: the two are not interchangeable.
 *
 * @param a parts of the first
 * @param b parts of the second
 */
public record Mix(By by, BigDecimal a, BigDecimal b) {
    /** What a supplier's ratio counts. */
    public enum By {
        WEIGHT,
        VOLUME
    }

    public Mix {
        Objects.requireNonNull(by, "by");
        if (a.signum() <= 0 || b.signum() <= 0) {
            throw new IllegalArgumentException("Both parts of a mix must be more than nothing.");
        }
    }

    BigDecimal sum() {
        return a.add(b);
    }

    String words() {
        return "%s : %s by %s".formatted(a.toPlainString(), b.toPlainString(), by == By.WEIGHT ? "weight" : "volume");
    }
}
