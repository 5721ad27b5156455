package benchful.plans.pages;

import benchful.plans.whatif.WhatIf;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.web.forms.Difference;
import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * A change of a class that is being tried and stored nowhere, or one that was just kept.
 *
 * @param whatIf  what was tried; of a change that was kept, what takes it back
 * @param changes what was before, and what is tried or kept
 */
@TemplateData
public record Trial(WhatIf whatIf, List<Difference> changes) {
    private static final String STEPS = "/(prepared_ahead|homework|shown_to_groups|own_order)/\\d+|/own_times/\\d+/step";

    public Trial {
        changes = List.copyOf(changes);
    }

    /** With steps by their titles, as the tutor knows them. */
    static Trial of(WhatIf whatIf, List<Difference> changes, ProjectSpec project) {
        return new Trial(whatIf, changes.stream().map(change -> change.pointer().matches(STEPS) ? titled(change, project) : change).toList());
    }

    private static Difference titled(Difference change, ProjectSpec project) {
        return new Difference(change.pointer(), titled(change.theirs(), project), titled(change.mine(), project));
    }

    private static String titled(String step, ProjectSpec project) {
        return project.step(step).map(Step::title).orElse(step);
    }
}
