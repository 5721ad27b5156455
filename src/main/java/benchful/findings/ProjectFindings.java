package benchful.findings;

import benchful.classes.ClassFile;
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
 * @param tools those that students waited for, in the order of the project
 * @param history what was decided before, the latest first
 * @param troubles classes that could not be read
 */
@TemplateData
public record ProjectFindings(long project, long version, ProjectSpec sheet, List<StepFinding> steps, List<HelpFinding> helps, List<MaterialFinding> materials,
        List<LevelFinding> levels, List<BreakFinding> breaks, List<ToolFinding> tools, List<Finding.Decided> history, List<Trouble> troubles) {

    /** What should be changed in the project and was not refused. */
    public List<Learned> open() {
        return forSheet().<Learned>map(l -> l).filter(Learned::open).toList();
    }

    /** The same, and what should be changed in a class of the project; null for none. */
    List<Learned> open(ClassFile file) {
        return file == null ? open() : Stream.concat(open().stream(), forClass().map(one -> one.of(file)).filter(one -> one.open() && changes(one, file))).toList();
    }

    private boolean changes(ForClass one, ClassFile file) {
        ClassSetup changed = one.in(file);
        return !changed.equals(file.setup()) && SetupRules.check(changed, sheet).isEmpty();
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
        return Stream.concat(forSheet(), forClass());
    }

    private Stream<ForClass> forClass() {
        return Stream.of(breaks, tools).flatMap(List::stream);
    }

    private Stream<ForSheet> forSheet() {
        return Stream.of(steps, helps, materials, levels).flatMap(List::stream);
    }

    /** Tells the proposals for the project and one of its classes from any others. */
    String fingerprint(ClassFile file) {
        return Integer.toHexString(open(file).stream().map(l -> l.key() + l.proposed().words() + l.evidence()).toList().hashCode());
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
    static ClassFile in(ClassFile file, List<Learned> taken) {
        ClassFile with = file;
        for (Learned one : taken) {
            with = one instanceof ForClass forClass ? with.with(forClass.in(with)) : with;
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
