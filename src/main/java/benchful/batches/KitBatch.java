package benchful.batches;

import benchful.bin.EarlierVersion;
import benchful.classes.ClassSetup;
import benchful.projects.MaterialLine;
import benchful.projects.Project;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import benchful.web.EditedEntity;
import benchful.web.Paged;
import benchful.web.Sought;
import benchful.web.forms.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.ManyToOne;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** Kits of one project made for sale. It is set up, changed until it is packed, and removed when it is sold or given up. */
@Entity
public class KitBatch extends EditedEntity {
    @ManyToOne(optional = false)
    Project project;

    /** Kept from the sheet for lists in order of time. */
    LocalDate readyBy;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<BatchSpec> sheet;

    /** Kits of each size that are packed. */
    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<Map<String, Integer>> packed = Stored.of(Map.of());

    /** Its own title, by which it is sought; the database keeps it in step with the sheet. */
    @Column(insertable = false, updatable = false)
    private String title;

    /** For the database only; see {@link #of}. */
    protected KitBatch() {}

    /** A batch that is not stored yet and has no sheet. */
    static KitBatch of(Project project) {
        KitBatch fresh = new KitBatch();
        fresh.project = project;
        return fresh;
    }

    void hold(BatchSpec newSheet) {
        EarlierVersion.keep("kit_batch", id, Stored.kept(sheet), newSheet);
        sheet = Stored.of(newSheet);
        readyBy = newSheet.readyBy();
    }

    /** The project without what stays on the bench: a kit for sale holds only what is packed. */
    ProjectSpec packedProject() {
        ProjectSpec whole = project.toSpec();
        return whole.withMaterials(whole.materials().stream().filter(MaterialLine::packed).toList());
    }

    public Project project() {
        return project;
    }

    /** Kits of each size that the sheet asks for; those whose size it does not say are of the first. */
    Map<String, Integer> wanted() {
        Map<String, Integer> wanted = new LinkedHashMap<>();
        BatchSpec sheet = sheet();
        int rest = sheet.kits() - sheet.sizes().values().stream().mapToInt(Integer::intValue).sum();
        for (Size size : project.toSpec().sizes()) {
            int kits = sheet.sizes().getOrDefault(size.name(), 0) + (wanted.isEmpty() ? rest : 0);
            wanted.put(size.name(), kits);
        }
        return wanted;
    }

    /** Kits of each size that are packed. */
    Map<String, Integer> packed() {
        return packed.read("the count of packed kits of “%s”".formatted(project.name()), null);
    }

    int packed(String size) {
        return packed().getOrDefault(size, 0);
    }

    void pack(String size, int kits) {
        Map<String, Integer> more = new LinkedHashMap<>(packed());
        more.merge(size, kits, Integer::sum);
        packed = Stored.of(more);
    }

    /** Kits of each size that are still to be packed. */
    Map<String, Integer> open() {
        Map<String, Integer> open = new LinkedHashMap<>(wanted());
        open.replaceAll((size, kits) -> Math.max(0, kits - packed(size)));
        return open;
    }

    /** So many kits as a class that never meets: a headcount, sizes, and a day on which all must be there. */
    ClassSetup asSetup(Map<String, Integer> kits) {
        BatchSpec sheet = sheet();
        List<ClassSetup.Meeting> day = sheet.readyBy() == null ? List.of() : List.of(new ClassSetup.Meeting(sheet.readyBy(), LocalTime.NOON, LocalTime.NOON));
        return ClassSetup.plain(title(), day, kits.values().stream().mapToInt(Integer::intValue).sum(), sheet.level(), kits, sheet.currency());
    }

    /** Its own title, or its project's name, also where its sheet can't be read. */
    public String title() {
        return sheet.readable().map(BatchSpec::title).orElseGet(project::name);
    }

    /** @throws benchful.web.Unusable where what is stored can't be read */
    public BatchSpec sheet() {
        return sheet.read("the kits for sale of “%s”".formatted(project.name()), "/batches/" + id + "/edit");
    }

    /** As it is stored, read or not, to be mended in its form. */
    Stored<BatchSpec> stored() {
        return sheet;
    }

    /** All, those that must be ready soonest first. */
    public static List<KitBatch> all() {
        return list("from KitBatch b join fetch b.project order by b.readyBy nulls last, b.id");
    }

    /** A page of them, those that must be ready soonest first. */
    static Paged<KitBatch> page(Sought sought) {
        return Paged.of(find("from KitBatch b join fetch b.project p where lower(coalesce(b.title, '') || ' ' || p.name) like ?1 escape '!'"
                + " order by b.readyBy nulls last, b.id", sought.pattern()), sought);
    }
}
