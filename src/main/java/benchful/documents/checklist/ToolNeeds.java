package benchful.documents.checklist;

import benchful.classes.ClassFile;
import benchful.projects.Step;
import benchful.projects.Tool;
import java.util.List;

/** How many of each tool a class needs, finds in the room and brings. */
final class ToolNeeds {
    private final ClassFile file;

    ToolNeeds(ClassFile file) {
        this.file = file;
    }

    /**
     * @param wanted for everybody to work at once
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
        return new Need(tool.name(), tool.note() == null ? "" : tool.note(), tool.personal(), wanted(tool), room, brought);
    }

    private int wanted(Tool tool) {
        int headcount = file.setup().headcount();
        int most = file.project().steps().stream().mapToInt(step -> uses(step, tool) * (step.kind().isOwnWork() ? headcount : 1)).max().orElse(0);
        return tool.personal() ? Math.max(most, headcount) : most;
    }

    private static int uses(Step step, Tool tool) {
        return step.tools().stream().filter(use -> use.tool().equals(tool.name())).mapToInt(Step.ToolUse::each).sum();
    }
}
