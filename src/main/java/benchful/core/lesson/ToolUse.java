package benchful.core.lesson;

/**
 * How many units of a tool or a piece of equipment are kept busy at once; the tool is named as in the room.
 *
 * @param units    by a student, or by those who share them
 * @param sharedBy how many students work at the same units together: 2 for pairs at a press
 */
public record ToolUse(String tool, int units, int sharedBy) {
    private static final int MOST_TOGETHER = 8;

    public ToolUse {
        if (tool == null || tool.isBlank()) {
            throw new IllegalArgumentException("A tool that is used needs a name");
        }
        Guard.atLeast(1, units, "The number of \"" + tool + "\" used");
        Guard.atLeast(1, sharedBy, "The number of students who share \"" + tool + "\"");
        if (sharedBy > MOST_TOGETHER) {
            throw new IllegalArgumentException("The number of students who share \"" + tool + "\" must be at most " + MOST_TOGETHER + ", not " + sharedBy);
        }
    }

    /** Of one student alone. */
    public ToolUse(String tool, int units) {
        this(tool, units, 1);
    }

    /** Units that so many students keep busy. */
    public int of(int students) {
        return units * ((students + sharedBy - 1) / sharedBy);
    }

    /** How many students can work at once with so many units. */
    public int atOnce(int there) {
        return there / units * sharedBy;
    }
}
