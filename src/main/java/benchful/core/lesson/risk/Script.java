package benchful.core.lesson.risk;

import benchful.core.lesson.LessonPlan;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a simulated class goes through, worked out once: the blocks of the plan as parts, and the stages in which they are played.
 * Times in seconds.
 *
 * @param promise  share of the classes whose times are promised
 * @param clock    closed times
 * @param parts    one for each block of the plan, in its order
 * @param stages   in the order of the plan
 * @param students each student's group, from 1
 * @param tools    how many there are of each tool that not all could use at once
 * @param helpers  people who help, the tutor included
 * @param together whether groups move on together from make step to make step
 * @param limits   how old pieces may grow
 * @param causes   all that can be waited for; a part's own cause is at its index, then the tools, then help
 */
record Script(LessonPlan plan, double promise, Clock clock, List<Part> parts, List<Stage> stages, int[] students, int[] tools, int helpers,
        boolean together, List<Limit> limits, List<CauseOf> causes) {

    /** Something to wait for. */
    record CauseOf(Risk.Cause cause, String what) {
    }

    /** What must be over, and for how long, before a part begins; {@code cause} is what a student then waits for, -1 for nothing. */
    record Need(int part, double delay, int cause) {
    }

    /**
     * One block as it is played.
     *
     * @param outside    whether it is done outside the meetings
     * @param counts     whether its end counts to the finish
     * @param release    not before this time (its meeting begins)
     * @param length     of a show (all showings), together or wait (one load); of a make step that may not pause the planned length, else 0
     * @param over       how much longer a show or together may last at the most, each time
     * @param showings   how often a show is given, one time after the other; 1 for all else
     * @param pace       of a make step, else null
     * @param scales     what the pace is multiplied by for each student's piece and level; empty for what is no make step
     * @param tied       whether each student goes on to it from the make step before as soon as the own piece is ready, since it ages
     * @param places     pieces in one load of a wait's equipment, 0 where all go in at once
     * @param loads      loads that run side by side
     * @param callRate   calls per second of work between calls, 0 for none
     * @param answer     mean length of a call
     * @param mustFinish students of the group that must finish before the class moves on
     * @param members    students in the group
     * @param units      of each tool that one student takes
     * @param scarcest   the tool of which a student takes the greatest share, -1 if the step takes none
     * @param beside     whether each student takes one of the people who help; false where there is one for everybody
     */
    record Part(int index, String step, String title, int group, boolean outside, boolean counts, double release, double length, double over, int showings, @Nullable PaceTable pace,
            double[] scales, boolean tied, int places, int loads, double callRate, double answer, int mustFinish, int members, int[] units, int scarcest, boolean beside, List<Need> needs, long key) {
    }

    /** A piece may not be older when a part begins than so long after it was through with another. */
    record Limit(int from, int to, double greatest) {
    }

    /** What is played as a whole before the next. */
    sealed interface Stage {
    }

    /**
     * Students work through these make steps, each at their own pace. What is shown to a group is among them: the group gathers for it
     * when as many as must have finished what comes before.
     *
     * @param lists parts of each group, in order; the group from 1 is the index less 1
     * @param cause what those wait for who come early to it, -1 if it follows a gathering
     */
    record Bench(int[][] lists, int[] parts, int cause) implements Stage {
    }

    /** All gather, and the tutor shows or all do it together. */
    record Gather(int part) implements Stage {
    }

    /** The class's pieces go into the kiln or on the rack, at once or load by load. */
    record Batch(int part) implements Stage {
    }

    /** Whether a student takes part. */
    boolean takesPart(int student, Part part) {
        return part.group() == 0 || students[student] == part.group();
    }

    int toolCause(int tool) {
        return parts.size() + tool;
    }

    int helpCause() {
        return parts.size() + tools.length;
    }
}
