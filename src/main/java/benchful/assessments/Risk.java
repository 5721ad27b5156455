package benchful.assessments;

/**
 * Severity times likelihood on a matrix of 5 by 5.
 *
 * @param severity 1 (slight) to 5 (grave)
 * @param likelihood 1 (hardly) to 5 (nearly sure)
 */
public record Risk(int severity, int likelihood) {
    /** Of either side of the matrix. */
    public static final int GRADES = 5;

    public Risk {
        if (severity < 1 || severity > GRADES || likelihood < 1 || likelihood > GRADES) {
            throw new IllegalArgumentException("Severity and likelihood go from 1 to 5, not %d and %d".formatted(severity, likelihood));
        }
    }

    public int score() {
        return severity * likelihood;
    }
}
