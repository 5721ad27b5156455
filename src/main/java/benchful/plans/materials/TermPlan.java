package benchful.plans.materials;

import benchful.core.Fault;
import benchful.core.buying.Bought;
import benchful.core.buying.SupplierOrder;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.SheetPlan;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import java.util.List;
import org.joda.money.Money;

/**
 * What several classes take together, and where to buy it.
 *
 * @param materials in the order in which the classes name them
 * @param orders one for each supplier
 * @param orderBy earliest day among the orders; null where nothing is ordered
 * @param total of all orders, with delivery and VAT
 * @param bound no other choice of packs and suppliers can cost less
 * @param proof a sentence that says so
 * @param late what comes after the day it is needed, however soon it is ordered
 * @param warnings what the tutor should know though the plan stands
 * @param faults what could not be computed
 */
@TemplateData
public record TermPlan(
        List<TermMaterial> materials,
        List<SupplierOrder> orders,
        LocalDate orderBy,
        Money total,
        Money bound,
        String proof,
        List<Late> late,
        List<Sentence> warnings,
        List<Fault> faults) {

    public TermPlan {
        materials = List.copyOf(materials);
        orders = List.copyOf(orders);
        late = List.copyOf(late);
        warnings = List.copyOf(warnings);
        faults = List.copyOf(faults);
    }

    /**
     * One material of all the classes.
     *
     * @param need of all classes
     * @param shares of the classes that need it, in their order
     * @param arriveBy the last day for the first class that needs it; null where no day is set
     * @param cutting null where it is not cut to length or can't be
     * @param sheets null where it is not cut from sheet or can't be
     * @param bought what stock and orders give
     */
    @TemplateData
    public record TermMaterial(String name, Need need, List<Share> shares, LocalDate arriveBy, CuttingPlan cutting, SheetPlan sheets, Bought bought) {
        public TermMaterial {
            shares = List.copyOf(shares);
        }
    }

    /**
     * What one class needs of a material.
     *
     * @param arriveBy null where the class has no date
     */
    @TemplateData
    public record Share(String title, Quantity amount, LocalDate arriveBy) {}

    /** Goods that can't arrive in time. */
    @TemplateData
    public record Late(String material, String supplier, LocalDate arriveBy, LocalDate arrives) {}
}
