package benchful.core.lesson.risk;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;

/**
 * What the simulated classes came to. "Likely" is the time that half of them kept to, "late" the time that nine in ten kept to.
 *
 * @param classes    how many classes were simulated
 * @param onTime     share of them that finished by the booked end [0 to 1]
 * @param likely     finish that half of them kept to
 * @param late       finish that nine in ten of them kept to
 * @param finishes   finish at each twentieth of the classes, from 0 to 20 twentieths
 * @param blocks     what became of each block of the plan, in its order
 * @param waiting    what students waited for, the longest first
 * @param extensions where quick students need something more to do
 */
public record Risk(int classes, double onTime, LocalDateTime likely, LocalDateTime late, List<LocalDateTime> finishes,
        List<BlockRisk> blocks, List<Waiting> waiting, List<SpareTime> extensions) {

    /**
     * One block of the plan.
     *
     * @param step        id of the step
     * @param group       0 for the whole class, else the group from 1
     * @param likelyStart begin in the middle one of the simulated classes
     * @param likelyEnd   when the class moved on in half of them
     * @param lateEnd     when it had moved on in nine in ten
     * @param unfinished  mean share of students who had not finished when the class moved on [0 to 1]
     */
    public record BlockRisk(String step, int group, LocalDateTime likelyStart, LocalDateTime likelyEnd, LocalDateTime lateEnd,
            double unfinished) {
    }

    /** What a student may wait for. */
    public enum Cause {
        TOOL, HELP, DRYING, CLASS
    }

    /**
     * Time lost to one cause.
     *
     * @param what    the tool, the waiting step, or the step for which the class gathers; empty for help
     * @param mean    per student and class
     * @param longest of the student who waited longest, in nine classes in ten no more than this
     */
    public record Waiting(Cause cause, String what, Duration mean, Duration longest, String sentence) {
    }

    /**
     * A gathering before which the quickest quarter of the students has time to spare.
     *
     * @param before title of the step for which the class gathers
     * @param spare  mean time that the quickest quarter has to spare
     */
    public record SpareTime(String before, Duration spare, String sentence) {
    }

    public Risk {
        finishes = List.copyOf(finishes);
        blocks = List.copyOf(blocks);
        waiting = List.copyOf(waiting);
        extensions = List.copyOf(extensions);
    }

    /** The chance in words: "In 87 of 100 classes like this one the last student is done by the booked end." */
    public String sentence() {
        return String.format(Locale.ROOT, "%d of 100 classes like this one end by the booked end.", Math.round(onTime * 100));
    }
}
