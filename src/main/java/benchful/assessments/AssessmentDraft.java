package benchful.assessments;

import benchful.classes.ClassFile;
import benchful.hazards.HazardSpec;
import benchful.plans.HazardIndex;
import benchful.venues.VenueSpec.Ventilation;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Drafts an assessment from the hazards of the room, the group and the work; every number and control is for the tutor to change.
 *
 * <p>The library's grades are those with its controls. Without them a grade is higher where a control bears on it: harm is likelier by
 * one for the cautions and by one more for the air that a hazard needs, and graver by one for protective gear. What the room or the group
 * lacks leaves the likelihood as it was, and stands as further action. That is our own convention, no published one.
 */
final class AssessmentDraft {
    private static final int USUAL = 3;

    private final ClassFile file;

    AssessmentDraft(ClassFile file) {
        this.file = file;
    }

    /** @param hazards the library's entries of those in use */
    AssessmentSpec of(List<HazardSpec> hazards) {
        HazardIndex uses = HazardIndex.withRoom(file);
        return new AssessmentSpec(hazards.stream().map(h -> row(h, uses)).toList(), null, null, null, null, null, null, null);
    }

    private AssessmentSpec.Row row(HazardSpec h, HazardIndex uses) {
        int left = h.likelihood() == null ? USUAL : h.likelihood();
        int leftSeverity = h.severity() == null ? USUAL : h.severity();
        int severity = h.protectiveGear().isEmpty() ? leftSeverity : more(leftSeverity);
        int likelihood = h.ventilation() == null ? more(left) : more(more(left));
        String further = further(h);
        return new AssessmentSpec.Row(h.id(), h.name(), String.join("; ", uses.of(h.id())), who(h), severity, likelihood, controls(h), leftSeverity,
                further.isEmpty() ? left : likelihood, further.isEmpty() ? null : further, null, null, null);
    }

    private static int more(int grade) {
        return Math.min(Risk.GRADES, grade + 1);
    }

    /** What has to be settled before the class: air that the room lacks, students who are too young, a first-aid box that is not there. */
    private String further(HazardSpec h) {
        List<String> further = new ArrayList<>();
        Ventilation air = file.venue() == null ? null : file.venue().ventilation();
        if (h.ventilation() != null && (air == null || air.compareTo(h.ventilation()) < 0)) {
            further.add(h.ventilation() == Ventilation.EXTRACTOR ? "It needs an extractor: bring one, choose another room, or leave the step out."
                    : "It needs windows that open: ask the venue, choose another room, or leave the step out.");
        }
        Integer youngest = file.setup().youngest();
        if (h.minimumAge() != null && youngest != null && youngest < h.minimumAge()) {
            further.add("Usually not under %d years, and the youngest is %d: do this step for them, or change it.".formatted(h.minimumAge(), youngest));
        }
        if (h.id().equals("first-aid") && file.venue() != null && !Boolean.TRUE.equals(file.venue().firstAid())) {
            further.add("Bring a first-aid box: nobody wrote down that the room has one.");
        }
        return String.join(" ", further);
    }

    private String who(HazardSpec h) {
        String people = h.who() != null ? h.who() : "Students, tutor and helpers.";
        String first = file.setup().hasChildren() && !people.toLowerCase(Locale.ROOT).contains("child") ? "Children of the class; " + Formats.small(people) : people;
        return h.harm() == null ? first : first + " " + h.harm();
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
