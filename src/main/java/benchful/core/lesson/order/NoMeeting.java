package benchful.core.lesson.order;

import benchful.core.lesson.Conflict;
import benchful.core.lesson.MinuteWords;
import benchful.core.lesson.Step;
import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Gap;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.Presence;
import benchful.core.lesson.time.MeetingLinks;
import benchful.core.quantity.Sentence;
import java.util.List;
import java.util.Optional;

/**
 * Finds work of the class for which no meeting is left once the work outside the meetings before it is done, whatever the order: the
 * days between the meetings, less the waits in them, are too short for it.
 */
final class NoMeeting {

    private final Model model;
    private final MeetingLinks links;
    private final long[] earliest;

    private NoMeeting(Model model) {
        this.model = model.outsideAtAnyTime();
        this.links = new MeetingLinks(model.request());
        this.earliest = new Windows(this.model, new long[model.size()]).tightened();
    }

    static Optional<Conflict> conflict(Model model) {
        NoMeeting check = new NoMeeting(model);
        return check.model.activities().stream().filter(activity -> activity.presence().isOutside())
                .flatMap(outside -> check.links.workBehind(outside.step().id()).stream().flatMap(step -> check.conflict(outside, step).stream())).findFirst();
    }

    private Optional<Conflict> conflict(Activity outside, Step work) {
        if (outside.presence() == Presence.AFTER_LAST_MEETING) {
            return Optional.of(named(outside, work, Sentence.of("%s is done in the class, but follows %s, which comes after the last meeting.", quoted(work), quoted(outside.step())),
                    "Let it follow another step."));
        }
        long over = model.end(outside.index(), earliest[outside.index()]);
        long ready = Math.max(over, model.activities().stream().filter(activity -> activity.step().equals(work)).mapToLong(this::ready).max().orElse(0));
        return over > model.hours().lastMeeting() || ready >= model.hours().bookedEnd() ? Optional.of(late(outside, work, ready)) : Optional.empty();
    }

    /** When all is over that it follows. */
    private long ready(Activity activity) {
        return model.gaps().stream().filter(gap -> gap.to() == activity.index() && gap.hasLeast())
                .mapToLong((Gap gap) -> model.end(gap.from(), earliest[gap.from()]) + gap.least()).max().orElse(0);
    }

    private Conflict late(Activity outside, Step work, long ready) {
        String lacking = MinuteWords.minutes(model.hours().toLength(ready - model.hours().lastMeeting()));
        boolean single = model.request().meetings().size() == 1;
        Sentence what = Sentence.of("%s waits for %s, which is done outside the meetings, and can begin on %s at the earliest, %s.", quoted(work), quoted(outside.step()),
                model.hours().toTime(ready), single ? "but there is one meeting only" : lacking + " after the last meeting begins");
        return named(outside, work, what, single ? "Book another meeting after that, or do it before the class."
                : "Book that meeting " + lacking + " later or one more after it, or shorten what comes before.");
    }

    private static String quoted(Step step) {
        return "\"" + step.title() + "\"";
    }

    private static Conflict named(Activity outside, Step work, Sentence what, String mend) {
        return new Conflict(Conflict.Kind.BETWEEN_MEETINGS, List.of(outside.step().id(), work.id()), what, mend);
    }
}
