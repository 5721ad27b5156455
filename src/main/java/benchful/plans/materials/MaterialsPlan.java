package benchful.plans.materials;

import benchful.core.Fault;
import benchful.core.buying.Bought;
import benchful.core.buying.SupplierOrder;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.SheetPlan;
import benchful.core.needs.Need;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import benchful.plans.materials.kits.Kit;
import benchful.plans.materials.sizes.SizedPiece;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * All that a class takes, computed from one file: sizes, kits, materials, cutting, purchases.
 *
 * @param sizes those somebody takes, in the project's order
 * @param kits students first, then the demonstration, then spares
 * @param bench what stays on the bench, for the whole class and without waste
 * @param materials in the order of the project's lines
 * @param orders one for each supplier
 * @param orderBy earliest day among the orders; null where nothing is ordered
 * @param total of all orders, with delivery and VAT
 * @param bound no other choice of packs and suppliers can cost less
 * @param proof a sentence that says so
 * @param warnings what the tutor should know though the plan stands
 * @param faults what could not be computed; pointers are into the class file
 */
public record MaterialsPlan(
        List<SizeTaken> sizes,
        List<Kit> kits,
        List<Kit.Content> bench,
        List<MaterialPlan> materials,
        List<SupplierOrder> orders,
        LocalDate orderBy,
        Money total,
        Money bound,
        String proof,
        List<Sentence> warnings,
        List<Fault> faults) {

    public MaterialsPlan {
        sizes = List.copyOf(sizes);
        kits = List.copyOf(kits);
        bench = List.copyOf(bench);
        materials = List.copyOf(materials);
        orders = List.copyOf(orders);
        warnings = List.copyOf(warnings);
        faults = List.copyOf(faults);
    }

    /** What the class takes, before stock and suppliers were asked. */
    public Requirements required() {
        Map<String, Need> needs = new LinkedHashMap<>();
        materials.forEach(material -> needs.put(material.name(), material.need()));
        return new Requirements(sizes, kits, bench, needs, faults, warnings);
    }

    /** What is missing and nobody in the catalogue sells. */
    public List<MaterialPlan> unsold() {
        return materials.stream().filter(material -> material.bought().unmet().signum() > 0).toList();
    }

    /** The same, with other words on its kits. */
    public MaterialsPlan withKits(List<Kit> others) {
        return new MaterialsPlan(sizes, others, bench, materials, orders, orderBy, total, bound, proof, warnings, faults);
    }

    /** How many kits are made in one size, and the piece in that size. */
    public record SizeTaken(String name, int students, int demonstrations, int spares, SizedPiece piece) {}

    /**
     * One material of the class.
     *
     * @param unit what it is counted in
     * @param cutting null where it is not cut to length or can't be
     * @param sheets null where it is not cut from sheet or can't be
     * @param bought what stock and orders give
     */
    public record MaterialPlan(String name, Unit unit, Need need, CuttingPlan cutting, SheetPlan sheets, Bought bought) {}
}
