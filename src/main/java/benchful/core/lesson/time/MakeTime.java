package benchful.core.lesson.time;

import static java.util.Objects.requireNonNull;

import benchful.core.lesson.Reason;
import benchful.core.lesson.Reason.Subject;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One make step done by a class: how long until as many as must have finished, with the tools and the help there are.
 * Where help is scarce and tools are too, fewer students at once may all be done sooner. The tutor is taken to let as many work at
 * once as is quickest, though no quicker than with tools for all; so one more tool never adds time.
 */
final class MakeTime {

    private final Step.Make make;
    private final double[] scales;
    private final int students;
    private final int most;
    private final int groups;
    private final int people;
    private final Pace pace;
    private final int done;
    private final double own;
    private final double[] apart;
    private final @Nullable Helping helping;

    /**
     * @param scales what the times are multiplied by for each of the students who do it together
     * @param most   students who can work at once with the tools in the room, 1 or more
     * @param groups groups who work side by side and ask the same people
     */
    MakeTime(Step.Make make, double[] scales, int most, int groups, int people) {
        this.make = make;
        this.scales = scales;
        this.students = scales.length;
        this.most = most;
        this.groups = groups;
        this.people = people;
        this.pace = Pace.of(make.time());
        this.done = make.mustFinish(students);
        this.own = pace.expectedOrderStatistic(done, scales);
        boolean plain = make.help().isNone() && most == students;
        this.apart = plain ? new double[0] : Turns.ends(pace, scales, students);
        this.helping = make.help().isNone() ? null : Helping.of(make.help(), students, groups, people);
    }

    /** So many at once: when each student finishes without waiting for help, and when the class moves on [s]. */
    private record Wave(int atOnce, double[] ends, double until) {
    }

    StepTime planned(Map<String, Integer> room) {
        List<Reason> reasons = new ArrayList<>();
        reasons.add(ownReason());
        if (apart.length == 0) {
            return new StepTime(planned(own), students, 1, 0, reasons);
        }
        Wave wave = quickest();
        double turns = wave.ends()[done - 1] - apart[done - 1];
        if (wave.atOnce() < students) {
            reasons.add(turnsReason(room, wave.atOnce(), turns));
        }
        double share = 0;
        if (helping != null) {
            reasons.add(helpReason(wave.atOnce(), wave.until() - wave.ends()[done - 1]));
            share = helping.busy(wave.ends(), done, wave.atOnce());
        }
        return new StepTime(planned(own + wave.until() - apart[done - 1]), wave.atOnce(), turns(wave.atOnce()), share, reasons);
    }

    private int turns(int atOnce) {
        return (students + atOnce - 1) / atOnce;
    }

    /** Fewer at once are tried as long as they would be quicker if nobody waited for help. */
    private Wave quickest() {
        Wave all = wave(most);
        if (helping == null || most == students) {
            return all;
        }
        Wave best = all;
        Wave next = all;
        while (next.atOnce() > 1 && next.ends()[done - 1] < best.until()) {
            next = wave(next.atOnce() - 1);
            best = next.until() < best.until() ? next : best;
        }
        return new Wave(best.atOnce(), best.ends(), Math.max(best.until(), helping.until(apart, done, students)));
    }

    private Wave wave(int atOnce) {
        double[] ends = atOnce == students ? apart : Turns.ends(pace, scales, atOnce);
        return new Wave(atOnce, ends, helping == null ? ends[done - 1] : helping.until(ends, done, atOnce));
    }

    private static Duration planned(double seconds) {
        return Duration.ofSeconds((long) Math.ceil(seconds - 1e-6));
    }

    private Reason ownReason() {
        StudentTime time = make.time();
        String who = students == 1 ? "one student is expected to be done"
                : done == students ? "the last of " + students + " is expected"
                : "number " + done + " of " + students + " is expected";
        return new Reason(Subject.LENGTH, "One student needs " + times() + inMinutes(time.quick()) + " to " + inMinutes(time.slow())
                + " min, usually " + inMinutes(time.usual()) + level() + "; " + who + " after " + plain(own / 60) + " min.");
    }

    /** "12 times", or from the smallest piece to the largest "8 to 20 times". */
    private String times() {
        IntSummaryStatistics repeats = make.time().work().stream().mapToInt(StudentTime.Work::repeats).summaryStatistics();
        return repeats.getMax() == 1 ? "" : repeats.getMin() == repeats.getMax() ? repeats.getMax() + " times "
                : repeats.getMin() + " to " + repeats.getMax() + " times ";
    }

    private String level() {
        DoubleSummaryStatistics factors = make.time().work().stream().mapToDouble(StudentTime.Work::skillFactor).summaryStatistics();
        return factors.getMin() < factors.getMax() ? ", times " + plain(factors.getMin()) + " to " + plain(factors.getMax()) + " for the levels"
                : factors.getMax() == 1 ? "" : ", times " + plain(factors.getMax()) + " for the level";
    }

    private static int atOnce(Map<String, Integer> room, ToolUse use) {
        return use.atOnce(requireNonNull(room.get(use.tool())));
    }

    private Reason turnsReason(Map<String, Integer> room, int atOnce, double turns) {
        ToolUse scarce = make.uses().stream().min((a, b) -> Integer.compare(atOnce(room, a), atOnce(room, b)))
                .orElseThrow();
        return new Reason(Subject.TURNS, room.get(scarce.tool()) + " × " + scarce.tool() + " for " + students + " students: "
                + turns(atOnce) + " turns of up to " + atOnce + " add " + plain(turns / 60) + " min.");
    }

    private Reason helpReason(int atOnce, double added) {
        int all = atOnce * groups;
        return new Reason(Subject.HELP, all + (all == 1 ? " student asks " : " students ask ")
                + plain(make.help().callsPerStudentHour()) + " times an hour each for " + plain(make.help().minutesPerCall())
                + " min; with " + people + (people == 1 ? " person" : " people") + " to help a call waits "
                + plain(requireNonNull(helping).delay(atOnce) / 60) + " min while all are at work, which adds " + plain(added / 60) + " min.");
    }

    private static String inMinutes(Duration length) {
        return plain(length.toSeconds() / 60.0);
    }

    private static String plain(double number) {
        String text = String.format(Locale.ROOT, "%.1f", number);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
