package benchful.core.lesson;

import benchful.core.quantity.Sentence;
import java.util.List;
import java.util.Objects;

/**
 * One thing in the request that no plan can meet.
 *
 * @param kind  what sort of fault
 * @param steps ids of the steps at fault, may be empty where the hours are at fault
 * @param what  a whole sentence that names them
 * @param mend  a whole sentence that says what to change
 */
public record Conflict(Kind kind, List<String> steps, Sentence what, String mend) {

    /** The sorts of fault. */
    public enum Kind {
        DUPLICATE_STEP, UNKNOWN_STEP, CYCLE, GAP_REVERSED, GAPS_IMPOSSIBLE, TIMES_REVERSED, TOOL_MISSING, TOOL_SHORT, HOURS_WRONG,
        BREAK_WRONG, WAIT_REVERSED, AHEAD_AFTER_CLASS, TOO_MANY_GROUPS, BETWEEN_MEETINGS, NO_ORDER
    }

    public Conflict {
        Objects.requireNonNull(kind, "kind");
        steps = List.copyOf(steps);
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(mend, "mend");
    }

    /** Of words that hold no moment. */
    public Conflict(Kind kind, List<String> steps, String what, String mend) {
        this(kind, steps, Sentence.plain(what), mend);
    }

    public String sentence() {
        return what + " " + mend;
    }
}
