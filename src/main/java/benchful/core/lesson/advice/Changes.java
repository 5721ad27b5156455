package benchful.core.lesson.advice;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** All single changes worth trying for a request. */
final class Changes {

    private static final Duration A_LITTLE = Duration.ofMinutes(15);
    private static final Duration MORE = Duration.ofMinutes(30);

    /** Of the steps that take the longest, after the longest of all: that is what the class came for. */
    private static final int MOST_PREPARED = 20;
    /** Whoever finds more than this done finds a class without its beginning. */
    private static final int MOST_TOGETHER = 2;

    /** Each of so many demonstrations is tried by itself. */
    private static final int MOST_SHOWN = 5;

    private static final Duration QUARTER = Duration.ofMinutes(15);
    /** More than this is another class. */
    private static final Duration MOST = Duration.ofHours(3);
    private static final Duration WORTH_SPLITTING = Duration.ofHours(3);
    private static final Period A_WEEK = Period.ofWeeks(1);

    private final LessonRequest request;
    private final StepsById steps;
    private final Duration lacking;
    private final List<Step> longestFirst;

    /** @param promised when as many classes have ended as are promised */
    Changes(LessonRequest request, LocalDateTime promised) {
        this.request = request;
        this.lacking = Duration.between(request.bookedEnd(), promised);
        this.steps = request.stepsById();
        this.longestFirst = request.steps().stream().filter(step -> step.kind().isOwnWork() && !request.isAhead(step))
                .sorted(Comparator.comparing((Step step) -> step.length().multipliedBy(repeats(step))).reversed()).toList();
    }

    List<Change> all() {
        List<Change> changes = new ArrayList<>();
        longestFirst.stream().skip(1).limit(MOST_PREPARED).forEach(step -> prepare(step.id()).ifPresent(changes::add));
        changes.addAll(tools());
        if (request.steps().stream().anyMatch(step -> step instanceof Step.Make make && (make.beside() || !make.help().isNone()))) {
            changes.add(new Change.Helper());
        }
        if (request.headcount() > request.groups()) {
            changes.add(new Change.FewerStudents(1));
            changes.add(new Change.OneMoreGroup());
            changes.addAll(showings());
        }
        if (request.pacing() == Pacing.TOGETHER) {
            changes.add(new Change.OwnPace());
        }
        changes.addAll(hours());
        changes.add(again(1));
        split().ifPresent(changes::add);
        return changes;
    }

    /** Each demonstration that something is made after, and all of them, where all watch it together now. */
    private List<Change> showings() {
        List<Step.Show> shows = request.steps().stream().filter(step -> step instanceof Step.Show && !request.isAhead(step) && isPractised(step))
                .map(Step.Show.class::cast).filter(show -> !show.isTooCloseFor(request.headcount()) && !show.toGroups()).limit(MOST_SHOWN).toList();
        List<Change> changes = new ArrayList<>();
        shows.forEach(show -> changes.add(Change.ShownToGroups.of(request, List.of(show))));
        if (shows.size() > 1) {
            changes.add(Change.ShownToGroups.of(request, shows));
        }
        return changes;
    }

    private boolean isPractised(Step show) {
        return request.after(show.id()).stream().anyMatch(link -> steps.has(link.to()) && steps.get(link.to()).kind().isOwnWork());
    }

    /** So many times, a week apart. */
    static Change again(int times) {
        return new Change.MoreMeetings(times, A_WEEK);
    }

    private static int repeats(Step step) {
        return ((Step.Make) step).time().work().stream().mapToInt(StudentTime.Work::repeats).max().orElseThrow();
    }

    /** A little, more, and what is lacking now; all on the same day. */
    private List<Change> hours() {
        Set<Duration> lengths = new LinkedHashSet<>(List.of(A_LITTLE, MORE));
        if (lacking.compareTo(Duration.ZERO) > 0 && lacking.compareTo(MOST) <= 0) {
            lengths.add(QUARTER.multipliedBy((lacking.plus(QUARTER).toSeconds() - 1) / QUARTER.toSeconds()));
        }
        LocalDateTime start = request.start();
        LocalDateTime end = request.bookedEnd();
        List<Change> hours = new ArrayList<>();
        lengths.stream().filter(by -> isSameDay(start, start.minus(by))).forEach(by -> hours.add(new Change.EarlierStart(by)));
        lengths.stream().filter(by -> isSameDay(end, end.plus(by))).forEach(by -> hours.add(new Change.LongerBooking(by)));
        return hours;
    }

