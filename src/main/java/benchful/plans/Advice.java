package benchful.plans;

import benchful.core.quantity.Sentence;

/**
 * Something a tutor should know before she prints: not a fault of the input, but a thing to decide or to bring.
 *
 * @param about what it concerns, a word or two: "Seats", "Age"
 * @param sentence what is so, and what to do
 */
public record Advice(String about, Sentence sentence) {
    static final String SAFETY = "Safety";

    /** Of words that hold no moment. */
    public Advice(String about, String sentence) {
        this(about, Sentence.plain(sentence));
    }

    /** Whether it should be settled before anything is printed. */
    public boolean isSafety() {
        return about.equals(SAFETY);
    }
}
