package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.learning.StepPace.Seen;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.risk.ClassSimulation;
import benchful.core.lesson.risk.Risk;
import benchful.core.lesson.risk.StepLengths;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Simulated tutors whose typed minutes are off by up to a factor of two, whose classes are taught by the lesson engine with the true
 * minutes and other headcounts each time, and who take what is proposed. What is printed is what the program claims.
 */
class LearningTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 6);
    private static final LocalDateTime START = TODAY.atTime(13, 0);
    private static final int[] AFTER = {0, 1, 2, 5, 10};

    @Test
    void believesWhatWasTypedBeforeAnythingWasSeen() {
        StepPace none = StepPace.of(List.of(), TODAY);
        assertThat(none.multiple()).isEqualTo(1);
        assertThat(none.of(Duration.ofMinutes(4))).isEqualTo(Duration.ofMinutes(4));
        assertThat(none.least()).isBetween(0.4, 0.6);
    }

    @Test
    void movesMostOfTheWayAfterTwoClassesAndIsSurerAfterMore() {
        StepPace two = StepPace.of(seen(1.4, 1.4), TODAY);
        StepPace five = StepPace.of(seen(1.4, 1.4, 1.4, 1.4, 1.4), TODAY);
        assertThat(two.multiple()).isCloseTo(1.378, within(0.001));
        assertThat(five.most() - five.least()).isLessThan(two.most() - two.least());
        assertThat(two.chanceOfRunningOver(1)).isGreaterThan(0.9);
        assertThat(two.chanceOfRunningOver(two.multiple())).isLessThan(0.2);
    }

    @Test
    void letsOldClassesCountForLess() {
        StepPace pace = StepPace.of(List.of(new Seen(TODAY.minusYears(8), 2), new Seen(TODAY, 1)), TODAY);
        assertThat(pace.multiple()).isCloseTo(1.037, within(0.002));
    }

    @Test
    void roundsToWhatCanBeReadOffAClock() {
        StepPace pace = StepPace.of(seen(1.39, 1.39, 1.39), TODAY);
        assertThat(pace.of(Duration.ofSeconds(40))).isEqualTo(Duration.ofSeconds(55));
        assertThat(pace.of(Duration.ofMinutes(4))).isEqualTo(Duration.ofSeconds(330));
        assertThat(pace.of(Duration.ofMinutes(20))).isEqualTo(Duration.ofMinutes(27).plusSeconds(30));
    }

    private static List<Seen> seen(double... multiples) {
        return Arrays.stream(multiples).mapToObj(m -> new Seen(TODAY, m)).toList();
    }

    /** The true multiple of each step lies in its interval of nine in ten as often as is said, after one, two and five classes. */
    @Test
    void coversTheTruthOfFiveHundredTutorsAtTheStatedRate() {
        for (int classes : new int[] {1, 2, 5}) {
            Coverage coverage = coverage(500, Tutor.ORDER, one -> one.learned(classes));
            System.out.printf("after %d classes: the interval of nine in ten covers %.1f %% of %d true multiples of 500 tutors%n", classes, 100 * coverage.share, coverage.all);
            assertThat(coverage.share).isBetween(0.87, 0.97);
        }
    }

    /**
     * Tutors who look up now and then and count who has finished know the pace of what students do by themselves better: narrower
     * intervals, which still cover the truth at the stated rate, and a smaller error.
     */
    @Test
    void knowsMoreWhereItWasCountedWhoHadFinished() {
        for (int classes : new int[] {1, 4}) {
            Coverage ends = coverage(200, Tutor.OWN, one -> one.learned(classes));
            Coverage counts = coverage(200, Tutor.OWN, one -> one.learned(classes, 4));
            System.out.printf("after %d classes: with counts the interval covers %.1f %% (%.1f %% without), is %.0f %% as wide, and the error is %.0f %% of that without%n", classes,
                    100 * counts.share, 100 * ends.share, 100 * counts.width / ends.width, 100 * counts.error / ends.error);
            assertThat(counts.share).isBetween(0.87, 0.97);
            assertThat(counts.width).isLessThan(0.93 * ends.width);
            assertThat(counts.error).isLessThan(0.95 * ends.error);
        }
    }

    /**
     * How often the intervals cover the truth.
     *
     * @param width of the interval, logarithmic, on average
     * @param error of the multiple, logarithmic, on average
     */
    private record Coverage(double share, int all, double width, double error) {}

    private static Coverage coverage(int tutors, List<String> steps, Function<Tutor, Map<String, StepPace>> learning) {
        int inside = 0;
        int all = 0;
        double width = 0;
        double error = 0;
        for (int tutor = 0; tutor < tutors; tutor++) {
            Tutor one = new Tutor(tutor);
            Map<String, StepPace> learned = learning.apply(one);
            for (String step : steps) {
                StepPace pace = learned.get(step);
                double truth = one.truth.get(step);
                inside += truth >= pace.least() && truth <= pace.most() ? 1 : 0;
                width += Math.log(pace.most() / pace.least());
                error += Math.abs(Math.log(pace.multiple() / truth));
                all++;
            }
        }
        return new Coverage(inside / (double) all, all, width / all, error / all);
    }

    /**
     * The error of the forecast end, the middle one of the simulated classes, against the true middle; and how often a class
     * ends by the time that nine in ten are promised to keep.
     */
    @Test
    void forecastsTheEndBetterWithEachClassAndKeepsItsPromise() {
        double[] error = new double[AFTER.length];
        double[] kept = new double[AFTER.length];
        int tutors = 120;
        for (int tutor = 0; tutor < tutors; tutor++) {
            Tutor one = new Tutor(10_000 + tutor);
            LessonRequest next = one.request(8, one.truth);
            Risk truth = simulated(next);
            double[] ends = ends(next);
            for (int i = 0; i < AFTER.length; i++) {
                Risk forecast = simulated(one.request(8, one.taken(one.learned(AFTER[i]))));
                error[i] += Math.abs(Duration.between(forecast.likely(), truth.likely()).toSeconds() / 60.0) / tutors;
                kept[i] += Arrays.stream(ends).filter(end -> !START.plusSeconds((long) Math.ceil(end)).isAfter(forecast.promised())).count() / (double) ends.length / tutors;
            }
        }
        for (int i = 0; i < AFTER.length; i++) {
            System.out.printf("after %d classes: forecast end off by %.1f min on average, %.0f %% of the first error; %.1f %% of the next classes kept the time promised to nine in ten%n",
                    AFTER[i], error[i], 100 * error[i] / error[0], 100 * kept[i]);
        }
        assertThat(error[2]).as("after two classes at most a third").isLessThan(error[0] / 3);
        assertThat(error[3]).as("after five at most a sixth").isLessThan(error[0] / 6);
        assertThat(error[4]).isLessThan(error[3]);
        for (int i = 3; i < AFTER.length; i++) {
            assertThat(kept[i]).as("a little less than nine in ten, as the minutes themselves are not known for sure").isCloseTo(0.9, within(0.04));
        }
    }

    private static Risk simulated(LessonRequest request) {
        return ClassSimulation.of(request, order(request));
    }

    private static LessonPlan order(LessonRequest request) {
        return ((Planned) new ListPlanner().plan(request)).plan();
    }

    /** Of thirty classes that come after those which were reviewed [s from the start]. */
    private static double[] ends(LessonRequest request) {
        StepLengths lengths = new StepLengths(request, order(request));
        return IntStream.range(5_000, 5_030).mapToDouble(number -> lengths.ofClass(number).stream().mapToDouble(l -> l.idle() + l.work()).sum()).toArray();
    }

    /** A sewing class: seven steps that students or the tutor do, some with scarce machines, some with much help. Invented times [min]. */
    private static final class Tutor {
        private static final Map<String, int[]> TYPED = Map.of("welcome", new int[] {10}, "show", new int[] {15}, "cut", new int[] {10, 15, 25},
                "pin", new int[] {6, 10, 18}, "sew", new int[] {15, 25, 45}, "press", new int[] {4, 6, 10}, "trim", new int[] {5, 8, 15});
        private static final List<String> ORDER = List.of("welcome", "cut", "pin", "show", "sew", "press", "trim");

        private static final List<String> OWN = List.of("cut", "pin", "sew", "press", "trim");

        private static final Map<Integer, List<StepLengths.Length>> USUAL = new HashMap<>();

        private final Random random;
        /** What one really needs, as a multiple of what was typed. */
        private final Map<String, Double> truth = new HashMap<>();
        private final long seed;

        Tutor(long seed) {
            this.seed = seed;
            random = new Random(seed * 31 + 7);
            double habit = (random.nextDouble() - 0.5) * Math.log(2);
            ORDER.forEach(step -> truth.put(step, Math.exp(habit + (random.nextDouble() - 0.5) * Math.log(2))));
        }

        LessonRequest request(int students, Map<String, Double> multiples) {
            LessonRequest.Builder lesson = LessonRequest.builder().headcount(students).helpers(students > 9 ? 1 : 0)
                    .meeting(START, START.plusHours(12)).tool("iron", 3).seed(seed).replications(400);
            for (int i = 0; i < ORDER.size(); i++) {
                lesson.step(step(ORDER.get(i), multiples.get(ORDER.get(i))));
                if (i > 0) {
                    lesson.link(ORDER.get(i - 1), ORDER.get(i));
                }
            }
            return lesson.build();
        }

        private static Step step(String id, double multiple) {
            int[] minutes = TYPED.get(id);
            Duration[] times = Arrays.stream(minutes).mapToObj(m -> Duration.ofSeconds(Math.round(60 * m * multiple))).toArray(Duration[]::new);
            return switch (id) {
                case "welcome" -> new Step.Together(id, id, times[0]);
                case "show" -> new Step.Show(id, id, times[0]);
                case "sew" -> new Step.Make(id, id, new StudentTime(times[0], times[1], times[2]), List.of(), new Help(4, 3), 1, true);
                case "press" -> new Step.Make(id, id, new StudentTime(times[0], times[1], times[2]), List.of(new ToolUse("iron", 1)), Help.NONE, 1, true);
                default -> new Step.Make(id, id, new StudentTime(times[0], times[1], times[2]));
            };
        }

        /** All tutors typed the same. */
        private static List<StepLengths.Length> asTyped(int students) {
            Map<String, Double> ones = new HashMap<>();
            ORDER.forEach(step -> ones.put(step, 1.0));
            LessonRequest believed = new Tutor(0).request(students, ones);
            return new StepLengths(believed, order(believed)).usual();
        }

        /** After so many classes of 6 to 12 students. What the tutor shows or leads differs by a tenth or so from class to class. */
        Map<String, StepPace> learned(int classes) {
            return learned(classes, 0);
        }

        /** @param looks how often the tutor looks up in a step and counts who has finished */
        Map<String, StepPace> learned(int classes, int looks) {
            Map<String, List<Seen>> seen = new HashMap<>();
            ORDER.forEach(step -> seen.put(step, new ArrayList<>()));
            Random other = new Random(seed * 17 + 3);
            for (int number = 0; number < classes; number++) {
                int students = 6 + other.nextInt(7);
                LessonRequest real = request(students, truth);
                List<StepLengths.Length> usual = USUAL.computeIfAbsent(students, n -> asTyped(n));
                List<StepLengths.Length> happened = new StepLengths(real, order(real)).ofClass(number);
                for (int i = 0; i < usual.size(); i++) {
                    if (looks > 0 && OWN.contains(usual.get(i).step())) {
                        seen.get(usual.get(i).step()).add(counted(usual.get(i), happened.get(i), looks));
                        continue;
                    }
                    double own = real.stepsById().get(usual.get(i).step()).kind().isOwnWork() ? 1 : Math.exp(0.1 * other.nextGaussian());
                    seen.get(usual.get(i).step()).add(new Seen(TODAY, own * (happened.get(i).idle() + happened.get(i).work() - usual.get(i).idle()) / usual.get(i).work()));
                }
            }
            Map<String, StepPace> learned = new HashMap<>();
            seen.forEach((step, all) -> learned.put(step, StepPace.of(all, TODAY)));
            return learned;
        }

        private static Seen counted(StepLengths.Length usual, StepLengths.Length happened, int looks) {
            CountedPace pace = new CountedPace(usual.finished(), usual.students(), usual.needed());
            List<Count> counts = IntStream.rangeClosed(1, looks).mapToDouble(look -> happened.work() * look / (looks + 1))
                    .mapToObj(after -> new Count(after, (int) happened.finished().stream().filter(time -> time <= after).count())).toList();
            CountedPace.Estimate estimate = pace.of(counts, happened.work());
            return new Seen(TODAY, Math.exp(estimate.log()), estimate.precision());
        }

        Map<String, Double> taken(Map<String, StepPace> learned) {
            Map<String, Double> multiples = new HashMap<>();
            learned.forEach((step, pace) -> multiples.put(step, pace.multiple()));
            return multiples;
        }
    }
}
