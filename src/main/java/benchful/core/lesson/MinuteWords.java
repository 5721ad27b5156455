package benchful.core.lesson;

import java.time.Duration;
import java.util.Locale;

/** Lengths of time as a tutor says them. */
public final class MinuteWords {

    private MinuteWords() {
    }

    /** Rounded up to the minute: "34 min", "2 h", "2 h 05 min". */
    public static String minutes(Duration length) {
        long minutes = length.plusSeconds(59).toMinutes();
        if (minutes < 60) {
            return minutes + " min";
        }
        return minutes % 60 == 0 ? minutes / 60 + " h" : String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
    }
}
