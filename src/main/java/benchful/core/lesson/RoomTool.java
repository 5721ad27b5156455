package benchful.core.lesson;

/** A tool or a piece of equipment (kiln, drying rack) in the room, with how many there are. */
public record RoomTool(String name, int count) {
    public RoomTool {
        if (name == null || name.isBlank()) {
            throw new IllegalArgumentException("A tool in the room needs a name");
        }
        Guard.atLeast(0, count, "The number of \"" + name + "\" in the room");
    }
}
