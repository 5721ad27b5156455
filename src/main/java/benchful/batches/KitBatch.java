package benchful.batches;

import benchful.classes.ClassSetup;
import benchful.projects.MaterialLine;
import benchful.projects.Project;
import benchful.projects.ProjectSheet;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** Kits of one project made for sale. It is set up, changed until it is packed, and removed when it is sold or given up. */
@Entity
public class KitBatch extends PanacheEntityBase {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    Long id;

    @Version
    long version;

    @ManyToOne(optional = false, fetch = FetchType.LAZY)
    Project project;

    /** Kept from the sheet for lists in order of time. */
    LocalDate readyBy;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    BatchSheet sheet;

    /** For the database only; see {@link #of}. */
    protected KitBatch() {}

    /** A batch that is not stored yet and has no sheet. */
    static KitBatch of(Project project) {
        KitBatch fresh = new KitBatch();
        fresh.project = project;
        return fresh;
    }

    void hold(BatchSheet newSheet) {
        sheet = newSheet;
        readyBy = newSheet.readyBy();
    }

    /** The project without what stays on the bench: a kit for sale holds only what is packed. */
    ProjectSheet packedProject() {
        ProjectSheet whole = project.toSheet();
        return whole.withMaterials(whole.materials().stream().filter(MaterialLine::packed).toList());
    }

    /** The batch as a class that never meets: a headcount, sizes, and a day on which all must be there. */
    ClassSetup asSetup() {
        List<ClassSetup.Meeting> day = sheet.readyBy() == null ? List.of() : List.of(new ClassSetup.Meeting(sheet.readyBy(), LocalTime.NOON, LocalTime.NOON));
        return ClassSetup.plain(title(), day, sheet.kits(), sheet.level(), sheet.sizes(), sheet.currency());
    }

    /** Its own title, or its project's name. */
    public String title() {
        return sheet.title() == null ? project.name() : sheet.title();
    }

    public long id() {
        return id;
    }

    public long version() {
        return version;
    }

    public BatchSheet sheet() {
        return sheet;
    }

    boolean isStored() {
        return id != null;
    }

    /** All, those that must be ready soonest first. */
    public static List<KitBatch> all() {
        return list("from KitBatch b join fetch b.project order by b.readyBy nulls last, b.id");
    }

    public static Optional<KitBatch> byId(long id) {
        return findByIdOptional(id);
    }

    /** The same, kept from everybody else until the transaction ends. */
    static Optional<KitBatch> toChange(long id) {
        return findByIdOptional(id, LockModeType.PESSIMISTIC_WRITE);
    }
}
