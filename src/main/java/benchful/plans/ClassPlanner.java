package benchful.plans;

import benchful.classes.ClassFile;
import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.kits.Seating;
import benchful.plans.materials.sizes.PieceSizer;
import benchful.plans.materials.sizes.SizedPiece;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** Computes the whole plan of a class from its file. Nothing is stored; the same file gives the same plan. */
@ApplicationScoped
public class ClassPlanner {
    private static final BigDecimal MOST_REPEATS = BigDecimal.valueOf(10_000);

    private final Remembered remembered;

    ClassPlanner(Remembered remembered) {
        this.remembered = remembered;
    }

    public ClassPlan plan(ClassFile file) {
        return plan(file, null);
    }

    /** @param today to tell what can't arrive in time any more; null to leave that open */
    public ClassPlan plan(ClassFile file, LocalDate today) {
        LessonRequest request = remembered.request(file);
        LessonOutcome lesson = remembered.lesson(request);
        MaterialsPlan materials = remembered.materials(file, today);
        List<Advice> advice = AdviceFinder.of(file);
        return lesson instanceof Planned planned
                ? new ClassPlan(planned.plan(), null, request.breaks(), List.of(), materials, advice)
                : new ClassPlan(null, null, request.breaks(), ((Contradiction) lesson).conflicts(), materials, advice);
    }

    /** The same plan with the chance of ending on time, from simulated classes; as it is where there is no plan. */
    public ClassPlan withRisk(ClassFile file, ClassPlan plan) {
        return plan.lesson() == null ? plan : plan.withRisk(remembered.risk(remembered.request(file), plan.lesson()));
    }

    /** Whether it ends within its hours. */
    public boolean fits(ClassFile file) {
        return remembered.lesson(remembered.request(file)) instanceof Planned planned && planned.plan().fits();
    }

    /** What the lesson engine is asked for the class. */
    public static LessonRequest request(ClassFile file) {
        return LessonRequestWriter.of(file, repeats(file));
    }

    /** A step is repeated as often as in the size of the class that takes the most. */
    private static ToIntFunction<Step> repeats(ClassFile file) {
        ProjectSpec project = file.project();
        List<SizedPiece> pieces = new Seating(project, file.setup()).made().stream().map(project::size).flatMap(Optional::stream)
                .map(s -> PieceSizer.size(project, s)).toList();
        return step -> pieces.stream()
                .map(p -> p.repeats().getOrDefault(step.id(), BigDecimal.ONE))
                .mapToInt(n -> n.min(MOST_REPEATS).setScale(0, RoundingMode.CEILING).intValueExact())
                .max()
                .orElse(1);
    }
}
