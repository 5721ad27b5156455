package benchful.assessments;

import benchful.classes.CraftClass;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Optional;

/** Gives print-outs the assessment of a class, and keeps each version that was printed. */
@ApplicationScoped
public class Assessments {
    private final Clock clock;

    Assessments(Clock clock) {
        this.clock = clock;
    }

    /** The saved assessment, kept as printed; none while it is only a draft. */
    @Transactional
    public Optional<AssessmentSheet> printed(CraftClass craftClass) {
        Optional<AssessmentSheet> sheet = Assessment.of(craftClass).map(Assessment::sheet);
        sheet.filter(s -> PrintedAssessment.of(craftClass).stream().findFirst().filter(p -> p.sheet().equals(s)).isEmpty())
                .ifPresent(s -> PrintedAssessment.of(craftClass, s, LocalDateTime.now(clock)).persist());
        return sheet;
    }
}
