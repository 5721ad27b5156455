package benchful.projects;

import benchful.catalogue.HazardNames;
import benchful.core.Fault;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.projects.pictures.Picture;
import benchful.web.Blanks;
import benchful.web.forms.FaultCollector;
import benchful.web.forms.JsonPointers;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What must agree within a project's sheet beyond its schema: names, sizes, pictures; formulas and steps have rules of their own. */
public final class ProjectRules {
    /** Words that formulas know already. */
    private static final Set<String> TAKEN = Set.of("pi", "percent", "ceil", "floor", "round", "sqrt", "min", "max");

    private static final int MOST_NAMED = 12;

    private final ProjectSpec project;
    private final FaultCollector faults = new FaultCollector();

    private ProjectRules(ProjectSpec project) {
        this.project = project;
    }

    public static List<Fault> faults(ProjectSpec project) {
        ProjectRules rules = new ProjectRules(project);
        rules.names();
        rules.paces();
        rules.measures();
        rules.sizes();
        rules.alternatives();
        rules.shared();
        rules.lent();
        FormulaRules.check(project, rules.faults);
        StepRules.check(project, rules.faults);
        OrderRules.check(project, rules.faults);
        rules.texts();
        return rules.faults.list();
    }

    /** The hazards that the library does not know, of the piece as a whole, its tools and its steps. */
    public static List<Fault> unknownHazards(ProjectSpec project, Set<String> known) {
        List<Fault> faults = new ArrayList<>(HazardNames.unknown("/hazards", project.hazards(), known));
        for (int i = 0; i < project.tools().size(); i++) {
            faults.addAll(HazardNames.unknown("/tools/" + i + "/hazards", project.tools().get(i).hazards(), known));
        }
        for (int i = 0; i < project.steps().size(); i++) {
            faults.addAll(HazardNames.unknown("/steps/" + i + "/hazards", project.steps().get(i).hazards(), known));
        }
        return faults;
    }

    private void names() {
        faults.unlike("/measures", project.measures(), "name", Measure::name);
        faults.unlike("/sizes", project.sizes(), "name", Size::name);
        faults.unlike("/sizing", project.sizing(), "name", Sizing::name);
        faults.unlike("/tools", project.tools(), "name", Tool::name);
        faults.unlike("/steps", project.steps(), "id", Step::id);
        faults.unlike("/pictures", project.pictures(), "name", Picture::name);
    }

    private void paces() {
        BigDecimal own = project.paces() == null ? null : project.paces().of(project.timesOf());
        faults.require(own == null || own.compareTo(BigDecimal.ONE) == 0, "/paces/" + project.timesOf().word(), "The steps’ times are those of this level already. Leave it empty.");
    }

    private void measures() {
        for (int i = 0; i < project.measures().size(); i++) {
            String name = project.measures().get(i).name();
            String at = "/measures/" + i + "/name";
            faults.require(!TAKEN.contains(name) && Unit.of(name).isEmpty(), at,
                    "“%s” means something else in formulas. Choose a longer name, such as “length”.", name);
            project.sizing().stream().filter(s -> name.startsWith(s.name() + "_")).findFirst().ifPresent(s -> faults.add(at,
                    "Names that start with “%s_” are answers of the working “%s”. Choose another name.", s.name(), s.name()));
        }
    }

    private void sizes() {
        Map<String, Measure> measures =
                project.measures().stream().collect(Collectors.toMap(Measure::name, Function.identity(), (a, b) -> a));
        for (int i = 0; i < project.sizes().size(); i++) {
            Size size = project.sizes().get(i);
            String at = "/sizes/" + i + "/measures";
            measures.values().stream().filter(m -> !size.measures().containsKey(m.name())).forEach(m -> faults.add(
                    JsonPointers.below(at, m.name()), "Give “%s” for the size “%s”, such as 42 %s.", m.label(), size.name(), m.unit().symbol()));
            taken("/sizes/" + i + "/takes", size);
            size.measures().forEach((name, value) -> measure(JsonPointers.below(at, name), name, value, measures.get(name)));
        }
    }

