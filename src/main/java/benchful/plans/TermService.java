package benchful.plans;

import benchful.catalogue.CatalogueSheet;
import benchful.classes.CraftClass;
import benchful.projects.MaterialLine;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** Gathers what stored classes and other kits are bought for together, and plans it. */
@ApplicationScoped
public class TermService {
    private final PlanService plans;
    private final Shelf shelf;
    private final Clock clock;

    TermService(PlanService plans, Shelf shelf, Clock clock) {
        this.plans = plans;
        this.shelf = shelf;
        this.clock = clock;
    }

    /** @param others kits without a lesson that are bought for along with the classes */
    @Transactional
    public TermPlan plan(List<CraftClass> classes, List<TermRequest.Part> others) {
        List<TermRequest.Part> parts = Stream.concat(classes.stream().map(c -> new TermRequest.Part(title(c), plans.file(c))), others.stream()).toList();
        List<String> materials = parts.stream().flatMap(p -> p.file().project().materials().stream()).map(MaterialLine::material).distinct().toList();
        CatalogueSheet catalogue = shelf.sheets(materials, classes.stream().map(CraftClass::id).toList());
        return TermPlanner.plan(new TermRequest(parts, catalogue), LocalDate.now(clock));
    }

    private static String title(CraftClass c) {
        return "“%s”".formatted(c.title());
    }
}
