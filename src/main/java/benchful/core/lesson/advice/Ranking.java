package benchful.core.lesson.advice;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Comparator;
import org.joda.money.Money;

/** The order in which suggestions are given, in words at {@link Advice#ORDER}. */
final class Ranking {

    /** Sorts what costs nobody knows how much behind what is known. */
    private static final BigDecimal UNKNOWN = new BigDecimal("1e12");

    static final Comparator<Suggestion> MOST_GAINED = Comparator
            .<Suggestion>comparingLong(suggestion -> -Math.round(suggestion.chanceGained() * 100))
            .thenComparing(Suggestion::gained, Comparator.reverseOrder())
            .thenComparing(Suggestion::preparation)
            .thenComparing((Suggestion said) -> said.title().toString());

    private static final Comparator<Suggestion> LEAST_ASKED = Comparator.comparingInt(Suggestion::trouble)
            .thenComparing(Suggestion::preparation)
            .thenComparing(Ranking::money)
            .thenComparingInt(Suggestion::extent);

    static final Comparator<Suggestion> BEST_FIRST = (one, other) -> {
        int better = Boolean.compare(isGood(other), isGood(one));
        int easier = better == 0 && isGood(one) ? LEAST_ASKED.compare(one, other) : better;
        return easier == 0 ? MOST_GAINED.compare(one, other) : easier;
    };

    private Ranking() {
    }

    /** Whether as many classes end in time as are promised. */
    static boolean isGood(Suggestion suggestion) {
        return suggestion.plan().fits();
    }

    /** Whether it gains a minute or a chance in a hundred, and does not lose more of the chance. */
    static boolean gains(Suggestion suggestion) {
        return suggestion.chanceGained() >= 0.01
                || suggestion.chanceGained() > -0.01 && suggestion.gained().compareTo(Duration.ofMinutes(1)) >= 0;
    }

    private static BigDecimal money(Suggestion suggestion) {
        return suggestion.cost().map(Money::getAmount).orElse(UNKNOWN);
    }
}
