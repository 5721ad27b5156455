package benchful.plans;

import benchful.classes.ClassFile;
import benchful.classes.Picks;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which hazards a class brings, and what brings each: the project as a whole, its materials, tools and steps. */
public final class HazardIndex {
    private final Map<String, Set<String>> byHazard = new LinkedHashMap<>();

    private HazardIndex(ClassFile file) {
        add(file.project().hazards(), "the work as a whole");
        Set<String> used = Picks.taken(file.project(), file.setup());
        file.materials().stream().filter(m -> used.contains(m.name())).forEach(m -> add(m.hazards(), m.name()));
        file.project().tools().forEach(t -> add(t.hazards(), t.name()));
        file.project().steps().forEach(s -> add(s.hazards(), "step “%s”".formatted(s.title())));
    }

    public static HazardIndex of(ClassFile file) {
        return new HazardIndex(file);
    }

    /** The same, begun with what the room and the group bring, for a risk assessment: nobody needs a caution about stairs at each step. */
    public static HazardIndex withRoom(ClassFile file) {
        HazardIndex index = new HazardIndex(file);
        Map<String, Set<String>> ofWork = new LinkedHashMap<>(index.byHazard);
        index.byHazard.clear();
        if (file.venue() != null) {
            index.add(file.venue().hazards(), "the room, " + file.venue().name());
        }
        if (file.setup().hasChildren()) {
            index.add(List.of("children"), "the group: the youngest is %d".formatted(file.setup().youngest()));
        }
        ofWork.forEach((hazard, sources) -> sources.forEach(from -> index.add(List.of(hazard), from)));
        return index;
    }

    /** Short names of the hazards in use, in the order they are met. */
    public Set<String> ids() {
        return byHazard.keySet();
    }

    /** What brings this hazard. */
    public List<String> of(String hazard) {
        return List.copyOf(byHazard.getOrDefault(hazard, Set.of()));
    }

    private void add(Collection<String> hazards, String from) {
        hazards.forEach(h -> byHazard.computeIfAbsent(h, k -> new LinkedHashSet<>()).add(from));
    }
}
