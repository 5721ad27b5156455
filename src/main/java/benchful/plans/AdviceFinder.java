package benchful.plans;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.quantity.Sentence;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.projects.Tool;
import benchful.venues.VenueSpec;
import benchful.web.Formats;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What the tutor should know of a class before she prints: seats, ages, supervision, level, tools that everybody needs. */
public final class AdviceFinder {
    private final ProjectSpec project;
    private final ClassSetup setup;
    private final VenueSpec venue;
    private final Map<String, Integer> room;
    private final List<Advice> found = new ArrayList<>();

    private AdviceFinder(ClassFile file) {
        this.project = file.project();
        this.setup = file.setup();
        this.venue = file.venue();
        this.room = file.tools();
    }

    public static List<Advice> of(ClassFile file) {
        AdviceFinder finder = new AdviceFinder(file);
        finder.seats();
        finder.age();
        finder.supervision();
        finder.level();
        finder.personalTools();
        finder.uncountedTools();
        finder.breaks();
        return List.copyOf(finder.found);
    }

    private void seats() {
        if (venue == null) {
            say("Venue", "No venue is chosen. Choose one so that its seats and tools are checked.");
        } else if (venue.seats() != null && setup.headcount() > venue.seats()) {
            say("Seats", "%s seats %d; %d students are coming. Take fewer, add a table, or choose another room."
                    .formatted(venue.name(), venue.seats(), setup.headcount()));
        }
    }

    private void age() {
        if (project.minimumAge() != null && setup.youngest() != null && setup.youngest() < project.minimumAge()) {
            say("Age", "“%s” is for %d years and older; the youngest is %d. Choose another project or change the group."
                    .formatted(project.name(), project.minimumAge(), setup.youngest()));
        }
    }

    /** NSPCC Learning, recommended adult to child ratios, 2023: 4-8 years 1 to 6, 9-12 1 to 8, 13-18 1 to 10, never under two. */
    private void supervision() {
        if (!setup.hasChildren()) {
            return;
        }
        int adults = adults(setup.headcount(), setup.youngest());
        if (1 + setup.helpers() < adults) {
            say("Supervision", "With children of %d a group of %d should have %d adults (NSPCC, 2023: never fewer than two). You and your helpers are %d."
                    .formatted(setup.youngest(), setup.headcount(), adults, 1 + setup.helpers()));
        }
    }

    static int adults(int children, int youngest) {
        int each = youngest <= 8 ? 6 : youngest <= 12 ? 8 : 10;
        return Math.max(2, (children + each - 1) / each);
    }

    private void level() {
        if (setup.level().compareTo(project.level()) < 0) {
            say("Level", "“%s” is written for an %s group; yours are %ss. Allow more time or choose a smaller size."
                    .formatted(project.name(), project.level().word(), setup.level().word()));
        }
    }

    private void personalTools() {
        for (Tool tool : project.tools()) {
            Integer there = room.get(tool.name());
            if (tool.personal() && there == null) {
                say("Tools", "Each student must have their own %s, and nobody wrote down how many there are: bring %d, or write the number in the class or in the project."
                        .formatted(tool.name(), setup.headcount()));
            } else if (tool.personal() && there < setup.headcount()) {
                say("Tools", "Each student must have their own %s: bring %d more (%d of %d are there)."
                        .formatted(tool.name(), setup.headcount() - there, there, setup.headcount()));
            }
        }
    }

    /** Those that everybody must have are asked for by themselves. */
    private void uncountedTools() {
        List<String> personal = project.tools().stream().filter(Tool::personal).map(Tool::name).toList();
        List<String> enough = project.steps().stream().flatMap(s -> s.tools().stream()).map(Step.ToolUse::tool).distinct()
                .filter(t -> !room.containsKey(t) && !personal.contains(t)).toList();
        if (!enough.isEmpty()) {
            say("Tools", "Nobody wrote down how many there are of %s: enough for all are taken to be there. If one is scarce, write its number in the class or in the project."
                    .formatted(String.join(", ", enough)));
        }
    }

    private void breaks() {
        setup.breaks().stream().filter(b -> setup.meetings().stream().noneMatch(m -> setup.breaksOf(m).contains(b)))
                .filter(b -> !LessonRequestWriter.isTooLong(b, setup)).forEach(b ->
                found.add(new Advice("Break", Sentence.of("The break at %s for %s does not fit into the hours and is left out. Move or shorten it if the class should have one.",
                        b.at(), Formats.words(b.lasts())))));
    }

    private void say(String about, String sentence) {
        found.add(new Advice(about, sentence));
    }
}
