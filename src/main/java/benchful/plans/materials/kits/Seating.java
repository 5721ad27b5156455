package benchful.plans.materials.kits;

import benchful.classes.ChoiceRules;
import benchful.classes.ClassSetup;
import benchful.core.Fault;
import benchful.core.needs.Take.Taker;
import benchful.core.quantity.Sentence;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Who takes which size. Students known by name take their own, the project's first where they have none; the others take
 * the size mix in the project's order and, beyond it, the first size. Spare kits are made in the size most students take, and
 * like the demonstration of what the class chose.
 */
public final class Seating {
    private final ProjectSpec project;
    private final ClassSetup setup;
    private final List<Seat.Pick> common;
    private final List<Seat> seats = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private final List<Sentence> warnings = new ArrayList<>();

    public Seating(ProjectSpec project, ClassSetup setup) {
        this.project = project;
        this.setup = setup;
        this.common = Seat.Pick.of(project, setup, null);
        if (project.sizes().isEmpty()) {
            faults.add(new Fault("/project/sizes", "Give the project at least one size."));
            return;
        }
        known();
        unknown();
        demonstration();
        spares();
        choices();
    }

    /** What is taken of what serves all. */
    public List<Seat.Pick> common() {
        return common;
    }

    public List<Seat> seats() {
        return seats;
    }

    /** In the order of the setup's students, and after them of those not known by name. */
    public List<Seat> students() {
        return seats.stream().filter(s -> s.taker() == Taker.STUDENT).toList();
    }

    /** The sizes that students make. */
    public Set<String> made() {
        return students().stream().map(Seat::size).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    public List<Fault> faults() {
        return faults;
    }

    public List<Sentence> warnings() {
        return warnings;
    }

    private void known() {
        for (int i = 0; i < setup.students().size(); i++) {
            ClassSetup.Student student = setup.students().get(i);
            seats.add(Seat.known(student, size(student.size(), "/class/students/" + i + "/size"), Seat.Pick.of(project, setup, student)));
        }
        if (seats.size() > setup.headcount()) {
            faults.add(new Fault("/class/students", "There are %d students by name, but the headcount is %d. Raise the headcount or take names out."
                    .formatted(seats.size(), setup.headcount())));
        }
    }

    private void unknown() {
        List<String> mix = new ArrayList<>();
        Stream.concat(project.sizes().stream().map(Size::name), setup.sizes().keySet().stream().sorted()).distinct().forEach(name -> {
            int count = setup.sizes().getOrDefault(name, 0);
            if (count > 0) {
                mix.addAll(Collections.nCopies(Math.min(count, 1000), size(name, "/class/sizes/" + name)));
            }
        });
        int open = Math.max(0, setup.headcount() - seats.size());
        if (mix.size() > open) {
            warnings.add(Sentence.of("The sizes are given for %s students, but only %s are not known by name; the last are left out.", mix.size(), open));
        }
        for (int i = 0; i < open; i++) {
            seats.add(Seat.of(Taker.STUDENT, "Student " + (seats.size() + 1), i < mix.size() ? mix.get(i) : first(), common));
        }
    }

    private void demonstration() {
        if (setup.demonstration() != null && !setup.demonstration().isBlank()) {
            seats.add(Seat.of(Taker.DEMONSTRATION, "Demonstration", size(setup.demonstration(), "/class/demonstration"), common));
        }
    }

    private void spares() {
        Map<String, Long> taken = students().stream().collect(Collectors.groupingBy(Seat::size, Collectors.counting()));
        String most = project.sizes().stream().map(Size::name)
                .reduce((a, b) -> taken.getOrDefault(b, 0L) > taken.getOrDefault(a, 0L) ? b : a).orElseThrow();
        for (int i = 1; i <= setup.spares(); i++) {
            seats.add(Seat.of(Taker.SPARE, "Spare " + i, most, common));
        }
    }

    private void choices() {
        ChoiceRules.faults(setup, project).forEach(f -> faults.add(new Fault("/class" + f.pointer(), f.detail())));
        Set<String> told = new HashSet<>();
        for (int i = 0; i < project.materials().size(); i++) {
            MaterialLine line = project.materials().get(i);
            if (!line.alternatives().isEmpty() && !line.shared() && told.add(line.material())) {
                open(i, line);
            }
        }
    }

    private void open(int i, MaterialLine line) {
        long open = students().stream().filter(s -> s.picks().get(i).chosen() == null).count();
        if (open > 0) {
            warnings.add(Sentence.of("%s of %s have not chosen their %s of “%s”; it is counted as “%s”.",
                    open, setup.headcount(), line.choice(), line.material(), common.get(i).material()));
        }
    }

    private String size(String name, String pointer) {
        if (name == null || name.isBlank()) {
            return first();
        }
        if (project.size(name).isEmpty()) {
            faults.add(new Fault(pointer, "The project has no size “%s”. Choose one of: %s."
                    .formatted(name, project.sizes().stream().map(Size::name).collect(Collectors.joining(", ")))));
            return first();
        }
        return name;
    }

    private String first() {
        return project.sizes().get(0).name();
    }
}
