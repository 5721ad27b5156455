package benchful.projects;

import benchful.web.forms.ReadableText;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.stream.IntStream;

/** Copies of a project under a name of their own. */
@ApplicationScoped
public class ProjectCopies {
    private static final int LONGEST_NAME = 120;

    private final ProjectKeeper keeper;

    ProjectCopies(ProjectKeeper keeper) {
        this.keeper = keeper;
    }

    /** @return the address of the new project */
    String of(Project project) {
        return of(project.toFullSheet());
    }

    /** Stores a sheet under the first free of its own name, "NAME (copy)", "NAME (copy 2)" and so on. */
    public String of(ProjectSpec sheet) {
        return IntStream.iterate(0, i -> i + 1).boxed().flatMap(i -> keeper.create(sheet.withName(name(sheet.name(), i))).stream()).findFirst().orElseThrow();
    }

    /** A name of a copy, which is no longer than a name may be; the name itself at 0. */
    public static String name(String name, int copy) {
        String mark = copy == 0 ? "" : copy == 1 ? " (copy)" : " (copy %d)".formatted(copy);
        return ReadableText.cut(name, LONGEST_NAME - mark.length()) + mark;
    }
}
