package benchful.core.day;

import benchful.core.day.Course.Item;
import benchful.core.day.Course.Pause;
import benchful.core.day.Tap.Kind;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The class at a moment: what the taps up to now amount to, and when the rest is likely to be over. A step begins when it is said to,
 * or when the step before it of the same students ends; what is shown to one group comes after what is shown to another before. What is still to come takes as long as planned, begins after those waits that
 * it was planned after and not before the time the tutor asked for, and stands still in breaks. Cost O(n squared) in the steps of a class.
 */
public final class Running {
    private static final Set<Kind> TELL_THAT_IT_BEGAN = Set.of(Kind.START, Kind.FINISH, Kind.SKIP);
    private static final Set<Kind> TELL_OF_WORK = Set.of(Kind.START, Kind.FINISH, Kind.COUNT);

    private final Course course;
    private final LocalDateTime now;
    private final List<Tap> taps;
    private final boolean begun;
    private final Map<String, Told> progress = new LinkedHashMap<>();
    private final Map<Integer, Presence> seats = new TreeMap<>();
    private final List<Tap> notes = new ArrayList<>();
    private final List<Break> breaks;
    private final List<Pause> pauses;
    private final List<Step> steps;
    private int help;

    /** How a student is not there as expected. */
    public enum Presence {
        LATE, ABSENT, LEFT
    }

    /** How far a step is. */
    public enum Stage {
        TO_COME, NOW, OVER, LEFT_OUT
    }

    /**
     * A step as it stands.
     *
     * @param begins when it began, or is likely to
     * @param ends when it ended, or is likely to
     * @param finished students who are said to have finished it
     */
    public record Step(Item item, Stage stage, LocalDateTime begins, LocalDateTime ends, int finished) {
        boolean isOpen() {
            return stage == Stage.TO_COME || stage == Stage.NOW;
        }
    }

    private Running(Course course, Collection<Tap> taps, LocalDateTime now) {
        this.taps = counting(taps);
        this.now = now;
        Optional<LocalDateTime> first = this.taps.stream().filter(t -> TELL_THAT_IT_BEGAN.contains(t.kind()) && course.hasStep(t.step())).map(Tap::at).findFirst();
        this.begun = first.isPresent();
        this.course = first.map(course::on).orElse(course);
        this.course.steps().forEach(s -> progress.put(s.key(), new Told()));
        this.course.pauses().forEach(p -> progress.put(p.key(), new Told()));
        this.taps.forEach(this::take);
        this.breaks = taken();
        this.pauses = likely();
        this.steps = steps(Change.NONE);
    }

    /** @param taps in any order, each as often as it came */
    public static Running of(Course course, Collection<Tap> taps, LocalDateTime now) {
        return new Running(course, taps, now);
    }

    /** In order, each once, without what was taken back: what counts of them. An undo that is taken back itself counts for nothing either. */
    public static List<Tap> counting(Collection<Tap> taps) {
        List<Tap> latestFirst = taps.stream().collect(Collectors.toMap(Tap::id, t -> t, (one, same) -> one)).values().stream()
                .sorted(Tap.IN_ORDER.reversed()).toList();
        Set<@Nullable String> back = new HashSet<>();
        List<Tap> counting = new ArrayList<>();
        for (Tap tap : latestFirst) {
            if (tap.kind() != Kind.UNDO && !back.contains(tap.id())) {
                counting.add(0, tap);
            } else if (!back.contains(tap.id())) {
                back.add(tap.step());
            }
        }
        return counting;
    }

    private void take(Tap tap) {
        switch (tap.kind()) {
            case HELP -> help = Math.max(0, tap.number());
            case NOTE, INCIDENT -> notes.add(tap);
            case LATE -> seats.put(tap.number(), Presence.LATE);
            case ABSENT -> seats.put(tap.number(), Presence.ABSENT);
            case LEFT -> seats.put(tap.number(), Presence.LEFT);
            default -> {
                Told told = tap.step() == null ? null : progress.get(tap.step());
                if (told != null) {
                    told.take(tap);
                }
            }
        }
    }

    /** All steps, by their planned start. */
    public List<Step> steps() {
        return steps;
    }

    /**
     * Something that is tried: a step or a pause is so many minutes shorter.
     *
     * @param wholly whether it is left out
     */
    private record Change(String key, int minutes, boolean wholly) {
        private static final Change NONE = new Change("", 0, false);

