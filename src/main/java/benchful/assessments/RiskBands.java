package benchful.assessments;

/**
 * Where the bands of a risk matrix of 5 by 5 begin. They are a convention, and others draw them elsewhere.
 *
 * @param mediumFrom lowest score of a medium risk
 * @param highFrom lowest score of a high one
 */
public record RiskBands(int mediumFrom, int highFrom) {
    /** 1 to 8 low, 9 to 15 medium, 16 to 25 high: one of those in universities' guidance on risk assessment. */
    public static final RiskBands USUAL = new RiskBands(9, 16);

    private static final int LEAST = 2;
    private static final int MOST = 25;

    public RiskBands {
        if (mediumFrom < LEAST || highFrom <= mediumFrom || highFrom > MOST) {
            throw new IllegalArgumentException("Medium begins from 2, high above it and at most at 25, not %d and %d.".formatted(mediumFrom, highFrom));
        }
    }

    /** "low", "medium" or "high". */
    public String of(Risk risk) {
        return risk.score() >= highFrom ? "high" : risk.score() >= mediumFrom ? "medium" : "low";
    }

    /** "1 to 8 low, 9 to 15 medium, 16 to 25 high". */
    public String words() {
        return "1 to %d low, %d to %d medium, %d to %d high".formatted(mediumFrom - 1, mediumFrom, highFrom - 1, highFrom, MOST);
    }
}
