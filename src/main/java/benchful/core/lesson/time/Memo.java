package benchful.core.lesson.time;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * Answers of a function that gives the same for the same question, the latest of them kept: what-ifs ask the same of most steps again
 * and again.
 */
final class Memo<Q, A> {

    private final Function<Q, A> function;
    private final Map<Q, A> known;

    Memo(int most, Function<Q, A> function) {
        this.function = function;
        this.known = new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Q, A> eldest) {
                return size() > most;
            }
        };
    }

    /** Worked out outside the lock, so that two who ask at once may both work it out, and nobody waits for another. */
    A of(Q question) {
        A answer;
        synchronized (known) {
            answer = known.get(question);
        }
        if (answer == null) {
            answer = function.apply(question);
            synchronized (known) {
                known.put(question, answer);
            }
        }
        return answer;
    }
}
