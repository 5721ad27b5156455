package benchful.classes;

import benchful.catalogue.MaterialSpec;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which material is really taken on each line of a project: what the student chose, else the class, else the line's own; and
 * in place of it what stands in, for the student or else for the class. What is chosen is always a material: one that the line
 * names beside its own, or else a variant of its own, named by what distinguishes it ("ivory") or whole.
 */
public final class Picks {
    private final ClassSetup setup;
    private final Map<String, List<String>> variants = new LinkedHashMap<>();

    public Picks(ClassSetup setup) {
        this(setup, List.of());
    }

    /** @param catalogue in which variants are found beyond those that somebody chose */
    public Picks(ClassSetup setup, List<MaterialSpec> catalogue) {
        this.setup = setup;
        catalogue.stream().filter(m -> m.variantOf() != null).forEach(m -> variants.computeIfAbsent(m.variantOf(), n -> new ArrayList<>()).add(m.name()));
    }

    /**
     * What was chosen: one of the materials that the line offers, or a variant of its own.
     *
     * @param student null for the class: a kit with no name, a spare, the demonstration, what is shared
     * @return null where nobody chose, or what is not offered
     */
    public String chosen(MaterialLine line, ClassSetup.Student student) {
        if (line.choice() == null) {
            return null;
        }
        String own = student == null ? null : student.choices().get(line.material());
        String chosen = own == null ? setup.choices().get(line.material()) : own;
        if (chosen == null || chosen.isBlank()) {
            return null;
        }
        return line.alternatives().isEmpty() ? variant(line.material(), chosen) : line.offered().contains(chosen) ? chosen : null;
    }

    private static String variant(String material, String chosen) {
        return chosen.equals(material) || chosen.startsWith(MaterialSpec.nameOf(material, "")) ? chosen : MaterialSpec.nameOf(material, chosen);
    }

    /** The variants of a line's material that can be chosen; none where it has none, or names what can be chosen. */
    public List<String> variants(MaterialLine line) {
        return line.choice() == null || !line.alternatives().isEmpty() ? List.of() : variants.getOrDefault(line.material(), List.of());
    }

    /** The material before anything stands in for it. */
    public String wanted(MaterialLine line, ClassSetup.Student student) {
        return Optional.ofNullable(chosen(line, student)).or(() -> variants(line).stream().findFirst()).orElse(line.material());
    }

    /** The material that is taken. */
    public String material(MaterialLine line, ClassSetup.Student student) {
        return taken(wanted(line, student), student);
    }

    /** What stands in for a material, or that. */
    public String taken(String wanted, ClassSetup.Student student) {
        return Optional.ofNullable(student).flatMap(s -> inPlaceOf(wanted, s.instead()))
                .or(() -> inPlaceOf(wanted, setup.instead())).orElse(wanted);
    }

    private static Optional<String> inPlaceOf(String material, List<ClassSetup.Instead> instead) {
        return instead.stream().filter(i -> i.of().equals(material)).map(ClassSetup.Instead::use).findFirst();
    }

    /** All materials that somebody of the class takes on a line, or could choose; those that a size takes instead left out. */
    public Set<String> possible(MaterialLine line) {
        Set<String> wanted = new LinkedHashSet<>(line.offered());
        Stream.concat(Stream.ofNullable(chosen(line, null)), setup.students().stream().map(s -> chosen(line, s)).filter(c -> c != null)).forEach(wanted::add);
        wanted.addAll(variants(line));
        Set<String> possible = new LinkedHashSet<>(wanted);
        Stream.concat(setup.instead().stream(), setup.students().stream().flatMap(s -> s.instead().stream()))
                .filter(i -> wanted.contains(i.of())).map(ClassSetup.Instead::use).forEach(possible::add);
        return possible;
    }

    /** All materials that the class takes or could choose, in the order of the project's lines. */
    public static List<String> names(ProjectSpec project, ClassSetup setup) {
        return names(project, setup, List.of());
    }

    /** @param catalogue in which variants are found */
    public static List<String> names(ProjectSpec project, ClassSetup setup, List<MaterialSpec> catalogue) {
        Picks picks = new Picks(setup, catalogue);
        return Stream.concat(project.materials().stream().map(picks::possible).flatMap(Collection::stream), bySize(project)).distinct().toList();
    }

    /** What sizes take in place of what lines say. */
    private static Stream<String> bySize(ProjectSpec project) {
        return project.sizes().stream().flatMap(size -> size.takes().stream()).map(Size.Taken::use).filter(use -> use != null);
    }

    /** All materials that the class really takes. */
    public static Set<String> taken(ProjectSpec project, ClassSetup setup) {
        Picks picks = new Picks(setup);
        Set<ClassSetup.Student> takers = new LinkedHashSet<>(setup.students());
        Stream<String> ofLines = project.materials().stream()
                .flatMap(line -> Stream.concat(Stream.of(picks.material(line, null)), takers.stream().map(s -> picks.material(line, s))));
        return Stream.concat(ofLines, bySize(project)).collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
