package benchful.findings;

import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.web.Trouble;
import io.quarkus.qute.TemplateData;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the reviewed classes of a project show.
 *
 * @param version of the project that it is compared with
 * @param classes how many of them showed anything
 * @param steps those of which anything is known, in the order of the project
 * @param history what was decided before, the latest first
 * @param troubles classes that could not be read
 */
@TemplateData
public record ProjectFindings(long project, long version, ProjectSpec sheet, int classes, List<StepFinding> steps, List<Finding.Decided> history,
        List<Trouble> troubles) {

    /** What should be changed in the project and was not refused. */
    public List<StepFinding> open() {
        return steps.stream().filter(StepFinding::open).toList();
    }

    /** Tells these proposals from any others. */
    public String fingerprint() {
        return Integer.toHexString(open().stream().map(s -> s.step().id() + s.proposed().words() + s.evidence()).toList().hashCode());
    }

    /** The project with what is proposed for some of its steps. */
    ProjectSpec with(List<StepFinding> taken) {
        Map<String, StepFinding> byStep = taken.stream().collect(Collectors.toMap(s -> s.step().id(), Function.identity()));
        return sheet.withSteps(sheet.steps().stream().map(s -> byStep.containsKey(s.id()) ? byStep.get(s.id()).changed() : s).toList());
    }

    /** Titles of the steps whose minutes in the project came from classes. */
    List<String> learned() {
        return sheet.steps().stream().filter(this::isLearned).map(Step::title).distinct().toList();
    }

    private boolean isLearned(Step step) {
        return history.stream().anyMatch(d -> d.taken() && d.step().equals(step.id()) && d.after().equals(Minutes.of(step)));
    }
}
