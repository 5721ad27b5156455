package benchful.assessments;

/**
 * Severity times likelihood on a matrix of 5 by 5. The bands are a convention, and others draw them elsewhere: here 1 to 8
 * is low, 9 to 15 medium, 16 to 25 high, as in universities' guidance on risk assessment.
 *
 * @param severity 1 to 5
 * @param likelihood 1 to 5
 */
public record Risk(int severity, int likelihood) {
    private static final int MEDIUM_FROM = 9;
    private static final int HIGH_FROM = 16;

    public Risk {
        if (severity < 1 || severity > 5 || likelihood < 1 || likelihood > 5) {
            throw new IllegalArgumentException("Severity and likelihood go from 1 to 5, not %d and %d".formatted(severity, likelihood));
        }
    }

    public int score() {
        return severity * likelihood;
    }

    public String band() {
        return score() >= HIGH_FROM ? "high" : score() >= MEDIUM_FROM ? "medium" : "low";
    }
}
