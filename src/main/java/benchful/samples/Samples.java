package benchful.samples;

import benchful.catalogue.Material;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Supplier;
import benchful.classes.CraftClass;
import benchful.plans.stored.PlanService;
import benchful.projects.Project;
import benchful.reviews.Review;
import benchful.stock.Cause;
import benchful.stock.StockLedger;
import benchful.venues.Venue;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

/** Loads the sample classes and takes them out again. Own data stands untouched: a name that is taken is not loaded over. */
@ApplicationScoped
public class Samples {
    /** What of the samples can go: own data that uses it keeps it. Materials are used by name, on the sheets of projects. */
    private static final List<String> REMOVALS = List.of(
            "delete from stock_movement where kind = 'RESERVED' and class_id in (select id from craft_class where sample)",
            "delete from craft_class where sample",
            "delete from project p where sample and not exists (select 1 from craft_class c where c.project_id = p.id)"
                    + " and not exists (select 1 from kit_batch b where b.project_id = p.id)",
            "delete from venue v where sample and not exists (select 1 from craft_class c where c.venue_id = v.id)",
            """
            delete from material m where sample and not exists (
                select 1 from project p, jsonb_array_elements(coalesce(p.sheet -> 'materials', '[]'::jsonb)) line
                where lower(line ->> 'material') = lower(m.name) or exists (
                    select 1 from jsonb_array_elements_text(coalesce(line -> 'alternatives', '[]'::jsonb)) other where lower(other) = lower(m.name)))""",
            "delete from supplier s where sample and not exists (select 1 from offer o where o.supplier_id = s.id)");

    private static final String KEPT = """
            select name from project where sample union all select name from venue where sample
            union all select name from material where sample union all select name from supplier where sample order by 1""";

    private final StockLedger ledger;
    private final PlanService plans;
    private final EntityManager database;
    private final Clock clock;

    Samples(StockLedger ledger, PlanService plans, EntityManager database, Clock clock) {
        this.ledger = ledger;
        this.plans = plans;
        this.database = database;
        this.clock = clock;
    }

    /** True where any part of the samples is stored. */
    @Transactional
    public boolean present() {
        return Project.count("sample", true) + Material.count("sample", true) + Venue.count("sample", true) > 0;
    }

    /** All or nothing; done twice it changes nothing. */
    @Transactional
    public void load() {
        SampleFiles files = SampleFiles.read().comingAfter(LocalDate.now(clock));
        files.catalogue().suppliers().stream()
                .filter(s -> Supplier.byName(s.name()).isEmpty())
                .forEach(s -> Supplier.stored(s, true));
        files.catalogue().materials().stream().filter(m -> Material.byName(m.name()).isEmpty()).forEach(this::store);
        files.venues().stream().filter(v -> Venue.byName(v.name()).isEmpty()).forEach(v -> Venue.stored(v, true));
        files.projects().stream()
                .filter(p -> Project.byName(p.name()).isEmpty())
                .forEach(p -> Project.stored(p, true, clock.instant()));
        if (CraftClass.count("sample", true) == 0) {
            files.classes().forEach(this::store);
        }
    }

    private void store(MaterialSpec sheet) {
        Material material = Material.stored(sheet, n -> Supplier.byName(n).orElseThrow(), true, LocalDate.now(clock));
        database.flush();
        if (sheet.onHand() != null) {
            ledger.count(material.id(), sheet.onHand(), Cause.note("Opening count of the samples"));
        }
    }

    private void store(SampleFiles.SampleClass c) {
        CraftClass stored = CraftClass.sample(Project.byName(c.project()).orElseThrow(), Venue.byName(c.venue()).orElseThrow(), c.setup());
        if (c.review() != null) {
            plans.keep(stored, plans.file(stored), "reviewed").ifPresent(kept -> Review.of(stored, kept, c.review()).persist());
        }
    }

    /** Takes out all of the samples that own data does not use. */
    @Transactional
    public void remove() {
        REMOVALS.forEach(sql -> database.createNativeQuery(sql).executeUpdate());
    }

    /** The names of those that had to stay. */
    @Transactional
    @SuppressWarnings("unchecked")
    List<String> kept() {
        return database.createNativeQuery(KEPT).getResultList();
    }
}
