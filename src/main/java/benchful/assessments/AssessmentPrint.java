package benchful.assessments;

import benchful.classes.ClassFile;
import benchful.hazards.HazardSpec;
import io.quarkus.qute.TemplateData;
import java.time.LocalDateTime;
import java.util.List;

/**
 * An assessment as it goes to the printer.
 *
 * @param id by which the version that was printed is found again; 0 for a draft, of which none is kept
 * @param number of the version, from 1; 0 for a draft
 * @param at when it was first printed; null for a draft
 */
@TemplateData
public record AssessmentPrint(long id, int number, LocalDateTime at, AssessmentSpec sheet) {

    /** What the hazards in use suggest, judged by nobody yet. */
    public static AssessmentPrint draft(ClassFile file, List<HazardSpec> hazards) {
        return new AssessmentPrint(0, 0, null, new AssessmentDraft(file).of(hazards));
    }

    public boolean isDraft() {
        return number == 0;
    }
}
