package benchful.classes;

import benchful.catalogue.MaterialSpec;
import benchful.core.Fault;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.web.forms.FaultCollector;
import benchful.web.forms.JsonPointers;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Whether what students and the class choose is offered by the project, and whether what stands in has something to stand in for. */
public final class ChoiceRules {
    private final ProjectSpec project;
    private final FaultCollector faults = new FaultCollector();

    private ChoiceRules(ProjectSpec project) {
        this.project = project;
    }

    /** Pointers are into the setup. */
    public static List<Fault> faults(ClassSetup setup, ProjectSpec project) {
        ChoiceRules rules = new ChoiceRules(project);
        rules.check("", setup.choices(), setup.instead());
        for (int i = 0; i < setup.students().size(); i++) {
            rules.check("/students/" + i, setup.students().get(i).choices(), setup.students().get(i).instead());
        }
        return rules.faults.list();
    }

    /**
     * What is to stand in but is not among the materials.
     *
     * @param listed whether a material of just this name is
     */
    public static List<Fault> unlisted(ClassSetup setup, Predicate<String> listed) {
        List<Fault> faults = new ArrayList<>(unlisted("", setup.instead(), listed));
        for (int i = 0; i < setup.students().size(); i++) {
            faults.addAll(unlisted("/students/" + i, setup.students().get(i).instead(), listed));
        }
        return faults;
    }

    private static List<Fault> unlisted(String at, List<ClassSetup.Instead> instead, Predicate<String> listed) {
        return IntStream.range(0, instead.size()).filter(i -> !listed.test(instead.get(i).use()))
                .mapToObj(i -> new Fault(at + "/instead/" + i + "/use",
                        "“%s” is not among your materials. Choose one of them, or write it down there first.".formatted(instead.get(i).use())))
                .toList();
    }

    private void check(String at, Map<String, String> choices, List<ClassSetup.Instead> instead) {
        choices.forEach((material, chosen) -> choice(JsonPointers.below(at + "/choices", material), material, chosen));
        for (int i = 0; i < instead.size(); i++) {
            ClassSetup.Instead one = instead.get(i);
            String place = at + "/instead/" + i;
            faults.require(offers(one.of()), place + "/of", "“%s” takes no “%s”. Choose one of its materials: %s.",
                    project.name(), one.of(), String.join(", ", offered()));
            faults.require(!one.of().equals(one.use()), place + "/use", "Name another material than the one it stands in for.");
            faults.require(instead.stream().limit(i).noneMatch(other -> other.of().equals(one.of())), place + "/of",
                    "“%s” is replaced twice. Leave one of the two out.", one.of());
        }
    }

    private void choice(String at, String material, String chosen) {
        List<MaterialLine> lines = project.materials().stream().filter(l -> l.choice() != null && l.material().equals(material)).toList();
        if (faults.require(!lines.isEmpty(), at, "“%s” gives no choice of “%s”. %s", project.name(), material, choosable())) {
            MaterialLine line = lines.get(0);
            faults.require(chosen == null || line.alternatives().isEmpty() || line.offered().contains(chosen), at, "“%s” is not offered as %s of “%s”. Choose one of: %s.",
                    chosen, line.choice(), material, String.join(", ", line.offered()));
        }
    }

    private String choosable() {
        String names = project.materials().stream().filter(l -> l.choice() != null).map(MaterialLine::material).distinct().collect(Collectors.joining("”, “"));
        return names.isEmpty() ? "It gives no choice at all: take it out." : "It gives one of: “" + names + "”.";
    }

    /** Also variants that somebody may have chosen. */
    private boolean offers(String material) {
        return offered().contains(material) || project.materials().stream().filter(l -> l.choice() != null).anyMatch(l -> material.startsWith(MaterialSpec.nameOf(l.material(), "")));
    }

    private Set<String> offered() {
        return project.materials().stream().flatMap(l -> l.offered().stream()).collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
