package benchful.core.day;

import java.time.LocalDateTime;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * One thing that somebody told of the class. Never changed; an {@link Kind#UNDO} makes an earlier one count for nothing.
 *
 * @param id drawn where it was tapped
 * @param at when it was tapped
 * @param step key of the step or break that it is of; of an undo the id of the tap that is taken back; null of what concerns the whole class
 * @param number minutes, students or a seat from 1, by the kind; 0 where it has none
 * @param text a note or a name; empty where it has none
 */
public record Tap(String id, LocalDateTime at, Kind kind, @Nullable String step, int number, String text) {
    /** In order of time; of the same moment in the order of their ids, so that every device has the same order. */
    public static final Comparator<Tap> IN_ORDER = Comparator.comparing(Tap::at).thenComparing(Tap::id);

    /** What can be told. */
    public enum Kind {
        /** The step or break begins. */
        START,
        /** The step is over, and the next begins; or the break is over. */
        FINISH,
        /** The step or break is left out. */
        SKIP,
        /** The step or break is given so many minutes more, or fewer. */
        MORE,
        /** So many students have finished the step. */
        COUNT,
        /** So many students want help. */
        HELP,
        /** Something to remember, of the step or of the class. */
        NOTE,
        /** Somebody was hurt, or something was damaged. */
        INCIDENT,
        /** The student in this seat is here, and came late. */
        LATE,
        /** The student in this seat did not come. */
        ABSENT,
        /** The student in this seat has left. */
        LEFT,
        /** An earlier tap counts for nothing. */
        UNDO
    }
}