        boolean leavesOut(String other) {
            return wholly && other.equals(key);
        }

        Duration of(String other) {
            return Duration.ofMinutes(other.equals(key) ? minutes : 0);
        }
    }

    private List<Step> steps(Change change) {
        List<Step> steps = new ArrayList<>();
        for (Item item : course.steps()) {
            Told told = told(item.key());
            if (told.skipped || change.leavesOut(item.key())) {
                LocalDateTime free = free(item, steps);
                steps.add(new Step(item, Stage.LEFT_OUT, free, free, told.finished));
            } else {
                steps.add(item.handsOn() ? worked(item, told, steps, change) : waited(item, told, steps));
            }
        }
        return steps;
    }

    /** A wait begins with the end of the step that it was planned after, and is over by the clock. */
    private Step waited(Item item, Told told, List<Step> before) {
        boolean runs = begun && (told.began != null || before.stream().noneMatch(s -> s.isOpen() && isAfter(item, s)));
        LocalDateTime begins = told.began != null ? told.began : free(item, before);
        LocalDateTime ends = told.ended != null ? told.ended : begins.plus(item.length()).plusMinutes(told.more);
        Stage stage = told.ended != null ? Stage.OVER : !runs ? Stage.TO_COME : ends.isAfter(now) ? Stage.NOW : Stage.OVER;
        return new Step(item, stage, begins, ends, told.finished);
    }

    private Step worked(Item item, Told told, List<Step> before, Change change) {
        LocalDateTime free = free(item, before);
        if (told.ended != null) {
            LocalDateTime began = told.began != null ? told.began : free;
            return new Step(item, Stage.OVER, began.isAfter(told.ended) ? told.ended : began, told.ended, told.finished);
        }
        boolean isNext = begun && before.stream().noneMatch(s -> s.item().handsOn() && s.isOpen() && isAfter(item, s));
        LocalDateTime ready = item.notBefore() == null ? ready(item, free, before) : latest(item.notBefore(), ready(item, free, before));
        LocalDateTime begins = told.began != null ? told.began : afterPauses(isNext ? ready : latest(now, ready), change);
        LocalDateTime ends = end(begins, item.length().plusMinutes(told.more).minus(change.of(item.key())), change);
        boolean goesOn = told.began != null || isNext && !begins.isAfter(now);
        return new Step(item, goesOn ? Stage.NOW : Stage.TO_COME, begins, goesOn ? latest(ends, now) : ends, told.finished);
    }

    /** Whether a step was planned to follow another of the same people. */
    private static boolean isAfter(Item item, Step other) {
        return other.item().handsOn() && other.item().sharesPeople(item) && (item.handsOn() || !other.item().end().isAfter(item.start()));
    }

    /** When those steps are over that it was planned to follow. */
    private LocalDateTime free(Item item, List<Step> before) {
        return before.stream().filter(s -> isAfter(item, s)).map(Step::ends).max(Comparator.naturalOrder()).orElse(begun ? item.start() : latest(item.start(), now));
    }

    /** When the waits are over too that it was planned after. */
    private static LocalDateTime ready(Item item, LocalDateTime free, List<Step> before) {
        return before.stream().filter(s -> !s.item().handsOn() && s.stage() != Stage.LEFT_OUT && s.item().sharesPeople(item) && !s.item().end().isAfter(item.start()))
                .map(Step::ends).reduce(free, Running::latest);
    }

    private Told told(String key) {
        return Objects.requireNonNull(progress.get(key));
    }

    private List<Break> taken() {
        Set<String> work = course.steps().stream().filter(Item::handsOn).map(Item::key).collect(Collectors.toSet());
        List<LocalDateTime> worked = taps.stream().filter(t -> TELL_OF_WORK.contains(t.kind()) && t.step() != null && work.contains(t.step())).map(Tap::at).toList();
        return course.pauses().stream().filter(Pause::isBreak).map(p -> Break.of(p, told(p.key()), worked, now)).toList();
    }

    /** Those that are not left out, as they are likely to be, in order; one that is not over yet holds the next one back. */
    private List<Pause> likely() {
        Map<String, Break> known = breaks.stream().collect(Collectors.toMap(Break::key, b -> b));
        List<Pause> likely = new ArrayList<>();
        course.pauses().stream().filter(p -> !told(p.key()).skipped).map(p -> known.containsKey(p.key()) ? known.get(p.key()).asItIs() : p)
                .sorted(Comparator.comparing(Pause::start)).forEach(p -> likely.add(likely.isEmpty() ? p : p.after(likely.get(likely.size() - 1))));
        return likely;
    }

