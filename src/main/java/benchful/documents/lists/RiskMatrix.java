package benchful.documents.lists;

import benchful.assessments.Risk;
import benchful.assessments.RiskBands;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Severity by likelihood, with the numbers of the hazards in their cells; the gravest stands on top. */
public record RiskMatrix(String title, List<Line> lines) {

    /** Numbers of hazards that stand beside each other in a cell. */
    private static final int TO_A_LINE = 2;

    /** All likelihoods of one severity. */
    public record Line(int severity, List<Cell> cells) {}

    /**
     * @param band "low", "medium" or "high"
     * @param hazards numbers of those that lie here, "1, 4"; may be empty
     */
    public record Cell(int score, String band, String hazards) {}

    /** Lines that the numbers of the fullest cell take. */
    int tallest() {
        return lines.stream().flatMap(line -> line.cells().stream()).mapToInt(cell -> cell.hazards().isEmpty() ? 0 : (cell.hazards().split(", ").length + TO_A_LINE - 1) / TO_A_LINE).max().orElse(0);
    }

    /** @param risks of the hazards in their order */
    static RiskMatrix of(String title, List<Risk> risks, RiskBands bands) {
        List<Line> lines = new ArrayList<>();
        for (int severity = Risk.GRADES; severity >= 1; severity--) {
            int grade = severity;
            lines.add(new Line(grade, IntStream.rangeClosed(1, Risk.GRADES).mapToObj(likelihood -> cell(new Risk(grade, likelihood), risks, bands)).toList()));
        }
        return new RiskMatrix(title, lines);
    }

    private static Cell cell(Risk risk, List<Risk> risks, RiskBands bands) {
        String hazards = IntStream.range(0, risks.size()).filter(i -> risks.get(i).equals(risk)).mapToObj(i -> String.valueOf(i + 1)).collect(Collectors.joining(", "));
        return new Cell(risk.score(), bands.of(risk), hazards);
    }
}
