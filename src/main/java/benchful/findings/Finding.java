package benchful.findings;

import benchful.projects.Project;
import benchful.web.StoredEntity;
import benchful.web.forms.Stored;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** What a tutor decided about something that classes showed: taken into the project, or refused. Never changed afterwards. */
@Entity
public class Finding extends StoredEntity {
    @ManyToOne(optional = false, fetch = FetchType.LAZY)
    Project project;

    /** The key of what was learned. */
    String step;

    String title;

    boolean taken;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<Setting> before;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<Setting> after;

    /** The reviews that it came from, each with what it says. */
    String evidence;

    int classes;

    Instant decidedAt;

    protected Finding() {}

    static Finding of(Project project, Learned of, boolean taken, Instant now) {
        Finding finding = new Finding();
        finding.project = project;
        finding.step = of.key();
        finding.title = of.title();
        finding.taken = taken;
        finding.before = Stored.of(of.now());
        finding.after = Stored.of(of.proposed());
        finding.evidence = of.evidence();
        finding.classes = of.classes();
        finding.decidedAt = now.truncatedTo(ChronoUnit.MICROS);
        return finding;
    }

    /** The latest first. */
    static List<Finding> of(long project) {
        return list("project.id = ?1 order by id desc", project);
    }

    /** As a line of the project's history; it outlives the transaction. */
    Decided decided() {
        return new Decided(step, title, taken, before.read("a finding", null), after.read("a finding", null), evidence, classes, decidedAt);
    }

    /** @param classes from how many it came */
    record Decided(String key, String title, boolean taken, Setting before, Setting after, String evidence, int classes, Instant at) {}
}
