package benchful.orders;

import benchful.classes.CraftClass;
import benchful.core.buying.SupplierOrder;
import benchful.plans.TermPlan;
import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * What coming classes miss, bought for together.
 *
 * @param coming all that can be chosen
 * @param chosen those that are bought for
 * @param plan null where none is chosen
 */
@TemplateData
public record BuyPage(List<CraftClass> coming, List<CraftClass> chosen, TermPlan plan) {

    public boolean has(CraftClass c) {
        return chosen.contains(c);
    }

    /** Null where nothing is to be ordered. */
    public List<SupplierOrder> orders() {
        return plan == null || plan.orders().isEmpty() ? null : plan.orders();
    }
}
