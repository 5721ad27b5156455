package benchful.classes;

import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which material is really taken on each line of a project: what the student chose, else the class, else the line's own; and
 * in place of it what stands in, for the student or else for the class.
 */
public final class Picks {
    private final ClassSetup setup;

    public Picks(ClassSetup setup) {
        this.setup = setup;
    }

    /**
     * What was chosen: one of the materials that the line offers, or a word where it offers none but asks.
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
        return line.alternatives().isEmpty() || line.offered().contains(chosen) ? chosen : null;
    }

    /** The material before anything stands in for it. */
    public String wanted(MaterialLine line, ClassSetup.Student student) {
        String chosen = line.alternatives().isEmpty() ? null : chosen(line, student);
        return chosen == null ? line.material() : chosen;
    }

    /** The material that is taken. */
    public String material(MaterialLine line, ClassSetup.Student student) {
        String wanted = wanted(line, student);
        return Optional.ofNullable(student).flatMap(s -> inPlaceOf(wanted, s.instead()))
                .or(() -> inPlaceOf(wanted, setup.instead())).orElse(wanted);
    }

    private static Optional<String> inPlaceOf(String material, List<ClassSetup.Instead> instead) {
        return instead.stream().filter(i -> i.of().equals(material)).map(ClassSetup.Instead::use).findFirst();
    }

    /** All materials that somebody of the class takes on a line, or could choose. */
    public Set<String> possible(MaterialLine line) {
        Set<String> possible = new LinkedHashSet<>(line.offered());
        Stream.concat(setup.instead().stream(), setup.students().stream().flatMap(s -> s.instead().stream()))
                .filter(i -> line.offered().contains(i.of())).map(ClassSetup.Instead::use).forEach(possible::add);
        return possible;
    }

    /** All materials that the class takes or could choose, in the order of the project's lines. */
    public static List<String> names(ProjectSpec project, ClassSetup setup) {
        Picks picks = new Picks(setup);
        return project.materials().stream().map(picks::possible).flatMap(Collection::stream).distinct().toList();
    }

    /** All materials that the class really takes. */
    public static Set<String> taken(ProjectSpec project, ClassSetup setup) {
        Picks picks = new Picks(setup);
        Set<ClassSetup.Student> takers = new LinkedHashSet<>(setup.students());
        return project.materials().stream()
                .flatMap(line -> Stream.concat(Stream.of(picks.material(line, null)), takers.stream().map(s -> picks.material(line, s))))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
