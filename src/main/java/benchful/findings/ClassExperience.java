package benchful.findings;

import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.core.lesson.LessonPlan;
import benchful.plans.pages.Experience;
import benchful.plans.stored.PlanService;
import benchful.reviews.EarlierNotes;
import benchful.web.Formats;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** Tells the page of a class what earlier classes of its project showed, and plans it once more with their minutes. */
@ApplicationScoped
class ClassExperience implements Experience {
    private final Findings findings;
    private final EarlierNotes notes;
    private final PlanService plans;
    private final Clock clock;

    ClassExperience(Findings findings, EarlierNotes notes, PlanService plans, Clock clock) {
        this.findings = findings;
        this.notes = notes;
        this.plans = plans;
        this.clock = clock;
    }

    @Override
    public Known of(CraftClass craftClass, ClassFile file, LessonPlan plan) {
        long project = craftClass.project().id();
        List<Line> lines = notes.of(project).stream().filter(n -> n.craftClass() != craftClass.id())
                .map(n -> new Line(n.craftClass(), n.day(), n.words())).toList();
        Optional<ProjectFindings> found = findings.of(project);
        boolean over = craftClass.endsAt().isBefore(LocalDateTime.now(clock));
        Proposal proposal = plan == null || over ? null : found.flatMap(f -> proposal(f, file, plan)).orElse(null);
        return new Known(proposal, lines, found.map(f -> source(craftClass, f)).orElse(""));
    }

    private Optional<Proposal> proposal(ProjectFindings found, ClassFile file, LessonPlan plan) {
        List<Learned> open = found.open(file);
        if (open.isEmpty()) {
            return Optional.empty();
        }
        return plans.finish(ProjectFindings.in(file.with(found.with(open)), open)).map(then -> new Proposal(found.classes(), plan.finish(), then,
                open.stream().map(l -> change(l, file, plan)).toList(), found.version(), found.fingerprint(file)));
    }

    /** Of what the class has for itself, by how much it alone moves the end. */
    private Change change(Learned one, ClassFile file, LessonPlan plan) {
        boolean forClass = one instanceof ForClass;
        String moves = forClass ? plans.finish(ProjectFindings.in(file, List.of(one))).map(then -> moves(Duration.between(plan.finish(), then))).orElse("") : "";
        return new Change(one.title(), one.now().words(), one.proposed().words(), moves, forClass);
    }

    private static String moves(Duration later) {
        return later.isZero() ? "the class ends as it does now" : "the class ends %s %s".formatted(Formats.words(later.abs()), later.isNegative() ? "sooner" : "later");
    }

    /** "Planned with version 4 of the project, saved Sat 6 Mar 2027, 18:30; the minutes of Knot the strand come from earlier classes." */
    private String source(CraftClass craftClass, ProjectFindings found) {
        LocalDateTime saved = LocalDateTime.ofInstant(craftClass.project().updatedAt(), clock.getZone());
        List<String> learned = found.learned();
        String from = learned.isEmpty() ? "all its minutes are as they were typed" : "the minutes of %s come from earlier classes".formatted(String.join(", ", learned));
        return "Planned with version %d of the project, saved %s; %s.".formatted(found.version() + 1, Formats.words(saved), from);
    }
}
