package benchful.core.lesson.order.model;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.MinuteWords;
import benchful.core.lesson.Preparation;
import benchful.core.lesson.Reason;
import benchful.core.lesson.Reason.Subject;
import benchful.core.lesson.Step;
import java.time.Duration;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What the tutor's work ahead of the class amounts to. For a make step done ahead for every student, the tutor is taken to need
 * a third of a student's usual time. Source: Book_Arts-L, March 2005 (cool.conservation-us.org): allow students three times
 * the tutor's own time.
 */
public final class PreparationTime {

    private static final int STUDENT_TO_TUTOR = 3;

    private final LessonRequest request;

    public PreparationTime(LessonRequest request) {
        this.request = request;
    }

    public Preparation preparation() {
        return new Preparation(request.steps().stream().map(this::item).flatMap(Optional::stream).toList());
    }

    private Optional<Preparation.Item> item(Step step) {
        if (step instanceof Step.Ahead ahead) {
            return Optional.of(new Preparation.Item(step.id(), step.title(), request.length(step, request.headcount()),
                    new Reason(Subject.PREPARATION, "Done by the tutor before the class" + eachAdds(ahead))));
        }
        return request.preparedAhead().contains(step.id()) ? Optional.of(moved(step)) : Optional.empty();
    }

    private String eachAdds(Step.Ahead step) {
        long seconds = step.perStudent().toSeconds();
        String each = seconds % 60 == 0 ? MinuteWords.minutes(step.perStudent()) : seconds + " s";
        return seconds == 0 ? "." : ": %s, and %s for each of %d.".formatted(MinuteWords.minutes(step.length()), each, request.headcount());
    }

    private Preparation.Item moved(Step step) {
        if (step instanceof Step.Make make) {
            long repeats = IntStream.range(0, request.headcount()).mapToLong(make.time()::repeats).sum();
            Duration all = Duration.ofSeconds(Math.round((double) make.length().toSeconds() * repeats / STUDENT_TO_TUTOR));
            Duration each = Duration.ofSeconds(Math.round((double) all.toSeconds() / request.headcount()));
            return new Preparation.Item(step.id(), step.title(), all, new Reason(Subject.PREPARATION, request.headcount()
                    + " pieces at " + MinuteWords.minutes(each) + " each: a third of a student's usual time."));
        }
        if (step.kind().isGathering()) {
            return new Preparation.Item(step.id(), step.title(), Duration.ZERO, new Reason(Subject.PREPARATION, "Not needed in the class: what it shows is done."));
        }
        return new Preparation.Item(step.id(), step.title(), Duration.ZERO,
                new Reason(Subject.PREPARATION, "Over before the class begins: start it "
                        + MinuteWords.minutes(step.length()) + " ahead."));
    }
}
