package benchful.assessments;

import benchful.classes.CraftClass;
import benchful.core.Fault;
import benchful.web.forms.SpecPost;
import java.util.List;
import java.util.function.Supplier;

/**
 * The assessment of a class, stored or not yet, that takes a sheet from its form.
 *
 * @param assessment null while only a draft is shown
 */
record AssessmentTarget(CraftClass craftClass, Assessment assessment, Supplier<AssessmentSpec> draft) implements SpecPost.Target<AssessmentSpec> {

    @Override
    public long version() {
        return assessment == null ? 0 : assessment.version();
    }

    @Override
    public AssessmentSpec stored() {
        return assessment == null ? draft.get() : assessment.sheet();
    }

    @Override
    public List<Fault> faults(AssessmentSpec sheet) {
        return List.of();
    }

    @Override
    public String save(AssessmentSpec sheet) {
        Assessment saved = assessment == null ? Assessment.of(craftClass, sheet) : assessment;
        saved.replace(sheet);
        saved.persistAndFlush();
        return "/classes/" + craftClass.id() + "/assessment";
    }
}
