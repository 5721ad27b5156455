package benchful.orders;

import benchful.batches.KitBatch;
import benchful.classes.ClassLine;
import benchful.classes.CraftClass;
import benchful.core.buying.SupplierOrder;
import benchful.plans.materials.TermPlan;
import benchful.plans.stored.TermService;
import benchful.stock.sources.Sources;
import benchful.web.Trouble;
import benchful.web.tasks.BackgroundTask;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What coming classes and kits for sale miss, bought for together.
 *
 * @param coming classes that can be chosen
 * @param more how many come after those
 * @param kits for sale that can be chosen
 * @param choice what is bought for
 * @param bought the plan, and what was left out; null where nothing is chosen, and while it is worked out
 * @param underway the work on a long plan; null where there is none
 */
@TemplateData
public record BuyView(List<ClassLine> coming, long more, List<KitBatch> kits, Choice choice, TermService.Together bought, BackgroundTask<TermService.Together> underway) {

    public boolean has(ClassLine c) {
        return choice.classes().stream().anyMatch(chosen -> chosen.id() == c.id());
    }

    public boolean makes(KitBatch b) {
        return choice.kits().contains(b);
    }

    public boolean fill() {
        return choice.fill();
    }

    public List<CraftClass> chosen() {
        return choice.classes();
    }

    public List<KitBatch> chosenKits() {
        return choice.kits();
    }

    public TermPlan plan() {
        return bought == null ? null : bought.plan();
    }

    public List<Trouble> leftOut() {
        return bought == null ? List.of() : bought.leftOut();
    }

    /** What nobody sells. */
    public Sources sources() {
        String chosen = Stream.concat(choice.classes().stream().map(c -> "class=" + c.id()), choice.kits().stream().map(b -> "batch=" + b.id())).collect(Collectors.joining("&"));
        return Sources.of(plan().materials().stream().map(TermPlan.TermMaterial::bought).filter(Objects::nonNull), plan().total().getCurrencyUnit().getCode(), "/orders/new?" + chosen + (choice.fill() ? "&fill=true" : ""));
    }

    /** Null where nothing is to be ordered. */
    public List<SupplierOrder> orders() {
        return plan() == null || plan().orders().isEmpty() ? null : plan().orders();
    }
}
