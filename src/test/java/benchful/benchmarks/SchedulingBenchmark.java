package benchful.benchmarks;

import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.plans.PublishedInstance;
import benchful.plans.PublishedOptima;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Plans the published scheduling instances in the folder {@code -Dbenchful.published}, 20 s each, and prints for each set how many
 * were settled (proven shortest, or refused with proof) and the median, 95th percentile and longest time. Each solve is one shot,
 * as it takes from milliseconds to seconds, so it is timed by hand.
 */
public final class SchedulingBenchmark {

    private static final PrintStream OUT = System.out;

    private SchedulingBenchmark() {
    }

    public static void main(String[] arguments) throws IOException {
        if (PublishedOptima.folder().isEmpty()) {
            OUT.println(PublishedOptima.SKIPPED);
            return;
        }
        SolverPlanner.warmUp();
        for (String set : List.of("j30", "max-j10", "max-ubo10", "max-ubo20", "j60")) {
            measure(PublishedOptima.folder().get(), set);
        }
    }

    private static void measure(Path scheduling, String set) throws IOException {
        List<Double> times = new ArrayList<>();
        int settled = 0;
        for (PublishedOptima.Known known : PublishedOptima.of(scheduling, set)) {
            LessonRequest request = PublishedInstance.read(known.file()).timeLimit(Duration.ofSeconds(20)).build();
            long begun = System.nanoTime();
            LessonOutcome outcome = new SolverPlanner().plan(request);
            times.add((System.nanoTime() - begun) / 1e6);
            settled += isSettled(outcome) ? 1 : 0;
            OUT.printf("  %s: %s, published %s, %.0f ms%n", known.file().getFileName(), words(outcome), known.optimum(),
                    times.get(times.size() - 1));
        }
        Collections.sort(times);
        OUT.printf("%s: %d of %d settled; median %.0f ms, 95th percentile %.0f ms, longest %.0f ms%n", set, settled, times.size(),
                times.get(times.size() / 2), times.get((int) Math.ceil(times.size() * 0.95) - 1), times.get(times.size() - 1));
    }

    private static boolean isSettled(LessonOutcome outcome) {
        return outcome instanceof Planned planned ? planned.plan().proof().isShortest() : ((Contradiction) outcome).proven();
    }

    private static String words(LessonOutcome outcome) {
        if (outcome instanceof Planned planned) {
            long finish = planned.plan().length().toMinutes();
            return "finish " + finish + ", bound " + (finish - planned.plan().proof().gap().toMinutes());
        }
        return "refused";
    }
}
