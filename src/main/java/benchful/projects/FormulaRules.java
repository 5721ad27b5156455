package benchful.projects;

import benchful.core.formula.Formula;
import benchful.core.formula.FormulaException;
import benchful.core.quantity.Container;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.web.Formats;
import benchful.web.forms.FaultCollector;
import benchful.web.forms.JsonPointers;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether every formula of a project can be read and asks only for what is known where it stands: measures, and answers of
 * the workings before it. One that needs measures alone is worked out for every size.
 */
final class FormulaRules {
    private final ProjectSpec project;
    private final FaultCollector faults;
    private final Set<String> measures;
    private final Set<String> answers = new TreeSet<>();

    private FormulaRules(ProjectSpec project, FaultCollector faults) {
        this.project = project;
        this.faults = faults;
        this.measures = project.measures().stream().map(Measure::name).collect(Collectors.toCollection(TreeSet::new));
    }

    static void check(ProjectSpec project, FaultCollector faults) {
        FormulaRules rules = new FormulaRules(project, faults);
        rules.workings();
        rules.materials();
        rules.repeats();
    }

    private void workings() {
        for (int i = 0; i < project.sizing().size(); i++) {
            Sizing sizing = project.sizing().get(i);
            values("/sizing/" + i + "/values", sizing);
            beads("/sizing/" + i + "/beads", sizing);
            answers.addAll(sizing.answers());
        }
    }

    private void values(String at, Sizing sizing) {
        String kind = Formats.word(sizing.kind());
        sizing.kind().required().stream().filter(v -> !sizing.values().containsKey(v)).forEach(v -> faults.add(
                JsonPointers.below(at, v), "A %s needs its %s.", kind, v.replace('_', ' ')));
        sizing.values().forEach((name, formula) -> {
            boolean known = sizing.kind().required().contains(name) || sizing.kind().optional().contains(name);
            if (faults.require(known, JsonPointers.below(at, name), "A %s takes no “%s”. It takes %s and, if wanted, %s.",
                    kind, name, String.join(", ", sizing.kind().required()), String.join(", ", sizing.kind().optional()))) {
                formula(JsonPointers.below(at, name), formula, SizingKind.dimension(name));
            }
        });
    }

    private void beads(String at, Sizing sizing) {
        boolean strung = sizing.kind().strings();
        faults.require(strung || sizing.beads().isEmpty(), at, "Only a strand or a bracelet has beads. Take them out.");
        faults.require(!strung || !sizing.beads().isEmpty(), at, "Give the pattern at least one bead with its size.");
        for (int i = 0; i < sizing.beads().size(); i++) {
            formula(at + "/" + i + "/size", sizing.beads().get(i).size(), Dimension.LENGTH);
        }
    }

    private void materials() {
        for (int i = 0; i < project.materials().size(); i++) {
            MaterialLine line = project.materials().get(i);
            String at = "/materials/" + i;
            formula(at + "/amount", line.amount(), line.pieces() == null ? null : Dimension.LENGTH, Container.words());
            if (line.pieces() != null) {
                formula(at + "/pieces", line.pieces(), Dimension.COUNT);
            }
            rectangle(at, line);
        }
    }

    private void rectangle(String at, MaterialLine line) {
        if (line.width() != null) {
            formula(at + "/width", line.width(), Dimension.LENGTH);
            faults.require(line.pieces() != null, at + "/pieces", "Say into how many such rectangles it is cut for one piece, such as 2.");
        }
        faults.require(line.width() != null || !line.grain(), at + "/grain", "Only rectangles have a grain: give their width, or take this out.");
    }

    private void repeats() {
        for (int i = 0; i < project.steps().size(); i++) {
            if (project.steps().get(i).repeats() != null) {
                formula("/steps/" + i + "/repeats", project.steps().get(i).repeats(), Dimension.COUNT);
            }
        }
    }

    private void formula(String at, String written, Dimension wanted) {
        formula(at, written, wanted, Set.of());
    }

    /**
     * @param wanted the kind of amount it must give; null for any
     * @param beside words that are known only where the catalogue is, such as “sheets”
     */
    private void formula(String at, String written, Dimension wanted, Set<String> beside) {
        try {
            Formula formula = Formula.of(written);
            List<String> unknown = formula.names().stream().filter(n -> !measures.contains(n) && !answers.contains(n) && !beside.contains(n)).toList();
            if (faults.require(unknown.isEmpty(), at, "“%s” is not known here. %s", String.join("”, “", unknown), known())
                    && measures.containsAll(formula.names())) {
                project.sizes().forEach(size -> worked(at, formula, wanted, size));
            }
        } catch (FormulaException e) {
            faults.add(at, "%s", e.getMessage());
        }
    }

    private void worked(String at, Formula formula, Dimension wanted, Size size) {
        if (size.measures().keySet().containsAll(formula.names())) {
            Quantity value = wanted == null ? formula.evaluate(size.measures()) : formula.evaluate(size.measures(), wanted);
            faults.require(value.signum() >= 0, at, "This comes to %s for the size “%s”; it can't be less than 0.", value, size.name());
        }
    }

    private String known() {
        List<String> known = Stream.concat(measures.stream(), answers.stream()).toList();
        return known.isEmpty() ? "This project has no measures." : "Known are " + String.join(", ", known) + ".";
    }
}
