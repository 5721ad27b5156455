package benchful.projects;

import benchful.bin.EarlierVersion;
import benchful.core.SkillLevel;
import benchful.projects.pictures.Picture;
import benchful.projects.pictures.ProjectPicture;
import benchful.web.EditedEntity;
import benchful.web.Paged;
import benchful.web.Sought;
import benchful.web.forms.Difference;
import benchful.web.forms.Stored;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Query;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/**
 * A stored project: written once by hand or from a file, changed as a whole sheet, taken out of the lists when archived.
 * Its name is unlike every other's, whatever the case of its letters. The pictures' bytes stand in {@link ProjectPicture}.
 */
@Entity
public class Project extends EditedEntity {
    String name;
    String craft;

    @Enumerated(EnumType.STRING)
    SkillLevel level;

    boolean archived;
    boolean sample;
    Instant updatedAt;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<ProjectSpec> sheet;

    /** For the database only; see {@link #stored}. */
    protected Project() {}

    /**
     * Stores a new project with its pictures.
     *
     * @param sample true for one that came with the program and leaves with the samples
     */
    public static Project stored(ProjectSpec sheet, boolean sample, Instant now) {
        Project project = new Project();
        project.sample = sample;
        project.hold(sheet, now);
        project.persistAndFlush();
        ProjectPicture.replace(project.id, sheet.pictures(), Optional.empty());
        return project;
    }

    /**
     * Takes a new sheet in place of the old one. A picture without content keeps the content stored under its name. A changed
     * sample is the tutor's own and stays when the samples leave.
     */
    public void replace(ProjectSpec sheet, Instant now) {
        sample = false;
        ProjectSpec after = filled(sheet);
        Optional<EarlierVersion> earlier = EarlierVersion.keep("project", id, EarlierVersion.tree(Stored.kept(this.sheet)),
                Difference.between(EarlierVersion.tree(isReadable() ? toFullSheet() : this.sheet.tree()), EarlierVersion.tree(after)));
        hold(sheet, now);
        ProjectPicture.replace(id, sheet.pictures(), earlier);
    }

    /** The sheet with the stored contents of pictures that it brings none of. */
    private ProjectSpec filled(ProjectSpec whole) {
        Map<String, byte[]> contents = ProjectPicture.contents(id);
        return whole.withPictures(whole.pictures().stream()
                .map(p -> p.hasContent() ? p : p.withContent(contents.getOrDefault(p.name(), new byte[0])))
                .toList());
    }

    private void hold(ProjectSpec whole, Instant now) {
        ProjectSpec held = whole.withName(whole.name().strip()).withPictures(whole.pictures().stream().map(Picture::withoutContent).toList());
        sheet = Stored.of(held);
        name = held.name();
        craft = held.craft();
        level = held.level();
        updatedAt = now.truncatedTo(ChronoUnit.MICROS);
    }

    /** Archived projects are kept for the classes that use them, but are not offered for new ones. */
    public void archive(boolean away) {
        archived = away;
    }

    /** Whoever else does the same waits until this transaction ends, so that no two give one name at once. */
    static void holdNames() {
        getEntityManager().createNativeQuery("select 1 from pg_advisory_xact_lock(hashtext('project'))").getSingleResult();
    }

    /** Whatever the case of its letters and the blanks around them. */
    public static Optional<Project> byName(String name) {
        return find("lower(name) = ?1", name.strip().toLowerCase(Locale.ROOT)).firstResultOptional();
    }

    /** The projects offered for a new class, by name, without their sheets. */
    public static List<ProjectLine> offered() {
        return find("archived = false order by lower(name)").project(ProjectLine.class).list();
    }

    /** A page of those that fit a filter, by name. What is not read of a sheet is its summary, which the database looks through. */
    static Paged<Project> page(ProjectFilter filter, boolean archived, Sought sought) {
        List<Long> ids = fitting(filter, archived);
        List<Long> shown = ids.stream().skip(sought.skipped()).limit(Sought.LINES).toList();
        return new Paged<>(list("id in ?1 order by lower(name)", shown), ids.size(), sought);
    }

    private static List<Long> fitting(ProjectFilter filter, boolean archived) {
        List<String> patterns = filter.patterns();
        String words = IntStream.range(0, patterns.size())
                .mapToObj(i -> " and lower(name || ' ' || craft || ' ' || coalesce(sheet ->> 'summary', '')) like :word" + i + " escape '!'").collect(Collectors.joining());
        Query query = getEntityManager().createNativeQuery("select id from project where archived = :archived and :craft in ('', craft) and :level in ('', level)"
                + words + " order by lower(name)", Long.class);
        query.setParameter("archived", archived).setParameter("craft", filter.craft()).setParameter("level", filter.level().toUpperCase(Locale.ROOT));
        IntStream.range(0, patterns.size()).forEach(i -> query.setParameter("word" + i, patterns.get(i)));
        @SuppressWarnings("unchecked")
        List<Long> ids = query.getResultList();
        return ids;
    }

    /** The crafts of all projects, each once. */
    public static List<String> crafts() {
        return getEntityManager().createQuery("select distinct craft from Project order by craft", String.class).getResultList();
    }

    /**
     * The sheet with its pictures named but empty: enough for every page and plan.
     *
     * @throws benchful.web.Unusable where what is stored can't be read
     */
    public ProjectSpec toSpec() {
        return sheet.read("the project “%s”".formatted(name), "/projects/" + id + "/edit");
    }

    public boolean isReadable() {
        return sheet.readable().isPresent();
    }

    /** As it is stored, read or not, to be mended in its form. */
    public Stored<ProjectSpec> stored() {
        return sheet;
    }

    /** The sheet with the contents of its pictures, for files and print-outs. */
    public ProjectSpec toFullSheet() {
        return filled(toSpec());
    }

    public String name() {
        return name;
    }

    public boolean archived() {
        return archived;
    }

    public boolean sample() {
        return sample;
    }

    public Instant updatedAt() {
        return updatedAt;
    }
}
