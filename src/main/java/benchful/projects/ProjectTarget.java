package benchful.projects;

import benchful.core.Fault;
import benchful.web.forms.SpecPost;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A project that takes a sheet, from its form or from a file.
 *
 * @param project null for one that is not stored yet
 */
public record ProjectTarget(Project project, Instant now) implements SpecPost.Target<ProjectSpec> {
    @Override
    public long version() {
        return project == null ? 0 : project.version();
    }

    @Override
    public ProjectSpec stored() {
        return project == null ? null : project.toSpec();
    }

    @Override
    public List<Fault> faults(ProjectSpec sheet) {
        Project.holdNames();
        Optional<Project> namesake = Project.byName(sheet.name());
        return namesake.isEmpty() || namesake.get() == project
                ? List.of()
                : List.of(new Fault("/name", "There is another project of this name. Choose a name of its own."));
    }

    @Override
    public String save(ProjectSpec sheet) {
        Project saved = project;
        if (saved == null) {
            saved = Project.stored(sheet, false, now);
        } else {
            saved.replace(sheet, now);
        }
        Project.flush();
        return "/projects/" + saved.id();
    }
}
