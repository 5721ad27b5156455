package benchful.plans.materials;

import benchful.classes.ClassFile;
import benchful.core.Fault;
import benchful.core.buying.Bought;
import benchful.core.buying.ShoppingList;
import benchful.core.quantity.Sentence;
import benchful.plans.materials.cutting.ShoppingPlanner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Computes what a class takes: its sizes, kits and needs, the cutting, and buying what stock does not cover, to arrive by
 * the day before the first meeting. What can't be computed is a fault; the rest stands.
 */
public final class MaterialsPlanner {
    private MaterialsPlanner() {}

    /** Without a date of today: nothing is late. */
    public static MaterialsPlan plan(ClassFile file) {
        return plan(file, null);
    }

    /** @param today orders whose last day is past are marked late; null where that does not matter */
    public static MaterialsPlan plan(ClassFile file, LocalDate today) {
        return plan(file, today, Requirements::of);
    }

    /** @param needs tells what the class takes */
    public static MaterialsPlan plan(ClassFile file, LocalDate today, Function<ClassFile, Requirements> needs) {
        Requirements required = needs.apply(file);
        List<Fault> faults = new ArrayList<>(required.faults());
        List<Sentence> warnings = new ArrayList<>(required.warnings());
        ShoppingPlanner wants = new ShoppingPlanner(file.catalogue(), file.setup().currency(), faults, warnings);
        ShoppingList list = wants.buy(required.needs().values(), material -> file.arriveBy(), today);
        List<MaterialsPlan.MaterialPlan> materials = materials(required, wants, list);
        return new MaterialsPlan(required.sizes(), required.kits(), required.bench(), materials,
                list.orders(), list.orderBy(), list.total(), list.bound(), list.proof(), warnings, faults);
    }

    private static List<MaterialsPlan.MaterialPlan> materials(Requirements required, ShoppingPlanner wants, ShoppingList list) {
        Map<String, Bought> bought = list.materials().stream().collect(Collectors.toMap(Bought::material, Function.identity()));
        return required.needs().values().stream().map(need -> new MaterialsPlan.MaterialPlan(need.material(), need.total().unit(), need,
                wants.cutting(need.material()), wants.sheets(need.material()), bought.get(need.material()))).toList();
    }
}
