package benchful.core.lesson.order;

import benchful.core.lesson.LessonRequest.Turn;
import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Model;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Places one activity after the other at the first time that the windows, the hours and the free resources allow: first those
 * that a greatest gap presses, then those of a given order, then the one with the longest chain behind it. Where a greatest gap is missed, the activity that the gap runs from is held back by what
 * is lacking, and placing begins again.
 * Source of the scheme: Kolisch and Hartmann, Heuristic algorithms for the resource-constrained project scheduling problem,
 * 1999 (serial scheme, latest finish first); the holding back follows Franck, Neumann and Schwindt, OR Spektrum 23 (2001).
 */
public final class SerialSchedule {

    private static final int ROUNDS_PER_ACTIVITY = 40;

    private final Model model;
    private final List<Turn> order;
    private final long[] tail;
    private final int[] rank;
    private final boolean[][] before;
    private long[] release = {};

    public SerialSchedule(Model model) {
        this(model, List.of());
    }

    /** @param order which comes sooner where both could; what it leaves out comes after it */
    SerialSchedule(Model model, List<Turn> order) {
        this.model = model;
        this.order = order;
        this.tail = new Tails(model).tails();
        this.rank = model.activities().stream().mapToInt(one -> order.indexOf(one.turn())).map(place -> place < 0 ? order.size() : place).toArray();
        this.before = before(model);
    }

    /** The start times [grains] of the better of two: by the longest chains, and by the order that the request begins with. */
    public static Optional<long[]> best(Model model) {
        Optional<long[]> chains = new SerialSchedule(model).starts();
        List<Turn> order = model.request().searchFrom();
        Optional<long[]> given = order.isEmpty() ? Optional.empty() : new SerialSchedule(model, order).starts();
        return Stream.of(chains, given).flatMap(Optional::stream).min(Comparator.<long[]>comparingLong(model::late).thenComparingLong(model::finish));
    }

    private static boolean[][] before(Model model) {
        boolean[][] before = new boolean[model.size()][model.size()];
        model.gaps().stream().filter(gap -> gap.hasLeast() && gap.least() >= 0)
                .forEach(gap -> before[gap.to()][gap.from()] = true);
        return before;
    }

    /** Start times [grains], or nothing if the greatest gaps could not be kept in this way. */
    public Optional<long[]> starts() {
        if (!model.hasTimesAskedFor()) {
            return placed();
        }
        long[] soonest = new Windows(model, new long[model.size()]).tightened();
        return new SerialSchedule(model.noLaterThan(soonest), order).placed().or(this::placed);
    }

    private Optional<long[]> placed() {
        release = new long[model.size()];
        for (int round = 0; round < ROUNDS_PER_ACTIVITY * (model.size() + 1); round++) {
            long[] starts = new long[model.size()];
            Arrays.fill(starts, -1);
            Verdict verdict = placeAll(starts);
            if (verdict == Verdict.DONE) {
                return Optional.of(starts);
            }
            if (verdict == Verdict.STUCK) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private enum Verdict {
        DONE, HELD_BACK, STUCK
    }

    private Verdict placeAll(long[] starts) {
        Windows windows = new Windows(model, release);
        if (windows.tighten() >= 0) {
            return Verdict.STUCK;
        }
        Occupancy occupancy = new Occupancy(model);
        for (int count = 0; count < model.size(); count++) {
            Activity next = model.activity(next(starts, windows));
            long start = occupancy.firstRoom(next, windows.earliest(next.index()));
            if (start > windows.latest(next.index())) {
                return holdBack(windows.cause(next.index()), start - windows.latest(next.index()), starts);
            }
            starts[next.index()] = start;
            occupancy.place(next, start);
            windows.fix(next.index(), start);
            int empty = windows.tighten();
            if (empty >= 0) {
                return holdBack(windows.cause(empty), Math.max(1, windows.earliest(empty) - windows.latest(empty)), starts);
            }
        }
        return Verdict.DONE;
    }

    private Verdict holdBack(int activity, long by, long[] starts) {
        if (activity < 0 || starts[activity] + by > model.horizon()) {
            return Verdict.STUCK;
        }
        release[activity] = starts[activity] + by;
        return Verdict.HELD_BACK;
    }

    private int next(long[] starts, Windows windows) {
        List<Integer> ready = new ArrayList<>();
        for (int i = 0; i < model.size(); i++) {
            if (starts[i] < 0 && isReady(i, starts)) {
                ready.add(i);
            }
        }
        return ready.stream().min(Comparator.<Integer>comparingLong(i -> windows.isPressed(i) ? windows.latest(i) : Long.MAX_VALUE)
                .thenComparing(i -> rank[i])
                .thenComparing(Comparator.<Integer>comparingLong(i -> tail[i]).reversed())
                .thenComparing(Comparator.naturalOrder())).orElseThrow();
    }

    private boolean isReady(int activity, long[] starts) {
        for (int i = 0; i < starts.length; i++) {
            if (before[activity][i] && starts[i] < 0) {
                return false;
            }
        }
        return true;
    }
}
