package benchful.core.learning;

/** How many times what was typed it really is, as far as classes showed it: a belief on the logarithmic scale. */
sealed interface Multiple permits StepPace, LevelPace, BreakLength {
    double NINE_IN_TEN = 0.9;

    /** What is believed of its logarithm. */
    NormalInverseGamma after();

    /** As likely too low as too high. */
    default double multiple() {
        return Math.exp(after().mean());
    }

    /** With nine chances in ten it is at least this. */
    default double least() {
        return Math.exp(after().quantile((1 - NINE_IN_TEN) / 2));
    }

    /** With nine chances in ten it is at most this. */
    default double most() {
        return Math.exp(after().quantile((1 + NINE_IN_TEN) / 2));
    }
}
