package benchful.plans;

import benchful.catalogue.HazardNames;
import benchful.classes.ClassFile;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.hazards.HazardSpec;
import benchful.projects.Step;
import benchful.venues.VenueSpec.Ventilation;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What about safety should be settled before anything is printed: ages, air, and what is not cured when it goes home. */
public final class SafetyAdvice {

    private final ClassFile file;
    private final List<Advice> found = new ArrayList<>();

    private SafetyAdvice(ClassFile file) {
        this.file = file;
    }

    /**
     * @param lesson  as planned; null where it can't be
     * @param hazards the library's entries of those in use
     */
    public static List<Advice> of(ClassFile file, LessonPlan lesson, List<HazardSpec> hazards) {
        SafetyAdvice advice = new SafetyAdvice(file);
        if (HazardIndex.of(file).ids().isEmpty()) {
            advice.say("Neither the project nor its tools and materials name a hazard, so no cautions are printed and the risk assessment is empty. Choose those it meets.");
        }
        hazards.forEach(advice::age);
        hazards.forEach(advice::air);
        file.project().steps().stream().filter(step -> step.atHome() && (lesson == null || endsAtHome(lesson, step))).forEach(advice::uncured);
        return List.copyOf(advice.found);
    }

    /** What is said of hazards that the library does not know: nothing else would tell that their cautions are missing. */
    public static List<Advice> unknown(HazardIndex uses, Set<String> known) {
        return uses.ids().stream().filter(id -> !known.contains(id)).map(id -> new Advice(Advice.SAFETY, "%s It stands with %s, and until then no caution is printed for it."
                .formatted(HazardNames.unknown(id, known), String.join(", ", uses.of(id))))).toList();
    }

    private static boolean endsAtHome(LessonPlan lesson, Step step) {
        return lesson.blocks().stream().anyMatch(block -> block.step().equals(step.id()) && block.lane() == Lane.HOME);
    }

    private void age(HazardSpec h) {
        Integer youngest = file.setup().youngest();
        if (youngest != null && h.minimumAge() != null && youngest < h.minimumAge()) {
            say("%s: usually not under %d years even when closely supervised; the youngest is %d.".formatted(h.name(), h.minimumAge(), youngest));
        }
    }

    private void air(HazardSpec h) {
        if (h.ventilation() == null) {
            return;
        }
        Ventilation room = file.venue() == null ? null : file.venue().ventilation();
        if (room == null) {
            unknown(h);
        } else if (room.compareTo(h.ventilation()) < 0) {
            say("%s needs %s, and %s has %s. Change the room, or leave out the step.".formatted(h.name(), words(h.ventilation()), file.venue().name(), words(room)));
        }
    }

    private void unknown(HazardSpec h) {
        if (h.ventilation() == Ventilation.EXTRACTOR) {
            say(file.venue() == null ? "%s needs an extractor, and no room is chosen yet. Choose one that has it.".formatted(h.name())
                    : "%s needs an extractor, and nothing is said of the air in %s. Ask the venue.".formatted(h.name(), file.venue().name()));
        }
    }

    private void uncured(Step step) {
        say("“%s” ends at home: tell students what still cures, how to carry it and until when. The handout says so.".formatted(step.title()));
    }

    private static String words(Ventilation v) {
        return switch (v) {
            case NONE -> "no ventilation";
            case WINDOWS -> "windows that open";
            case EXTRACTOR -> "an extractor";
        };
    }

    private void say(String sentence) {
        found.add(new Advice(Advice.SAFETY, sentence));
    }
}
