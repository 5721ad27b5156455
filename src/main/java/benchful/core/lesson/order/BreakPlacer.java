package benchful.core.lesson.order;

import benchful.core.lesson.Break;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Segment;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds the time of breaks that may move: each begins where the class then ends soonest, has least to wait for, puts the least work
 * down half done and, of all that is as good, is nearest to the time wished for, with work before and after it. One break after the other is tried, at every
 * fifth minute, by the list schedule. A break that fits nowhere else stays at its wished time.
 */
public final class BreakPlacer {

    private static final Duration GRID = Duration.ofMinutes(5);
    /** Plans that are tried, times steps: with 25 steps some 240 plans. */
    private static final int MOST_WORK = 6_000;

    private static final Comparator<LessonPlan> BETTER = Comparator.comparing(LessonPlan::finish).thenComparing(LessonPlan::idle)
            .thenComparing(plan -> plan.blocks().stream().mapToInt(block -> block.segments().size()).sum());

    private final ListPlanner planner = new ListPlanner();
    private int left;

    private BreakPlacer(LessonRequest request) {
        left = MOST_WORK / Math.max(1, request.steps().size());
    }

    /**
     * A break with some freedom.
     *
     * @param pause    at the time wished for
     * @param earliest when it may begin, by five minutes from the time wished for
     * @param latest   when it must have begun
     */
    public record Movable(Break pause, LocalDateTime earliest, LocalDateTime latest) {
        /** The time wished for is the earliest. */
        public Movable(Break pause, LocalDateTime latest) {
            this(pause, pause.start(), latest);
        }

        private Break at(LocalDateTime start) {
            return new Break(pause.title(), start, start.plus(Duration.between(pause.start(), pause.end())));
        }

        /** The nearest to the time wished for first. */
        private Stream<Break> elsewhere() {
            return Stream.iterate(earliest, start -> !start.isAfter(latest), start -> start.plus(GRID)).filter(start -> !start.equals(pause.start()))
                    .sorted(Comparator.comparing(start -> Duration.between(pause.start(), start).abs())).map(this::at);
        }
    }

    /** The same class with these breaks beside those that it has, each at the time found for it. */
    public static LessonRequest placed(LessonRequest fixed, List<Movable> movable) {
        BreakPlacer placer = new BreakPlacer(fixed);
        LessonRequest request = with(fixed, movable.stream().map(Movable::pause).toList());
        for (Movable one : movable) {
            request = placer.moved(request, one);
        }
        return request;
    }

    private static LessonRequest with(LessonRequest request, List<Break> more) {
        return request.toBuilder().breaks(Stream.concat(request.breaks().stream(), more.stream()).sorted(Comparator.comparing(Break::start)).toList()).build();
    }

    private LessonRequest moved(LessonRequest request, Movable movable) {
        List<Break> others = new ArrayList<>(request.breaks());
        others.remove(movable.pause());
        LessonRequest without = request.toBuilder().breaks(others).build();
        LessonRequest best = request;
        Optional<LessonPlan> shortest = plan(request);
        for (Break pause : movable.elsewhere().filter(pause -> isFree(without, pause)).limit(Math.max(0, left)).toList()) {
            LessonRequest trial = with(without, List.of(pause));
            Optional<LessonPlan> plan = plan(trial);
            if (plan.isPresent() && isAmidWork(pause, plan.get()) && shortest.map(least -> BETTER.compare(plan.get(), least) < 0).orElse(true)) {
                best = trial;
                shortest = plan;
            }
        }
        return best;
    }

    /** A break before anything was done, or after all is done, is none. */
    public static boolean isAmidWork(Break pause, LessonPlan plan) {
        List<Segment> work = plan.blocks().stream().filter(block -> block.lane() == Lane.CLASS).flatMap(block -> block.segments().stream())
                .filter(part -> part.start().toLocalDate().equals(pause.start().toLocalDate())).toList();
        return work.stream().anyMatch(part -> part.start().isBefore(pause.start())) && work.stream().anyMatch(part -> part.end().isAfter(pause.end()));
    }

    static boolean isFree(LessonRequest request, Break pause) {
        return request.meetings().stream().anyMatch(meeting -> meeting.holds(pause))
                && request.breaks().stream().noneMatch(other -> other.start().isBefore(pause.end()) && pause.start().isBefore(other.end()));
    }

    private Optional<LessonPlan> plan(LessonRequest request) {
        left--;
        return planner.plan(request) instanceof Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }
}
