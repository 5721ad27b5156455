package benchful.plans.materials.kits;

import benchful.catalogue.MaterialSpec;
import benchful.classes.ChoiceRules;
import benchful.classes.ClassSetup;
import benchful.classes.Picks;
import benchful.core.Fault;
import benchful.core.needs.Take.Taker;
import benchful.core.quantity.Sentence;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
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
    private final Picks picks;
    private final List<Seat.Pick> common;
    private final Map<String, Integer> turns = new HashMap<>();
    private final List<Seat> seats = new ArrayList<>();
    private final List<Fault> faults = new ArrayList<>();
    private final List<Sentence> warnings = new ArrayList<>();

    public Seating(ProjectSpec project, ClassSetup setup) {
        this(project, setup, List.of());
    }

    /** @param catalogue in which variants of materials are found */
    public Seating(ProjectSpec project, ClassSetup setup, List<MaterialSpec> catalogue) {
        this.project = project;
        this.setup = setup;
        this.picks = new Picks(setup, catalogue);
        this.common = Seat.Pick.of(project, picks, null, null, this::first);
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
            String size = size(student.size(), "/class/students/" + i + "/size");
            seats.add(Seat.known(student, size, picks(student, size)));
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
            String size = i < mix.size() ? mix.get(i) : first();
            seats.add(Seat.of(Taker.STUDENT, "Student " + (seats.size() + 1), size, picks(null, size)));
        }
    }

    private void demonstration() {
        if (setup.demonstration() != null && !setup.demonstration().isBlank()) {
            String size = size(setup.demonstration(), "/class/demonstration");
            seats.add(Seat.of(Taker.DEMONSTRATION, "Demonstration", size, like(size)));
        }
    }

    private void spares() {
        Map<String, Long> taken = students().stream().collect(Collectors.groupingBy(Seat::size, Collectors.counting()));
        String most = project.sizes().stream().map(Size::name)
                .reduce((a, b) -> taken.getOrDefault(b, 0L) > taken.getOrDefault(a, 0L) ? b : a).orElseThrow();
        for (int i = 1; i <= setup.spares(); i++) {
            seats.add(Seat.of(Taker.SPARE, "Spare " + i, most, like(most)));
        }
    }

    private void choices() {
        ChoiceRules.faults(setup, project).forEach(f -> faults.add(new Fault("/class" + f.pointer(), f.detail())));
        Set<String> told = new HashSet<>();
        for (int i = 0; i < project.materials().size(); i++) {
            MaterialLine line = project.materials().get(i);
            if ((!line.alternatives().isEmpty() || !picks.variants(line).isEmpty()) && !line.shared() && told.add(line.material())) {
                open(i, line);
            }
        }
    }

    private void open(int i, MaterialLine line) {
        long open = students().stream().filter(s -> s.picks().get(i).chosen() == null).count();
        if (open > 0) {
            warnings.add(picks.variants(line).isEmpty()
                    ? Sentence.of("%s of %s have not chosen their %s of “%s”; it is counted as “%s”.", open, setup.headcount(), line.choice(), line.material(), common.get(i).material())
                    : Sentence.of("%s of %s have not chosen their %s of “%s”; its variants are counted in turn: %s. Say it for the class, or for each.",
                            open, setup.headcount(), line.choice(), line.material(), String.join("; ", picks.variants(line))));
        }
    }

    /** A student's, with the variants in turn of what nobody chose. */
    private List<Seat.Pick> picks(ClassSetup.Student student, String size) {
        Map<String, String> open = new HashMap<>();
        return Seat.Pick.of(project, picks, student, project.size(size).orElse(null), line -> open.computeIfAbsent(line.material(), material -> inTurn(line)));
    }

    /** Of what the class chose. */
    private List<Seat.Pick> like(String size) {
        return Seat.Pick.of(project, picks, null, project.size(size).orElse(null), this::first);
    }

    private String first(MaterialLine line) {
        return picks.variants(line).stream().findFirst().orElse(null);
    }

    /** Lines that serve all take no turn. */
    private String inTurn(MaterialLine line) {
        List<String> variants = picks.variants(line);
        return variants.isEmpty() ? null : variants.get((turns.merge(line.material(), 1, Integer::sum) - 1) % variants.size());
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
