package benchful.documents;

import benchful.plans.Advice;
import benchful.plans.PlanParts;
import benchful.plans.Timing;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.Requirements;
import java.util.List;

/** What pieces take, where nobody meets: there is no lesson, and what is printed asks for no purchases. */
record KitsAlone(Requirements needs) implements PlanParts {
    @Override
    public MaterialsPlan materials() {
        throw new IllegalStateException("Labels and handouts ask for no purchases.");
    }

    @Override
    public Timing timing() {
        return new Timing(null, null, List.of(), List.of());
    }

    @Override
    public List<Advice> advice() {
        return List.of();
    }
}
