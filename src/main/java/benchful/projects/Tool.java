package benchful.projects;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * A tool or piece of equipment that steps use.
 *
 * @param personal true where every student must have their own (eye protection); the room is then checked for enough
 */
public record Tool(String name, @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean personal, String note, List<String> hazards) {
    public Tool {
        hazards = ProjectSpec.copy(hazards);
    }
}
