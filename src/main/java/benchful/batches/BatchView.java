package benchful.batches;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Overdrawn;
import benchful.classes.ClassFile;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.Requirements;
import benchful.plans.materials.kits.Kit;
import benchful.stock.sources.Sources;
import io.quarkus.qute.TemplateData;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the page of a batch shows.
 *
 * @param kinds kits of one size, shown once
 * @param plan of the kits that are still to be packed
 * @param notice what kept a button from doing its work; null for nothing
 * @param overdrawn materials of which more was taken than the shelf is said to hold
 * @param unweighed materials whose mass is not known, so that no kit that holds them can be weighed
 */
@TemplateData
public record BatchView(long id, String title, String projectName, BatchSpec sheet, List<KitKind> kinds, MaterialsPlan plan, String notice, List<Overdrawn> overdrawn,
        List<String> unweighed, long version) {

    /** What nobody sells. */
    public Sources sources() {
        return Sources.of(plan.materials().stream().map(MaterialsPlan.MaterialPlan::bought).filter(Objects::nonNull), sheet.currency(), "/batches/" + id);
    }

    /**
     * @param kit one of them
     * @param packed how many of them are packed
     * @param weight with its packaging, in whole grams rounded up; null where a mass is not known
     */
    @TemplateData
    public record KitKind(Kit kit, int count, int packed, Quantity weight) {
        public int open() {
            return Math.max(0, count - packed);
        }

        public List<String> contents() {
            return kit.contents().stream().map(KitKind::words).toList();
        }

        private static String words(Kit.Content c) {
            return "%s %s%s".formatted(c.words(), c.material(), c.open() == null ? "" : " (choose: " + c.open() + ")");
        }
    }

    /**
     * @param file of all kits, packed or not
     * @param open of those that are still to be packed
     */
    static BatchView of(KitBatch batch, ClassFile file, MaterialsPlan open, String notice) {
        List<Kit> all = Requirements.of(file).kits();
        Map<String, List<Kit>> sizes = all.stream().collect(Collectors.groupingBy(Kit::size, LinkedHashMap::new, Collectors.toList()));
        List<KitKind> kinds = sizes.values().stream().map(kits -> new KitKind(kits.get(0), kits.size(), batch.packed(kits.get(0).size()), weight(kits.get(0), batch.sheet().packaging()))).toList();
        return new BatchView(batch.id(), batch.title(), batch.project.name(), batch.sheet(), kinds, open, notice,
                Overdrawn.among(all.stream().flatMap(k -> k.contents().stream()).map(Kit.Content::material).distinct().toList()),
                unweighed(file, all), batch.version());
    }

    private static Quantity weight(Kit kit, Quantity packaging) {
        return kit.mass() == null || packaging == null ? null : kit.mass().plus(packaging).in(Unit.G).rounded(0, RoundingMode.CEILING);
    }

    private static List<String> unweighed(ClassFile file, List<Kit> kits) {
        Map<String, MaterialSpec> catalogue = file.materials().stream().collect(Collectors.toMap(MaterialSpec::name, Function.identity(), (a, b) -> a));
        return kits.stream().flatMap(k -> k.contents().stream())
                .filter(c -> !c.amount().dimension().equals(Unit.G.dimension()))
                .map(Kit.Content::material).distinct()
                .filter(m -> !catalogue.containsKey(m) || catalogue.get(m).unitMass() == null).toList();
    }

    /** Of all kits; null where one can't be weighed. */
    public Quantity weight() {
        return kinds.stream().anyMatch(k -> k.weight() == null) ? null
                : kinds.stream().map(k -> k.weight().times(k.count())).reduce(Quantity::plus).orElse(null);
    }
}
