package benchful.findings;

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
 * @param history what was decided before, the latest first
 * @param troubles classes that could not be read
 */
@TemplateData
public record ProjectFindings(long project, long version, ProjectSpec sheet, List<StepFinding> steps, List<HelpFinding> helps, List<MaterialFinding> materials,
        List<LevelFinding> levels, List<Finding.Decided> history, List<Trouble> troubles) {

    /** What should be changed in the project and was not refused. */
    public List<Learned> open() {
        return all().filter(Learned::open).toList();
    }

    /** How many classes showed anything. */
    public int classes() {
        return (int) all().flatMap(l -> Stream.of(l.evidence().split(" "))).map(review -> review.split(":")[0]).distinct().count();
    }

    /** All of which anything is known. */
    private Stream<Learned> all() {
        return Stream.of(steps, helps, materials, levels).flatMap(List::stream);
    }

    /** Tells these proposals from any others. */
    public String fingerprint() {
        return Integer.toHexString(open().stream().map(l -> l.key() + l.proposed().words() + l.evidence()).toList().hashCode());
    }

    /** The project with some of what is proposed. */
    ProjectSpec with(List<Learned> taken) {
        ProjectSpec with = sheet;
        for (Learned one : taken) {
            with = one.in(with);
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
