package benchful.projects;

import jakarta.enterprise.context.ApplicationScoped;

/** Copies of a project under a name of their own. */
@ApplicationScoped
public class ProjectCopies {
    private static final int LONGEST_NAME = 120;

    private final ProjectKeeper keeper;

    ProjectCopies(ProjectKeeper keeper) {
        this.keeper = keeper;
    }

    /** @return the identifier of the new project */
    long of(Project project) {
        return of(project.toFullSheet());
    }

    /** Stores a sheet under the first free of its own name, "NAME (copy)", "NAME (copy 2)" and so on. */
    public long of(ProjectSpec sheet) {
        for (int i = 0; ; i++) {
            if (keeper.create(sheet.withName(name(sheet.name(), i))) instanceof ProjectKeeper.Kept kept) {
                return kept.id();
            }
        }
    }

    private static String name(String name, int copy) {
        String mark = copy == 0 ? "" : copy == 1 ? " (copy)" : " (copy %d)".formatted(copy);
        return name.substring(0, Math.min(name.length(), LONGEST_NAME - mark.length())) + mark;
    }
}
