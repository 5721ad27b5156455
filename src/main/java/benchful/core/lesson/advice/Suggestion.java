package benchful.core.lesson.advice;

import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.MinuteWords;
import benchful.core.quantity.Sentence;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * One change, or two together, with what they gain.
 *
 * @param changes     one or two
 * @param request     the request with the changes made
 * @param plan        its plan
 * @param gained      how much more time is left before the booked end; negative if less
 * @param chance      its chance of ending on time [0 to 1]
 * @param chanceGained the difference from the chance without the changes, on the same simulated students [-1 to 1]
 * @param preparation what it adds to the tutor's work before the class
 * @param cost        money it costs, if known
 */
public record Suggestion(List<Change> changes, LessonRequest request, LessonPlan plan, Duration gained, double chance,
        double chanceGained, Duration preparation, Optional<Money> cost) {

    public Suggestion {
        changes = List.copyOf(changes);
    }

    /** The greater trouble of its changes first, then how many there are. */
    int trouble() {
        return changes.stream().mapToInt(change -> change.trouble().ordinal()).max().orElse(0) * 2 + changes.size();
    }

    /** How far its changes go, see {@link Change#extent()}. */
    int extent() {
        return changes.stream().mapToInt(Change::extent).sum();
    }

    public Sentence title() {
        return Sentence.joined("; ", changes.stream().map(Change::title).toList());
    }

    /** What more it asks of the tutor in the class, in a line; empty where it is nothing. */
    public String asks() {
        return changes.stream().map(Change::asks).filter(text -> !text.isEmpty()).collect(Collectors.joining("; "));
    }

    /** What the students lose by it, in a line; empty where it is nothing. */
    public String loses() {
        return changes.stream().map(Change::loses).filter(text -> !text.isEmpty()).collect(Collectors.joining("; "));
    }

    /** "Have a helper: gains 12 min, on time in 91 of 100 classes (+23), 40 min more to prepare." */
    public String sentence() {
        String time = gained.isNegative() ? "loses " + MinuteWords.minutes(gained.negated()) : "gains " + MinuteWords.minutes(gained);
        String text = String.format(Locale.ROOT, "%s: %s, on time in %d of 100 classes (%+d)", title(), time,
                Math.round(chance * 100), Math.round(chanceGained * 100));
        return text + (preparation.isZero() ? "" : ", " + MinuteWords.minutes(preparation) + " more to prepare")
                + cost.map(money -> ", costs " + money).orElse("") + ".";
    }
}
