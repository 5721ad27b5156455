package benchful.documents.lists;

import benchful.assessments.AssessmentPrint;
import benchful.assessments.AssessmentSpec;
import benchful.assessments.Risk;
import benchful.assessments.RiskBands;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import benchful.documents.parts.PrintedSigns;
import benchful.documents.parts.Signage;
import benchful.web.Formats;
import benchful.web.Markdown;
import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.List;

/**
 * The risk assessment to sign: both matrices, then hazard by hazard.
 *
 * @param status which version it is, or that it is a draft
 * @param convention where the bands lie
 * @param assessor name as typed; may be empty
 * @param signed day of signing as typed; may be empty
 * @param reviewBy when to look at it again
 */
public record RiskContent(
        PrintHead head, String status, List<RiskMatrix> matrices, String convention, List<Row> rows, RawString notes, String assessor, String signed, String reviewBy) {

    /**
     * One hazard.
     *
     * @param before "4 × 2 = 8, low"
     * @param after the same with the controls
     */
    public record Row(int number, String name, Signage signs, String from, String who, String before, RawString controls, String after) {}

    public static RiskContent of(PrintSource source, PrintOptions options, PictureBag bag) {
        AssessmentPrint print = source.assessment();
        AssessmentSpec sheet = print.sheet();
        RiskBands bands = sheet.bands();
        List<Row> rows = rows(source, sheet, bands, new PrintedSigns(bag));
        List<RiskMatrix> matrices = List.of(
                RiskMatrix.of("Before the controls", sheet.rows().stream().map(AssessmentSpec.Row::risk).toList(), bands),
                RiskMatrix.of("With the controls", sheet.rows().stream().map(AssessmentSpec.Row::residual).toList(), bands));
        return new RiskContent(head(source, options, rows), status(print), matrices, bands.words(), rows, Markdown.markdown(sheet.notes()), text(sheet.assessor()),
                sheet.signed() == null ? "" : Formats.words(sheet.signed()), sheet.reviewBy() == null ? "before the next class" : Formats.words(sheet.reviewBy()));
    }

    private static PrintHead head(PrintSource source, PrintOptions options, List<Row> rows) {
        List<PrintHead.Bookmark> bookmarks = new ArrayList<>();
        bookmarks.add(new PrintHead.Bookmark("Risk assessment", "top"));
        bookmarks.add(new PrintHead.Bookmark("Hazard by hazard", "hazards"));
        rows.forEach(row -> bookmarks.add(new PrintHead.Bookmark(row.number() + " " + row.name(), "hazard" + row.number())));
        bookmarks.add(new PrintHead.Bookmark("Signature", "signature"));
        return PrintHead.of(source, "Risk assessment: " + source.title(), Stylesheet.tables(options.paper(), options.version()), options.paper(), options.version(), bookmarks);
    }

    private static String status(AssessmentPrint print) {
        return print.isDraft() ? "Draft from the hazards in use: nobody has judged it for this group and room yet. Save it before you print it to sign."
                : "Version %d, first printed %s.".formatted(print.number(), Formats.words(print.at()));
    }

    private static List<Row> rows(PrintSource source, AssessmentSpec sheet, RiskBands bands, PrintedSigns signs) {
        List<Row> rows = new ArrayList<>();
        for (AssessmentSpec.Row row : sheet.rows()) {
            Signage signage = row.hazard() == null ? Signage.NONE : source.hazard(row.hazard()).map(signs::of).orElse(Signage.NONE);
            rows.add(new Row(rows.size() + 1, row.name(), signage, text(row.from()), text(row.who()), words(row.risk(), bands),
                    Markdown.markdown(row.controls()), words(row.residual(), bands)));
        }
        return rows;
    }

    private static String words(Risk risk, RiskBands bands) {
        return "%d × %d = %d, %s".formatted(risk.severity(), risk.likelihood(), risk.score(), bands.of(risk));
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
