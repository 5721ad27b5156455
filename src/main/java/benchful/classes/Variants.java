package benchful.classes;

import benchful.catalogue.Material;
import benchful.catalogue.MaterialSpec;
import benchful.projects.MaterialLine;
import benchful.projects.Project;
import benchful.projects.ProjectSpec;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What is chosen of a material by a word becomes a variant of it, so that it has a shelf and is bought for itself. */
final class Variants {
    private static final int LONGEST = 120;

    private Variants() {}

    /** The materials with a variant for each word that was chosen, each saying all, also what is as with its material. */
    static List<MaterialSpec> whole(List<MaterialSpec> materials, ProjectSpec project, ClassSetup setup) {
        Map<String, MaterialSpec> all = new LinkedHashMap<>();
        materials.forEach(m -> all.putIfAbsent(m.name(), m));
        if (project != null && setup != null) {
            chosen(project, setup).forEach((variant, material) -> {
                if (all.containsKey(material)) {
                    all.putIfAbsent(variant, MaterialSpec.of(variant, all.get(material).unit()).withVariantOf(material));
                }
            });
        }
        List<MaterialSpec> whole = new ArrayList<>();
        all.values().forEach(m -> whole.add(m.variantOf() == null || !all.containsKey(m.variantOf()) ? m : m.like(all.get(m.variantOf()))));
        return List.copyOf(whole);
    }

    /** Writes down in the catalogue what was chosen and is not there. */
    static void store(Project project, ClassSetup setup) {
        if (!project.isReadable()) {
            return;
        }
        chosen(project.toSpec(), setup).forEach((variant, material) -> {
            if (Material.byName(variant).isEmpty()) {
                Material.byName(material).filter(m -> m.material() == null)
                        .ifPresent(m -> m.variant(variant.substring(MaterialSpec.nameOf(material, "").length()), LocalDate.EPOCH));
            }
        });
    }

    /** By the variant's name, its material. */
    private static Map<String, String> chosen(ProjectSpec project, ClassSetup setup) {
        Picks picks = new Picks(setup);
        Map<String, String> chosen = new TreeMap<>();
        for (MaterialLine line : project.materials()) {
            if (line.choice() != null && line.alternatives().isEmpty()) {
                Stream.concat(Stream.ofNullable(picks.chosen(line, null)), setup.students().stream().map(s -> picks.chosen(line, s)).filter(Objects::nonNull))
                        .filter(name -> !name.equals(line.material()) && name.length() <= LONGEST).forEach(name -> chosen.put(name, line.material()));
            }
        }
        return chosen;
    }
}
