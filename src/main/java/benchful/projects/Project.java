package benchful.projects;

import benchful.bin.EarlierVersion;
import benchful.core.SkillLevel;
import benchful.web.Difference;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/**
 * A stored project: written once by hand or from a file, changed as a whole sheet, taken out of the lists when archived.
 * Its name is unlike every other's, whatever the case of its letters. The pictures' bytes stand in {@link ProjectPicture}.
 */
@Entity
public class Project extends PanacheEntityBase {
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    Long id;

    @Version
    long version;

    String name;
    String craft;

    @Enumerated(EnumType.STRING)
    SkillLevel level;

    boolean archived;
    boolean sample;
    Instant updatedAt;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    ProjectSheet sheet;

    /** For the database only; see {@link #stored}. */
    protected Project() {}

    /**
     * Stores a new project with its pictures.
     *
     * @param sample true for one that came with the program and leaves with the samples
     */
    public static Project stored(ProjectSheet sheet, boolean sample, Instant now) {
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
    public void replace(ProjectSheet sheet, Instant now) {
        sample = false;
        ProjectSheet after = filled(sheet);
        Optional<EarlierVersion> earlier = EarlierVersion.keep("project", id, EarlierVersion.tree(toSheet()),
                Difference.between(EarlierVersion.tree(toFullSheet()), EarlierVersion.tree(after)));
        hold(sheet, now);
        ProjectPicture.replace(id, sheet.pictures(), earlier);
    }

    /** The sheet with the stored contents of pictures that it brings none of. */
    private ProjectSheet filled(ProjectSheet whole) {
        Map<String, byte[]> contents = ProjectPicture.contents(id);
        return whole.withPictures(whole.pictures().stream()
                .map(p -> p.hasContent() ? p : p.withContent(contents.getOrDefault(p.name(), new byte[0])))
                .toList());
    }

    private void hold(ProjectSheet whole, Instant now) {
        sheet = whole.withName(whole.name().strip()).withPictures(whole.pictures().stream().map(Picture::withoutContent).toList());
        name = sheet.name();
        craft = sheet.craft();
        level = sheet.level();
        updatedAt = now.truncatedTo(ChronoUnit.MICROS);
    }

    /** Archived projects are kept for the classes that use them, but are not offered for new ones. */
    public void archive(boolean away) {
        archived = away;
    }

    /** Whatever the case of its letters and the blanks around them. */
    public static Optional<Project> byName(String name) {
        return find("lower(name) = ?1", name.strip().toLowerCase(Locale.ROOT)).firstResultOptional();
    }

    public static Optional<Project> byId(long id) {
        return findByIdOptional(id);
    }

    /** The projects offered for a new class, by name, without their sheets. */
    public static List<ProjectLine> offered() {
        return find("archived = false order by lower(name)").project(ProjectLine.class).list();
    }

    static List<Project> all() {
        return list("order by lower(name)");
    }

    /** The crafts of all projects, each once. */
    static List<String> crafts() {
        return getEntityManager().createQuery("select distinct craft from Project order by craft", String.class).getResultList();
    }

    /** The sheet with its pictures named but empty: enough for every page and plan. */
    public ProjectSheet toSheet() {
        return sheet;
    }

    /** The sheet with the contents of its pictures, for files and print-outs. */
    public ProjectSheet toFullSheet() {
        return filled(sheet);
    }

    public long id() {
        return id;
    }

    public long version() {
        return version;
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
