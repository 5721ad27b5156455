package benchful.core.buying;

import java.time.DayOfWeek;
import java.time.LocalDate;

/**
 * How long goods take from order to delivery. Public holidays are not known here.
 *
 * @param days     0 for the same day
 * @param weekdays true where only Mondays to Fridays count, as suppliers who send parcels mean it; else every day counts
 */
public record LeadTime(int days, boolean weekdays) {
    public LeadTime {
        if (days < 0) {
            throw new IllegalArgumentException("Lead days can't be negative, as %d is.".formatted(days));
        }
    }

    /** The day on which goods ordered on this day arrive. */
    public LocalDate arrives(LocalDate ordered) {
        if (!weekdays) {
            return ordered.plusDays(days);
        }
        LocalDate day = ordered;
        for (int left = days; left > 0; ) {
            day = day.plusDays(1);
            left -= isWeekday(day) ? 1 : 0;
        }
        return day;
    }

    /** The last day on which to order what must be there on this day. */
    public LocalDate orderBy(LocalDate needed) {
        LocalDate day = needed.minusDays(days);
        while (arrives(day).isAfter(needed)) {
            day = day.minusDays(1);
        }
        return day;
    }

    private static boolean isWeekday(LocalDate day) {
        return day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY;
    }
}
