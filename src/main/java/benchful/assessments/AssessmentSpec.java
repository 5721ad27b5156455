package benchful.assessments;

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
 */
public record AssessmentSpec(
        List<Row> rows, String assessor, LocalDate signed, LocalDate reviewBy, String notes, Integer mediumFrom, Integer highFrom) {
    public AssessmentSpec {
        rows = rows == null ? List.of() : List.copyOf(rows);
    }

    /** @throws IllegalArgumentException if medium would begin no lower than high */
    public RiskBands bands() {
        return new RiskBands(mediumFrom == null ? RiskBands.USUAL.mediumFrom() : mediumFrom, highFrom == null ? RiskBands.USUAL.highFrom() : highFrom);
    }

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
     */
    public record Row(
            String hazard,
            String name,
            String from,
            String who,
            int severity,
            int likelihood,
            String controls,
            int residualSeverity,
            int residualLikelihood) {

        public Risk risk() {
            return new Risk(severity, likelihood);
        }

        public Risk residual() {
            return new Risk(residualSeverity, residualLikelihood);
        }
    }
}
