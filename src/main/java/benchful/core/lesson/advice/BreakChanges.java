package benchful.core.lesson.advice;

import benchful.core.lesson.Break;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.order.BreakPlacer;
import benchful.core.lesson.order.ListPlanner;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What can be done about a break at a fixed time: other times within an hour of it at which the class ends sooner, and less of it,
 * though never less than half or than five minutes.
 */
public final class BreakChanges {

    private static final int FURTHEST = 60;
    private static final int GRID = 5;
    private static final Duration HARDLY_LATER = Duration.ofMinutes(5);
    private static final int MOST_TRIED = 8;
    private static final Duration SHORTEST = Duration.ofMinutes(5);

    private final ListPlanner planner = new ListPlanner();
    private final LessonRequest request;
    private final LocalTime at;

    private BreakChanges(LessonRequest request, LocalTime at) {
        this.request = request;
        this.at = at;
    }

    /**
     * @param request with the break among its fixed ones; a break that the planner places for itself is not to be asked about
     * @param at      when it begins
     */
    public static List<Change> of(LessonRequest request, LocalTime at) {
        BreakChanges changes = new BreakChanges(request, at);
        return at(at, request).findFirst().map(changes::all).orElse(List.of());
    }

    private List<Change> all(Break pause) {
        Duration now = Duration.between(pause.start(), pause.end());
        Stream<Change> shorter = Stream.of(Duration.ofMinutes(5), Duration.ofMinutes(10), Duration.ofMinutes(15), Duration.ofMinutes(30)).map(now::minus)
                .filter(left -> left.compareTo(SHORTEST) >= 0 && left.multipliedBy(2).compareTo(now) >= 0).map(left -> new BreakChange.Shortened(at, now, left));
        return Stream.concat(moved(), shorter).toList();
    }

    /** Those that end soonest with steps as long as expected, and those hardly later, of which one may be surer. */
    private Stream<Change> moved() {
        Optional<LessonPlan> now = plan(request);
        if (now.isEmpty()) {
            return Stream.empty();
        }
        long amid = amidWork(request, now.get(), at);
        Map<BreakChange.Moved, LocalDateTime> finishes = new LinkedHashMap<>();
        moves().forEach(move -> Optional.of(move.apply(request)).filter(BreakChanges::liesWell).flatMap(moved -> plan(moved).filter(plan -> amidWork(moved, plan, move.to()) >= amid))
                .map(LessonPlan::finish).filter(finish -> finish.isBefore(now.get().finish())).ifPresent(finish -> finishes.put(move, finish)));
        LocalDateTime soonest = finishes.values().stream().min(Comparator.naturalOrder()).orElse(now.get().finish());
        return finishes.entrySet().stream().filter(move -> !move.getValue().isAfter(soonest.plus(HARDLY_LATER))).limit(MOST_TRIED).map(Map.Entry::getKey);
    }

    /** The nearest first, the later of two as near. */
    private List<BreakChange.Moved> moves() {
        int minute = at.toSecondOfDay() / 60;
        return IntStream.rangeClosed(1, FURTHEST / GRID).flatMap(i -> IntStream.of(minute + i * GRID, minute - i * GRID)).filter(to -> to >= 0 && to < 24 * 60)
                .mapToObj(to -> new BreakChange.Moved(at, LocalTime.MIN.plusMinutes(to))).toList();
    }

    private static Stream<Break> at(LocalTime time, LessonRequest of) {
        return of.breaks().stream().filter(pause -> pause.start().toLocalTime().equals(time));
    }

    private static long amidWork(LessonRequest of, LessonPlan plan, LocalTime time) {
        return at(time, of).filter(pause -> BreakPlacer.isAmidWork(pause, plan)).count();
    }

    /** Whether each break lies in a meeting and meets no other. */
    private static boolean liesWell(LessonRequest moved) {
        List<Break> breaks = moved.breaks();
        return breaks.stream().allMatch(pause -> moved.meetings().stream().anyMatch(meeting -> meeting.holds(pause)))
                && IntStream.range(1, breaks.size()).noneMatch(i -> breaks.get(i).start().isBefore(breaks.get(i - 1).end()));
    }

    private Optional<LessonPlan> plan(LessonRequest of) {
        return planner.plan(of) instanceof Planned planned ? Optional.of(planned.plan()) : Optional.empty();
    }
}
