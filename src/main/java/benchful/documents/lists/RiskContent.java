package benchful.documents.lists;

import benchful.assessments.AssessmentPrint;
import benchful.assessments.AssessmentSpec;
import benchful.assessments.Risk;
import benchful.assessments.RiskBands;
import benchful.classes.ClassSetup;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Stylesheet;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintHead;
import benchful.documents.parts.PrintSource;
import benchful.documents.parts.PrintedSigns;
import benchful.documents.parts.Signage;
import benchful.venues.VenueSpec;
import benchful.web.Formats;
import benchful.web.Markdown;
import benchful.web.Writing;
import io.quarkus.qute.RawString;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The risk assessment to sign: both matrices, then hazard by hazard.
 *
 * @param facts whose class it is, where, when, how many people, who gives first aid: label and text
 * @param actions what further has to be done; may be empty
 * @param status which version it is, or that it is a draft
 * @param convention where the bands lie
 * @param assessor name as typed; may be empty
 * @param signed day of signing as typed; may be empty
 * @param reviewBy when to look at it again
 */
public record RiskContent(
        PrintHead head, List<Fact> facts, List<Row> actions, String status, List<RiskMatrix> matrices, String convention, List<Row> rows, RawString notes, String assessor, String signed, String reviewBy) {

    /** Lines of hazards in the fullest cell of both matrices: all cells are as tall. */
    public int tallest() {
        return matrices.stream().mapToInt(RiskMatrix::tallest).max().orElse(0);
    }

    /** A line of the head. */
    public record Fact(String label, String text) {}

    /**
     * One hazard.
     *
     * @param before "4 × 2 = 8, low"
     * @param after the same with the controls
     * @param further what else has to be done; may be empty
     * @param byWhom who does it; may be empty
     * @param byWhen the last day for it, in words; may be empty
     * @param done the day it was done, in words; may be empty
     */
    public record Row(int number, String name, Signage signs, String from, String who, String before, RawString controls, String after, String further, String byWhom, String byWhen, String done) {}

    public static RiskContent of(PrintSource source, PrintOptions options, PictureBag bag) {
        AssessmentPrint print = source.assessment();
        AssessmentSpec sheet = print.sheet();
        RiskBands bands = sheet.bands();
        List<Row> rows = rows(source, sheet, bands, new PrintedSigns(bag));
        List<RiskMatrix> matrices = List.of(
                RiskMatrix.of("Before the controls", sheet.rows().stream().map(AssessmentSpec.Row::risk).toList(), bands),
                RiskMatrix.of("With the controls", sheet.rows().stream().map(AssessmentSpec.Row::residual).toList(), bands));
        return new RiskContent(head(source, options, rows), facts(source, sheet), rows.stream().filter(row -> !row.further().isEmpty()).toList(), status(print), matrices, bands.words(), rows, Markdown.markdown(sheet.notes()), text(sheet.assessor()),
                sheet.signed() == null ? "" : Formats.words(sheet.signed()), sheet.reviewBy() == null ? "before the next class" : Formats.words(sheet.reviewBy()));
    }

    private static List<Fact> facts(PrintSource source, AssessmentSpec sheet) {
        ClassSetup setup = source.file().setup();
        VenueSpec venue = source.file().venue();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(Writing.current().spelt("Organisation"), text(source.studio().name())));
        facts.add(new Fact("Class", source.title()));
        facts.add(new Fact("Room", venue == null ? "" : venue.place()));
        facts.add(new Fact("Dates", source.meetings()));
        facts.add(new Fact("People", people(setup)));
        facts.add(new Fact("First aider", text(sheet.firstAider())));
        return facts;
    }

    private static String people(ClassSetup setup) {
        String helpers = setup.helpers() == 0 ? "no helper" : setup.helpers() == 1 ? "1 helper" : setup.helpers() + " helpers";
        String youngest = setup.youngest() == null ? "" : "; the youngest is %d".formatted(setup.youngest());
        return "%s, 1 tutor, %s%s".formatted(setup.headcount() == 1 ? "1 student" : setup.headcount() + " students", helpers, youngest);
    }

    private static PrintHead head(PrintSource source, PrintOptions options, List<Row> rows) {
        List<PrintHead.Bookmark> bookmarks = new ArrayList<>();
        bookmarks.add(new PrintHead.Bookmark("Risk assessment", "top"));
        if (rows.stream().anyMatch(row -> !row.further().isEmpty())) {
            bookmarks.add(new PrintHead.Bookmark("Further action", "actions"));
        }
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
                    Markdown.markdown(row.controls()), words(row.residual(), bands), text(row.further()), text(row.byWhom()), day(row.byWhen()), day(row.done())));
        }
        return rows;
    }

    private static String words(Risk risk, RiskBands bands) {
        return "%d × %d = %d, %s".formatted(risk.severity(), risk.likelihood(), risk.score(), bands.of(risk));
    }

    private static String day(LocalDate day) {
        return day == null ? "" : Formats.words(day);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
