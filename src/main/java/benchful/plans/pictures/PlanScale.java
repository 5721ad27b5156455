package benchful.plans.pictures;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the hours of one meeting lie in its picture.
 *
 * @param left  where {@code from} lies [px]
 * @param right where {@code to} lies [px]
 * @param text  size of letters [px]
 */
record PlanScale(LocalDateTime from, LocalDateTime to, double left, double right, double text) {
    private static final int[] TICKS = {5, 10, 15, 30, 60, 120, 240, 720, 1440};

    /** Times outside lie at the edge. */
    double x(LocalDateTime at) {
        LocalDateTime shown = at.isBefore(from) ? from : at.isAfter(to) ? to : at;
        double share = (double) Duration.between(from, shown).toSeconds() / Math.max(1, Duration.between(from, to).toSeconds());
        return left + share * (right - left);
    }

    boolean shows(LocalDateTime start, LocalDateTime end) {
        return start.isBefore(to) && end.isAfter(from);
    }

    /** Full hours or parts of hours, as close as their labels allow. */
    List<LocalDateTime> ticks() {
        double pixels = (right - left) / Math.max(1, Duration.between(from, to).toMinutes());
        int every = IntStream.of(TICKS).filter(minutes -> minutes * pixels >= 3.6 * text).findFirst().orElse(TICKS[TICKS.length - 1]);
        List<LocalDateTime> ticks = new ArrayList<>();
        for (LocalDateTime at = from.withMinute(0).withSecond(0).withNano(0); !at.isAfter(to); at = at.plusMinutes(every)) {
            if (!at.isBefore(from)) {
                ticks.add(at);
            }
        }
        return ticks;
    }
}
