package benchful.projects;

import benchful.catalogue.HazardName;
import benchful.web.forms.fields.Count;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.ShortText;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * A tool or piece of equipment that steps use.
 *
 * @param personal true where every student must have their own (eye protection); the room is then checked for enough
 * @param owned how many there are in all, where they are scarce; null where there are enough, or where venue or class tell
 */
public record Tool(
        @Required @Filled(80) @Mend("Name the tool.") String name,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean personal,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Count Integer owned,
        @ShortText String note,
        @Length(most = 30) List<@HazardName String> hazards) {
    public Tool {
        hazards = ProjectSpec.copy(hazards);
    }

    /** One of which there are enough. */
    public Tool(String name, boolean personal, String note, List<String> hazards) {
        this(name, personal, null, note, hazards);
    }
}
