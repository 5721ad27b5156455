package benchful.findings;

import benchful.projects.Step;
import benchful.web.Times;
import com.fasterxml.jackson.annotation.JsonIgnore;
import java.time.Duration;
import java.util.function.UnaryOperator;

/**
 * All times of a step that grow with its pace: of a make step one student's three, of the others how long it lasts.
 * Each is null where the step has none.
 */
public record Minutes(Duration quick, Duration usual, Duration slow, Duration lasts, Duration perStudent) {

    static Minutes of(Step step) {
        Step.StudentTime student = step.student();
        return student != null ? new Minutes(student.quick(), student.usual(), student.slow(), null, null)
                : new Minutes(null, null, null, step.lasts(), step.perStudent());
    }

    Step in(Step step) {
        return usual != null ? step.withStudent(new Step.StudentTime(quick, usual, slow)) : step.withLasts(lasts).withPerStudent(perStudent);
    }

    Minutes each(UnaryOperator<Duration> change) {
        UnaryOperator<Duration> known = time -> time == null ? null : change.apply(time);
        return new Minutes(known.apply(quick), known.apply(usual), known.apply(slow), known.apply(lasts), known.apply(perStudent));
    }

    /** The one that stands for all; null of a step without times. */
    @JsonIgnore
    Duration middle() {
        return usual != null ? usual : lasts;
    }

    /** How many times as long as the other; 0 where that can't be said. */
    double against(Minutes other) {
        Duration mine = middle();
        Duration theirs = other.middle();
        return mine == null || theirs == null || (usual == null) != (other.usual == null) || theirs.isZero() ? 0
                : (double) mine.toSeconds() / theirs.toSeconds();
    }

    /** "4 min, 6 min, 9 min 30 s" of a make step; "15 min" of others. */
    public String words() {
        if (usual != null) {
            return "%s, %s, %s".formatted(Times.words(quick), Times.words(usual), Times.words(slow));
        }
        return lasts == null ? "" : Times.words(lasts) + (perStudent == null ? "" : " and %s a student".formatted(Times.words(perStudent)));
    }
}
