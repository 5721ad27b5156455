package benchful.projects;

import java.util.List;

/**
 * A tool or piece of equipment that steps use.
 *
 * @param personal true where every student must have their own (eye protection); the room is then checked for enough
 */
public record Tool(String name, boolean personal, String note, List<String> hazards) {
    public Tool {
        hazards = ProjectSheet.copy(hazards);
    }
}
