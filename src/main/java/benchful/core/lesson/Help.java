package benchful.core.lesson;

/**
 * How much help a step takes.
 *
 * @param callsPerStudentHour how often one student asks, per hour of work between calls [1/h], 0 or more
 * @param minutesPerCall      how long one call keeps the tutor or a helper [min], 0 or more
 */
public record Help(double callsPerStudentHour, double minutesPerCall) {

    /** As long as any step may last: 60 days. */
    private static final int LONGEST = 86_400;

    public static final Help NONE = new Help(0, 0);

    public Help {
        if (!(callsPerStudentHour >= 0 && callsPerStudentHour <= 3600) || !(minutesPerCall >= 0 && minutesPerCall <= LONGEST)) {
            throw new IllegalArgumentException("Help must be 0 to 3600 calls an hour of 0 to " + LONGEST + " minutes, not "
                    + callsPerStudentHour + " calls of " + minutesPerCall + " minutes");
        }
    }

    public boolean isNone() {
        return callsPerStudentHour == 0 || minutesPerCall == 0;
    }
}
