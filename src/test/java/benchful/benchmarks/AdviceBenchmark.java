package benchful.benchmarks;

import benchful.core.Progress;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.advice.Advice;
import benchful.core.lesson.advice.Advisor;
import benchful.core.lesson.advice.Costs;
import benchful.core.lesson.order.solver.SolverPlanner;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;

/** Processor time of the advice for classes of many students or steps, once warm. Prints seconds, and how many changes were offered. */
public final class AdviceBenchmark {

    private AdviceBenchmark() {
    }

    public static void main(String[] arguments) {
        PrintStream out = System.out;
        advise(LessonBenchmark.lesson(12, 25));
        for (int[] of : new int[][] {{12, 25}, {30, 25}, {60, 25}, {200, 25}, {12, 60}, {12, 120}, {12, 150}, {60, 60}}) {
            LessonRequest request = LessonBenchmark.lesson(of[0], of[1]);
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            long before = threads.getCurrentThreadCpuTime();
            Advice advice = advise(request);
            out.printf("%d students, %d steps: %.2f s, %d changes offered%n", of[0], of[1], (threads.getCurrentThreadCpuTime() - before) / 1e9,
                    advice.suggestions().size());
        }
    }

    private static Advice advise(LessonRequest request) {
        return new Advisor(new SolverPlanner(), Costs.UNKNOWN).advise(request, List.of(), Progress.NONE).orElseThrow();
    }
}
