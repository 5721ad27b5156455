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
 * What can be done about a break at a fixed time: other times within an hour of it at which the class ends sooner, two halves within an hour
 * and a half with which it ends sooner still, and less of it, though never less than half or than five minutes.
 */
public final class BreakChanges {

    private static final int FURTHEST = 60;
    private static final int FURTHEST_PART = 90;
    private static final int GRID = 5;
    private static final Duration HARDLY_LATER = Duration.ofMinutes(5);
    /** Plans that are tried for two parts, times steps. */
    private static final int MOST_WORK = 12_000;
    private static final int MOST_MOVED = 8;
    private static final int MOST_SPLIT = 4;
    private static final Duration SHORTEST = Duration.ofMinutes(5);
    private static final Duration SHORTEST_PART = Duration.ofMinutes(10);
    /** Between the two parts, or they are one. */
    private static final Duration APART = Duration.ofMinutes(20);
    /** How much sooner than with any move of the whole. */
    private static final Duration WORTH_SPLITTING = Duration.ofMinutes(5);

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
        return Stream.concat(plan(request).stream().flatMap(plan -> movedOrSplit(plan, now)), shorter).toList();
    }

    private Stream<Change> movedOrSplit(LessonPlan now, Duration lasts) {
        Finishes moved = new Finishes(now);
        times(FURTHEST).forEach(to -> moved.tryOut(new BreakChange.Moved(at, to)));
        Finishes split = new Finishes(now);
        Halves.of(lasts).stream().flatMap(this::split).forEach(split::tryOut);
        boolean isWorthIt = !split.soonest().plus(WORTH_SPLITTING).isAfter(moved.soonest());
        return Stream.concat(moved.best(MOST_MOVED), isWorthIt ? split.best(MOST_SPLIT) : Stream.of());
    }

    /** Every two times at which the parts may stand, as many as there is patience for. */
    private Stream<BreakChange> split(Halves halves) {
        List<LocalTime> all = Stream.concat(Stream.of(at), times(FURTHEST_PART).stream()).toList();
        return IntStream.range(1, all.size()).boxed().flatMap(i -> IntStream.range(0, i).mapToObj(j -> halves.at(at, all.get(j), all.get(i))).flatMap(Optional::stream))
                .limit(MOST_WORK / Math.max(1, request.steps().size()));
    }

    /** Within so many minutes of it, the nearest first, the later of two as near. */
    private List<LocalTime> times(int furthest) {
        int minute = at.toSecondOfDay() / 60;
        return IntStream.rangeClosed(1, furthest / GRID).flatMap(i -> IntStream.of(minute + i * GRID, minute - i * GRID)).filter(to -> to >= 0 && to < 24 * 60)
                .mapToObj(LocalTime.MIN::plusMinutes).toList();
    }

    /** The two parts of a long break: equal, or the first a little longer, where the break itself is in fives in fives too. */
    private record Halves(Duration first, Duration second) {
        static Optional<Halves> of(Duration lasts) {
            long minutes = lasts.toMinutes();
            long unit = minutes % GRID == 0 ? GRID : 1;
            Duration first = Duration.ofMinutes((minutes + 2 * unit - 1) / (2 * unit) * unit);
            return Optional.of(new Halves(first, lasts.minus(first))).filter(halves -> halves.second.compareTo(SHORTEST_PART) >= 0);
        }

        /** At two times in any order, if there is enough between them. */
        Optional<BreakChange> at(LocalTime whole, LocalTime one, LocalTime other) {
            LocalTime to = one.isBefore(other) ? one : other;
            LocalTime later = one.isBefore(other) ? other : one;
            return Optional.<BreakChange>of(new BreakChange.Split(whole, to, first, later, second)).filter(split -> Duration.between(to, later).compareTo(first.plus(APART)) >= 0);
        }
    }

    /** When the class ends by each change with which it ends sooner, with steps as long as expected. */
    private final class Finishes {
        private final LessonPlan now;
        private final long amid;
        private final Map<BreakChange, LocalDateTime> finishes = new LinkedHashMap<>();

        Finishes(LessonPlan now) {
            this.now = now;
            this.amid = amidWork(request, now, at);
        }

        /** Each part of it must lie within the work as the break does now. */
        void tryOut(BreakChange change) {
            Optional.of(change.apply(request)).filter(BreakChanges::liesWell)
                    .flatMap(changed -> plan(changed).filter(plan -> change.begins().stream().allMatch(time -> amidWork(changed, plan, time) >= amid)))
                    .map(LessonPlan::finish).filter(finish -> finish.isBefore(now.finish())).ifPresent(finish -> finishes.put(change, finish));
        }

        LocalDateTime soonest() {
            return finishes.values().stream().min(Comparator.naturalOrder()).orElse(now.finish());
        }

        /** Those that end soonest and those hardly later, of which one may be surer. */
        Stream<BreakChange> best(int most) {
            LocalDateTime soonest = soonest();
            return finishes.entrySet().stream().filter(change -> !change.getValue().isAfter(soonest.plus(HARDLY_LATER))).limit(most).map(Map.Entry::getKey);
        }
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
