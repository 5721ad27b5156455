package benchful.projects;

import benchful.web.StoredEntity;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.OptimisticLockException;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hibernate.exception.ConstraintViolationException;

/** Stores projects so that two hands at once lose nothing: of two equal names or two changes, the second is told. */
@ApplicationScoped
public class ProjectKeeper {
    private final Clock clock;

    ProjectKeeper(Clock clock) {
        this.clock = clock;
    }

    /** How storing ended. */
    public sealed interface Outcome {}

    public record Kept(long id) implements Outcome {}

    /** Another project bears the name. */
    public record NameTaken(String name) implements Outcome {}

    /** Somebody stored another version meanwhile. */
    public record Changed(ProjectSpec theirs, long version) implements Outcome {}

    /** The project was removed meanwhile. */
    record Gone() implements Outcome {}

    public Outcome create(ProjectSpec sheet) {
        return guarded(sheet, 0, () -> Project.byName(sheet.name()).isPresent()
                ? new NameTaken(sheet.name())
                : new Kept(Project.stored(sheet, false, clock.instant()).id()));
    }

    /** @param version of the stored sheet that the change started from */
    public Outcome replace(long id, long version, ProjectSpec sheet) {
        return guarded(sheet, id, () -> StoredEntity.byId(Project.class, id).map(p -> replace(p, version, sheet)).orElseGet(Gone::new));
    }

    private Outcome replace(Project project, long version, ProjectSpec sheet) {
        if (project.version() != version) {
            return new Changed(project.toSpec(), project.version());
        }
        Optional<Project> named = Project.byName(sheet.name());
        if (named.isPresent() && named.get().id() != project.id()) {
            return new NameTaken(sheet.name());
        }
        project.replace(sheet, clock.instant());
        Project.flush();
        return new Kept(project.id());
    }

    private static Outcome guarded(ProjectSpec sheet, long id, Callable<Outcome> storing) {
        try {
            return QuarkusTransaction.requiringNew().call(storing);
        } catch (ConstraintViolationException e) {
            return new NameTaken(sheet.name());
        } catch (OptimisticLockException e) {
            return QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(Project.class, id)
                    .<Outcome>map(p -> new Changed(p.toSpec(), p.version()))
                    .orElseGet(Gone::new));
        }
    }
}
