package benchful.core.needs;

import java.math.BigDecimal;

/** What is brought beyond the net amount, because some of it spoils. */
public sealed interface Allowance {
    /** @param percent added to the net amount, 0 to below 100 */
    record Percentage(BigDecimal percent) implements Allowance {
        public Percentage {
            within(percent);
        }
    }

    /**
     * As many as leave enough good ones with a probability, where what is brought is counted or cut to pieces; of anything else
     * the percentage is added.
     *
     * @param spoils chance that one unit spoils, as a percentage, 0 to below 100
     * @param confidence the probability, above 0 and below 1
     */
    record Confidence(BigDecimal spoils, BigDecimal confidence) implements Allowance {
        public Confidence {
            within(spoils);
            if (confidence.signum() <= 0 || confidence.compareTo(BigDecimal.ONE) >= 0) {
                throw new IllegalArgumentException("A confidence must lie above 0 and below 1, but is %s.".formatted(confidence));
            }
        }
    }

    static Allowance none() {
        return new Percentage(BigDecimal.ZERO);
    }

    private static void within(BigDecimal percent) {
        if (percent.signum() < 0 || percent.compareTo(BigDecimal.valueOf(100)) >= 0) {
            throw new IllegalArgumentException("A waste percentage must be from 0 to below 100, but is %s.".formatted(percent));
        }
    }
}
