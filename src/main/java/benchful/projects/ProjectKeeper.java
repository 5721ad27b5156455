package benchful.projects;

import benchful.web.StoredEntity;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Consumer;

/** Stores projects that come from files and copies, each in a transaction of its own, as its form would store it. */
@ApplicationScoped
public class ProjectKeeper {
    private final Clock clock;

    ProjectKeeper(Clock clock) {
        this.clock = clock;
    }

    /** @return the address of the new project; nothing where another bears its name */
    public Optional<String> create(ProjectSpec sheet) {
        return QuarkusTransaction.requiringNew().call(() -> kept(null, sheet));
    }

    /**
     * @param version of the stored sheet that the change started from
     * @return the project's address; nothing where it was changed or removed since, or another bears the name
     */
    public Optional<String> replace(long id, long version, ProjectSpec sheet) {
        return replace(id, version, sheet, project -> {});
    }

    /** @param beside what else is stored in the same transaction, once the sheet is */
    public Optional<String> replace(long id, long version, ProjectSpec sheet, Consumer<Project> beside) {
        return QuarkusTransaction.requiringNew().call(() -> StoredEntity.toChange(Project.class, id)
                .filter(p -> p.version() == version)
                .flatMap(p -> kept(p, sheet).map(path -> {
                    beside.accept(p);
                    return path;
                })));
    }

    private Optional<String> kept(Project project, ProjectSpec sheet) {
        ProjectTarget target = new ProjectTarget(project, clock.instant());
        return target.faults(sheet).isEmpty() ? Optional.of(target.save(sheet)) : Optional.empty();
    }
}
