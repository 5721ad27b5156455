package benchful.plans;

import benchful.catalogue.CatalogueSheet;
import benchful.classes.CraftClass;
import benchful.classes.Picks;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** Gathers what stored classes and other kits are bought for together, and plans it. */
@ApplicationScoped
public class TermService {
    private final Shelf shelf;
    private final Clock clock;

    TermService(Shelf shelf, Clock clock) {
        this.shelf = shelf;
        this.clock = clock;
    }

    /** @param others kits without a lesson that are bought for along with the classes */
    @Transactional
    public TermPlan plan(List<CraftClass> classes, List<TermRequest.Part> others) {
        Stream<String> named = Stream.concat(classes.stream().flatMap(c -> Picks.names(c.project().toSheet(), c.setup()).stream()),
                others.stream().flatMap(p -> Picks.names(p.file().project(), p.file().setup()).stream()));
        List<String> materials = named.distinct().toList();
        CatalogueSheet catalogue = shelf.sheets(materials, classes.stream().map(CraftClass::id).toList());
        List<TermRequest.Part> parts = Stream.concat(classes.stream().map(c -> part(c, catalogue)), others.stream()).toList();
        return TermPlanner.plan(new TermRequest(parts, catalogue), LocalDate.now(clock));
    }

    private static TermRequest.Part part(CraftClass c, CatalogueSheet catalogue) {
        ClassFile file = new ClassFile(c.project().toSheet(), c.setup(), null, catalogue.materials(), catalogue.suppliers());
        return new TermRequest.Part("“%s”".formatted(c.title()), file);
    }
}
