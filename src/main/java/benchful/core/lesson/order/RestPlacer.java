package benchful.core.lesson.order;

import benchful.core.lesson.Break;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.Segment;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Places breaks by a rule: as long as a plan has a stretch of bench work that is too long, a break is put into the first of them, so
 * that the stretch is parted evenly into as few parts as the rule allows, at five minutes of the clock, or up to twenty minutes sooner
 * or later where it holds up less ({@link BreakPlacer}); those behind it are found anew. All that follows sees breaks at fixed times.
 * Work beyond the booked end of a meeting gets none.
 */
public final class RestPlacer {

    private static final int GRID = 5;
    private static final Duration ASIDE = Duration.ofMinutes(20);
    /** From other breaks and the ends of a meeting, where there is room. */
    private static final Duration APART = Duration.ofMinutes(15);
    /** Where the fewest find no time on the clock. */
    private static final int MORE = 2;

    private final LessonRequest request;
    private final Rest rule;

    private RestPlacer(LessonRequest request, Rest rule) {
        this.request = request;
        this.rule = rule;
    }

    /**
     * A class and the breaks that a rule adds to it.
     *
     * @param fixed with the breaks that it has anyway
     */
    public record Rested(LessonRequest fixed, List<Break> rests) {
        public Rested {
            rests = List.copyOf(rests);
        }

        public Rested(LessonRequest fixed) {
            this(fixed, List.of());
        }

        public LessonRequest request() {
            return fixed.toBuilder().breaks(Stream.concat(fixed.breaks().stream(), rests.stream()).sorted(Comparator.comparing(Break::start)).toList()).build();
        }

        private Rested before(LocalDateTime time) {
            return new Rested(fixed, rests.stream().filter(rest -> rest.start().isBefore(time)).toList());
        }

        private Rested with(Break rest) {
            return new Rested(fixed, Stream.concat(rests.stream(), Stream.of(rest)).toList());
        }
    }

    /**
     * The same class with as many breaks as its plan needs.
     *
     * @param begun   with those that are likely to be needed, or with none
     * @param planner what is planned for a request; nothing where it contradicts itself
     * @param most    plans that may be asked for; where they don't suffice, the rests are those begun with, or as many as were placed
     */
    public static Rested placed(Rested begun, Rest rule, Function<LessonRequest, Optional<LessonPlan>> planner, int most) {
        Rested rested = begun;
        Set<Rested> seen = new HashSet<>();
        while (seen.add(rested)) {
            if (seen.size() > most) {
                return begun.rests().isEmpty() ? rested : begun;
            }
            Rested now = rested;
            rested = planner.apply(now.request()).flatMap(plan -> BenchWork.tooLong(plan, rule).stream().map(stretch -> better(now, stretch, rule, seen))
                    .flatMap(Optional::stream).findFirst()).orElse(now);
        }
        return rested;
    }

    /**
     * Without those behind the stretch, so that it shows how long it is, or with one in it; nothing where there is no room for one. What
     * was tried already is not tried again: where the order changes with the breaks, those behind stay.
     */
    private static Optional<Rested> better(Rested rested, BenchWork.Stretch stretch, Rest rule, Set<Rested> seen) {
        Rested before = rested.before(stretch.start());
        boolean again = seen.contains(before);
        Rested base = again ? rested : before;
        RestPlacer placer = new RestPlacer(base.request(), rule);
        Optional<Rested> one = placer.inTime(stretch).flatMap(placer::pause).map(movable -> base.with(placer.placed(movable)));
        return again ? one : one.map(room -> before);
    }

    private Break placed(BreakPlacer.Movable movable) {
        return BreakPlacer.placed(request, List.of(movable)).breaks().stream().filter(pause -> !request.breaks().contains(pause)).findFirst().orElseThrow();
    }

    /** What of it lies within the meeting, if that is too long. */
    private Optional<BenchWork.Stretch> inTime(BenchWork.Stretch stretch) {
        LocalDateTime end = request.meetings().stream().map(Meeting::end).filter(time -> time.isAfter(stretch.start())).findFirst().orElse(stretch.start());
        List<Segment> parts = stretch.parts().stream().filter(part -> part.start().isBefore(end)).map(part -> new Segment(part.start(), earlier(part.end(), end))).toList();
        return parts.isEmpty() ? Optional.empty() : Optional.of(new BenchWork.Stretch(parts)).filter(part -> part.worked().compareTo(rule.after()) > 0);
    }

    /** Nothing where there is no room for one. */
    private Optional<BreakPlacer.Movable> pause(BenchWork.Stretch stretch) {
        long fewest = stretch.worked().minusNanos(1).dividedBy(rule.after());
        return Stream.of(APART, Duration.ZERO).flatMap(apart -> LongStream.rangeClosed(fewest, fewest + MORE).mapToObj(rests -> evenly(stretch, rests, apart)))
                .flatMap(Optional::stream).findFirst().or(() -> anywhere(stretch));
    }

    /** The first of so many rests, which part a stretch. */
    private Optional<BreakPlacer.Movable> evenly(BenchWork.Stretch stretch, long rests, Duration apart) {
        Duration worked = stretch.worked();
        LocalDateTime even = stretch.done(worked.dividedBy(rests + 1));
        Duration least = worked.minus(rule.after().multipliedBy(rests));
        LocalDateTime earliest = later(least.isNegative() ? stretch.start() : stretch.done(least), even.minus(ASIDE));
        LocalDateTime latest = earlier(stretch.done(rule.after()), even.plus(ASIDE));
        List<Break> free = clock(earliest, latest).filter(time -> time.isAfter(stretch.start())).map(this::at)
                .filter(pause -> BreakPlacer.isFree(request, wider(pause, apart))).toList();
        return free.stream().min(Comparator.comparing(pause -> Duration.between(even, pause.start()).abs()))
                .map(pause -> new BreakPlacer.Movable(pause, free.get(0).start(), free.get(free.size() - 1).start()));
    }

    /** Where there is hardly any room, the last time before it is due. */
    private Optional<BreakPlacer.Movable> anywhere(BenchWork.Stretch stretch) {
        return clock(stretch.start(), stretch.done(rule.after())).filter(time -> time.isAfter(stretch.start())).map(this::at).filter(pause -> BreakPlacer.isFree(request, pause))
                .reduce((one, other) -> other).map(pause -> new BreakPlacer.Movable(pause, pause.start()));
    }

    /** Every five minutes of the clock, from one time to another. */
    private static Stream<LocalDateTime> clock(LocalDateTime from, LocalDateTime to) {
        LocalDateTime minute = from.truncatedTo(ChronoUnit.HOURS);
        return Stream.iterate(minute, time -> !time.isAfter(to), time -> time.plusMinutes(GRID)).filter(time -> !time.isBefore(from));
    }

    private static LocalDateTime later(LocalDateTime one, LocalDateTime other) {
        return one.isAfter(other) ? one : other;
    }

    private static LocalDateTime earlier(LocalDateTime one, LocalDateTime other) {
        return one.isBefore(other) ? one : other;
    }

    private static Break wider(Break pause, Duration by) {
        return new Break(pause.title(), pause.start().minus(by), pause.end().plus(by));
    }

    private Break at(LocalDateTime start) {
        return new Break("Break", start, start.plus(rule.lasts()));
    }
}
