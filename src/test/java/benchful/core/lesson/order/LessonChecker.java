package benchful.core.lesson.order;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.time.ClassTime;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Judges a plan from the request alone, sharing nothing with the planners but the class times of make steps: every broken
 * constraint is named in a sentence. An empty list means that the plan can be taught as it stands.
 */
public final class LessonChecker {

    private final LessonRequest request;
    private final LessonPlan plan;
    private final Map<String, Step> steps = new HashMap<>();
    private final List<String> faults = new ArrayList<>();

    private LessonChecker(LessonRequest request, LessonPlan plan) {
        this.request = request;
        this.plan = plan;
        request.steps().forEach(step -> steps.put(step.id(), step));
    }

    public static List<String> faults(LessonRequest request, LessonPlan plan) {
        LessonChecker checker = new LessonChecker(request, plan);
        request.steps().forEach(checker::presence);
        plan.blocks().forEach(checker::length);
        plan.blocks().forEach(checker::hours);
        plan.blocks().forEach(checker::asked);
        checker.seats();
        checker.tutor();
        plan.blocks().stream().filter(block -> block.kind().isOutside()).forEach(checker::outside);
        checker.tools();
        request.links().forEach(checker::link);
        request.steps().forEach(checker::limits);
        checker.finish();
        return List.copyOf(checker.faults);
    }

    /**
     * Whether somebody works at the bench for longer than a rule allows: minute by minute, so for plans to the minute. Where a meeting has
     * no room for a rest before its booked end, none is asked for.
     */
    public static List<String> faults(LessonRequest request, LessonPlan plan, Rest rule) {
        LessonChecker checker = new LessonChecker(request, plan);
        for (int group = request.groups() > 1 ? 1 : 0; group <= (request.groups() > 1 ? request.groups() : 0); group++) {
            checker.rests(group, rule);
        }
        return List.copyOf(checker.faults);
    }

    private void rests(int group, Rest rule) {
        LocalDateTime last = plan.blocks().stream().map(Block::end).max(Comparator.naturalOrder()).orElse(plan.start());
        long worked = 0;
        long idle = 0;
        for (LocalDateTime minute = plan.start(); minute.isBefore(last); minute = minute.plusMinutes(1)) {
            idle = isAtTheBench(group, minute) ? 0 : idle + 1;
            worked = idle == 0 ? worked + 1 : idle >= rule.lasts().toMinutes() ? 0 : worked;
            if (idle == 0 && worked == rule.after().toMinutes() + 1 && hadRoom(minute, rule)) {
                fault("At " + minute + " group " + group + " has worked for longer than " + rule.after() + " without a rest.");
            }
        }
    }

    private boolean isAtTheBench(int group, LocalDateTime minute) {
        return plan.blocks().stream().filter(block -> block.kind() == StepKind.MAKE && (block.group() == 0 || block.group() == group)).flatMap(block -> block.segments().stream())
                .anyMatch(part -> !part.start().isAfter(minute) && part.end().isAfter(minute));
    }

    private boolean hadRoom(LocalDateTime minute, Rest rule) {
        return request.meetings().stream().filter(meeting -> rule.during().isEmpty() || rule.during().get().equals(meeting)).anyMatch(meeting -> !minute.isBefore(meeting.start()) && !minute.plus(rule.lasts()).isAfter(meeting.end()));
    }

    private void fault(String sentence) {
        faults.add(sentence);
    }

    private boolean isAhead(Step step) {
        return step.kind().isBeforeClass() || request.preparedAhead().contains(step.id());
    }

    private void presence(Step step) {
        List<Integer> groups = plan.blocksOf(step.id()).stream().map(Block::group).sorted().toList();
        List<Integer> each = Stream.iterate(1, group -> group + 1).limit(request.groups()).toList();
        boolean mayGroup = request.groups() > 1 && (step.kind().isOwnWork() || step.kind().isUnattended());
        boolean whole = groups.equals(List.of(0)) && !(request.groups() > 1 && step.kind().isOwnWork()) && !isShownToGroups(step);
        boolean listed = plan.preparation().items().stream().anyMatch(item -> item.step().equals(step.id()));
        boolean placed = whole || (mayGroup || isShownToGroups(step)) && groups.equals(each);
        if (isAhead(step) ? !groups.isEmpty() || !listed : !placed || listed) {
            fault("\"" + step.title() + "\" is not in the plan exactly as often as it must be.");
        }
    }

