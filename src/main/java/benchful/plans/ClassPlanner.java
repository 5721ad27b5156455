package benchful.plans;

import benchful.classes.ClassFile;
import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.risk.Promised;
import benchful.core.lesson.risk.StepLengths;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Computes the whole plan of a class from its file. Nothing is stored; the same file gives the same plan. */
@ApplicationScoped
public class ClassPlanner {
    private final Remembered remembered;

    ClassPlanner(Remembered remembered) {
        this.remembered = remembered;
    }

    public ClassPlan plan(ClassFile file) {
        return plan(file, null);
    }

    /** @param today to tell what can't arrive in time any more; null to leave that open */
    public ClassPlan plan(ClassFile file, LocalDate today) {
        Timing timing = timing(file);
        List<Advice> advice = Stream.concat(AdviceFinder.of(file).stream(), RestAdvice.of(file, timing.lesson()).stream()).toList();
        return ClassPlan.of(timing, remembered.materials(file, today), advice);
    }

    /** The lesson alone. */
    public Timing timing(ClassFile file) {
        LessonRequest request = remembered.request(file);
        LessonOutcome lesson = remembered.lesson(request);
        if (lesson instanceof Contradiction contradiction) {
            return new Timing(null, null, request.breaks(), contradiction.conflicts());
        }
        Promised promised = remembered.promised(request, ((Planned) lesson).plan());
        return new Timing(promised.plan(), promised.risk(), request.breaks(), List.of());
    }

    /** Whether as many such classes as are promised end within the hours. */
    public boolean fits(ClassFile file) {
        return promised(file).filter(promised -> promised.plan().fits()).isPresent();
    }

    /** The times to promise; empty where the class can't be planned. */
    public Optional<Promised> promised(ClassFile file) {
        LessonRequest request = remembered.request(file);
        return remembered.lesson(request) instanceof Planned planned ? Optional.of(remembered.promised(request, planned.plan())) : Optional.empty();
    }

    /**
     * How long each step usually takes the class, as somebody notes it who writes down when each ends.
     *
     * @param students who came; null for all
     */
    public List<StepLengths.Length> stepLengths(ClassFile file, Integer students) {
        LessonRequest request = remembered.request(file);
        return remembered.lengths(students == null || students < request.groups() || students == 0 ? request : request.toBuilder().headcount(students).build());
    }

    /** What the lesson engine is asked for the class, with the breaks that its rule asks for. */
    public LessonRequest rested(ClassFile file) {
        return remembered.request(file);
    }

    /** The same before any break is placed by a rule. */
    public static LessonRequest request(ClassFile file) {
        return new LessonRequestWriter(file).request();
    }
}
