package benchful.documents;

import benchful.plans.PlanParts;
import java.util.List;
import java.util.Optional;

/**
 * What one press prints: a print-out, or the lot in the order in which a tutor takes it up, as one file. Labels come last, for which other
 * sheets are put into the printer.
 *
 * @param slug as addresses write it: {@code handout}, {@code all}
 */
public record Wanted(String slug, String title, List<PrintOut> printOuts) {
    public static final Wanted ALL = new Wanted("all", "Everything for the class", List.of(PrintOut.SHOPPING, PrintOut.CUTTING, PrintOut.PACKING, PrintOut.CHECKLIST,
            PrintOut.ASSESSMENT, PrintOut.EMERGENCY, PrintOut.PLAN, PrintOut.REGISTER, PrintOut.INCIDENT, PrintOut.HANDOUT, PrintOut.REVIEW, PrintOut.LABELS));

    public Wanted {
        printOuts = List.copyOf(printOuts);
    }

    static Wanted of(PrintOut what) {
        return new Wanted(what.slug(), what.title(), List.of(what));
    }

    static Optional<Wanted> of(String slug) {
        return slug.equals(ALL.slug) ? Optional.of(ALL) : PrintOut.of(slug).map(Wanted::of);
    }

    boolean isAll() {
        return printOuts.size() > 1;
    }

    boolean holds(PrintOut what) {
        return printOuts.contains(what);
    }

    boolean needsLesson() {
        return printOuts.stream().anyMatch(PrintOut::needsLesson);
    }

    /** Works out beforehand what they are going to ask for. */
    void prepare(PlanParts plan) {
        printOuts.forEach(what -> what.prepare(plan));
    }
}
