package benchful.classes;

import benchful.bin.EarlierVersion;
import benchful.projects.Project;
import benchful.venues.Venue;
import benchful.web.EditedEntity;
import benchful.web.Paged;
import benchful.web.Sought;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.Stored;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.TypedQuery;
import java.time.LocalDateTime;
import java.util.Collection;
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
public class CraftClass extends EditedEntity {
    /** Where an earlier version says its venue. */
    static final String ROOM = "venue";

    private static final String LINES = """
            select new benchful.classes.ClassLine(c.id, coalesce(c.title, p.name), p.id, c.startsAt, c.endsAt, v.name, v.id, c.headcount, c.level, c.sample)
            from CraftClass c join c.project p left join c.venue v""";

    /** In the choices and substitutes of the class and of each student; what is stored in another shape names nothing. */
    private static final String NAMING = """
            select c.* from craft_class c where exists (
                select 1 from jsonb_path_query(c.setup, '$.**.choices.keyvalue()', jsonb_build_object(), true) chosen
                where lower(:name) in (lower(chosen ->> 'key'), lower(chosen ->> 'value'), lower((chosen ->> 'key') || ', ' || (chosen ->> 'value'))))
            or exists (
                select 1 from jsonb_path_query(c.setup, '$.**.instead[*]', jsonb_build_object(), true) other
                where lower(:name) in (lower(other ->> 'of'), lower(other ->> 'use')))
            order by c.starts_at, c.id""";

    /** At hand as the venue is, so that a class can be planned when the transaction is over; its name is the title of a class that has none. */
    @ManyToOne(optional = false)
    Project project;

    @ManyToOne
    Venue venue;

    /** Start of the first meeting, kept from the setup for lists in order of time. */
    LocalDateTime startsAt;

    LocalDateTime endsAt;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<ClassSetup> setup;

    /** What lists show of the setup; the database keeps these in step with it. */
    @Column(insertable = false, updatable = false)
    private String title;

    @Column(insertable = false, updatable = false)
    private String headcount;

    @Column(insertable = false, updatable = false)
    private String level;

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

    /** @throws benchful.web.Unusable where what is stored can't be read */
    public ClassSetup setup() {
        return setup.read("the set-up of this class", "/classes/" + id + "/setup");
    }

    /** Its setup as it is stored, read or not, to be mended in its form. */
    Stored<ClassSetup> storedSetup() {
        return setup;
    }

    public boolean sample() {
        return sample;
    }

    /** Takes a new setup and venue in place of the old ones. */
    public void plan(ClassSetup newSetup, Venue newVenue) {
        EarlierVersion.keep("craft_class", id, written(Stored.kept(setup), venue), written(newSetup, newVenue));
        venue = newVenue;
        setup = Stored.of(newSetup);
        Variants.store(project, newSetup);
        ClassSetup.Meeting first = newSetup.meetings().get(0);
        ClassSetup.Meeting last = newSetup.meetings().get(newSetup.meetings().size() - 1);
        startsAt = first.date().atTime(first.starts());
        endsAt = last.date().atTime(last.ends());
    }

    /** The setup with its room, which stands beside it. */
    private static ObjectNode written(Object setup, Venue venue) {
        ObjectNode tree = setup == null ? SpecFormat.json().createObjectNode() : (ObjectNode) EarlierVersion.tree(setup);
        return venue == null ? tree : tree.put(ROOM, venue.id());
    }

    /** The materials it takes or could choose; none where they can't be read. */
    public List<String> materials() {
        Optional<ClassSetup> read = setup.readable();
        return read.isEmpty() || !project.isReadable() ? List.of() : Picks.names(project.toSpec(), read.get());
    }

    /** Its own title, or its project's name, also where its setup can't be read. */
    public String title() {
        Optional<ClassSetup> read = setup.readable();
        String own = read.isPresent() ? read.get().title() : title;
        return own == null ? project.name() : own;
    }

    /** As it is named in a list, but for what only the database knows. */
    public ClassLine line() {
        return new ClassLine(id, title(), project.id(), startsAt, endsAt, null, null, null, null, sample);
    }

    /** A class as a line of a list, which can be read whatever state its setup is in. */
    public static Optional<ClassLine> line(long id) {
        return lines("c.id = :id").setParameter("id", id).getResultStream().findFirst();
    }

    /** Of these, those that have not ended, the soonest first. */
    public static List<CraftClass> from(LocalDateTime moment, Collection<Long> ids) {
        return ids.isEmpty() ? List.of()
                : list("from CraftClass c join fetch c.project left join fetch c.venue where c.endsAt >= ?1 and c.id in ?2 order by c.startsAt, c.id", moment, ids);
    }

    /** How many have not ended. */
    public static long countFrom(LocalDateTime moment) {
        return count("endsAt >= ?1", moment);
    }

    /** A page of those that have not ended, the soonest first. */
    static Paged<ClassLine> coming(LocalDateTime moment, Sought sought) {
        return page("c.endsAt >= :moment", "c.startsAt, c.id", moment, sought);
    }

    /** A page of those that have ended, the latest first. */
    static Paged<ClassLine> past(LocalDateTime moment, Sought sought) {
        return page("c.endsAt < :moment", "c.startsAt desc, c.id", moment, sought);
    }

    private static Paged<ClassLine> page(String when, String order, LocalDateTime moment, Sought sought) {
        String which = when + " and lower(coalesce(c.title, '') || ' ' || p.name) like :find escape '!'";
        long total = getEntityManager().createQuery("select count(c) from CraftClass c join c.project p where " + which, Long.class)
                .setParameter("moment", moment).setParameter("find", sought.pattern()).getSingleResult();
        return new Paged<>(lines(which + " order by " + order).setParameter("moment", moment).setParameter("find", sought.pattern())
                .setFirstResult(sought.skipped()).setMaxResults(Sought.LINES).getResultList(), total, sought);
    }

    /** The first of those that have not ended, as lines of a list. */
    public static List<ClassLine> linesFrom(LocalDateTime moment, int most) {
        return lines("c.endsAt >= :moment order by c.startsAt, c.id").setParameter("moment", moment).setMaxResults(most).getResultList();
    }

    /** Of some those that have ended, the latest first, as lines of a list. */
    public static List<ClassLine> linesBefore(LocalDateTime moment, Collection<Long> ids) {
        return ids.isEmpty() ? List.of()
                : lines("c.endsAt < :moment and c.id in :ids order by c.startsAt desc, c.id").setParameter("moment", moment).setParameter("ids", ids).getResultList();
    }

    /** @param which of {@code CraftClass c}, its {@code Project p} and its {@code Venue v} */
    public static TypedQuery<ClassLine> lines(String which) {
        return getEntityManager().createQuery(LINES + " where " + which, ClassLine.class);
    }

    /** The first of those that have not ended. */
    public static List<CraftClass> next(LocalDateTime moment, int most) {
        return CraftClass.<CraftClass>find("from CraftClass c join fetch c.project left join fetch c.venue where c.endsAt >= ?1 order by c.startsAt, c.id", moment).page(0, most).list();
    }

    /** Classes in which somebody chose this material or takes it instead of another, in order of time. */
    static List<CraftClass> naming(String material) {
        return getEntityManager().createNativeQuery(NAMING, CraftClass.class).setParameter("name", material).getResultList();
    }

    /** All classes of a project, in order of time. */
    public static List<CraftClass> teaching(Project project) {
        return list("from CraftClass c left join fetch c.venue where c.project = ?1 order by c.startsAt, c.id", project);
    }
}
