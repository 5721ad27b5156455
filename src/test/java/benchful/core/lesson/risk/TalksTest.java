package benchful.core.lesson.risk;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.risk.Risk.BlockRisk;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is shown or done together runs over, too. */
class TalksTest {
    private static final Duration TWENTY = Duration.ofMinutes(20);
    private static final Duration TWELVE = Duration.ofMinutes(12);
    private static final Step TALK = new Step.Show("talk", "Show it", TWENTY, Duration.ZERO, TWELVE, List.of());

    private static LessonPlan order(LessonRequest request) {
        return Lessons.plan(new ListPlanner().plan(request));
    }

    /** Within t of the twelve minutes end 1 - (1 - t/12)^2 of the classes. */
    @Test
    void runsOverTheLessLikelyTheLonger() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(1)).step(TALK).build();
        double[] finishes = PromisedTest.finishes(request, order(request));
        assertThat(finishes[0]).isGreaterThanOrEqualTo(20 * 60);
        assertThat(finishes[finishes.length - 1]).isLessThanOrEqualTo(32 * 60);
        for (int minutes = 1; minutes < 12; minutes++) {
            double within = 60.0 * (20 + minutes);
            double share = Arrays.stream(finishes).filter(finish -> finish <= within).count() / (double) finishes.length;
            assertThat(share).as("%d min", minutes).isCloseTo(1 - Math.pow(1 - minutes / 12.0, 2), within(0.015));
        }
    }

    /** Nine in ten: 12 x (1 - sqrt(0.1)) = 8.2 minutes, half: 3.5; to the minute above. */
    @Test
    void promisesTheTimeThatItsShareOfTheTalksKeep() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(1)).step(TALK).build();
        assertThat(Promised.of(request, order(request)).plan().finish()).isEqualTo(TEN.plusMinutes(29));
        LessonRequest half = request.toBuilder().promise(0.5).build();
        assertThat(Promised.of(half, order(half)).plan().finish()).isEqualTo(TEN.plusMinutes(24));
    }

    /** A break that it would run into comes first. */
    @Test
    void isBegunWhereAllOfItFits() {
        LessonRequest request = LessonRequest.builder().meeting(TEN, TEN.plusHours(1)).step(TALK).pause("Tea", TEN.plusMinutes(26), TEN.plusMinutes(30)).build();
        double[] finishes = PromisedTest.finishes(request, order(request));
        assertThat(Arrays.stream(finishes)).allMatch(finish -> finish <= 26 * 60 || finish > 56 * 60);
        double before = Arrays.stream(finishes).filter(finish -> finish <= 26 * 60).count() / (double) finishes.length;
        assertThat(before).isCloseTo(1 - 0.25, within(0.015));
    }

    @Test
    void leavesAllElseAsItIs() {
        LessonRequest exact = varied(3, Duration.ZERO);
        assertThat(PromisedTest.finishes(exact, order(exact))).isEqualTo(PromisedTest.finishes(PromisedTest.varied(3), order(PromisedTest.varied(3))));
    }

    static LongStream eight() {
        return LongStream.range(0, 8);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5})
    void agreesWithASimulationOfAnotherMake(long seed) {
        LessonRequest request = varied(seed, TWELVE);
        LessonPlan order = order(request);
        double[] own = PromisedTest.finishes(request, order);
        PlainSimulator other = new PlainSimulator(request, order, seed);
        double time = own[(int) Math.ceil(request.promise() * own.length) - 1];
        double share = IntStream.range(0, 10_000).filter(i -> other.finish() <= time).count() / 10_000.0;
        assertThat(share).isCloseTo(request.promise(), within(0.02));
    }

    /** Of what is shown beside each other, no time comes before the one that it follows. */
    @ParameterizedTest
    @MethodSource("eight")
    void endsNoBlockBeforeItBegins(long seed) {
        LessonRequest request = varied(seed, TWELVE).toBuilder().replications(500).build();
        Promised promised = Promised.of(request, order(request));
        for (BlockRisk block : promised.risk().blocks()) {
            assertThat(block.likelyEnd()).isAfterOrEqualTo(block.likelyStart());
            assertThat(block.lateEnd()).isAfterOrEqualTo(block.likelyEnd());
            assertThat(block.promisedEnd()).isAfterOrEqualTo(block.promisedStart());
            assertThat(block.promisedStart()).isAfterOrEqualTo(request.promise() >= 0.5 ? block.likelyStart() : block.promisedStart());
        }
        for (Block block : promised.plan().blocks()) {
            assertThat(block.end()).isAfterOrEqualTo(block.start());
        }
    }

    /** The varied classes, in which all that is shown may run over by so much. */
    private static LessonRequest varied(long seed, Duration over) {
        LessonRequest request = PromisedTest.varied(seed);
        return request.toBuilder().steps(request.steps().stream().map(step -> step instanceof Step.Show show
                ? new Step.Show(show.id(), show.title(), show.length(), show.perStudent(), over, show.uses()) : step).toList()).build();
    }

    @Test
    void lastsAsLongAsItMayWithWhatIsDoneTogether() {
        Step tidy = new Step.Together("tidy", "Tidy up", TWENTY, Duration.ofMinutes(1), TWELVE, List.of());
        LessonRequest request = LessonRequest.builder().headcount(5).meeting(TEN, TEN.plusHours(2)).step(new Step.Make("make", "Make", StudentTime.ofMinutes(10, 10, 10)))
                .step(tidy).link("make", "tidy").build();
        assertThat(Promised.of(request, order(request)).plan().finish()).isEqualTo(TEN.plusMinutes(10 + 25 + 9));
    }
}