    private static boolean isSameDay(LocalDateTime one, LocalDateTime other) {
        return one.toLocalDate().equals(other.toLocalDate());
    }

    /** A meeting of three hours or more, in halves rounded to a quarter of an hour. */
    private Optional<Change> split() {
        Duration booked = Duration.between(request.meetings().get(0).start(), request.meetings().get(0).end());
        if (request.meetings().size() > 1 || booked.compareTo(WORTH_SPLITTING) < 0) {
            return Optional.empty();
        }
        return Optional.of(new Change.SplitInTwo(Duration.ofMinutes((booked.toMinutes() / 2 + 14) / 15 * 15), A_WEEK));
    }

    /**
     * With all make steps and waits that lead to it; demonstrations and talks among them stay in the class, and so do the longest step,
     * and what follows it or anything done between the meetings.
     */
    private Optional<Change> prepare(String step) {
        Set<String> before = new LinkedHashSet<>();
        addWithPredecessors(step, before);
        List<Step> own = request.steps().stream().filter(one -> before.contains(one.id()) && one.kind().isOwnWork() && !request.isAhead(one)).toList();
        List<String> all = before.stream().filter(id -> steps.get(id).kind().mayBePrepared() && !request.isAhead(steps.get(id))).toList();
        boolean isTheClass = own.size() > MOST_TOGETHER || before.contains(longestFirst.get(0).id()) || before.stream().anyMatch(id -> steps.get(id).kind().isOutside());
        return isTheClass ? Optional.empty()
                : Optional.of(new Change.PrepareAhead(all, own.stream().map(one -> "\"" + one.title() + "\"").collect(Collectors.joining(" and "))));
    }

    private void addWithPredecessors(String step, Set<String> all) {
        if (all.add(step)) {
            request.links().stream().filter(link -> link.to().equals(step)).forEach(link -> addWithPredecessors(link.from(), all));
        }
    }

    /**
     * For each step that takes turns at its tools, as many more of them all as let one more work at once, save a turn, halve the turns,
     * and let all work at once; so tools that are short together are brought together.
     */
    private List<Change> tools() {
        Set<Change> changes = new LinkedHashSet<>();
        for (Step step : request.steps()) {
            int users = users(step);
            int atOnce = tools(step).mapToInt(use -> use.atOnce(request.inRoom(use.tool()))).min().orElse(users);
            if (!request.isAhead(step) && atOnce > 0 && atOnce < users) {
                int turns = (users + atOnce - 1) / atOnce;
                changes.add(enough(step, atOnce + 1));
                IntStream.of(turns - 1, (turns + 1) / 2, 1).forEach(fewer -> changes.add(enough(step, (users + fewer - 1) / fewer)));
            }
        }
        return List.copyOf(changes);
    }

    /** The students at their own work, the loads of a wait that takes some pieces at a time; any other step gains by twice as much, if at all. */
    private int users(Step step) {
        if (step instanceof Step.Wait wait && wait.places() > 0) {
            return (request.headcount() + wait.places() - 1) / wait.places();
        }
        return step.kind().isOwnWork() ? request.headcount() : 2;
    }

    /** What can be brought; more people are helpers. */
    private static Stream<ToolUse> tools(Step step) {
        return step.uses().stream().filter(use -> !use.equals(Step.Make.SOMEBODY));
    }

    /** What lets so many work at once. */
    private Change enough(Step step, int users) {
        return new Change.MoreTools(tools(step).filter(use -> request.inRoom(use.tool()) < use.of(users))
                .map(use -> new RoomTool(use.tool(), use.of(users) - request.inRoom(use.tool()))).toList());
    }
}
