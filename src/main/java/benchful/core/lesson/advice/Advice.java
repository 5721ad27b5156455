package benchful.core.lesson.advice;

import java.util.List;

/**
 * What would help, best first.
 *
 * @param chance      of ending on time as planned now [0 to 1]
 * @param suggestions those that gain at least a minute or one class in a hundred
 * @param complete    false if it was cancelled before all changes were tried
 */
public record Advice(double chance, List<Suggestion> suggestions, boolean complete) {
    public Advice {
        suggestions = List.copyOf(suggestions);
    }
}
