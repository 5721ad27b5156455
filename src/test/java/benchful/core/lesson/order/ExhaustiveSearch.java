package benchful.core.lesson.order;

import benchful.core.lesson.Break;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.Turn;
import benchful.core.lesson.Link;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The shortest finish of a tiny lesson, by trying every start on a grid of five minutes. Knows one student, or as many groups as
 * students with work but no waits, each of whom is shown by the one tutor what not both can watch; meetings and breaks on
 * the grid, tools, gaps, waits with a greatest length and times that are asked for, of which as little as can be is missed first;
 * shares nothing with the planners.
 */
public final class ExhaustiveSearch {

    private static final int GRID = 5;
    /** A minute later than asked for weighs more than any finish. */
    private static final int MUCH = 10_000;

    private final LessonRequest request;
    private final List<Step> steps;
    private final List<Integer> groups;
    private final int horizon;
    private final int[] start;
    private final int[] end;
    private int best = Integer.MAX_VALUE;

    private ExhaustiveSearch(LessonRequest request, int horizon) {
        this.request = request;
        List<Turn> turns = request.steps().stream().flatMap(step -> turns(request, step)).toList();
        this.steps = turns.stream().map(turn -> request.stepsById().get(turn.step())).toList();
        this.groups = turns.stream().map(Turn::group).toList();
        this.horizon = horizon;
        this.start = new int[steps.size()];
        this.end = new int[steps.size()];
    }

    private static Stream<Turn> turns(LessonRequest request, Step step) {
        boolean each = step instanceof Step.Make || step instanceof Step.Show show && (show.toGroups() || show.watchers() > 0 && show.watchers() < request.headcount());
        return request.groups() == 1 || !each ? Stream.of(new Turn(step.id(), 0)) : IntStream.rangeClosed(1, request.groups()).mapToObj(group -> new Turn(step.id(), group));
    }

    /** Minutes from the start, or -1 if no plan keeps to the horizon. */
    public static int shortest(LessonRequest request, int horizon) {
        ExhaustiveSearch search = new ExhaustiveSearch(request, horizon);
        search.place(0, 0, 0);
        return search.best == Integer.MAX_VALUE ? -1 : search.best % MUCH;
    }

    private void place(int step, int finish, int late) {
        if (late * MUCH + finish >= best) {
            return;
        }
        if (step == steps.size()) {
            best = late * MUCH + finish;
            return;
        }
        LocalDateTime asked = request.notBefore().get(steps.get(step).id());
        int least = asked == null ? 0 : minutes(asked);
        for (int at = least; at <= horizon; at += GRID) {
            int until = end(steps.get(step), at);
            start[step] = at;
            end[step] = until;
            if (until >= 0 && fits(step)) {
                place(step + 1, counts(steps.get(step)) ? Math.max(finish, until) : finish, late + (asked == null ? 0 : at - least));
            }
        }
    }

    private boolean counts(Step step) {
        boolean leavesTheClass = leads(step, true, next -> next.kind().isOutside()) || leads(step, false, next -> next.kind().isOutside());
        return step.kind().needsClass() || step instanceof Step.Wait wait && !wait.endsAtHome() && (isWaitedFor(step) || !leavesTheClass);
    }

    /** Whether the class has still to work on it. */
    private boolean isWaitedFor(Step step) {
        return leads(step, true, next -> next.kind().needsClass());
    }

    /** Whether something is met on the way, onwards or back, before more work of the class. */
    private boolean leads(Step step, boolean onwards, Predicate<Step> sought) {
        return request.links().stream().filter(link -> (onwards ? link.from() : link.to()).equals(step.id()))
                .map(link -> steps.get(place(onwards ? link.to() : link.from())))
                .anyMatch(next -> sought.test(next) || !next.kind().needsClass() && leads(next, onwards, sought));
    }

    /** Minute by minute: nobody is in a meeting meanwhile, and what the class waits for is over when the last meeting begins. */
    private int endOutside(Step step, int at) {
        int end = at + length(step);
        boolean met = request.meetings().stream().anyMatch(meeting -> at < minutes(meeting.end()) && end > minutes(meeting.start()));
        boolean early = step.kind() == StepKind.COLLECT && at < minutes(request.bookedEnd());
        boolean late = isWaitedFor(step) && end > minutes(request.meetings().get(request.meetings().size() - 1).start());
        return met || early || late ? -1 : end;
    }

    private int minutes(LocalDateTime time) {
        return (int) Duration.between(request.start(), time).toMinutes();
    }

