package benchful.findings;

import benchful.catalogue.MaterialSpec;
import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.classes.SetupTarget;
import benchful.core.SkillLevel;
import benchful.core.learning.LevelPace;
import benchful.core.learning.StepPace;
import benchful.core.learning.StepPace.Seen;
import benchful.core.learning.WasteRate;
import benchful.day.Days;
import benchful.findings.Levels.Shown;
import benchful.plans.stored.ClassTroubles;
import benchful.plans.stored.PlanService;
import benchful.projects.MaterialLine;
import benchful.projects.Project;
import benchful.projects.ProjectKeeper;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.reviews.Review;
import benchful.web.StoredEntity;
import benchful.web.tasks.Tried;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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
    private final Days days;
    private final ClassTroubles troubles;
    private final ProjectKeeper keeper;
    private final Clock clock;

    Findings(PlanService plans, Days days, ClassTroubles troubles, ProjectKeeper keeper, Clock clock) {
        this.plans = plans;
        this.days = days;
        this.troubles = troubles;
        this.keeper = keeper;
        this.clock = clock;
    }

    /** All that is stored of it. */
    private record Stored(long project, long version, ProjectSpec sheet, List<Tried<Reviewed>> reviewed, History history) {}

    Optional<ProjectFindings> of(long project) {
        return QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(Project.class, project).map(this::stored)).map(this::found);
    }

    private Stored stored(Project project) {
        List<Tried<Reviewed>> reviewed = Review.latest(project, MOST_CLASSES).stream()
                .map(review -> troubles.tried(review.craftClass().line(), () -> Reviewed.of(review, days.counts(review.craftClass()), days.asked(review.craftClass())))).toList();
        return new Stored(project.id(), project.version(), project.toSpec(), reviewed, new History(Finding.of(project.id()).stream().map(Finding::decided).toList()));
    }

    private ProjectFindings found(Stored stored) {
        List<Reviewed> reviewed = Tried.worked(stored.reviewed);
        Map<String, Setting> typed = typed(stored);
        Helps helps = new Helps(stored.sheet, reviewed, stored.history, LocalDate.now(clock));
        List<Shown> shown = reviewed.stream().map(one -> shown(stored, typed, helps, one)).toList();
        Levels levels = new Levels(stored.sheet, shown, LocalDate.now(clock));
        List<StepFinding> steps = steps(stored, typed, shown, levels);
        List<MaterialFinding> materials = materials(stored, reviewed);
        List<LevelFinding> ofLevels = levels.paces().entrySet().stream().map(e -> finding(stored, e.getKey(), e.getValue(), levels.evidence(e.getKey()))).toList();
        return new ProjectFindings(stored.project, stored.version, stored.sheet, steps, helps.findings(), materials, ofLevels,
                new Breaks(reviewed, stored.history, LocalDate.now(clock)).findings(), new Tools(stored.sheet, reviewed, stored.history).findings(), stored.history.decided(), Tried.troubles(stored.reviewed));
    }

    private static Map<String, Setting> typed(Stored stored) {
        Map<String, Setting> typed = new HashMap<>();
        stored.sheet.steps().stream().filter(s -> s.kind().needsClass())
                .forEach(s -> typed.put(s.id(), stored.history.typed(s.id(), Setting.of(s))));
        return typed;
    }

    private static Setting typedPace(Stored stored, SkillLevel level) {
        return stored.history.typed(LevelFinding.key(level), Setting.pace(BigDecimal.valueOf(stored.sheet.pace(level))));
    }

    private Shown shown(Stored stored, Map<String, Setting> typed, Helps helps, Reviewed one) {
        return new Shown(one, new Evidence(one, plans.stepLengths(helps.in(one.file()), one.students()), typed, level -> typedPace(stored, level).pace().doubleValue()).seen());
    }

    private List<StepFinding> steps(Stored stored, Map<String, Setting> typed, List<Shown> shown, Levels levels) {
        List<StepFinding> steps = new ArrayList<>();
        for (Step step : stored.sheet.steps()) {
            Map<String, Seen> seen = new LinkedHashMap<>();
            shown.stream().filter(one -> one.steps().containsKey(step.id()))
                    .forEach(one -> seen.put(one.of().evidence(), levels.ofStep(one, step, one.steps().get(step.id()))));
            if (!seen.isEmpty()) {
                steps.add(finding(step, typed.get(step.id()), seen, stored.history));
            }
        }
        return steps;
    }

    private static LevelFinding finding(Stored stored, SkillLevel level, LevelPace pace, String evidence) {
        Setting now = Setting.pace(BigDecimal.valueOf(stored.sheet.pace(level)));
        String key = LevelFinding.key(level);
        return new LevelFinding(level, stored.sheet.timesOf(), now, typedPace(stored, level), pace, evidence, stored.history.refused(key, now, evidence));
    }

    private List<MaterialFinding> materials(Stored stored, List<Reviewed> reviewed) {
        Map<String, Map<String, WasteRate.Seen>> seen = new LinkedHashMap<>();
        for (Reviewed one : reviewed) {
            new Spoilt(one, plans.needs(one.file())).seen().forEach((material, s) -> seen.computeIfAbsent(material, x -> new LinkedHashMap<>()).put(one.evidence(), s));
        }
        return stored.sheet.materials().stream().filter(line -> Spoilt.learns(line) && seen.containsKey(line.material()))
                .collect(Collectors.toMap(MaterialLine::material, Function.identity(), (one, same) -> one, LinkedHashMap::new)).values().stream()
                .map(line -> finding(line, reviewed.get(0), new ArrayList<>(seen.get(line.material()).values()), evidence(seen.get(line.material())), stored.history)).toList();
    }

    private StepFinding finding(Step step, Setting typed, Map<String, Seen> seen, History history) {
        return new StepFinding(step, typed, StepPace.of(new ArrayList<>(seen.values()), LocalDate.now(clock)), evidence(seen),
                history.refused(step.id(), Setting.of(step), evidence(seen)));
    }

    /** @param last the latest class, which says what the catalogue allows for its level */
    private MaterialFinding finding(MaterialLine line, Reviewed last, List<WasteRate.Seen> seen, String evidence, History history) {
        Optional<MaterialSpec> material = last.file().materials().stream().filter(m -> m.name().equals(line.material())).findFirst();
        Setting now = Setting.waste(line.waste() != null ? line.waste() : material.map(m -> m.waste(last.file().setup().level())).orElse(BigDecimal.ZERO));
        String key = MaterialFinding.KEY + line.material();
        WasteRate rate = WasteRate.of(seen, history.typed(key, now).waste().movePointLeft(2).doubleValue(), LocalDate.now(clock));
        return new MaterialFinding(line.material(), now, rate, seen.get(0).taken(), material.filter(m -> m.confidence() != null).isPresent(), evidence,
                history.refused(key, now, evidence));
    }

    private static String evidence(Map<String, ?> seen) {
        return seen.keySet().stream().sorted().collect(Collectors.joining(" "));
    }

    /**
     * A class that asks what it should take.
     *
     * @param file as it was when it asked
     */
    record Asking(long craftClass, ClassFile file) {}

    Optional<Asking> asking(long craftClass, long project) {
        return QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(CraftClass.class, craftClass).filter(c -> c.project().id() == project).map(c -> new Asking(c.id(), plans.file(c))));
    }

    /** Ends a transaction that would change a class which is no longer what it was. */
    private static final class Meanwhile extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /**
     * Takes what is proposed into the project, and into the class that asked; what was there is kept as an earlier version.
     *
     * @param asking null where no class asked
     * @return false where either was changed meanwhile, so that nothing was taken
     */
    boolean take(ProjectFindings findings, List<Learned> taken, Asking asking) {
        try {
            return taken.stream().anyMatch(ForSheet.class::isInstance)
                    ? keeper.replace(findings.project(), findings.version(), findings.with(taken), project -> take(project, taken, asking)).isPresent()
                    : QuarkusTransaction.requiringNew().call(() -> StoredEntity.toChange(Project.class, findings.project()).map(project -> take(project, taken, asking)).isPresent());
        } catch (Meanwhile changed) {
            return false;
        }
    }

    private Project take(Project project, List<Learned> taken, Asking asking) {
        decide(project, taken, true);
        if (asking != null && taken.stream().anyMatch(ForClass.class::isInstance)) {
            CraftClass craftClass = StoredEntity.toChange(CraftClass.class, asking.craftClass()).filter(c -> c.setup().equals(asking.file().setup())).orElseThrow(Meanwhile::new);
            new SetupTarget(craftClass, craftClass.venue()).save(ProjectFindings.in(asking.file(), taken).setup());
        }
        return project;
    }

    /** Refuses proposals until there is new data. */
    void refuse(ProjectFindings findings, List<Learned> refused) {
        QuarkusTransaction.requiringNew().run(() -> StoredEntity.byId(Project.class, findings.project()).ifPresent(project -> decide(project, refused, false)));
    }

    private void decide(Project project, List<Learned> about, boolean taken) {
        about.forEach(one -> Finding.of(project, one, taken, clock.instant()).persist());
    }
}
