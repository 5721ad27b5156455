package benchful.plans;

import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.Requirements;
import java.util.List;
import java.util.function.Consumer;

/** The plan of a class, of which a page or a print-out may ask for a part only. */
public interface PlanParts {
    /** What each student takes, before stock and suppliers are asked. */
    Requirements needs();

    /** What is cut and bought as well. */
    MaterialsPlan materials();

    /** The lesson on the clock. */
    Timing timing();

    /** What to decide or bring before printing. */
    List<Advice> advice();

    /** A part by its name, so that it can be worked out before it is needed. */
    enum Part {
        NEEDS(PlanParts::needs),
        MATERIALS(PlanParts::materials),
        TIMING(PlanParts::timing),
        ADVICE(PlanParts::advice);

        private final Consumer<PlanParts> question;

        Part(Consumer<PlanParts> question) {
            this.question = question;
        }

        public void ask(PlanParts plan) {
            question.accept(plan);
        }
    }
}
