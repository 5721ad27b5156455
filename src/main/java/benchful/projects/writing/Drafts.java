package benchful.projects.writing;

import benchful.catalogue.HazardNames;
import benchful.projects.ProjectFiles;
import benchful.projects.ProjectSpec;
import benchful.projects.pictures.ProjectPicture;
import benchful.web.Pages;
import benchful.web.forms.FaultCollector;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The projects that are being written, for pages and print-outs. */
@Named("drafts")
@ApplicationScoped
public class Drafts {
    private final HazardNames hazards;

    Drafts(HazardNames hazards) {
        this.hazards = hazards;
    }

    /** The latest first. */
    @Transactional
    public List<ProjectDraft> latest() {
        return ProjectDraft.latest();
    }

    /** What of a draft can be printed, with its pictures; nothing where too much is missing. */
    @Transactional
    public Optional<ProjectSpec> printable(long id) {
        ProjectDraft draft = Pages.existing(ProjectDraft.class, id);
        Map<String, byte[]> stored = draft.projectId() == null ? Map.of() : ProjectPicture.contents(draft.projectId());
        return Optional.ofNullable(Printable.of(FormPictures.whole(draft.sheet(), draft.projectId(), draft.storedPictures(), new FaultCollector()), ProjectFiles.reader(hazards)).sheet())
                .map(sheet -> sheet.withPictures(sheet.pictures().stream()
                        .map(p -> p.hasContent() ? p : p.withContent(stored.getOrDefault(draft.storedPictures().getOrDefault(p.name(), p.name()), new byte[0]))).toList()));
    }
}
