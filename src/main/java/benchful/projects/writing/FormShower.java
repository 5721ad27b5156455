package benchful.projects.writing;

import benchful.catalogue.HazardNames;
import benchful.catalogue.Material;
import benchful.projects.Project;
import benchful.projects.ProjectFiles;
import benchful.web.StoredEntity;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Shows the form of a project, with what can be chosen in it and how far its draft is. */
@ApplicationScoped
class FormShower {
    private final Clock clock;
    private final HazardNames hazards;

    FormShower(Clock clock, HazardNames hazards) {
        this.clock = clock;
        this.hazards = hazards;
    }

    @CheckedTemplate(basePath = "projects")
    static class Templates {
        static native TemplateInstance form(ProjectForm page);

        private Templates() {}
    }

    /** @param stored by its name in the form, the name under which a picture is stored */
    TemplateInstance page(SpecForm form, Long id, Map<String, String> stored, Boxes boxes, Optional<Long> draft) {
        return page(form, id, stored, boxes, draft, null);
    }

    /** @param preview null where it was not asked for */
    TemplateInstance page(SpecForm form, Long id, Map<String, String> stored, Boxes boxes, Optional<Long> draft, Preview preview) {
        DraftState state = draft.flatMap(d -> StoredEntity.byId(ProjectDraft.class, d)).map(this::state).orElse(null);
        return Templates.form(new ProjectForm(FormPictures.held(form, clock.instant()), id, stored, choices(), boxes, state, state == null && id != null ? ProjectDraft.of(id) : List.of(), preview));
    }

    /** To go on where it was left. */
    TemplateInstance page(ProjectDraft draft) {
        SpecForm form = FormPictures.held(SpecForm.of(draft.sheet(), draft.base()).withRemoved(draft.removed()), clock.instant());
        return Templates.form(new ProjectForm(form, draft.projectId(), draft.storedPictures(), choices(), Boxes.UNTOUCHED, state(draft), List.of(), null));
    }

    private DraftState state(ProjectDraft draft) {
        return DraftState.of(draft, ProjectFiles.reader(hazards), clock.getZone());
    }

    private ProjectForm.Choices choices() {
        return new ProjectForm.Choices(Project.crafts(), Material.names(), hazards.byId());
    }
}