    private void taken(String at, Size size) {
        List<String> named = project.materials().stream().map(MaterialLine::material).toList();
        for (int i = 0; i < size.takes().size(); i++) {
            Size.Taken taken = size.takes().get(i);
            faults.require(named.contains(taken.of()), at + "/" + i + "/of", "No line takes “%s”. Name the material of a line.", taken.of());
            faults.require(!taken.of().equals(taken.use()), at + "/" + i + "/use", "Name another material than the line’s own, or leave it empty where “%s” takes none.", size.name());
            faults.require(size.takes().stream().limit(i).noneMatch(t -> t.of().equals(taken.of())), at + "/" + i + "/of", "“%s” is named twice for this size. Leave one out.", taken.of());
        }
    }

    /** Whoever chooses says it once for a material, so all its lines must offer the same. */
    private void alternatives() {
        for (int i = 0; i < project.materials().size(); i++) {
            MaterialLine line = project.materials().get(i);
            String at = "/materials/" + i;
            if (!line.alternatives().isEmpty()) {
                faults.require(line.choice() != null, at + "/choice", "Say what students choose between these materials, such as colour.");
                faults.require(line.offered().stream().map(String::toLowerCase).distinct().count() == line.offered().size(), at + "/alternatives",
                        "A material is named twice here. Name each once, and not the line’s own.");
            }
            project.materials().stream().limit(i).filter(l -> l.material().equals(line.material()) && !l.alternatives().equals(line.alternatives())).findFirst()
                    .ifPresent(l -> faults.add(at + "/alternatives", "Another line of “%s” offers other choices. Give all its lines the same.", line.material()));
        }
    }

    private void shared() {
        for (int i = 0; i < project.materials().size(); i++) {
            MaterialLine line = project.materials().get(i);
            faults.require(line.serves() == null || line.shared(), "/materials/" + i + "/serves",
                    "Only what is shared is there for several. Say that “%s” is shared, or leave this empty.", line.material());
        }
    }

    /** What comes back is no more and no less there afterwards, so nothing of it is cut off or spoilt, whichever line names it. */
    private void lent() {
        for (int i = 0; i < project.materials().size(); i++) {
            MaterialLine line = project.materials().get(i);
            String at = "/materials/" + i + "/lent";
            if (line.lent()) {
                faults.require(line.pieces() == null, at, "What is cut does not come back. Leave out that “%s” is lent, or that it is cut.", line.material());
                faults.require(line.waste() == null, at, "What comes back needs no waste. Leave out that “%s” is lent, or its waste.", line.material());
            }
            project.materials().stream().limit(i).filter(l -> l.material().equalsIgnoreCase(line.material()) && l.lent() != line.lent()).findFirst()
                    .ifPresent(l -> faults.add(at, "Another line of “%s” says otherwise. Say on all its lines whether it comes back.", line.material()));
        }
    }

    /** What texts leave blank must be known. */
    private void texts() {
        blanks("/care", project.care());
        for (int i = 0; i < project.steps().size(); i++) {
            blanks("/steps/" + i + "/text", project.steps().get(i).text());
            blanks("/steps/" + i + "/left_handed", project.steps().get(i).leftHanded());
        }
    }

    private void blanks(String at, String text) {
        Blanks.names(text).stream().filter(name -> project.valueNamed(name).isEmpty() && project.linesNamed(name).isEmpty()).forEach(name -> faults.add(at,
                "“<%s>” is to be filled in, but no material, measure or working of this project is called so. %s. If it is only text, put a blank after the “<”.", name, fillable()));
    }

    private String fillable() {
        List<String> names = Stream.of(project.materials().stream().map(MaterialLine::material), project.measures().stream().map(Measure::name),
                project.sizing().stream().flatMap(working -> working.answers().stream())).flatMap(Function.identity()).distinct().toList();
        return names.isEmpty() ? "It has none yet" : "It has " + names.stream().limit(MOST_NAMED).map("<%s>"::formatted).collect(Collectors.joining(", "));
    }

    private void measure(String at, String name, Quantity value, Measure measure) {
        if (faults.require(measure != null, at, "“%s” is no measure of this project. Add it to the measures, or take it out here.", name)) {
            boolean alike = value.dimension().equals(measure.unit().dimension());
            faults.require(alike, at, "“%s” is %s, but %s is needed, such as 42 %s.",
                    value, value.dimension().words(), measure.unit().dimension().words(), measure.unit().symbol());
            faults.require(value.signum() > 0, at, "This must be more than 0.");
        }
    }
}
