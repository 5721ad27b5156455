package benchful.classes;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** How many of such classes are to keep the times of the plan: the more, the later the times. */
public enum Promise {
    HALF(0.5),
    THREE_IN_FOUR(0.75),
    NINE_IN_TEN(0.9);

    private final double share;

    Promise(double share) {
        this.share = share;
    }

    /** As written in files: half, three_in_four, nine_in_ten. */
    public static List<String> names() {
        return Arrays.stream(values()).map(promise -> promise.name().toLowerCase(Locale.ROOT)).toList();
    }

    /** In (0, 1). */
    public double share() {
        return share;
    }
}
