package benchful.plans;

import benchful.catalogue.CatalogueSheet;
import benchful.classes.CraftClass;
import benchful.classes.Picks;
import benchful.core.learning.PlannedStep;
import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.hazards.HazardLibrary;
import benchful.projects.ProjectSheet;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** Gathers what a stored class is planned from, plans it, and keeps the plan that was used. */
@ApplicationScoped
public class PlanService {
    private final Shelf shelf;
    private final ClassPlanner planner;
    private final HazardLibrary hazards;
    private final Clock clock;

    PlanService(Shelf shelf, ClassPlanner planner, HazardLibrary hazards, Clock clock) {
        this.shelf = shelf;
        this.planner = planner;
        this.hazards = hazards;
        this.clock = clock;
    }

    /** The class with its project (pictures named, not carried), venue and the catalogue's part, as one file. */
    @Transactional
    public ClassFile file(CraftClass craftClass) {
        ProjectSheet project = craftClass.project().toSheet();
        CatalogueSheet sheets = shelf.sheets(Picks.names(project, craftClass.setup()), List.of(craftClass.id()));
        return new ClassFile(project, craftClass.setup(), craftClass.venue() == null ? null : craftClass.venue().toSheet(),
                sheets.materials(), sheets.suppliers());
    }

    /** With what the hazard library has to say about the class. */
    public ClassPlan plan(ClassFile file) {
        ClassPlan plan = planner.plan(file, LocalDate.now(clock));
        return plan.withAdvice(SafetyAdvice.of(file, plan.lesson(), hazards.find(HazardUses.of(file).ids())));
    }

    /** The same plan with the chance of ending on time. */
    public ClassPlan withRisk(ClassFile file, ClassPlan plan) {
        return planner.withRisk(file, plan);
    }

    /**
     * Keeps what the class is printed or reviewed with, unless the same class was kept last; stock and prices that moved
     * make it no other class. Nothing is kept of a plan with conflicts, and of nobody whom to call.
     */
    @Transactional
    public Optional<KeptPlan> keep(CraftClass craftClass, String occasion) {
        ClassFile file = file(craftClass).withoutContacts();
        Optional<KeptPlan> last = KeptPlan.latest(craftClass);
        if (last.isPresent() && last.get().file().sameClass(file)) {
            return last;
        }
        ClassPlan plan = plan(file);
        if (plan.lesson() == null) {
            return last;
        }
        KeptPlan kept = KeptPlan.of(craftClass, file, steps(plan), occasion, LocalDateTime.now(clock));
        kept.persist();
        return Optional.of(kept);
    }

    private static List<PlannedStep> steps(ClassPlan plan) {
        return plan.lesson().blocks().stream().filter(b -> b.lane() != Lane.HOME).map(PlanService::step).toList();
    }

    private static PlannedStep step(Block b) {
        return new PlannedStep(b.step(), b.group(), b.title(), b.lane() == Lane.CLASS, b.start(), b.end(), b.length());
    }
}
