package benchful.packing;

import benchful.catalogue.Material;
import benchful.classes.CraftClass;
import benchful.plans.materials.CutOut;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.stored.PlanService;
import benchful.stock.CutMaterial;
import benchful.stock.Offcuts;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Cutting a class's materials, and writing down that they are cut. */
@ApplicationScoped
class CuttingWork {
    private final PlanService plans;
    private final Offcuts offcuts;
    private final Clock clock;

    CuttingWork(PlanService plans, Offcuts offcuts, Clock clock) {
        this.plans = plans;
        this.offcuts = offcuts;
        this.clock = clock;
    }

    /** What is cut for a class, in the order of its project's lines. */
    @Transactional
    List<CuttingRow> rows(CraftClass craftClass) {
        Map<String, CutMaterial> done = CutMaterial.of(List.of(craftClass.id())).stream().collect(Collectors.toMap(CutMaterial::material, Function.identity()));
        MaterialsPlan plan = plans.materials(plans.file(craftClass));
        return plan.materials().stream().filter(m -> CutOut.of(m).isPresent())
                .map(m -> CuttingRow.of(m, Material.byName(m.name()).map(Material::id).orElse(null), done.get(m.name()), clock.getZone())).toList();
    }

    /**
     * Writes down that a material is cut as it is planned now.
     *
     * @param seen what was shown to be cut; another plan is not booked
     * @return false where the plan is another by now
     */
    @Transactional
    boolean cut(CraftClass craftClass, long materialId, String seen) {
        Optional<CuttingRow> row = rows(craftClass).stream().filter(r -> Long.valueOf(materialId).equals(r.materialId())).findFirst();
        if (row.isEmpty() || row.get().done() != null) {
            return true;
        }
        if (!row.get().seen().equals(seen)) {
            return false;
        }
        offcuts.cut(craftClass.id(), materialId, sizes(row.get().out()), craftClass.title());
        return true;
    }

    /** By material, the cuts that are planned and not booked yet. */
    @Transactional
    Map<Long, CutMaterial.Sizes> open(CraftClass craftClass) {
        return rows(craftClass).stream().filter(r -> r.done() == null && r.materialId() != null).collect(Collectors.toMap(CuttingRow::materialId, r -> sizes(r.out())));
    }

    private static CutMaterial.Sizes sizes(CutOut out) {
        return new CutMaterial.Sizes(out.opened(), out.kept(), out.pieces(), null);
    }

    /** @return false where something else was cut from one of its offcuts */
    @Transactional
    boolean takeBack(CraftClass craftClass, long materialId) {
        boolean booked = CutMaterial.of(List.of(craftClass.id())).stream().anyMatch(c -> c.materialId() == materialId);
        return !booked || offcuts.takeBack(craftClass.id(), materialId);
    }
}
