package benchful.findings;

import benchful.core.learning.StepPace;
import benchful.core.learning.StepPace.Seen;
import benchful.findings.Finding.Decided;
import benchful.plans.stored.ClassTroubles;
import benchful.plans.stored.PlanService;
import benchful.projects.Project;
import benchful.projects.ProjectKeeper;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.reviews.Review;
import benchful.web.StoredEntity;
import benchful.web.tasks.Tried;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Makes findings of the reviews of a project, and does with them what the tutor decides. What is stored is read in one short
 * transaction; simulating the classes afterwards holds no connection.
 */
@ApplicationScoped
class Findings {
    /** What older classes showed counts for little, and each costs a simulation. */
    private static final int MOST_CLASSES = 20;

    private final PlanService plans;
    private final ClassTroubles troubles;
    private final ProjectKeeper keeper;
    private final Clock clock;

    Findings(PlanService plans, ClassTroubles troubles, ProjectKeeper keeper, Clock clock) {
        this.plans = plans;
        this.troubles = troubles;
        this.keeper = keeper;
        this.clock = clock;
    }

    /** All that is stored of it. */
    private record Stored(long project, long version, ProjectSpec sheet, List<Tried<Reviewed>> reviewed, List<Decided> history) {}

    Optional<ProjectFindings> of(long project) {
        return QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(Project.class, project).map(this::stored)).map(this::found);
    }

    private Stored stored(Project project) {
        List<Tried<Reviewed>> reviewed = Review.latest(project, MOST_CLASSES).stream()
                .map(review -> troubles.tried(review.craftClass().line(), () -> Reviewed.of(review))).toList();
        return new Stored(project.id(), project.version(), project.toSpec(), reviewed, Finding.of(project.id()).stream().map(Finding::decided).toList());
    }

    private ProjectFindings found(Stored stored) {
        Map<String, Minutes> typed = new HashMap<>();
        stored.sheet.steps().stream().filter(s -> !s.kind().isUnattended() && !s.kind().isBeforeClass())
                .forEach(s -> typed.put(s.id(), typed(s, stored.history)));
        Map<String, Map<String, Seen>> seen = new LinkedHashMap<>();
        for (Reviewed one : Tried.worked(stored.reviewed)) {
            new Evidence(one, plans.stepLengths(one.file(), one.students()), stored.sheet, typed).seen()
                    .forEach((step, s) -> seen.computeIfAbsent(step, x -> new LinkedHashMap<>()).put(one.evidence(), s));
        }
        List<StepFinding> steps = stored.sheet.steps().stream().filter(s -> seen.containsKey(s.id()))
                .map(s -> finding(s, typed.get(s.id()), seen.get(s.id()), stored.history)).toList();
        int classes = (int) seen.values().stream().flatMap(s -> s.keySet().stream()).distinct().count();
        return new ProjectFindings(stored.project, stored.version, stored.sheet, classes, steps, stored.history, Tried.troubles(stored.reviewed));
    }

    /** What was typed for a step: what stands in the project, and where that was taken from classes, what stood there before. */
    private static Minutes typed(Step step, List<Decided> history) {
        Minutes typed = Minutes.of(step);
        for (Decided decided : history) {
            if (decided.taken() && decided.step().equals(step.id()) && decided.after().equals(typed)) {
                typed = decided.before();
            }
        }
        return typed;
    }

    private StepFinding finding(Step step, Minutes typed, Map<String, Seen> seen, List<Decided> history) {
        String evidence = seen.keySet().stream().sorted().collect(Collectors.joining(" "));
        boolean refused = history.stream().anyMatch(d -> !d.taken() && d.step().equals(step.id()) && d.evidence().equals(evidence)
                && d.before().equals(Minutes.of(step)));
        return new StepFinding(step, typed, StepPace.of(new ArrayList<>(seen.values()), LocalDate.now(clock)), evidence, refused);
    }

    /**
     * Takes proposed minutes into the project, whose sheet as it was is kept as an earlier version.
     *
     * @return false where the project was changed meanwhile, so that nothing was taken
     */
    boolean take(ProjectFindings findings, List<StepFinding> taken) {
        return keeper.replace(findings.project(), findings.version(), findings.with(taken), project -> decide(project, taken, true)).isPresent();
    }

    /** Refuses proposals until there is new data. */
    void refuse(ProjectFindings findings, List<StepFinding> refused) {
        QuarkusTransaction.requiringNew().run(() -> StoredEntity.byId(Project.class, findings.project()).ifPresent(project -> decide(project, refused, false)));
    }

    private void decide(Project project, List<StepFinding> steps, boolean taken) {
        steps.forEach(step -> Finding.of(project, step, taken, clock.instant()).persist());
    }
}
