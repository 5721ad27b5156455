package benchful.findings;

import benchful.classes.ClassSetup;
import benchful.classes.SetupRules;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.web.Trouble;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the reviewed classes of a project show.
 *
 * @param version of the project that it is compared with
 * @param steps those of which anything is known, in the order of the project
 * @param helps steps of which it is known how often students ask for help, in the order of the project
 * @param materials those of which anything is known, in the order of the project
 * @param levels those of which anything is known
 * @param breaks those of which anything is known, by how long they were planned
 * @param history what was decided before, the latest first
 * @param troubles classes that could not be read
 */
@TemplateData
public record ProjectFindings(long project, long version, ProjectSpec sheet, List<StepFinding> steps, List<HelpFinding> helps, List<MaterialFinding> materials,
        List<LevelFinding> levels, List<BreakFinding> breaks, List<Finding.Decided> history, List<Trouble> troubles) {

    /** What should be changed in the project and was not refused. */
    public List<Learned> open() {
        return forSheet().<Learned>map(l -> l).filter(Learned::open).toList();
    }

    /** The same, and what should be changed in a class of the project; null for none. */
    List<Learned> open(ClassSetup setup) {
        return setup == null ? open() : Stream.concat(open().stream(), breaks.stream().filter(b -> b.open() && changes(b, setup))).toList();
    }

    private boolean changes(ForClass one, ClassSetup setup) {
        ClassSetup changed = one.in(setup);
        return !changed.equals(setup) && SetupRules.check(changed, sheet).isEmpty();
    }

    /** All that is proposed, whichever class it is for. */
    List<Learned> openAnywhere() {
        return all().filter(Learned::open).toList();
    }

    /** How many classes showed anything. */
    public int classes() {
        return (int) all().flatMap(l -> Stream.of(l.evidence().split(" "))).map(review -> review.split(":")[0]).distinct().count();
    }

    /** All of which anything is known. */
    private Stream<Learned> all() {
        return Stream.concat(forSheet(), breaks.stream());
    }

    private Stream<ForSheet> forSheet() {
        return Stream.of(steps, helps, materials, levels).flatMap(List::stream);
    }

    /** Tells the proposals for the project and one of its classes from any others. */
    String fingerprint(ClassSetup setup) {
        return Integer.toHexString(open(setup).stream().map(l -> l.key() + l.proposed().words() + l.evidence()).toList().hashCode());
    }

    /** The project with some of what is proposed. */
    ProjectSpec with(List<Learned> taken) {
        ProjectSpec with = sheet;
        for (Learned one : taken) {
            with = one instanceof ForSheet forSheet ? forSheet.in(with) : with;
        }
        return with;
    }

    /** A class with some of what is proposed. */
    static ClassSetup in(ClassSetup setup, List<Learned> taken) {
        ClassSetup with = setup;
        for (Learned one : taken) {
            with = one instanceof ForClass forClass ? forClass.in(with) : with;
        }
        return with;
    }

    /** Titles of the steps whose minutes in the project came from classes. */
    List<String> learned() {
        return sheet.steps().stream().filter(this::isLearned).map(Step::title).distinct().toList();
    }

    private boolean isLearned(Step step) {
        return history.stream().anyMatch(d -> d.taken() && d.key().equals(step.id()) && d.after().equals(Setting.of(step)));
    }
}
