package benchful.plans.pages;

import benchful.classes.ClassSetup;
import benchful.classes.SetupTarget;
import benchful.core.Fault;
import benchful.plans.whatif.WhatIf;
import benchful.web.forms.SpecPost;
import java.util.List;

/**
 * Where a change of some fields is kept: in the setup of its class, whose page then offers to take it back.
 *
 * @param undo what takes it back
 */
record KeptChange(SetupTarget target, WhatIf undo) implements SpecPost.Target<ClassSetup> {
    @Override
    public long version() {
        return target.version();
    }

    @Override
    public ClassSetup stored() {
        return target.stored();
    }

    @Override
    public List<Fault> faults(ClassSetup sheet) {
        return target.faults(sheet);
    }

    @Override
    public String save(ClassSetup sheet) {
        String page = target.save(sheet);
        return undo.fields().isEmpty() ? page : "%s?undo=%s&version=%d".formatted(page, undo.inAddress(), target.version());
    }
}
