package benchful.core.lesson.time;

import benchful.core.lesson.Reason;
import benchful.core.lesson.Reason.Subject;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * From one student's times to the class's: the expected time until the chosen share of the students has finished, plus what
 * turns at shared tools add, stretched by waiting for help. The stretch is (1/c + w + h)/(1/c + h), with c the calls per
 * student and time of work between calls, h the length of a call and w the mean wait of a finite-source queue.
 */
public final class ClassTime {

    private final int people;
    private final int groups;
    private final Map<String, Integer> room;

    /**
     * @param room    tools in the room
     * @param helpers helpers beside the tutor
     * @param groups  groups of students who work side by side and share the help
     */
    public ClassTime(List<RoomTool> room, int helpers, int groups) {
        this.room = room.stream().collect(Collectors.toMap(RoomTool::name, RoomTool::count, Integer::sum));
        this.people = 1 + helpers;
        this.groups = groups;
    }

    /** How many of the students can work at once with the tools in the room; 0 if a tool does not suffice for one. */
    public int atOnce(Step.Make make, int students) {
        int atOnce = students;
        for (ToolUse use : make.uses()) {
            atOnce = Math.min(atOnce, room.getOrDefault(use.tool(), 0) / use.units());
        }
        return atOnce;
    }

    /** The time planned for a make step done by so many students together; the room must hold the tools for one of them. */
    public StepTime of(Step.Make make, int students) {
        Pace pace = Pace.of(make.time());
        int done = (int) Math.max(1, Math.ceil(make.finishShare() * students - 1e-9));
        int atOnce = atOnce(make, students);
        if (atOnce == 0) {
            throw new IllegalArgumentException("The room lacks a tool for \"" + make.title() + "\"");
        }
        List<Reason> reasons = new ArrayList<>();
        double own = pace.expectedOrderStatistic(done, students);
        reasons.add(ownReason(make.time(), done, students, own));
        double turns = Turns.addition(pace, done, students, atOnce);
        if (atOnce < students) {
            reasons.add(turnsReason(make, students, atOnce, turns));
        }
        return withHelp(make, own + turns, atOnce, (students + atOnce - 1) / atOnce, reasons);
    }

    private StepTime withHelp(Step.Make make, double work, int atOnce, int turns,
            List<Reason> reasons) {
        if (make.help().isNone()) {
            return new StepTime(planned(work), atOnce, turns, 0, reasons);
        }
        double calls = make.help().callsPerStudentHour() / 3600;
        double answer = make.help().minutesPerCall() * 60;
        int asking = atOnce * groups;
        HelpQueue queue = HelpQueue.of(asking, calls, 1 / answer, people);
        double stretch = (1 / calls + queue.delay() + answer) / (1 / calls + answer);
        reasons.add(helpReason(make, asking, queue.delay(), work * (stretch - 1)));
        return new StepTime(planned(work * stretch), atOnce, turns, queue.busy() / groups, reasons);
    }

    private static Duration planned(double seconds) {
        return Duration.ofMinutes((long) Math.ceil(seconds / 60 - 1e-6));
    }

    private static Reason ownReason(StudentTime time, int done, int students, double own) {
        String one = time.repeats() == 1 ? "One student needs " : "One student needs " + time.repeats() + " times ";
        String who = students == 1 ? "one student is expected to be done"
                : done == students ? "the last of " + students + " is expected"
                : "number " + done + " of " + students + " is expected";
        return new Reason(Subject.LENGTH, one + inMinutes(time.quick()) + " to " + inMinutes(time.slow()) + " min, usually "
                + inMinutes(time.usual()) + (time.skillFactor() == 1 ? "" : ", times " + plain(time.skillFactor()) + " for the level")
                + "; " + who + " after " + plain(own / 60) + " min.");
    }

    private Reason turnsReason(Step.Make make, int students, int atOnce, double turns) {
        ToolUse scarce = make.uses().stream().min((a, b) -> Integer.compare(share(a), share(b))).orElseThrow();
        return new Reason(Subject.TURNS, room.get(scarce.tool()) + " × " + scarce.tool() + " for " + students + " students: "
                + (students + atOnce - 1) / atOnce + " turns of up to " + atOnce + " add " + plain(turns / 60) + " min.");
    }

    private int share(ToolUse use) {
        return room.get(use.tool()) / use.units();
    }

    private Reason helpReason(Step.Make make, int asking, double delay, double added) {
        return new Reason(Subject.HELP, asking + (asking == 1 ? " student asks " : " students ask ")
                + plain(make.help().callsPerStudentHour()) + " times an hour each for " + plain(make.help().minutesPerCall())
                + " min; with " + people + (people == 1 ? " person" : " people") + " to help a call waits "
                + plain(delay / 60) + " min, which adds " + plain(added / 60) + " min.");
    }

    private static String inMinutes(Duration length) {
        return plain(length.toSeconds() / 60.0);
    }

    private static String plain(double number) {
        String text = String.format(Locale.ROOT, "%.1f", number);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
