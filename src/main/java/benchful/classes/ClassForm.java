package benchful.classes;

import benchful.core.SkillLevel;
import benchful.projects.ProjectSheet;
import benchful.projects.Step;
import benchful.projects.StepKind;
import benchful.venues.Venue;
import benchful.web.SheetForm;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.stream.IntStream;

/** What the form of a class shows. */
@TemplateData
public record ClassForm(SheetForm form, CraftClass target, ProjectSheet project, List<Venue> venues, Venue venue) {

    public boolean isNew() {
        return !target.isStored();
    }

    public String action() {
        return isNew() ? "/classes" : "/classes/" + target.id() + "/setup";
    }

    public List<String> levels() {
        return SkillLevel.names();
    }

    public List<String> sizeNames() {
        return project.sizes().stream().map(s -> s.name()).toList();
    }

    /** Steps that the tutor could do before the class instead. */
    public List<Step> movable() {
        return project.steps().stream().filter(s -> s.kind() == StepKind.MAKE || s.kind() == StepKind.WAIT).toList();
    }

    public boolean preparedAhead(String step) {
        return IntStream.range(0, form.tree().path("prepared_ahead").size())
                .anyMatch(i -> form.tree().path("prepared_ahead").path(i).asText().equals(step));
    }
}
