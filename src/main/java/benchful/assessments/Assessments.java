package benchful.assessments;

import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.hazards.HazardLibrary;
import benchful.plans.HazardIndex;
import benchful.plans.stored.PlanService;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Gives print-outs the assessment of a class, and keeps each version that was printed. */
@ApplicationScoped
public class Assessments {
    private final PlanService plans;
    private final HazardLibrary library;
    private final Clock clock;

    Assessments(PlanService plans, HazardLibrary library, Clock clock) {
        this.plans = plans;
        this.library = library;
        this.clock = clock;
    }

    /** The saved assessment, kept as printed unless just this was printed last; else the draft, of which nothing is kept. */
    @Transactional
    public AssessmentPrint print(CraftClass craftClass) {
        Optional<AssessmentSpec> saved = Assessment.of(craftClass).map(Assessment::sheet);
        if (saved.isEmpty()) {
            return draft(craftClass);
        }
        if (printed(craftClass).stream().findFirst().filter(last -> last.sheet().equals(saved.get())).isEmpty()) {
            PrintedAssessment.of(craftClass, saved.get(), LocalDateTime.now(clock)).persistAndFlush();
        }
        return printed(craftClass).get(0);
    }

    /** All versions that were printed, the latest first. */
    @Transactional
    public List<AssessmentPrint> printed(CraftClass craftClass) {
        List<PrintedAssessment> printed = PrintedAssessment.of(craftClass);
        return IntStream.range(0, printed.size()).mapToObj(i -> printed.get(i).asPrint(printed.size() - i)).toList();
    }

    AssessmentPrint draft(CraftClass craftClass) {
        ClassFile file = plans.file(craftClass);
        return AssessmentPrint.draft(file, library.find(HazardIndex.withRoom(file).ids()));
    }
}
