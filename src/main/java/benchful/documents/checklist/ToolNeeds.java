package benchful.documents.checklist;

import benchful.classes.ClassFile;
import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.StepKind;
import benchful.projects.Step;
import benchful.projects.Tool;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** How many of each tool a class needs, finds in the room and brings. */
final class ToolNeeds {
    private final ClassFile file;

    ToolNeeds(ClassFile file) {
        this.file = file;
    }

    /**
     * @param wanted for everybody to work at once; all there is of what no step names
     * @param room what the venue has
     * @param brought what the tutor brings
     */
    record Need(String tool, String note, boolean personal, int wanted, int room, int brought) {
        int there() {
            return room + brought;
        }

        int laidOut() {
            return Math.min(wanted, there());
        }

        /** Fewer than one for each student, so that it goes round. */
        boolean shared() {
            return there() < wanted;
        }
    }

    List<Need> all() {
        return file.project().tools().stream().map(this::need).toList();
    }

    private Need need(Tool tool) {
        int room = file.venue() == null ? 0 : file.venue().tools().getOrDefault(tool.name(), 0);
        int brought = file.setup().tools().getOrDefault(tool.name(), room == 0 && tool.owned() != null ? tool.owned() : 0);
        int wanted = wanted(tool);
        return new Need(tool.name(), tool.note() == null ? "" : tool.note(), tool.personal(), wanted == 0 ? Math.max(1, room + brought) : wanted, room, brought);
    }

    /** Of the tools that steps of this meeting use; those that no step names are set out at the first. */
    List<Need> of(LessonPlan lesson, MeetingPlan meeting) {
        Set<String> used = lesson.blocks().stream().filter(block -> block.kind() != StepKind.HOMEWORK).filter(block -> block.start().toLocalDate().equals(meeting.start().toLocalDate())).map(Block::step).collect(Collectors.toSet());
        return file.project().tools().stream().filter(tool -> meeting.number() == 1 && named(tool).isEmpty() || named(tool).stream().anyMatch(step -> used.contains(step.id())))
                .map(this::need).toList();
    }

    private List<Step> named(Tool tool) {
        return file.project().steps().stream().filter(step -> uses(step, tool, 1) > 0).toList();
    }

    private int wanted(Tool tool) {
        int headcount = file.setup().headcount();
        int most = file.project().steps().stream().mapToInt(step -> uses(step, tool, step.kind().isOwnWork() ? headcount : 1)).max().orElse(0);
        return tool.personal() ? Math.max(most, headcount) : most;
    }

    private static int uses(Step step, Tool tool, int students) {
        return step.tools().stream().filter(use -> use.tool().equals(tool.name())).mapToInt(use -> use.planned().of(students)).sum();
    }
}
