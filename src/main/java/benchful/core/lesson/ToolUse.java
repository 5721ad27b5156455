package benchful.core.lesson;

/** How many units of a tool or a piece of equipment are kept busy at once; the tool is named as in the room. */
public record ToolUse(String tool, int units) {
    public ToolUse {
        if (tool == null || tool.isBlank()) {
            throw new IllegalArgumentException("A tool that is used needs a name");
        }
        Guard.atLeast(1, units, "The number of \"" + tool + "\" used");
    }
}
