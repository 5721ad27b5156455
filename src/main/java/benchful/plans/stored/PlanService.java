package benchful.plans.stored;

import benchful.catalogue.CatalogueSpec;
import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.classes.Picks;
import benchful.core.learning.Pause;
import benchful.core.learning.PlannedStep;
import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.core.lesson.risk.StepLengths;
import benchful.hazards.HazardLibrary;
import benchful.plans.Advice;
import benchful.plans.AdviceFinder;
import benchful.plans.ClassPlan;
import benchful.plans.ClassPlanner;
import benchful.plans.HazardIndex;
import benchful.plans.PlanParts;
import benchful.plans.Remembered;
import benchful.plans.SafetyAdvice;
import benchful.plans.Timing;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.Requirements;
import benchful.projects.ProjectSpec;
import benchful.web.StoredEntity;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Gathers what a stored class is planned from, plans it, and keeps the plan that was used. */
@ApplicationScoped
public class PlanService {
    private final AvailableStock shelf;
    private final ClassPlanner planner;
    private final Remembered remembered;
    private final HazardLibrary hazards;
    private final Clock clock;

    PlanService(AvailableStock shelf, ClassPlanner planner, Remembered remembered, HazardLibrary hazards, Clock clock) {
        this.shelf = shelf;
        this.planner = planner;
        this.remembered = remembered;
        this.hazards = hazards;
        this.clock = clock;
    }

    /** The class with its project (pictures named, not carried), venue and the catalogue's part, as one file. */
    @Transactional
    public ClassFile file(CraftClass craftClass) {
        ProjectSpec project = craftClass.project().toSpec();
        CatalogueSpec sheets = shelf.sheetsFor(craftClass.id(), Picks.names(project, craftClass.setup()));
        return new ClassFile(project, craftClass.setup(), craftClass.venue() == null ? null : craftClass.venue().toSpec(),
                sheets.materials(), sheets.suppliers());
    }

    /** A stored class, with all of it that plans and pages ask for. */
    @Transactional
    public Optional<CraftClass> craftClass(long id) {
        return StoredEntity.byId(CraftClass.class, id);
    }

    /**
     * Works out what a transaction is going to ask for, before it begins: it then finds the answer remembered, and no connection
     * to the database is held while something is worked out.
     *
     * @param work what is to be worked out from the class's file
     */
    public <T> T before(long id, Consumer<ClassFile> work, Supplier<T> transaction) {
        QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(CraftClass.class, id).map(this::file)).ifPresent(work);
        return QuarkusTransaction.requiringNew().call(transaction::get);
    }

    /** With what the hazard library has to say about the class. */
    public ClassPlan plan(ClassFile file) {
        PlanParts parts = parts(file);
        return ClassPlan.of(parts.timing(), parts.materials(), parts.advice());
    }

    /** The same plan, of which only that is worked out which is asked for. */
    public PlanParts parts(ClassFile file) {
        LocalDate today = LocalDate.now(clock);
        return new PlanParts() {
            @Override
            public Requirements needs() {
                return remembered.needs(file);
            }

            @Override
            public MaterialsPlan materials() {
                return remembered.materials(file, today);
            }

            @Override
            public Timing timing() {
                return planner.timing(file);
            }

            @Override
            public List<Advice> advice() {
                HazardIndex uses = HazardIndex.of(file);
                List<Advice> safety = SafetyAdvice.of(file, timing().lesson(), hazards.find(uses.ids()));
                List<Advice> unknown = SafetyAdvice.unknown(uses, hazards.byId().keySet());
                return Stream.of(AdviceFinder.of(file), unknown, safety).flatMap(List::stream).toList();
            }
        };
    }

    /** What the class takes, before stock and suppliers are asked. */
    public Requirements needs(ClassFile file) {
        return remembered.needs(file);
    }

    /** What it takes, cuts and buys, without a date of today: nothing is late. */
    public MaterialsPlan materials(ClassFile file) {
        return remembered.materials(file, null);
    }

    /** Whether it ends within its hours. */
    public boolean fits(ClassFile file) {
        return planner.fits(file);
    }

    /** When as many such classes as are promised have ended; nothing where the class can't be planned. */
    public Optional<LocalDateTime> finish(ClassFile file) {
        return planner.promised(file).map(promised -> promised.plan().finish());
    }

    /**
     * How long each step usually takes a class, as a review notes it.
     *
     * @param students who came; null for all
     */
    public List<StepLengths.Length> stepLengths(ClassFile file, Integer students) {
        return planner.stepLengths(file, students);
    }

    /**
     * Keeps what the class is printed or reviewed with, unless the same class was kept last; stock and prices that moved
     * make it no other class. Nothing is kept of a plan with conflicts, and of nobody whom to call.
     *
     * @param asPlanned the class's file
     */
    @Transactional
    public Optional<KeptPlan> keep(CraftClass craftClass, ClassFile asPlanned, String occasion) {
        ClassFile file = asPlanned.withoutContacts();
        Optional<KeptPlan> last = KeptPlan.latest(craftClass);
        if (last.isPresent() && last.get().file().sameClass(file)) {
            return last;
        }
        Timing timing = planner.timing(file);
        if (timing.lesson() == null) {
            return last;
        }
        KeptPlan kept = KeptPlan.of(craftClass, file, steps(timing), occasion, LocalDateTime.now(clock));
        kept.persist();
        return Optional.of(kept);
    }

    /** The steps and breaks of the class as they are planned today; nothing where it can't be planned. */
    public Optional<KeptPlan.Steps> planned(ClassFile file) {
        return Optional.of(planner.timing(file)).filter(timing -> timing.lesson() != null).map(PlanService::steps);
    }

    private static KeptPlan.Steps steps(Timing timing) {
        return new KeptPlan.Steps(timing.lesson().blocks().stream().filter(b -> b.lane() != Lane.HOME && b.lane() != Lane.OUTSIDE).map(PlanService::step).toList(),
                timing.breaks().stream().map(b -> new Pause(b.start(), b.end())).toList());
    }

    private static PlannedStep step(Block b) {
        return new PlannedStep(b.step(), b.group(), b.title(), b.lane() == Lane.CLASS, b.start(), b.end(), b.length());
    }
}
