package benchful.core.lesson.time;

import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.ToolUse;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * From one student's times to the class's: the expected time until the chosen share of the students has finished, plus what
 * turns at shared tools add, plus what waiting for help adds. The work is done in {@link MakeTime}.
 */
public final class ClassTime {

    private static final Memo<Question, StepTime> KNOWN = new Memo<>(5000, Question::planned);

    private final int people;
    private final int groups;
    private final Map<String, Integer> room;

    /**
     * @param room    tools in the room
     * @param helpers helpers beside the tutor
     * @param groups  groups of students who work side by side and share the help
     */
    public ClassTime(List<RoomTool> room, int helpers, int groups) {
        this.room = room.stream().collect(Collectors.toMap(RoomTool::name, RoomTool::count, Integer::sum));
        this.people = 1 + helpers;
        this.groups = groups;
    }

    /** How many of the students can work at once with the tools in the room; 0 if a tool does not suffice for one. */
    public int atOnce(Step.Make make, int students) {
        int atOnce = students;
        for (ToolUse use : make.uses()) {
            atOnce = Math.min(atOnce, use.atOnce(room.getOrDefault(use.tool(), 0)));
        }
        return atOnce;
    }

    /**
     * The time planned for a make step done together by the students from one seat up to another; the room must hold the tools for
     * one of them.
     */
    public StepTime of(Step.Make make, int from, int to) {
        int most = atOnce(make, to - from);
        if (most == 0) {
            throw new IllegalArgumentException("The room lacks a tool for \"" + make.title() + "\"");
        }
        Map<String, Integer> tools = make.uses().stream().map(ToolUse::tool).distinct().collect(Collectors.toMap(Function.identity(), room::get));
        return KNOWN.of(new Question(make, from, to, most, tools, groups, people));
    }

    /** All that the time of a step depends on. */
    private record Question(Step.Make make, int from, int to, int most, Map<String, Integer> tools, int groups, int people) {

        StepTime planned() {
            double[] scales = Arrays.copyOfRange(make.time().scales(to), from, to);
            return new MakeTime(make, scales, most, groups, people).planned(tools);
        }
    }

    /** The same for the first so many students. */
    public StepTime of(Step.Make make, int students) {
        return of(make, 0, students);
    }
}