    private void length(Block block) {
        Duration clock = Duration.between(block.start(), block.end());
        if (!block.length().equals(length(steps.get(block.step()), block.group()))
                || block.kind().isUnattended() && !clock.equals(block.length())) {
            fault("\"" + block.title() + "\" is planned for " + block.length() + ", not for the time it takes.");
        }
    }

    private Duration length(Step step, int group) {
        if (step instanceof Step.Make make) {
            return new ClassTime(request.room(), request.helpers(), request.groups()).of(make, students(group)).length();
        }
        int times = step instanceof Step.Show show && show.watchers() > 0 ? (int) Math.ceil(students(group) / (double) show.watchers()) : 1;
        return step.length().multipliedBy(times).plus(step.perStudent().multipliedBy(students(group)));
    }

    private boolean isShownToGroups(Step step) {
        return request.groups() > 1 && step instanceof Step.Show show && (show.toGroups() || show.watchers() > 0 && show.watchers() < request.headcount());
    }

    /** Who shows a group something shows no other group anything, nor stays beside a student. */
    private void tutor() {
        List<Block> shown = plan.blocks().stream().filter(block -> isShownToGroups(steps.get(block.step()))).toList();
        for (Block one : shown) {
            shown.stream().filter(other -> other != one && overlap(one, other))
                    .forEach(other -> fault("\"" + one.title() + "\" and \"" + other.title() + "\" need the tutor at once."));
        }
        List<Block> busy = plan.blocks().stream().filter(block -> shown.contains(block) || steps.get(block.step()) instanceof Step.Make make && make.beside()).toList();
        for (Block block : shown.isEmpty() ? List.<Block>of() : busy) {
            int people = busy.stream().filter(other -> !other.start().isAfter(block.start()) && other.end().isAfter(block.start()))
                    .mapToInt(other -> shown.contains(other) ? 1 : Math.min(students(other.group()), 1 + request.helpers())).sum();
            if (people > 1 + request.helpers()) {
                fault("\"" + block.title() + "\" finds the tutor busy elsewhere.");
            }
        }
    }

    private int students(int group) {
        int all = request.headcount();
        return group == 0 ? all : all / request.groups() + (group <= all % request.groups() ? 1 : 0);
    }

    /** With no meeting in it, one thing after the other, and before the last meeting if the class has still to work on it. */
    private void outside(Block block) {
        if (request.meetings().stream().anyMatch(meeting -> meet(block.start(), block.end(), meeting.start(), meeting.end()))) {
            fault("\"" + block.title() + "\" is done in a meeting.");
        }
        if (block.kind() == StepKind.COLLECT && block.start().isBefore(plan.bookedEnd())) {
            fault("\"" + block.title() + "\" comes before the last meeting is over.");
        }
        plan.blocks().stream().filter(other -> other != block && other.kind() == block.kind() && overlap(block, other))
                .forEach(other -> fault("\"" + block.title() + "\" and \"" + other.title() + "\" need the same hands at once."));
        LocalDateTime last = request.meetings().get(request.meetings().size() - 1).start();
        if (isWorkedOnAfter(block.step()) && block.end().isAfter(last)) {
            fault("\"" + block.title() + "\" is over when no meeting is left.");
        }
    }

    private boolean isWorkedOnAfter(String step) {
        return met(step, true, new HashSet<>()).stream().anyMatch(this::isClassWork);
    }

    private boolean touchesOutside(String step, boolean onwards) {
        return met(step, onwards, new HashSet<>()).stream().anyMatch(next -> next.kind().isOutside());
    }

    /** The steps that are met from one on or back, each once, as greatest gaps lead round; work of the class is the last on its way. */
    private Set<Step> met(String step, boolean onwards, Set<Step> met) {
        request.links().stream().filter(link -> (onwards ? link.from() : link.to()).equals(step)).map(link -> steps.get(onwards ? link.to() : link.from()))
                .filter(next -> met.add(next) && !isClassWork(next)).forEach(next -> met(next.id(), onwards, met));
        return met;
    }

