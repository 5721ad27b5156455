package benchful.packing;

import benchful.core.quantity.Quantity;
import benchful.plans.materials.Requirements;
import benchful.plans.materials.kits.Kit;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * All that is packed for a class, and what is packed already: its kits, what lies on the bench for all, and what is brought
 * in case something spoils.
 *
 * @param boxes in the order of packing
 * @param strays what is packed for kits or in materials that the plan no longer holds
 */
@TemplateData
public record PackingList(List<Box> boxes, List<Stray> strays) {
    private static final String BENCH = "bench";
    private static final String RESERVE = "reserve";

    public PackingList {
        boxes = List.copyOf(boxes);
        strays = List.copyOf(strays);
    }

    /** Something to be put back. */
    @TemplateData
    public record Stray(String kit, String material, Quantity amount) {}

    static PackingList of(Requirements required, List<PackedContent> packed) {
        Map<List<String>, Quantity> ticks = packed.stream().collect(Collectors.toMap(p -> List.of(p.kit, p.material), p -> p.amount()));
        List<Box> boxes = new ArrayList<>();
        Map<String, Integer> titles = new LinkedHashMap<>();
        for (Kit kit : required.kits()) {
            int alike = titles.merge(kit.title(), 1, Integer::sum);
            String key = "kit/" + kit.title() + (alike == 1 ? "" : "/" + alike);
            boxes.add(new Box(key, kit.title(), kit.size(), items(key, kit.contents(), required, ticks)));
        }
        boxes.add(new Box(BENCH, "On the bench, for all", null, items(BENCH, required.bench(), required, ticks)));
        boxes.add(new Box(RESERVE, "In reserve, for what spoils", null, reserve(required, ticks)));
        boxes.removeIf(b -> b.items().isEmpty());
        return new PackingList(boxes, strays(boxes, packed));
    }

    private static List<Box.Item> items(String key, List<Kit.Content> contents, Requirements required, Map<List<String>, Quantity> ticks) {
        Map<String, List<Kit.Content>> materials = contents.stream().collect(Collectors.groupingBy(Kit.Content::material, LinkedHashMap::new, Collectors.toList()));
        return materials.entrySet().stream().map(m -> new Box.Item(m.getKey(), m.getValue().stream().map(Kit.Content::words).collect(Collectors.joining(" and ")),
                m.getValue().stream().map(Kit.Content::amount).reduce(Quantity::plus).orElseThrow(), ticks.get(List.of(key, m.getKey())), required.lends(m.getKey()))).toList();
    }

    private static List<Box.Item> reserve(Requirements required, Map<List<String>, Quantity> ticks) {
        return required.needs().values().stream().filter(need -> need.waste().signum() > 0).map(need -> new Box.Item(need.material(), Formats.words(need.waste()),
                need.waste(), ticks.get(List.of(RESERVE, need.material())), false)).toList();
    }

    private static List<Stray> strays(List<Box> boxes, List<PackedContent> packed) {
        Set<List<String>> planned = boxes.stream().flatMap(b -> b.items().stream().map(i -> List.of(b.key(), i.material()))).collect(Collectors.toSet());
        return packed.stream().filter(p -> !planned.contains(List.of(p.kit, p.material))).map(p -> new Stray(p.kit, p.material, p.amount())).toList();
    }

    /** A box in words that name nobody: "kit 3", "bench". */
    String place(String key) {
        if (key.equals(BENCH) || key.equals(RESERVE)) {
            return key;
        }
        int at = boxes.stream().map(Box::key).toList().indexOf(key);
        return at < 0 ? "a kit" : "kit " + (at + 1);
    }

    Optional<Box> box(String key) {
        return boxes.stream().filter(b -> b.key().equals(key)).findFirst();
    }

    List<String> materials() {
        return boxes.stream().flatMap(b -> b.items().stream()).map(Box.Item::material).distinct().toList();
    }

    public int items() {
        return boxes.stream().mapToInt(b -> b.items().size()).sum();
    }

    public int ticked() {
        return boxes.stream().mapToInt(Box::ticked).sum();
    }

    public int packed() {
        return (int) boxes.stream().filter(Box::packed).count();
    }

    /** The items of a box by their material. */
    static Map<String, Box.Item> byMaterial(Box box) {
        return box.items().stream().collect(Collectors.toMap(Box.Item::material, Function.identity()));
    }
}
