package benchful.core.lesson.time;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Which waits and which work outside the meetings a meeting waits for, and which the class leaves to run on by itself. Steps are
 * followed over waits, work outside the meetings and what is done ahead, up to the next work of the class.
 */
public final class MeetingLinks {

    private final LessonRequest request;
    private final StepsById steps;

    public MeetingLinks(LessonRequest request) {
        this.request = request;
        this.steps = request.stepsById();
    }

    /** The work of the class that next follows a step. */
    public List<Step> workBehind(String step) {
        return behind(step).filter(this::isClassWork).distinct().toList();
    }

    /** Whether the class waits for it: not if nothing but waits and work outside the meetings is behind it. */
    public boolean leadsToMeeting(String step) {
        return behind(step).anyMatch(this::isClassWork);
    }

    /**
     * Whether its end counts to the finish. Work of the class always does; a wait does unless it may end at home, or belongs to work
     * outside the meetings behind which the class does nothing more: a glaze firing, then two days of cooling, then the piece is fetched.
     */
    public boolean counts(Step step) {
        if (step instanceof Step.Wait wait) {
            return !wait.endsAtHome() && (leadsToMeeting(step.id()) || Stream.concat(behind(step.id()), before(step.id())).noneMatch(one -> one.kind().isOutside()));
        }
        return !step.kind().isOutside();
    }

    private boolean isClassWork(Step step) {
        return step.kind().needsClass() && !request.isAhead(step);
    }

    private Stream<Step> behind(String step) {
        return reached(step, Link::from, Link::to);
    }

    private Stream<Step> before(String step) {
        return reached(step, Link::to, Link::from);
    }

    /** Along the links from one of their ends to the other, nearest first; work of the class is the last on its way. */
    private Stream<Step> reached(String step, Function<Link, String> here, Function<Link, String> there) {
        Set<Step> reached = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(step));
        while (!open.isEmpty()) {
            String next = open.poll();
            request.links().stream().filter(link -> here.apply(link).equals(next)).map(there).filter(steps::has).map(steps::get).filter(reached::add)
                    .filter(one -> !isClassWork(one)).map(Step::id).forEach(open::add);
        }
        return reached.stream();
    }
}
