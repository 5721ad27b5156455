package benchful.documents;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be printed for a class. */
public enum PrintOut {
    HANDOUT("Handouts", "What students work from and take home: steps, sizes, drawings, cautions and care."),
    LABELS("Labels", "For kits: name, seat, size, contents, cautions and a code that opens the handout. For seats: name and seat in large letters."),
    CHECKLIST("Tutor’s checklist", "What to do, bring, set out, say and check from the days before to closing, with the timed plan."),
    ASSESSMENT("Risk assessment", "Hazards, controls and what risk is left, on the matrix, to sign. Each version that is printed is kept."),
    REGISTER("Register", "Who is here, what they need, whom to call. It holds personal data: keep it out of sight."),
    PLAN("Timed plan", "The lesson as a picture and a table, on its side."),
    PACKING("Packing list", "Kit by kit and material by material, with boxes to tick."),
    SHOPPING("Shopping list", "Packs, prices and order days, supplier by supplier."),
    CUTTING("Cutting sheet", "Which length is cut into which pieces."),
    REVIEW("Review sheet", "To write on: when each step really ended, what was left, broken or short.");

    private final String title;
    private final String about;

    PrintOut(String title, String about) {
        this.title = title;
        this.about = about;
    }

    public String title() {
        return title;
    }

    public String about() {
        return about;
    }

    /** As addresses write it: {@code handout}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it shows times, so that a class whose steps contradict each other can't have it yet. */
    public boolean needsLesson() {
        return this == PLAN || this == REVIEW || this == CHECKLIST || this == HANDOUT;
    }

    public static Optional<PrintOut> of(String slug) {
        return Arrays.stream(values()).filter(printOut -> printOut.slug().equals(slug)).findFirst();
    }
}
