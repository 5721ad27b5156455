package benchful.plans.materials.sizes;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.core.sizing.Bracelet;
import benchful.core.sizing.BraceletRequest;
import benchful.core.sizing.BraceletSizer;
import benchful.core.sizing.Coil;
import benchful.core.sizing.CoilRequest;
import benchful.core.sizing.CoilSizer;
import benchful.core.sizing.Pour;
import benchful.core.sizing.PourRequest;
import benchful.core.sizing.PourSizer;
import benchful.core.sizing.Sheet;
import benchful.core.sizing.SheetRequest;
import benchful.core.sizing.SheetSizer;
import benchful.core.sizing.Strand;
import benchful.core.sizing.StrandRequest;
import benchful.core.sizing.StrandSizer;
import benchful.projects.Sizing;
import benchful.projects.SizingKind;

/** Asks the engine of each kind of working and names its answers as {@link SizingKind} promises them. */
final class SizingWork {
    /** Less than half of the step between the usual lengths, 2 inches, so that a strand stays nearest to its own: common practice, no source. */
    private static final Quantity STRAND_TOLERANCE = Quantity.of(20, Unit.MM);
    /** Half of what parts a snug bracelet from a comfortable one (6 to 12 and 12 to 25 mm of ease, bead trade pages). */
    private static final Quantity BRACELET_TOLERANCE = Quantity.of(6, Unit.MM);

    private SizingWork() {}

    /** @throws IllegalArgumentException with a sentence, if the values can't be worked with */
    static SizingAnswers of(SizingKind kind, SizingInputs in) {
        return switch (kind) {
            case STRAND -> strand(in);
            case BRACELET -> bracelet(in);
            case COIL -> coil(in);
            case POUR -> pour(in);
            case SHEET -> sheet(in);
        };
    }

    private static SizingAnswers strand(SizingInputs in) {
        Strand strand = StrandSizer.size(new StrandRequest(in.get("target"), in.length("closure"), in.pattern(), in.arrangement(),
                in.knots(), in.whole("maximum", null), false, in.length("tolerance", STRAND_TOLERANCE)));
        return beads(new SizingAnswers(strand.reasons(), strand), in, strand, strand.difference());
    }

    private static SizingAnswers bracelet(SizingInputs in) {
        Bracelet bracelet = BraceletSizer.size(new BraceletRequest(in.get("wrist"), in.length("ease"), in.length("closure"),
                in.pattern(), in.arrangement(), in.knots(), in.whole("maximum", null), in.length("tolerance", BRACELET_TOLERANCE)));
        SizingAnswers answers = new SizingAnswers(bracelet.reasons(), bracelet.strand());
        return beads(answers, in, bracelet.strand(), bracelet.difference()).with("inside", bracelet.inside());
    }

    private static SizingAnswers beads(SizingAnswers answers, SizingInputs in, Strand strand, Quantity difference) {
        in.beads().forEach(run -> answers.with(
                Sizing.word(run.bead()), strand.counts().getOrDefault(run.bead(), 0)));
        return answers.with("beads", strand.beads().size())
                .with("knots", strand.knots())
                .with("length", strand.length())
                .with("difference", difference)
                .with("thread", strand.thread());
    }

    private static SizingAnswers coil(SizingInputs in) {
        Coil coil = CoilSizer.size(new CoilRequest(
                in.get("mandrel"), in.get("wire"), in.number("turns", 1), in.length("straight"), in.get("density")));
        return new SizingAnswers(coil.reasons(), null)
                .with("turn", coil.turn())
                .with("length", coil.length())
                .with("height", coil.height())
                .with("outside", coil.outside())
                .with("mass", coil.mass());
    }

    private static SizingAnswers pour(SizingInputs in) {
        Pour pour = PourSizer.size(new PourRequest(
                in.get("volume"), in.get("density"), in.mix(), in.get("density_a"), in.get("density_b")));
        return new SizingAnswers(pour.reasons(), null)
                .with("volume", pour.volume())
                .with("mass", pour.mass())
                .with("a_mass", pour.a().mass())
                .with("b_mass", pour.b().mass())
                .with("a_volume", pour.a().volume())
                .with("b_volume", pour.b().volume());
    }

    private static SizingAnswers sheet(SizingInputs in) {
        Sheet sheet = SheetSizer.size(new SheetRequest(in.get("width"), in.get("height"), in.whole("pieces", 1), in.length("kerf"),
                in.get("sheet_width"), in.get("sheet_height"), in.get("thickness"), in.get("density")));
        return new SizingAnswers(sheet.reasons(), null)
                .with("pieces", sheet.pieces())
                .with("area", sheet.area())
                .with("mass", sheet.mass())
                .with("per_sheet", sheet.perSheet())
                .with("sheets", sheet.sheets());
    }
}
