package benchful.projects;

import benchful.catalogue.Material;
import benchful.catalogue.MaterialSpec;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Unit;
import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How the materials that a project names stand in the catalogue.
 *
 * @param unknown those that are not in it, with the unit that their lines tell
 * @param unsold those for which no pack is written down
 */
@TemplateData
public record NamedMaterials(Map<String, Unit> unknown, List<Link> unsold) {
    private static final Map<Dimension, Unit> UNITS = Map.of(
            Dimension.COUNT, Unit.PIECE, Dimension.LENGTH, Unit.M, Dimension.AREA, Unit.CM2, Dimension.VOLUME, Unit.ML, Dimension.MASS, Unit.G);

    /** A material of the catalogue. */
    @TemplateData
    public record Link(long id, String name) {}

    static NamedMaterials of(ProjectView view) {
        Map<String, Unit> named = new LinkedHashMap<>();
        List<MaterialLine> lines = view.sheet().materials();
        for (int i = 0; i < lines.size(); i++) {
            Unit unit = unit(view, i);
            lines.get(i).offered().forEach(name -> named.putIfAbsent(name, unit));
        }
        List<Material> known = Material.named(named.keySet());
        Set<String> names = known.stream().map(m -> Material.key(m.name())).collect(Collectors.toSet());
        named.keySet().removeIf(name -> names.contains(Material.key(name)));
        return new NamedMaterials(named, known.stream().filter(NamedMaterials::unsold).map(m -> new Link(m.id(), m.name())).toList());
    }

    /** One of which each variant is sold for itself needs no pack of its own. */
    private static boolean unsold(Material material) {
        List<Material> variants = material.variants();
        return material.sold().isEmpty() && (variants.isEmpty() || variants.stream().anyMatch(v -> v.sold().isEmpty()));
    }

    /** As its line takes it in some size; pieces where that can't be worked out. */
    private static Unit unit(ProjectView view, int line) {
        return view.pieces().values().stream().map(p -> p.amounts().get(line)).filter(Objects::nonNull).findFirst()
                .map(amount -> amount.rectangle() != null ? Unit.CM2 : UNITS.getOrDefault(amount.each().dimension(), Unit.PIECE)).orElse(Unit.PIECE);
    }

    /** Writes down those that are not in the catalogue. */
    void add(LocalDate today) {
        unknown.forEach((name, unit) -> Material.stored(MaterialSpec.of(name.strip(), unit), supplier -> null, false, today));
    }
}
