package benchful.plans.pages;

import benchful.plans.whatif.WhatIf;
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
    public Trial {
        changes = List.copyOf(changes);
    }
}
