package benchful.core.lesson;

import benchful.core.quantity.Sentence;
import java.util.Objects;

/**
 * A sentence that a tutor can read and that explains one number of the plan.
 *
 * @param subject which number it explains
 */
public record Reason(Subject subject, Sentence sentence) {

    /** What a reason is about. */
    public enum Subject {
        LENGTH, TURNS, HELP, START, PREPARATION
    }

    public Reason {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(sentence, "sentence");
    }

    /** Of words that hold no moment. */
    public Reason(Subject subject, String sentence) {
        this(subject, Sentence.plain(sentence));
    }
}
