package benchful.plans.materials;

import benchful.catalogue.SupplierSpec;
import benchful.classes.ClassFile;
import benchful.core.Fault;
import benchful.core.buying.Bought;
import benchful.core.buying.LeadTime;
import benchful.core.buying.Purchase;
import benchful.core.buying.ShoppingList;
import benchful.core.buying.SupplierOrder;
import benchful.core.needs.CutNeed;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.plans.materials.cutting.ShoppingPlanner;
import benchful.plans.materials.kits.ClassNeeds;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Buys for several classes together. Their needs of each material are added up, with the pieces of what is cut, so that
 * packs, price breaks, deliveries and offcuts serve all; a material arrives in time for the first class that needs it.
 */
public final class TermPlanner {
    private final TermRequest request;
    private final LocalDate today;
    private final List<Fault> faults = new ArrayList<>();
    private final List<Sentence> warnings = new ArrayList<>();

    private final BiFunction<ClassFile, Set<String>, Requirements> required;

    private TermPlanner(TermRequest request, LocalDate today, BiFunction<ClassFile, Set<String>, Requirements> required) {
        this.request = request;
        this.today = today;
        this.required = required;
    }

    /** @param today the first day on which an order can be sent; null where that does not matter */
    public static TermPlan plan(TermRequest request, LocalDate today) {
        return plan(request, today, Requirements::of);
    }

    /** @param required tells what a part takes where these materials are cut to length */
    public static TermPlan plan(TermRequest request, LocalDate today, BiFunction<ClassFile, Set<String>, Requirements> required) {
        return new TermPlanner(request, today, required).plan();
    }

    /** The need of one part. */
    private record PartNeed(TermRequest.Part part, Need need) {
        TermPlan.Share share() {
            return new TermPlan.Share(part.title(), need.total(), part.arriveBy());
        }
    }

    private TermPlan plan() {
        Map<String, List<PartNeed>> parts = parts();
        Map<String, Need> needs = new LinkedHashMap<>();
        parts.forEach((material, list) -> together(material, list, needs));
        ShoppingPlanner wants = new ShoppingPlanner(request.catalogue(), currency(), faults, warnings);
        ShoppingList list = wants.buy(needs.values(), material -> arriveBy(parts.get(material)), today);
        Map<String, Bought> bought = list.materials().stream().collect(Collectors.toMap(Bought::material, Function.identity()));
        List<TermPlan.TermMaterial> materials = needs.values().stream().map(need -> new TermPlan.TermMaterial(need.material(), need,
                parts.get(need.material()).stream().map(PartNeed::share).toList(), arriveBy(parts.get(need.material())),
                wants.cutting(need.material()), wants.sheets(need.material()), bought.get(need.material()))).toList();
        return new TermPlan(materials, list.orders(), list.orderBy(), list.total(), list.bound(), list.proof(), late(list), warnings, faults);
    }

    private Map<String, List<PartNeed>> parts() {
        Set<String> cut = request.parts().stream().flatMap(p -> ClassNeeds.cut(p.file()).stream()).collect(Collectors.toSet());
        Map<String, List<PartNeed>> parts = new LinkedHashMap<>();
        for (TermRequest.Part part : request.parts()) {
            Requirements taken = required.apply(part.file(), cut);
            taken.faults().forEach(f -> faults.add(new Fault(f.pointer(), "%s: %s".formatted(part.title(), f.detail()))));
            taken.warnings().forEach(w -> warnings.add(Sentence.of("%s: %s", part.title(), w.toString())));
            taken.needs().values().stream().filter(need -> need.total().signum() > 0)
                    .forEach(need -> parts.computeIfAbsent(need.material(), m -> new ArrayList<>()).add(new PartNeed(part, need)));
        }
        return parts;
    }

    /** Needs that measure different things, of a material that is not in the catalogue, can't be added: a fault says so. */
    private void together(String material, List<PartNeed> parts, Map<String, Need> needs) {
        try {
            needs.put(material, sum(material, parts));
        } catch (IllegalArgumentException e) {
            faults.add(new Fault("/materials", "“%s”: %s".formatted(material, e.getMessage())));
        }
    }

    private static Need sum(String material, List<PartNeed> parts) {
        List<CutNeed> cuts = parts.stream().flatMap(p -> p.need().cuts().stream()
                .map(c -> c.labelled("%s: %s".formatted(p.part().title(), c.label())))).toList();
        List<Sentence> reasons = parts.stream().map(p -> Sentence.of("%s takes %s.", p.part().title(), p.need().total())).toList();
        boolean lent = parts.stream().allMatch(p -> p.need().lent());
        return new Need(material, sum(parts, Need::net), sum(parts, Need::waste), sum(parts, Need::total), lent, cuts, reasons);
    }

    /** What is used up in each class, and once what goes from one to the next. */
    private static Quantity sum(List<PartNeed> parts, Function<Need, Quantity> amount) {
        Stream<Quantity> used = parts.stream().filter(p -> !p.need().lent()).map(p -> amount.apply(p.need()));
        Stream<Quantity> lent = parts.stream().filter(p -> p.need().lent()).map(p -> amount.apply(p.need())).max(Comparator.naturalOrder()).stream();
        return Stream.concat(used, lent).reduce(Quantity::plus).orElseThrow();
    }

    private static LocalDate arriveBy(List<PartNeed> parts) {
        return parts.stream().map(p -> p.part().arriveBy()).filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null);
    }

    /** The first class's that has one; the others' totals are then shown in it too. */
    private String currency() {
        List<String> codes = request.parts().stream().map(p -> p.file().setup().currency()).filter(Objects::nonNull).distinct().toList();
        if (codes.size() > 1) {
            warnings.add(Sentence.of("The classes are set in %s; all is reckoned in %s.", String.join(", ", codes), codes.get(0)));
        }
        return codes.isEmpty() ? null : codes.get(0);
    }

    private List<TermPlan.Late> late(ShoppingList list) {
        if (today == null) {
            return List.of();
        }
        Map<String, LeadTime> leads = request.catalogue().suppliers().stream().collect(Collectors.toMap(SupplierSpec::name, SupplierSpec::lead, (a, b) -> a));
        List<TermPlan.Late> late = new ArrayList<>();
        for (SupplierOrder order : list.orders()) {
            LocalDate arrives = leads.get(order.supplier()).arrives(today);
            order.purchases().stream().filter(p -> p.arriveBy() != null && arrives.isAfter(p.arriveBy())).map(Purchase::material).distinct()
                    .forEach(m -> late.add(new TermPlan.Late(m, order.supplier(), arriveBy(m, order), arrives)));
        }
        return late;
    }

    private static LocalDate arriveBy(String material, SupplierOrder order) {
        return order.purchases().stream().filter(p -> p.material().equals(material)).map(Purchase::arriveBy).findFirst().orElseThrow();
    }
}
