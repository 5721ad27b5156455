package benchful.core.lesson.advice;

import java.util.List;

/**
 * What would help, best first as {@link #ORDER} says.
 *
 * @param chance      of ending on time as planned now [0 to 1]
 * @param suggestions those that gain at least a minute or one class in a hundred
 * @param comfortable whether the class ends in time so surely that nothing was tried
 * @param complete    false if it was cancelled before all changes were tried
 */
public record Advice(double chance, List<Suggestion> suggestions, boolean comfortable, boolean complete) {

    /** In which order the suggestions come, to be printed with them. */
    public static final String ORDER = "First stands what lets you promise the booked end: what asks least of you and others first, then what "
            + "takes the least preparation, money and change. Then comes the rest by what it gains.";

    public Advice {
        suggestions = List.copyOf(suggestions);
    }
}
