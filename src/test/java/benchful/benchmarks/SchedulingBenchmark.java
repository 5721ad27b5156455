package benchful.benchmarks;

import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.plans.PublishedInstance;
import benchful.plans.PublishedOptima;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Plans the published scheduling instances in the folder {@code -Dbenchful.published} and prints for each set how many
 * were settled (proven shortest, or refused with proof) in 20 s of a processor, the median, 95th percentile and longest of these times, and their
 * ratio to the bare solver's in the same run. Both stop after as much work as takes 20 s or a little more here. With the arguments {@code j30 j60} these sets are planned whole, all 480 of each, as long
 * as {@code whole-sets} lies beside them. Each solve is one shot, as it takes from milliseconds to seconds, so it is timed by hand.
 */
public final class SchedulingBenchmark {

    private static final PrintStream OUT = System.out;
    private static final OperatingSystemMXBean PROCESS = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    private static final double SECONDS = 20;
    /** In the solver's own count, which a busy machine does not change. */
    private static final double WORK = 10;
    private static final Duration LIMIT = Duration.ofSeconds(50);

    private SchedulingBenchmark() {
    }

    public static void main(String[] sets) throws IOException {
        if (PublishedOptima.folder().isEmpty()) {
            OUT.println(PublishedOptima.SKIPPED);
            return;
        }
        SolverPlanner.warmUp();
        Path folder = PublishedOptima.folder().get();
        Path whole = folder.resolveSibling("whole-sets");
        for (String set : sets) {
            new Measured(Files.isDirectory(whole.resolve(set)) ? whole : folder, set).print();
        }
        for (String set : sets.length > 0 ? List.<String>of() : List.of("j30", "max-j10", "max-ubo10", "max-ubo20", "j60")) {
            new Measured(folder, set).print();
        }
    }

    /** One set, planned. */
    private static final class Measured {
        private final String set;
        private final List<Double> times = new ArrayList<>();
        private final List<Double> ratios = new ArrayList<>();
        private int settled;
        private int best;
        private int bare;
        private double gap;

        Measured(Path scheduling, String set) throws IOException {
            this.set = set;
            for (PublishedOptima.Known known : PublishedOptima.of(scheduling, set)) {
                LessonRequest request = PublishedInstance.read(known.file()).timeLimit(LIMIT).build();
                Timed<LessonOutcome> planned = Timed.of(() -> new SolverPlanner().plan(request));
                Timed<Boolean> alone = Timed.of(() -> BareSolver.settles(PublishedInstance.of(known.file()), WORK));
                add(planned, alone, known);
            }
        }

        private void add(Timed<LessonOutcome> planned, Timed<Boolean> alone, PublishedOptima.Known known) {
            times.add(planned.seconds());
            settled += isSettled(planned.result()) && planned.seconds() <= SECONDS ? 1 : 0;
            bare += alone.result() && alone.seconds() <= SECONDS ? 1 : 0;
            best += planned.result() instanceof Planned p && p.plan().length().toMinutes() <= known.most() ? 1 : 0;
            gap = Math.max(gap, gap(planned.result()));
            if (alone.result() && alone.seconds() > 0.1) {
                ratios.add(planned.seconds() / alone.seconds());
            }
            OUT.printf("  %s: %s, published %s, %.0f ms; the bare solver %s %.0f ms%n", known.file().getFileName(), words(planned.result()), known.optimum(),
                    planned.seconds() * 1000, alone.result() ? "settled it in" : "gave up after", alone.seconds() * 1000);
        }

        void print() {
            OUT.printf("%s: %d of %d settled, %d by the bare solver; %d as short as the best published, widest gap %.1f %%; median %.0f ms, 95th percentile %.0f ms, longest %.0f ms of a processor%n",
                    set, settled, times.size(), bare, best, gap * 100, at(times, 0.5) * 1000, at(times, 0.95) * 1000, at(times, 1) * 1000);
            OUT.printf("  of %d that the bare solver settles in more than 0.1 s: median %.2f of its time%n", ratios.size(), at(ratios, 0.5));
        }

        private static double at(List<Double> values, double share) {
            return values.isEmpty() ? Double.NaN : values.stream().sorted().toList().get((int) Math.ceil(values.size() * share) - 1);
        }

        private static double gap(LessonOutcome outcome) {
            return outcome instanceof Planned planned ? (double) planned.plan().proof().gap().toMinutes() / planned.plan().length().toMinutes() : 0;
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

    /** @param seconds of processor time that the whole process took */
    private record Timed<T>(T result, double seconds) {
        static <T> Timed<T> of(Supplier<T> work) {
            long begun = PROCESS.getProcessCpuTime();
            T result = work.get();
            return new Timed<>(result, (PROCESS.getProcessCpuTime() - begun) / 1e9);
        }
    }
}
