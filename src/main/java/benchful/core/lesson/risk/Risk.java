package benchful.core.lesson.risk;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;

/**
 * What the simulated classes came to. "Likely" is the time that half of them kept to, "late" the time that nine in ten kept to, and
 * "promised" the time that the share of them kept to which the request asks for.
 *
 * @param classes    how many classes were simulated
 * @param promise    share of the classes that is promised [0 to 1]
 * @param onTime     share of them that finished by the booked end [0 to 1]
 * @param likely     finish that half of them kept to
 * @param late       finish that nine in ten of them kept to
 * @param promised   finish that the promised share of them kept to
 * @param finishes   finish at each twentieth of the classes, from 0 to 20 twentieths
 * @param blocks     what became of each block of the plan, in its order
 * @param ageing     pieces that may grow too old between two steps, where that happens at all
 * @param waiting    what students waited for, the longest first
 * @param extensions where quick students need something more to do
 */
public record Risk(int classes, double promise, double onTime, LocalDateTime likely, LocalDateTime late, LocalDateTime promised,
        List<LocalDateTime> finishes, List<BlockRisk> blocks, List<Ageing> ageing, List<Waiting> waiting, List<SpareTime> extensions) {

    /**
     * One block of the plan.
     *
     * @param step        id of the step
     * @param group       0 for the whole class, else the group from 1
     * @param likelyStart begin in the middle one of the simulated classes
     * @param likelyEnd   when the class moved on in half of them
     * @param lateEnd     when it had moved on in nine in ten
     * @param promisedStart when it had begun in the promised share of them
     * @param promisedEnd when the class had moved on in the promised share of them
     * @param unfinished  mean share of students who had not finished when the class moved on [0 to 1]
     */
    public record BlockRisk(String step, int group, LocalDateTime likelyStart, LocalDateTime likelyEnd, LocalDateTime lateEnd,
            LocalDateTime promisedStart, LocalDateTime promisedEnd, double unfinished) {
    }

    /**
     * A greatest wait that some pieces miss: glue that has dried, resin that sets in the cup.
     *
     * @param from     title of the step after which a piece ages
     * @param to       title of the step that is to begin in time
     * @param greatest how old a piece may be then
     * @param classes  share of the simulated classes in which at least one piece is older [0 to 1]
     * @param students mean share of the students whose piece is older [0 to 1]
     * @param oldest   age of a class's oldest piece, exceeded in one class of ten
     */
    public record Ageing(String from, String to, Duration greatest, double classes, double students, Duration oldest, String sentence) {
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
        ageing = List.copyOf(ageing);
        waiting = List.copyOf(waiting);
        extensions = List.copyOf(extensions);
    }
}