    /** Minute by minute: work goes on only outside breaks; -1 if the step may not begin or be interrupted there. */
    private int end(Step step, int at) {
        int left = length(step);
        if (step.kind().isOutside()) {
            return endOutside(step, at);
        }
        if (step.kind().isUnattended()) {
            return away(at) && !runsOn(step) ? -1 : at + left;
        }
        if (left == 0) {
            return inBreak(at) && inBreak(at - 1) ? -1 : at;
        }
        boolean pausable = step instanceof Step.Make make && make.mayPause();
        int minute = at;
        while (left > 0) {
            if (inBreak(minute)) {
                if (!pausable || minute == at) {
                    return -1;
                }
            } else {
                left--;
            }
            minute++;
        }
        return minute;
    }

    /** A wait behind waits alone, with nothing to load, begins without anybody. */
    private boolean runsOn(Step step) {
        List<String> before = request.links().stream().filter(link -> link.to().equals(step.id())).map(Link::from).toList();
        List<StepKind> kinds = steps.stream().filter(one -> before.contains(one.id())).map(Step::kind).toList();
        return (step.uses().isEmpty() || kinds.contains(StepKind.BETWEEN)) && !kinds.isEmpty() && kinds.stream().noneMatch(StepKind::needsClass);
    }

    private boolean inBreak(int minute) {
        for (Break pause : request.breaks()) {
            if (minutes(pause.start()) <= minute && minute < minutes(pause.end())) {
                return true;
            }
        }
        return away(minute) || endsAt(minute);
    }

    /** Whether nobody is there: a meeting has ended before, and the next has not begun. */
    private boolean away(int minute) {
        for (int i = 1; i < request.meetings().size(); i++) {
            if (minutes(request.meetings().get(i - 1).end()) < minute && minute < minutes(request.meetings().get(i).start())) {
                return true;
            }
        }
        return false;
    }

    private boolean endsAt(int minute) {
        return request.meetings().stream().limit(request.meetings().size() - 1L).anyMatch(meeting -> minutes(meeting.end()) == minute);
    }

    private static int length(Step step) {
        Duration length = step instanceof Step.Make make ? make.time().usual() : step instanceof Step.Show show ? show.length()
                : step.length();
        return (int) length.toMinutes();
    }

    private boolean fits(int last) {
        for (int other = 0; other < last; other++) {
            boolean outside = steps.get(last).kind().isOutside() && steps.get(last).kind() == steps.get(other).kind();
            boolean tutor = steps.get(last).kind() == StepKind.SHOW && steps.get(other).kind() == StepKind.SHOW;
            boolean same = tutor || meet(last, other);
            if ((outside || same && steps.get(last).kind().needsClass() && steps.get(other).kind().needsClass()) && start[last] < end[other] && start[other] < end[last]) {
                return false;
            }
        }
        return request.links().stream().allMatch(link -> keeps(link, last) && keepsTheWaitBefore(link, last))
                && request.room().stream().allMatch(tool -> suffices(tool, last));
    }

    private boolean meet(int one, int other) {
        return groups.get(one) == 0 || groups.get(other) == 0 || groups.get(one).equals(groups.get(other));
    }

    private boolean keeps(Link link, int last) {
        return IntStream.rangeClosed(0, last).filter(from -> steps.get(from).id().equals(link.from())).allMatch(from -> IntStream.rangeClosed(0, last)
                .filter(to -> steps.get(to).id().equals(link.to()) && meet(from, to)).allMatch(to -> keeps(link, from, to)));
    }

    private boolean keeps(Link link, int from, int to) {
        int gap = start[to] - end[from];
        return gap >= link.least().toMinutes() && (link.greatest().isEmpty() || gap <= link.greatest().get().toMinutes());
    }

    /** What follows a wait with a greatest length begins in time, counted from its begin and from the end of what it follows. */
    private boolean keepsTheWaitBefore(Link link, int last) {
        int from = place(link.from());
        int to = place(link.to());
        if (from > last || to > last || !(steps.get(from) instanceof Step.Wait wait) || wait.greatest().isEmpty()) {
            return true;
        }
        long greatest = wait.greatest().get().toMinutes();
        return start[to] - start[from] <= greatest && request.links().stream().filter(before -> place(before.to()) == from)
                .filter(before -> place(before.from()) <= last)
                .allMatch(before -> start[to] - end[place(before.from())] <= before.least().toMinutes() + greatest);
    }

    private int place(String id) {
        return steps.indexOf(steps.stream().filter(step -> step.id().equals(id)).findFirst().orElseThrow());
    }

    private boolean suffices(RoomTool tool, int last) {
        for (int minute = start[last]; minute < end[last]; minute += GRID) {
            int taken = 0;
            for (int other = 0; other <= last; other++) {
                if (start[other] <= minute && minute < end[other]) {
                    taken += steps.get(other).uses().stream().filter(use -> use.tool().equals(tool.name())).mapToInt(ToolUse::units).sum();
                }
            }
            if (taken > tool.count()) {
                return false;
            }
        }
        return true;
    }
}
