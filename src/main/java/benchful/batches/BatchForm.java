package benchful.batches;

import benchful.core.SkillLevel;
import benchful.projects.Size;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * The form of a batch.
 *
 * @param id null for a new one
 * @param project the identifier of its project
 */
@TemplateData
public record BatchForm(SpecForm form, Long id, long project, String projectName, List<String> sizeNames) {

    static BatchForm of(SpecForm form, KitBatch batch) {
        return new BatchForm(form, batch.isStored() ? batch.id() : null, batch.project.id(), batch.project.name(), batch.project.toSpec().sizes().stream().map(Size::name).toList());
    }

    public List<String> levels() {
        return SkillLevel.names();
    }
}