    private boolean isClassWork(Step step) {
        return step.kind().needsClass() && !isAhead(step);
    }

    private void asked(Block block) {
        LocalDateTime asked = request.notBefore().get(block.step());
        if (asked != null && block.start().isBefore(asked)) {
            fault("\"" + block.title() + "\" begins before the time asked for.");
        }
    }

    private void hours(Block block) {
        if (block.kind().isOutside()) {
            return;
        }
        if (block.kind().isUnattended()) {
            if (isClosed(block.start(), block.start(), false) && !runsOn(steps.get(block.step()))) {
                fault("\"" + block.title() + "\" begins when nobody is there.");
            }
            return;
        }
        boolean whole = !(steps.get(block.step()) instanceof Step.Make make && make.mayPause());
        if (whole && block.segments().size() > 1) {
            fault("\"" + block.title() + "\" is interrupted.");
        }
        block.segments().stream().filter(part -> isClosed(part.start(), part.end(), true))
                .forEach(part -> fault("\"" + block.title() + "\" is worked on from " + part.start() + ", when the class is not."));
        for (int i = 1; i < block.segments().size(); i++) {
            pause(block, block.segments().get(i - 1).end(), block.segments().get(i).start());
        }
    }

    /** Nobody has to be there for what begins by itself when all that it follows has waited long enough. */
    private boolean runsOn(Step step) {
        List<Step> before = request.links().stream().filter(link -> link.to().equals(step.id())).map(link -> steps.get(link.from())).toList();
        boolean handled = step.uses().isEmpty() || before.stream().anyMatch(one -> one.kind() == StepKind.BETWEEN);
        return handled && !before.isEmpty() && before.stream().allMatch(one -> one.kind().isUnattended() || one.kind().isOutside());
    }

    private void pause(Block block, LocalDateTime from, LocalDateTime to) {
        boolean opened = Stream.iterate(from, time -> time.isBefore(to), time -> time.plusMinutes(1))
                .anyMatch(time -> !isClosed(time, time.plusSeconds(1), true));
        if (opened) {
            fault("\"" + block.title() + "\" stops from " + from + " to " + to + " although the class is working.");
        }
    }

    /** Whether a stretch meets the inside of a break or of the time between two meetings. */
    private boolean isClosed(LocalDateTime from, LocalDateTime to, boolean breaksToo) {
        boolean closed = breaksToo && request.breaks().stream().anyMatch(part -> meet(from, to, part.start(), part.end()));
        List<Meeting> meetings = request.meetings();
        for (int i = 1; i < meetings.size(); i++) {
            closed |= meet(from, to, meetings.get(i - 1).end(), meetings.get(i).start());
        }
        return closed || from.isBefore(plan.start());
    }

    private static boolean meet(LocalDateTime from, LocalDateTime to, LocalDateTime closes, LocalDateTime opens) {
        return from.isBefore(opens) && to.isAfter(closes);
    }

    private void seats() {
        List<Block> hands = plan.blocks().stream().filter(block -> block.kind().needsClass()).toList();
        for (Block one : hands) {
            hands.stream().filter(other -> other != one && overlap(one, other))
                    .filter(other -> one.group() == other.group() || one.group() == 0)
                    .forEach(other -> fault("\"" + one.title() + "\" and \"" + other.title() + "\" need the class at once."));
        }
    }

    private static boolean overlap(Block one, Block other) {
        return one.start().isBefore(other.end()) && other.start().isBefore(one.end());
    }

    private void tools() {
        Map<String, Integer> room = new HashMap<>();
        request.room().forEach((RoomTool tool) -> room.merge(tool.name(), tool.count(), Integer::sum));
        for (Block block : plan.blocks()) {
            List<Block> now = plan.blocks().stream().filter(other -> other == block
                    || !other.start().isAfter(block.start()) && other.end().isAfter(block.start())).toList();
            for (ToolUse use : steps.get(block.step()).uses()) {
                int taken = now.stream().mapToInt(other -> units(other, use.tool())).sum();
                if (!block.start().equals(block.end()) && taken > room.getOrDefault(use.tool(), 0)) {
                    fault("\"" + block.title() + "\" finds " + taken + " × " + use.tool() + " in use, but there are not so many.");
                }
            }
        }
    }

