package benchful.orders;

import benchful.batches.KitBatch;
import benchful.classes.CraftClass;
import benchful.core.buying.SupplierOrder;
import benchful.plans.TermPlan;
import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * What coming classes and kits for sale miss, bought for together.
 *
 * @param coming classes that can be chosen
 * @param kits for sale that can be chosen
 * @param chosen classes that are bought for
 * @param chosenKits kits for sale that are bought for
 * @param fill whether the shelf is filled up along with them
 * @param plan null where nothing is chosen
 */
@TemplateData
public record BuyPage(List<CraftClass> coming, List<KitBatch> kits, List<CraftClass> chosen, List<KitBatch> chosenKits, boolean fill, TermPlan plan) {

    public boolean has(CraftClass c) {
        return chosen.contains(c);
    }

    public boolean makes(KitBatch b) {
        return chosenKits.contains(b);
    }

    /** Null where nothing is to be ordered. */
    public List<SupplierOrder> orders() {
        return plan == null || plan.orders().isEmpty() ? null : plan.orders();
    }
}
