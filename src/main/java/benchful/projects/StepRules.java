package benchful.projects;

import benchful.core.lesson.StepKind;
import benchful.projects.pictures.Picture;
import benchful.web.Formats;
import benchful.web.forms.FaultCollector;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;

/** What each step must and must not have by its kind, and that the tools and pictures it names are there. */
final class StepRules {
    private static final Duration LONGEST_CALL = Duration.ofHours(24);
    private static final Duration LONGEST = Duration.ofDays(60);

    private final FaultCollector faults;
    private final Set<String> tools;
    private final Set<String> pictures;

    private StepRules(ProjectSpec project, FaultCollector faults) {
        this.faults = faults;
        this.tools = project.tools().stream().map(Tool::name).collect(Collectors.toSet());
        this.pictures = project.pictures().stream().map(Picture::name).collect(Collectors.toSet());
    }

    static void check(ProjectSpec project, FaultCollector faults) {
        StepRules rules = new StepRules(project, faults);
        for (int i = 0; i < project.steps().size(); i++) {
            rules.step("/steps/" + i, project.steps().get(i));
        }
    }

    private void step(String at, Step step) {
        if (step.kind().isOwnWork()) {
            made(at, step);
        } else {
            timed(at, step);
        }
        waits(at, step);
        grows(at, step);
        uses(at, step);
        for (int i = 0; i < step.pictures().size(); i++) {
            faults.require(pictures.contains(step.pictures().get(i)), at + "/pictures/" + i,
                    "There is no picture “%s” here. Add it to the pictures or choose another.", step.pictures().get(i));
        }
    }

    private void made(String at, Step step) {
        faults.require(step.lasts() == null, at + "/lasts", "A make step takes one student's times instead. Empty this field.");
        Step.StudentTime time = step.student();
        if (!faults.require(time != null, at + "/student/usual", "Give one student's quick, usual and slow times.")) {
            return;
        }
        sane(at + "/student/quick", time.quick());
        faults.require(time.quick().compareTo(time.usual()) <= 0, at + "/student/quick",
                "The quick time can't be longer than the usual one, %s.", Formats.words(time.usual()));
        faults.require(time.usual().compareTo(time.slow()) <= 0, at + "/student/slow",
                "The slow time can't be shorter than the usual one, %s.", Formats.words(time.usual()));
        limited(at + "/student/slow", time.slow());
        if (step.help() != null) {
            faults.require(step.help().lasts().compareTo(LONGEST_CALL) <= 0, at + "/help/lasts", "One call for help can't take longer than 24 h. Write it like 3 min.");
        }
    }

    private void timed(String at, Step step) {
        String kind = Formats.word(step.kind());
        if (step.kind() == StepKind.COLLECT) {
            faults.require(step.lasts() == null, at + "/lasts", "What is collected or posted takes no time of the class. Empty this field.");
        } else if (faults.require(step.lasts() != null, at + "/lasts", "Say how long it lasts, such as 10 min.")) {
            lasts(at + "/lasts", step);
        }
        faults.require(step.student() == null, at + "/student/usual", onlyMake("have students' times", kind));
        faults.require(step.repeats() == null, at + "/repeats", onlyMake("be repeated", kind));
        faults.require(step.share() == null, at + "/share", onlyMake("have a share of students", kind));
        faults.require(step.help() == null, at + "/help/calls", onlyMake("have calls for help", kind));
        faults.require(!step.beside(), at + "/beside", "Somebody stays beside students only while they make something.");
    }

    /** A wait may only mark a moment, such as that the kiln is hot. */
    private void lasts(String at, Step step) {
        if (step.kind().isUnattended()) {
            limited(at, step.lasts());
        } else {
            sane(at, step.lasts());
        }
    }

    private static String onlyMake(String what, String kind) {
        return "Only a make step can %s; this is a %s step. Empty this field.".formatted(what, kind);
    }

    private void waits(String at, Step step) {
        boolean wait = step.kind().isUnattended();
        faults.require(wait || !step.atHome(), at + "/at_home", "Only a wait can end at home.");
        if (step.atMost() != null
                && faults.require(wait, at + "/at_most", "Only a wait has a longest time. Empty this field.")
                && step.lasts() != null) {
            limited(at + "/at_most", step.atMost());
            faults.require(step.atMost().compareTo(step.lasts()) >= 0, at + "/at_most",
                    "The longest time can't be shorter than the wait itself, %s.", Formats.words(step.lasts()));
        }
    }

    /** With the number of students, or by itself. */
    private void grows(String at, Step step) {
        if (step.perStudent() != null && faults.require(step.kind().growsWithStudents(), at + "/per_student",
                "Only what all watch or do together, what is prepared, or what you do between meetings takes longer for each student. Empty this field.")) {
            limited(at + "/per_student", step.perStudent());
        }
        if (step.mayRunOver() != null && faults.require(step.kind().isGathering(), at + "/may_run_over",
                "Only what all watch or do together runs over. Empty this field; a make step has its slow time.")) {
            limited(at + "/may_run_over", step.mayRunOver());
        }
        faults.require(step.watchers() == null || step.kind() == StepKind.SHOW, at + "/watchers", "Only a demonstration is watched. Empty this field.");
        if (step.places() != null && faults.require(step.kind().isUnattended(), at + "/places", "Only a wait has loads. Empty this field.")) {
            faults.require(!step.tools().isEmpty(), at + "/places", "Name the equipment that is loaded, such as a kiln, among the tools of this step.");
        }
    }

    private void uses(String at, Step step) {
        Set<String> used = new HashSet<>();
        for (int i = 0; i < step.tools().size(); i++) {
            String tool = step.tools().get(i).tool();
            String place = at + "/tools/" + i + "/tool";
            faults.require(tools.contains(tool), place, "“%s” is not among the tools of this project. Add it there or choose another.", tool);
            faults.require(used.add(tool), place, "“%s” is there twice in this step. Give it once, with how many.", tool);
        }
    }

    private void sane(String at, Duration time) {
        faults.require(time.compareTo(Duration.ZERO) > 0, at, "This must be longer than 0 min.");
        limited(at, time);
    }

    private void limited(String at, Duration time) {
        faults.require(time.compareTo(LONGEST) <= 0, at, "This is longer than 60 days. Write it like 20 min, 1 h 30 min or 24 h.");
    }
}
