package benchful.assessments;

import benchful.catalogue.HazardName;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.LongText;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.Spec;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.time.LocalDate;
import java.util.List;

/**
 * The risk assessment of one class, in the order of the usual five steps: hazards, who, risks, controls, review
 * (HSE, Managing risks and risk assessment at work).
 *
 * @param assessor who judged; null while not signed
 * @param signed the day of signing; null while not signed
 * @param reviewBy when to look at it again; null for before the next class
 * @param mediumFrom lowest score of a medium risk; null for the usual
 * @param highFrom lowest score of a high risk; null for the usual
 * @param firstAider who gives first aid in this class; null while nobody is named
 */
@Spec(name = "assessment-1", title = "The risk assessment of a class")
public record AssessmentSpec(
        @Length(most = 100) List<Row> rows,
        @Length(most = 120) @Mend("Write the name in at most 120 characters.") String assessor,
        @Mend("Give the day of signing as year-month-day.") LocalDate signed,
        @Mend("Give the day as year-month-day.") LocalDate reviewBy,
        @LongText String notes,
        @Score Integer mediumFrom,
        @Score Integer highFrom,
        @Length(most = 120) @Mend("Write the name in at most 120 characters.") String firstAider) {
    public AssessmentSpec {
        rows = rows == null ? List.of() : List.copyOf(rows);
    }

    /** @throws IllegalArgumentException if medium would begin no lower than high */
    public RiskBands bands() {
        return new RiskBands(mediumFrom == null ? RiskBands.USUAL.mediumFrom() : mediumFrom, highFrom == null ? RiskBands.USUAL.highFrom() : highFrom);
    }

    @Range(from = 1, to = 5)
    @Mend("Give a grade from 1 to 5.")
    @Target(ElementType.TYPE_USE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface Grade {}

    @Range(from = 2, to = 25)
    @Mend("Give a score from 2 to 25, or leave it empty for the usual one.")
    @Target(ElementType.TYPE_USE)
    @Retention(RetentionPolicy.RUNTIME)
    @interface Score {}

    /**
     * One hazard.
     *
     * @param hazard its short name in the library; null for one of the tutor's own
     * @param from what brings it into the class: materials, tools, steps
     * @param who could be harmed, and how
     * @param severity 1 (slight) to 5 (grave), before the controls
     * @param likelihood 1 (hardly) to 5 (nearly sure), before the controls
     * @param controls what is done about it
     * @param residualSeverity with the controls
     * @param residualLikelihood with the controls
     * @param further what else has to be done; null for nothing
     * @param byWhom who does it
     * @param byWhen the last day for it
     * @param done the day it was done; null while it is not
     */
    public record Row(
            @HazardName @Mend("Name a hazard of the library by its short name, such as “sharp-tools”.") String hazard,
            @Required @Filled(200) @Mend("Name the hazard.") String name,
            @Length(most = 1000) @Mend("Write at most 1,000 characters.") String from,
            @Length(most = 1000) @Mend("Write at most 1,000 characters.") String who,
            @Required @Grade int severity,
            @Required @Grade int likelihood,
            @Required @Filled(4000) @Mend("Say what you do about it.") String controls,
            @Required @Grade int residualSeverity,
            @Required @Grade int residualLikelihood,
            @Length(most = 1000) @Mend("Write at most 1,000 characters.") String further,
            @Length(most = 120) @Mend("Write the name in at most 120 characters.") String byWhom,
            @Mend("Give the day as year-month-day.") LocalDate byWhen,
            @Mend("Give the day as year-month-day.") LocalDate done) {

        public Risk risk() {
            return new Risk(severity, likelihood);
        }

        public Risk residual() {
            return new Risk(residualSeverity, residualLikelihood);
        }
    }
}
