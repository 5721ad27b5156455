package benchful.assessments;

import benchful.classes.ClassFile;
import benchful.hazards.HazardSpec;
import benchful.plans.HazardIndex;
import java.util.List;

/** Drafts an assessment from the hazards that the class really uses; every number and control is for the tutor to change. */
final class AssessmentDraft {
    private static final int USUAL = 3;
    private static final int GROWN_UP = 18;

    private final ClassFile file;

    AssessmentDraft(ClassFile file) {
        this.file = file;
    }

    /** @param hazards the library's entries of those in use */
    AssessmentSpec of(List<HazardSpec> hazards) {
        HazardIndex uses = HazardIndex.of(file);
        return new AssessmentSpec(hazards.stream().map(h -> row(h, uses)).toList(), null, null, null, null, null, null);
    }

    private AssessmentSpec.Row row(HazardSpec h, HazardIndex uses) {
        int severity = h.severity() == null ? USUAL : h.severity();
        int likelihood = h.likelihood() == null ? USUAL : h.likelihood();
        return new AssessmentSpec.Row(h.id(), h.name(), String.join("; ", uses.of(h.id())), who(h), severity,
                Math.min(5, likelihood + 1), controls(h), severity, likelihood);
    }

    private String who(HazardSpec h) {
        boolean children = file.setup().youngest() != null && file.setup().youngest() < GROWN_UP;
        String people = children ? "Children of the class, students, tutor and helpers" : "Students, tutor and helpers";
        return h.harm() == null ? people + "." : people + ". " + h.harm();
    }

    private static String controls(HazardSpec h) {
        StringBuilder controls = new StringBuilder();
        h.cautions().forEach(c -> controls.append("- ").append(c).append('\n'));
        if (!h.protectiveGear().isEmpty()) {
            controls.append("- Protection: ").append(String.join(", ", h.protectiveGear())).append(".\n");
        }
        return controls.toString().strip();
    }
}