    private int units(Block block, String tool) {
        int units = block.uses().stream().filter(use -> use.tool().equals(tool)).mapToInt(ToolUse::units).sum();
        int each = steps.get(block.step()).uses().stream().filter(use -> use.tool().equals(tool)).mapToInt(ToolUse::units).sum();
        int all = steps.get(block.step()).uses().stream().filter(use -> use.tool().equals(tool))
                .mapToInt(use -> use.units() * (int) Math.ceil(students(block.group()) / (double) use.sharedBy())).sum();
        int there = request.room().stream().filter(in -> in.name().equals(tool)).mapToInt(RoomTool::count).sum();
        int least = block.kind().isOwnWork() ? Math.min(there, all)
                : block.group() == 0 ? each : (each + request.groups() - 1) / request.groups();
        if (units < least) {
            fault("\"" + block.title() + "\" is planned without its " + tool + ".");
        }
        return units;
    }

    /** Links run on past steps that are done ahead. */
    private void link(Link link) {
        if (isAhead(steps.get(link.from()))) {
            return;
        }
        if (isAhead(steps.get(link.to()))) {
            request.links().stream().filter(next -> next.from().equals(link.to()))
                    .forEach(next -> link(new Link(link.from(), next.to())));
            return;
        }
        pairs(link.from(), link.to()).forEach(pair -> gap(pair[0].end(), pair[1], link.least(),
                link.greatest().orElse(null), pair[0].title()));
    }

    private List<Block[]> pairs(String from, String to) {
        return plan.blocksOf(from).stream().flatMap(first -> plan.blocksOf(to).stream()
                .filter(second -> first.group() == second.group() || first.group() == 0 || second.group() == 0)
                .map(second -> new Block[] {first, second})).toList();
    }

    private void gap(LocalDateTime from, Block to, Duration least, Duration greatest, String before) {
        Duration gap = Duration.between(from, to.start());
        if (least != null && gap.compareTo(least) < 0) {
            fault("\"" + to.title() + "\" begins too soon after \"" + before + "\".");
        }
        if (greatest != null && gap.compareTo(greatest) > 0) {
            fault("\"" + to.title() + "\" begins too long after \"" + before + "\".");
        }
    }

    private void limits(Step step) {
        if (!(step instanceof Step.Wait wait) || wait.greatest().isEmpty() || isAhead(step)) {
            return;
        }
        List<Link> after = request.links().stream().filter(link -> link.from().equals(step.id()))
                .filter(link -> !isAhead(steps.get(link.to()))).toList();
        List<Link> before = request.links().stream().filter(link -> link.to().equals(step.id()))
                .filter(link -> !isAhead(steps.get(link.from()))).toList();
        for (Link next : after) {
            pairs(step.id(), next.to()).forEach(pair -> gap(pair[0].start(), pair[1], null, wait.greatest().get(), step.title()));
            before.forEach(link -> pairs(link.from(), next.to()).forEach(pair -> gap(pair[0].end(), pair[1], null,
                    link.least().plus(wait.greatest().get()), pair[0].title())));
        }
    }

    /** What goes on after the class has done its last does not keep it. */
    private boolean counts(Step step) {
        boolean kept = step instanceof Step.Wait wait ? !wait.endsAtHome() : step.kind().needsClass();
        return kept && (step.kind().needsClass() || isWorkedOnAfter(step.id()) || !touchesOutside(step.id(), true) && !touchesOutside(step.id(), false));
    }

    private void finish() {
        LocalDateTime finish = plan.blocks().stream()
                .filter(block -> counts(steps.get(block.step())))
                .map(Block::end).max(Comparator.naturalOrder()).orElse(plan.start());
        if (!finish.equals(plan.finish())) {
            fault("The plan says that it finishes at " + plan.finish() + ", but its last step ends at " + finish + ".");
        }
    }
}
