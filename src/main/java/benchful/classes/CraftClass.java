package benchful.classes;

import benchful.bin.EarlierVersion;
import benchful.projects.Project;
import benchful.venues.Venue;
import benchful.web.SheetFormat;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Version;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/**
 * One planned teaching of a project. It is set up, changed until the day, printed, run, and reviewed; its plan is computed
 * each time from the setup, the project, the venue and the catalogue.
 */
@Entity
public class CraftClass extends PanacheEntityBase {
    /** Where an earlier version says its venue. */
    static final String ROOM = "venue";

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    Long id;

    @Version
    long version;

    /** Always at hand: its name is the title of a class that has none of its own. */
    @ManyToOne(optional = false)
    Project project;

    @ManyToOne(fetch = FetchType.LAZY)
    Venue venue;

    /** Start of the first meeting, kept from the setup for lists in order of time. */
    LocalDateTime startsAt;

    LocalDateTime endsAt;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    ClassSetup setup;

    boolean sample;

    /** For the database only; see {@link #of}. */
    protected CraftClass() {}

    /** A class of a project that is not stored yet and has no setup. */
    static CraftClass of(Project project) {
        CraftClass fresh = new CraftClass();
        fresh.project = project;
        return fresh;
    }

    /** Stores a class that was brought in from a file. */
    public static CraftClass brought(Project project, Venue venue, ClassSetup setup) {
        CraftClass stored = of(project);
        stored.plan(setup, venue);
        stored.persistAndFlush();
        return stored;
    }

    /** Stores a class that came with the samples and leaves with them. */
    public static CraftClass sample(Project project, Venue venue, ClassSetup setup) {
        CraftClass stored = of(project);
        stored.sample = true;
        stored.plan(setup, venue);
        stored.persistAndFlush();
        return stored;
    }

    public long id() {
        return id;
    }

    public long version() {
        return version;
    }

    public Project project() {
        return project;
    }

    /** Null while the room is not known. */
    public Venue venue() {
        return venue;
    }

    public LocalDateTime startsAt() {
        return startsAt;
    }

    public LocalDateTime endsAt() {
        return endsAt;
    }

    public ClassSetup setup() {
        return setup;
    }

    public boolean sample() {
        return sample;
    }

    public boolean isStored() {
        return id != null;
    }

    /** Takes a new setup and venue in place of the old ones. */
    public void plan(ClassSetup newSetup, Venue newVenue) {
        EarlierVersion.keep("craft_class", id, written(setup, venue), written(newSetup, newVenue));
        venue = newVenue;
        setup = newSetup;
        ClassSetup.Meeting first = newSetup.meetings().get(0);
        ClassSetup.Meeting last = newSetup.meetings().get(newSetup.meetings().size() - 1);
        startsAt = first.date().atTime(first.starts());
        endsAt = last.date().atTime(last.ends());
    }

    /** The setup with its room, which stands beside it. */
    private static ObjectNode written(ClassSetup setup, Venue venue) {
        ObjectNode tree = setup == null ? SheetFormat.json().createObjectNode() : (ObjectNode) EarlierVersion.tree(setup);
        return venue == null ? tree : tree.put(ROOM, venue.id());
    }

    /** Its own title, or its project's name. */
    public String title() {
        return setup.title() == null ? project.name() : setup.title();
    }

    public static List<CraftClass> from(LocalDateTime moment) {
        return list("from CraftClass c join fetch c.project left join fetch c.venue where c.endsAt >= ?1 order by c.startsAt, c.id", moment);
    }

    public static List<CraftClass> before(LocalDateTime moment) {
        return list("from CraftClass c join fetch c.project left join fetch c.venue where c.endsAt < ?1 order by c.startsAt desc, c.id", moment);
    }

    public static Optional<CraftClass> byId(long id) {
        return findByIdOptional(id);
    }

    /** The same, kept from everybody else until the transaction ends. */
    public static Optional<CraftClass> toChange(long id) {
        return findByIdOptional(id, LockModeType.PESSIMISTIC_WRITE);
    }

    /** Classes in which somebody chose this material or takes it instead of another, in order of time. */
    static List<CraftClass> naming(String material) {
        return CraftClass.<CraftClass>list("order by startsAt, id").stream().filter(c -> c.setup.names(material)).toList();
    }

    /** All classes of a project, in order of time. */
    public static List<CraftClass> teaching(Project project) {
        return list("project = ?1 order by startsAt, id", project);
    }
}
