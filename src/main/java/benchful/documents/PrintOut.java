package benchful.documents;

import static benchful.plans.PlanParts.Part.ADVICE;
import static benchful.plans.PlanParts.Part.MATERIALS;
import static benchful.plans.PlanParts.Part.NEEDS;
import static benchful.plans.PlanParts.Part.TIMING;

import benchful.plans.PlanParts;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What can be printed for a class. */
public enum PrintOut {
    HANDOUT("Handouts", "What students work from and take home: steps, sizes, drawings, cautions and care.", NEEDS, TIMING),
    LABELS("Labels", "For kits: name, seat, size, contents, cautions and a code that opens the handout. For seats: name and seat in large letters.", NEEDS),
    CHECKLIST("Tutor’s checklist", "What to do, bring, set out, say and check from the days before to closing, with the timed plan.", NEEDS, MATERIALS, TIMING, ADVICE),
    ASSESSMENT("Risk assessment", "Hazards, controls and what risk is left, on the matrix, to sign. Each version that is printed is kept."),
    EMERGENCY("Emergency card", "For the wall by the door: whom to call, where the room is, the ways out, first aid, the nearest hospital. The venue carries it."),
    INCIDENT("Incident sheet", "To write on when somebody is hurt or was nearly: what happened, what was done, what changes. It will hold personal data."),
    REGISTER("Register", "Who is here, what they need, whom to call. It holds personal data: keep it out of sight.", NEEDS),
    PLAN("Timed plan", "The lesson as a picture and a table, on its side.", TIMING),
    PACKING("Packing list", "Kit by kit and material by material, with boxes to tick.", NEEDS, MATERIALS),
    SHOPPING("Shopping list", "Packs, prices and order days, supplier by supplier.", MATERIALS),
    CUTTING("Cutting sheet", "Which length is cut into which pieces.", MATERIALS),
    REVIEW("Review sheet", "To write on: when each step really ended, what was left, broken or short.", MATERIALS, TIMING);

    private final String title;
    private final String about;
    private final List<PlanParts.Part> parts;

    /** @param parts what of the plan it is filled from: no other is worked out for it */
    PrintOut(String title, String about, PlanParts.Part... parts) {
        this.title = title;
        this.about = about;
        this.parts = List.of(parts);
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
        return parts.contains(TIMING);
    }

    /** Works out beforehand what it is going to ask for. */
    void prepare(PlanParts plan) {
        parts.forEach(part -> part.ask(plan));
    }

    public static Optional<PrintOut> of(String slug) {
        return Arrays.stream(values()).filter(printOut -> printOut.slug().equals(slug)).findFirst();
    }
}
