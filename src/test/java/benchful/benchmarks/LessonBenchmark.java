package benchful.benchmarks;

import benchful.core.Progress;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.advice.Advice;
import benchful.core.lesson.advice.Advisor;
import benchful.core.lesson.advice.Costs;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.core.lesson.risk.ClassSimulation;
import benchful.core.lesson.risk.Risk;
import java.io.PrintStream;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * A class of 12 students with 25 steps, shared tools, help, waits and a break: time to plan it by list and by solver, to simulate
 * 10,000 classes, and to advise on it. Prints simulated classes per second. One thread, in this process.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LessonBenchmark {

    private static final int CLASSES = 10_000;

    private LessonRequest request;
    private LessonPlan plan;

    /** Invented: four rounds of a demonstration, three make steps and a wait that the next make step follows. */
    @Setup
    public void writeTheLesson() {
        request = lesson(12, 25).toBuilder().replications(CLASSES).build();
        plan = ((Planned) new SolverPlanner().plan(request)).plan();
    }

    /** Half as many saws as students, and pliers for two in three. */
    static LessonRequest lesson(int students, int steps) {
        LocalDateTime ten = LocalDateTime.of(2025, 3, 8, 10, 0);
        LessonRequest.Builder lesson = LessonRequest.builder().headcount(students).tool("saw", students / 2).tool("pliers", students * 2 / 3)
                .meeting(ten, ten.plusHours(5)).pause("lunch", ten.plusMinutes(120), ten.plusMinutes(150));
        for (int i = 0; i < steps; i++) {
            lesson.step(step(i));
            if (i > 0) {
                lesson.link("s" + (i - (i % 6 == 5 ? 3 : 1)), "s" + i);
            }
        }
        return lesson.build();
    }

    private static Step step(int i) {
        String id = "s" + i;
        List<ToolUse> tools = i % 6 == 2 ? List.of(new ToolUse("saw", 1)) : i % 6 == 3 ? List.of(new ToolUse("pliers", 1)) : List.of();
        return switch (i % 6) {
            case 0 -> new Step.Show(id, "Show " + i, Duration.ofMinutes(5));
            case 4 -> new Step.Wait(id, "Dry " + i, Duration.ofMinutes(15), Optional.empty(), List.of(), false);
            default -> new Step.Make(id, "Make " + i, StudentTime.ofMinutes(4, 6, 12), tools, new Help(2, 1.5), 1, true);
        };
    }

    @Benchmark
    public LessonOutcome planByList() {
        return new ListPlanner().plan(request);
    }

    @Benchmark
    public LessonOutcome planBySolver() {
        return new SolverPlanner().plan(request);
    }

    @Benchmark
    public Risk simulate() {
        return ClassSimulation.of(request, plan);
    }

    @Benchmark
    public Optional<Advice> advise() {
        return new Advisor(new SolverPlanner(), Costs.UNKNOWN).advise(request, List.of(), Progress.NONE);
    }

    public static void main(String[] arguments) throws RunnerException {
        PrintStream out = System.out;
        for (RunResult result : new Runner(new OptionsBuilder().include(LessonBenchmark.class.getSimpleName()).forks(0)
                .warmupIterations(3).warmupTime(TimeValue.seconds(3)).measurementIterations(5).measurementTime(TimeValue.seconds(3))
                .build()).run()) {
            double milliseconds = result.getPrimaryResult().getScore();
            out.printf("%s: %.1f ms%n", result.getPrimaryResult().getLabel(), milliseconds);
            if (result.getPrimaryResult().getLabel().equals("simulate")) {
                out.printf("simulated classes per second: %.0f%n", CLASSES / milliseconds * 1000);
            }
        }
    }
}
