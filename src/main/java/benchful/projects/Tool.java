package benchful.projects;

import benchful.catalogue.HazardName;
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
 */
public record Tool(
        @Required @Filled(80) @Mend("Name the tool.") String name,
        @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean personal,
        @ShortText String note,
        @Length(most = 30) List<@HazardName String> hazards) {
    public Tool {
        hazards = ProjectSpec.copy(hazards);
    }
}
