package benchful.core.lesson.risk;

import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;

/**
 * Teaches a plan many times over with drawn students. Between gatherings (show and together steps) each student goes through the
 * make steps in the plan's order at their own pace, as soon as their piece is ready, the tools are free and the meeting has begun;
 * a gathering begins when as many as must have finished, and cuts off the rest. Waits that hold equipment take all pieces at once.
 * Steps may begin sooner than planned, save those that the plan holds back for a greatest gap. A class that runs late may miss a
 * greatest gap, as nothing in the room would stop it.
 * Cost about 100 ns per student, step and class.
 */
public final class ClassSimulation {

    private static final double STUDENT_STEPS = 4_000_000;
    private static final double MOST_STUDENT_STEPS = 10_000_000;
    private static final long FEW_ENOUGH = 1_000;
    private static final int EACH_SO_OFTEN = 64;

    private ClassSimulation() {
    }

    /** How many are played of a request. */
    public static int classes(LessonRequest request, int blocks) {
        double each = Calls.cost(request, blocks);
        double affordable = Math.min(MOST_STUDENT_STEPS / each, Math.max(FEW_ENOUGH, STUDENT_STEPS / each));
        return (int) Math.max(1, Math.min(request.replications(), affordable));
    }

    public static Risk of(LessonRequest request, LessonPlan plan) {
        return of(request, plan, () -> { });
    }

    /**
     * Plays as many classes as the request asks for; no more than a thousand if students x steps x classes would pass 4 million, and
     * fewer if it would pass 10 million ({@link Calls#cost}).
     *
     * @param stillWanted run now and then; it throws where the work is to be given up
     */
    public static Risk of(LessonRequest request, LessonPlan plan, Runnable stillWanted) {
        Script script = new ScriptWriter(request, plan).script();
        int classes = classes(request, plan.blocks().size());
        Replication replication = new Replication(script);
        Tally tally = new Tally(script, classes);
        for (int number = 0; number < classes; number++) {
            if (number % EACH_SO_OFTEN == 0) {
                stillWanted.run();
            }
            replication.play(request.seed(), number);
            tally.add(number, replication);
        }
        return tally.risk();
    }
}
