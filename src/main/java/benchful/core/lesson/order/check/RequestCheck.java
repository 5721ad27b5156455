package benchful.core.lesson.order.check;

import static java.util.Objects.requireNonNull;

import benchful.core.lesson.Conflict;
import benchful.core.lesson.Conflict.Kind;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.MinuteWords;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.ToolUse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds what no plan could meet, before any plan is sought, and names the steps at fault. */
public final class RequestCheck {

    private final LessonRequest request;
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final List<Conflict> conflicts = new ArrayList<>();

    private RequestCheck(LessonRequest request) {
        this.request = request;
    }

    /** All conflicts that can be named at once; empty if the request is sound. */
    public static List<Conflict> conflicts(LessonRequest request) {
        RequestCheck check = new RequestCheck(request);
        check.names();
        check.lengths();
        check.tools();
        check.conflicts.addAll(HoursCheck.conflicts(request));
        if (check.conflicts.isEmpty()) {
            check.ahead();
            check.gaps();
        }
        return List.copyOf(check.conflicts);
    }

    private void add(Kind kind, List<String> ids, String what, String mend) {
        conflicts.add(new Conflict(kind, ids, what, mend));
    }

    private void names() {
        for (Step step : request.steps()) {
            if (steps.putIfAbsent(step.id(), step) != null) {
                add(Kind.DUPLICATE_STEP, List.of(step.id()), "Two steps have the id \"" + step.id() + "\".",
                        "Give each step an id of its own.");
            }
        }
        Set<String> unknown = new HashSet<>();
        request.links().forEach(link -> List.of(link.from(), link.to()).forEach(id -> unknown(id, unknown, "A link")));
        request.preparedAhead().stream().sorted().forEach(id -> unknown(id, unknown, "The preparation"));
    }

    private void unknown(String id, Set<String> known, String where) {
        if (!steps.containsKey(id) && known.add(id)) {
            add(Kind.UNKNOWN_STEP, List.of(id), where + " names a step \"" + id + "\" that does not exist.",
                    "Add the step, or name one of the steps there are.");
        }
    }

    private void lengths() {
        for (Step step : steps.values()) {
            if (step instanceof Step.Make make && !make.time().isInOrder()) {
                add(Kind.TIMES_REVERSED, List.of(step.id()), "\"" + step.title() + "\" has a quick time above its usual time, "
                        + "or a usual time above its slow time.", "Enter them from quick to slow.");
            }
            if (step instanceof Step.Wait wait && wait.greatest().filter(most -> most.compareTo(wait.least()) < 0).isPresent()) {
                add(Kind.WAIT_REVERSED, List.of(step.id()), "\"" + step.title() + "\" waits at least "
                        + MinuteWords.minutes(wait.least()) + " but at most " + MinuteWords.minutes(wait.greatest().get()) + ".",
                        "Make the greatest wait as long as the least, or leave it out.");
            }
        }
        if (request.groups() > request.headcount()) {
            add(Kind.TOO_MANY_GROUPS, List.of(), request.headcount() + " students cannot make " + request.groups() + " groups.",
                    "Choose at most as many groups as students.");
        }
    }

    private void tools() {
        Map<String, Integer> room = new HashMap<>();
        request.room().forEach((RoomTool tool) -> room.merge(tool.name(), tool.count(), Integer::sum));
        for (Step step : steps.values()) {
            if (!request.preparedAhead().contains(step.id())) {
                step.uses().forEach(use -> tool(step, use, room));
            }
        }
    }

    private void tool(Step step, ToolUse use, Map<String, Integer> room) {
        String each = step.kind().isOwnWork() ? " for each student" : "";
        if (!room.containsKey(use.tool())) {
            add(Kind.TOOL_MISSING, List.of(step.id()), "\"" + step.title() + "\" uses " + use.units() + " × " + use.tool()
                    + each + ", which is not in the room.", "Add " + use.tool() + " to the room, or take it out of the step.");
        } else if (room.get(use.tool()) < use.units()) {
            add(Kind.TOOL_SHORT, List.of(step.id()), "\"" + step.title() + "\" uses " + use.units() + " × " + use.tool() + each
                    + ", but the room has " + room.get(use.tool()) + ".", "Bring at least " + use.units() + ".");
        }
    }

    private void ahead() {
        for (String id : request.preparedAhead().stream().sorted().toList()) {
            Step step = known(id);
            if (step.kind().isOutside() || step.kind().isGathering() && !showsWhatIsPrepared(step)) {
                add(Kind.AHEAD_AFTER_CLASS, List.of(id), "\"" + step.title() + (step.kind().isOutside() ? "\" has its time outside the meetings" : "\" needs the class") + " and cannot be done ahead.",
                        "Prepare only steps that students make, or waits.");
            }
        }
        request.links().forEach(this::ahead);
    }

    private Step known(String id) {
        return requireNonNull(steps.get(id));
    }

    private boolean showsWhatIsPrepared(Step step) {
        List<Link> shown = request.after(step.id());
        return step.kind() == StepKind.SHOW && !shown.isEmpty() && shown.stream().allMatch(link -> request.isAhead(known(link.to())));
    }

    private void ahead(Link link) {
        Step first = known(link.from());
        Step second = known(link.to());
        boolean fixed = second.kind().isBeforeClass();
        boolean moved = request.preparedAhead().contains(link.to()) && (first.kind().mayBePrepared() || first.kind().isOutside());
        if ((fixed || moved) && !request.isAhead(first)) {
            add(Kind.AHEAD_AFTER_CLASS, List.of(first.id(), second.id()), "\"" + second.title() + "\" is done ahead but follows \""
                    + first.title() + "\", which is done in class.", "Do both ahead, or both in class.");
        }
    }


    private void gaps() {
        for (Link link : request.links()) {
            if (link.greatest().filter(most -> most.compareTo(link.least()) < 0).isPresent()) {
                add(Kind.GAP_REVERSED, List.of(link.from(), link.to()), "Between \"" + known(link.from()).title() + "\" and \""
                        + known(link.to()).title() + "\" the gap is at least " + MinuteWords.minutes(link.least())
                        + " but at most " + MinuteWords.minutes(link.greatest().get()) + ".",
                        "Make the greatest gap as long as the least, or leave it out.");
            }
        }
        if (conflicts.isEmpty()) {
            OrderCheck.circle(request).ifPresent(conflicts::add);
        }
    }
}
