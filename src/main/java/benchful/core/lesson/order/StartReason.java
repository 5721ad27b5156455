package benchful.core.lesson.order;

import benchful.core.lesson.MinuteWords;
import benchful.core.lesson.Reason;
import benchful.core.lesson.Reason.Subject;
import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Model;
import benchful.core.quantity.Sentence;
import java.util.Comparator;
import java.util.Optional;

/** Why an activity begins when it does: the last thing that kept it from beginning sooner. */
final class StartReason {

    private final Model model;
    private final long[] starts;

    StartReason(Model model, long[] starts) {
        this.model = model;
        this.starts = starts;
    }

    Reason of(Activity activity) {
        return new Reason(Subject.START, sentence(activity));
    }

    private Sentence sentence(Activity activity) {
        long start = starts[activity.index()];
        if (start == 0) {
            return Sentence.plain("Begins with the class.");
        }
        String why = whyThen(activity, start);
        boolean later = activity.isAskedFor() && start > activity.notBefore();
        return later ? Sentence.of("You asked for %s. %s", model.hours().toTime(activity.notBefore()).toLocalTime(), why) : Sentence.plain(why);
    }

    private String whyThen(Activity activity, long start) {
        if (activity.isAskedFor() && start == activity.notBefore()) {
            return "Begins at the time you asked for.";
        }
        return afterLink(activity, start).or(() -> afterMeeting(activity, start)).or(() -> afterClosed(start)).or(() -> afterResource(activity, start))
                .orElse("Is held back so that the gaps around it are kept.");
    }

    private Optional<String> afterLink(Activity activity, long start) {
        return model.gaps().stream().filter(gap -> gap.to() == activity.index() && gap.hasLeast())
                .filter(gap -> model.end(gap.from(), starts[gap.from()]) + gap.least() == start)
                .map(gap -> follows(model.activity(gap.from()), gap.least())).findFirst();
    }

    private String follows(Activity before, long gap) {
        String name = "\"" + before.title() + "\"";
        if (gap != 0) {
            return "Begins " + MinuteWords.minutes(model.hours().toLength(Math.abs(gap))) + (gap > 0 ? " after " : " before ") + name + " ends.";
        }
        return before.hands() || before.presence().isOutside() ? "Follows " + name + "." : "Begins as soon as " + name + " is over.";
    }

    private Optional<String> afterClosed(long start) {
        return model.hours().closed().stream().filter(part -> part.to() == start)
                .map(part -> part.away() ? "Begins the next meeting." : "Begins after the break.").findFirst();
    }

    private Optional<String> afterMeeting(Activity activity, long start) {
        return model.hours().closedTo(activity).stream().filter(part -> activity.presence().isOutside() && part.to() == start)
                .map(part -> "Begins when the class is over.").findFirst();
    }

    private Optional<String> afterResource(Activity activity, long start) {
        return model.activities().stream().filter(other -> model.end(other.index(), starts[other.index()]) == start)
                .filter(other -> shared(activity, other) >= 0)
                .min(Comparator.comparingInt(Activity::index))
                .map(other -> "Begins when \"" + other.title() + "\" frees the " + model.names().get(shared(activity, other)) + ".");
    }

    private static int shared(Activity one, Activity other) {
        for (int r = one.uses().length - 1; r >= 0; r--) {
            if (one.uses()[r] > 0 && other.uses()[r] > 0) {
                return r;
            }
        }
        return -1;
    }
}
