package benchful.core.learning;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** How much a class of long ago still counts. */
final class Ageing {
    /** After so long a class counts for half (common practice, no source). */
    private static final double HALF_LIFE_YEARS = 2;

    private static final double DAYS = 365.25;

    private Ageing() {}

    /** @return 1 today and for days to come, half two years ago */
    static double weight(LocalDate day, LocalDate today) {
        return Math.pow(0.5, Math.max(0, ChronoUnit.DAYS.between(day, today)) / DAYS / HALF_LIFE_YEARS);
    }
}