    /** All breaks, as they were planned one after the other. */
    public List<Break> breaks() {
        return List.copyOf(breaks);
    }

    /** Those that are not left out, as they are likely to be. */
    List<Pause> pauses() {
        return pauses;
    }

    private static boolean counts(Pause pause, Change change) {
        return !change.leavesOut(pause.key());
    }

    private LocalDateTime afterPauses(LocalDateTime from, Change change) {
        LocalDateTime moved = from;
        for (Pause pause : pauses) {
            moved = counts(pause, change) && !moved.isBefore(pause.start()) && moved.isBefore(pause.end()) ? pause.end() : moved;
        }
        return moved;
    }

    /** After so much work from a moment on. */
    private LocalDateTime end(LocalDateTime from, Duration length, Change change) {
        LocalDateTime end = from.plus(length.isNegative() ? Duration.ZERO : length);
        for (Pause pause : pauses) {
            if (counts(pause, change) && pause.start().isBefore(end) && pause.end().isAfter(from)) {
                end = end.plus(Duration.between(latest(pause.start(), from), pause.end()));
            }
        }
        return end;
    }

    private static LocalDateTime latest(LocalDateTime one, LocalDateTime other) {
        return one.isAfter(other) ? one : other;
    }

    /** When all is likely to be over that somebody works at. */
    public LocalDateTime end() {
        return end(steps());
    }

    private LocalDateTime end(List<Step> steps) {
        return steps.stream().filter(s -> s.item().handsOn()).map(Step::ends).max(Comparator.naturalOrder()).orElse(course.end());
    }

    /** How much later than planned it is likely to end; negative where it ends earlier. */
    public Duration behind() {
        LocalDateTime planned = course.steps().stream().filter(Item::handsOn).map(Item::end).max(Comparator.naturalOrder()).orElse(course.end());
        return Duration.between(planned, end());
    }

    /** What would let it end sooner, the most gain first; nothing where it ends by the booked end. */
    public List<Remedy> remedies() {
        LocalDateTime end = end();
        if (!end.isAfter(course.end())) {
            return List.of();
        }
        List<Remedy> all = new ArrayList<>();
        steps().stream().filter(s -> s.stage() == Stage.TO_COME && s.item().handsOn()).map(Step::item).forEach(item -> {
            int third = (int) item.length().toMinutes() / 3;
            all.add(new Remedy(Remedy.What.LEAVE_OUT, item.key(), item.title(), 0, gain(new Change(item.key(), 0, true), end)));
            all.add(new Remedy(Remedy.What.SHORTEN, item.key(), item.title(), third, gain(new Change(item.key(), third, false), end)));
        });
        pauses.stream().filter(p -> p.isBreak() && p.start().isAfter(now))
                .forEach(p -> all.add(new Remedy(Remedy.What.NO_BREAK, p.key(), "", 0, gain(new Change(p.key(), 0, true), end))));
        return all.stream().filter(r -> r.gain().toMinutes() > 0)
                .sorted(Comparator.comparing(Remedy::gain).reversed().thenComparing(Remedy::step).thenComparing(Remedy::what)).toList();
    }

    private Duration gain(Change change, LocalDateTime end) {
        return Duration.between(end(steps(change)), end);
    }

    /**
     * One way to end sooner.
     *
     * @param step key of the step or pause
     * @param minutes by which it is shortened
     * @param gain how much sooner the class is likely to end
     */
    public record Remedy(What what, String step, String title, int minutes, Duration gain) {
        /** What is done. */
        public enum What {
            LEAVE_OUT, SHORTEN, NO_BREAK
        }
    }

    /** Those who are expected and not said to be away. */
    public int present() {
        return course.students() - (int) seats.values().stream().filter(p -> p != Presence.LATE).count();
    }

    /** What counts of the taps, in order. */
    public List<Tap> taps() {
        return taps;
    }

    public Map<Integer, Presence> seats() {
        return Map.copyOf(seats);
    }

    public List<Tap> notes() {
        return List.copyOf(notes);
    }

    /** How many want help. */
    public int help() {
        return help;
    }

    public boolean begun() {
        return begun;
    }

    public LocalDateTime bookedEnd() {
        return course.end();
    }
}
