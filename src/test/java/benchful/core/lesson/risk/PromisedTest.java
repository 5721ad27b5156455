package benchful.core.lesson.risk;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.lesson.Help;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.StudentTime.Work;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.Lessons;
import benchful.core.lesson.order.ListPlanner;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PromisedTest {

    private static LessonPlan order(LessonRequest request) {
        return Lessons.plan(new ListPlanner().plan(request));
    }

    private static Promised promised(LessonRequest request) {
        return Promised.of(request, order(request));
    }

    static LongStream thirty() {
        return LongStream.range(0, 30);
    }

    /** The share of another simulation's classes that end by the promised time is what was promised, for half, three in four, nine in ten. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("thirty")
    void keepsWhatItPromisesInASimulationOfAnotherMake(long seed) {
        LessonRequest request = varied(seed);
        LessonPlan order = order(request);
        double[] own = finishes(request, order);
        PlainSimulator other = new PlainSimulator(request, order, seed);
        double[] theirs = IntStream.range(0, 10_000).mapToDouble(i -> other.finish()).toArray();
        double time = own[(int) Math.ceil(request.promise() * own.length) - 1];
        double share = Arrays.stream(theirs).filter(finish -> finish <= time).count() / (double) theirs.length;
        assertThat(share).as("%s", request).isCloseTo(request.promise(), within(0.02));
        assertThat(Promised.of(request, order).plan().finish()).isEqualTo(TEN.plusMinutes((long) Math.ceil((time - 0.01) / 60)));
    }

    /** The same of classes in two or three groups, to each of which some of the demonstrations are shown by itself, and may run over. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("thirty")
    void keepsWhatItPromisesWhereGroupsAreShownInTurn(long seed) {
        LessonRequest request = shownInTurn(seed);
        LessonPlan order = order(request);
        assertThat(order.blocks()).anyMatch(block -> block.kind() == StepKind.SHOW && block.group() > 0);
        PlainSimulator other = new PlainSimulator(request, order, seed);
        double[] own = finishes(request, order);
        double time = own[(int) Math.ceil(request.promise() * own.length) - 1];
        double share = IntStream.range(0, 10_000).mapToDouble(i -> other.finish()).filter(finish -> finish <= time).count() / 10_000.0;
        assertThat(share).as("%s", request).isCloseTo(request.promise(), within(0.02));
    }

    /** Every third class has somebody beside students at a step, and in every other as many as can watch are two less than a group has. */
    static LessonRequest shownInTurn(long seed) {
        LessonRequest varied = varied(seed);
        Random random = new Random(seed + 77);
        int students = varied.headcount() + 3;
        int groups = 2 + random.nextInt(2);
        int watchers = Math.max(1, (students + groups - 1) / groups - (seed % 2 == 0 ? 0 : 2));
        List<Step> steps = varied.steps().stream().map(step -> step instanceof Step.Show show && (step == varied.steps().get(0) || random.nextBoolean())
                ? new Step.Show(show.id(), show.title(), show.length(), show.perStudent(), Duration.ofMinutes(random.nextInt(9)), show.uses(), seed % 5 == 0 ? 0 : watchers, seed % 5 == 0)
                : step instanceof Step.Make make && seed % 3 == 0 && make.id().hashCode() % 4 == 0
                        ? new Step.Make(make.id(), make.title(), make.time(), make.uses(), Help.NONE, make.finishShare(), true, true) : step).toList();
        return varied.toBuilder().headcount(students).groups(groups).steps(steps).build();
    }

    /** The same of classes in which somebody stays beside each student at some of the steps, and calls for help wait meanwhile. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("thirty")
    void keepsWhatItPromisesWhereSomebodyStaysBesideStudents(long seed) {
        LessonRequest varied = varied(seed);
        LessonRequest request = varied.toBuilder().pacing(Pacing.OWN_PACE).steps(varied.steps().stream().map(step -> step instanceof Step.Make make
                ? make.id().hashCode() % 2 == 0 ? new Step.Make(make.id(), make.title(), make.time(), make.uses(), Help.NONE, make.finishShare(), true, true)
                        : new Step.Make(make.id(), make.title(), make.time(), make.uses(), new Help(6, 3), make.finishShare(), true) : step).toList()).build();
        LessonPlan order = order(request);
        PlainSimulator other = new PlainSimulator(request, order, seed);
        double[] own = finishes(request, order);
        double time = own[(int) Math.ceil(request.promise() * own.length) - 1];
        double share = IntStream.range(0, 10_000).mapToDouble(i -> other.finish()).filter(finish -> finish <= time).count() / 10_000.0;
        assertThat(share).as("%s", request).isCloseTo(request.promise(), within(0.02));
    }

    /** Sorted [s]. */
    static double[] finishes(LessonRequest request, LessonPlan order) {
        Script script = new ScriptWriter(request, order).script();
        Replication played = new Replication(script);
        return IntStream.range(0, 10_000).mapToDouble(number -> {
            played.play(request.seed(), number);
            return (float) script.parts().stream().filter(Script.Part::counts).mapToDouble(part -> played.end[part.index()]).max().orElseThrow();
        }).sorted().toArray();
    }

    /** Scarce tools, help, groups, own pace, mixed sizes, drying, demonstrations and a break, each in some of the classes. */
    static LessonRequest varied(long seed) {
        Random random = new Random(seed * 7919 + 13);
        int students = 2 + random.nextInt(14);
        int groups = random.nextInt(4) == 0 ? 1 + random.nextInt(Math.min(3, students)) : 1;
        LessonRequest.Builder lesson = LessonRequest.builder().headcount(students).helpers(random.nextInt(2)).groups(groups)
                .pacing(random.nextInt(3) == 0 ? Pacing.OWN_PACE : Pacing.TOGETHER).promise(List.of(0.5, 0.75, 0.9).get(random.nextInt(3)))
                .meeting(TEN, TEN.plusHours(4)).tool("saw", students / 2 + 1).seed(seed).replications(10_000);
        if (random.nextBoolean()) {
            lesson.pause("Tea", TEN.plusMinutes(60), TEN.plusMinutes(75));
        }
        List<Work> work = random.nextInt(3) == 0 ? List.of(new Work(1, 1))
                : IntStream.range(0, students).mapToObj(i -> new Work(1 + random.nextInt(3), 1)).toList();
        String before = null;
        for (int i = 0; i < 4 + random.nextInt(4); i++) {
            String id = "s" + i;
            int kind = i == 0 ? 0 : random.nextInt(8);
            lesson.step(kind == 0 ? new Step.Show(id, "Show " + i, Duration.ofMinutes(5 + random.nextInt(10)))
                    : kind == 1 ? new Step.Wait(id, "Dry " + i, Duration.ofMinutes(5 + random.nextInt(20))) : make(id, random, work));
            if (before != null) {
                lesson.link(before, id);
            }
            before = id;
        }
        return lesson.step(make("last", random, work)).link(before, "last").build();
    }

    private static Step make(String id, Random random, List<Work> work) {
        int usual = 6 + random.nextInt(15);
        StudentTime time = new StudentTime(Duration.ofMinutes(usual / 2), Duration.ofMinutes(usual), Duration.ofMinutes(usual * 2L + 3), work);
        List<ToolUse> uses = random.nextInt(3) == 0 ? List.of(new ToolUse("saw", 1)) : List.of();
        Help help = random.nextInt(3) == 0 ? new Help(1 + random.nextInt(4), 2) : Help.NONE;
        return new Step.Make(id, "Make " + id, time, uses, help, random.nextInt(4) == 0 ? 0.8 : 1, true);
    }

    /**
     * One more helper or tool ends no class later than chance makes it (who goes first may change), and a minute more of booking never
     * lowers the chance.
     */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("thirty")
    void isNotWorseWithOneMore(long seed) {
        LessonRequest request = varied(seed).toBuilder().replications(2_000).build();
        LocalDateTime finish = promised(request).plan().finish();
        LocalDateTime late = finish.plusSeconds(Math.round(0.01 * Duration.between(TEN, finish).toSeconds()) + 60);
        assertThat(promised(request.toBuilder().helpers(request.helpers() + 1).build()).plan().finish()).isBeforeOrEqualTo(late);
        assertThat(promised(request.toBuilder().tool("saw", 1).build()).plan().finish()).isBeforeOrEqualTo(late);
        LessonRequest longer = bookedUntil(request, request.bookedEnd().plusMinutes(1));
        assertThat(promised(longer).risk().onTime()).isGreaterThanOrEqualTo(promised(request).risk().onTime());
    }

    /** 5 steps at their own pace with two tools for ten: 295 min if all move on together, about 122 in truth. */
    @Test
    void countsOwnPace() {
        LessonRequest.Builder lesson = LessonRequest.builder().headcount(10).meeting(TEN, TEN.plusHours(3)).pacing(Pacing.OWN_PACE).promise(0.5);
        for (int i = 0; i < 5; i++) {
            lesson.tool("tool " + i, 2).step(new Step.Make("s" + i, "Step " + i, StudentTime.ofMinutes(5, 10, 15), List.of(new ToolUse("tool " + i, 1)), Help.NONE, 1, true));
            if (i > 0) {
                lesson.link("s" + (i - 1), "s" + i);
            }
        }
        LessonRequest request = lesson.build();
        assertThat(order(request).length()).isGreaterThan(Duration.ofMinutes(240));
        Promised promised = promised(request);
        assertThat(promised.plan().length()).isBetween(Duration.ofMinutes(85), Duration.ofMinutes(130));
        assertThat(promised.plan().fits()).isTrue();
        assertThat(promised.risk().onTime()).isEqualTo(1);
    }

    /** Nine of 20 knots and one of 60 take about as long as the one alone, and a little more where the nine ask for help meanwhile. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0.03, 0.93", "4, 3, 0.25, 0.83"})
    void takesEachStudentsOwnSize(double calls, double minutes, double over, double ofAllLarge) {
        LessonRequest mixed = strands(calls, minutes, IntStream.range(0, 10).mapToObj(i -> new Work(i == 0 ? 60 : 20, 1)).toList());
        LessonRequest large = strands(calls, minutes, List.of(new Work(60, 1)));
        LessonRequest small = strands(calls, minutes, List.of(new Work(20, 1)));
        Duration one = promised(large.toBuilder().headcount(1).build()).plan().length();
        Duration all = promised(mixed).plan().length();
        assertThat(all).isGreaterThan(promised(small).plan().length());
        assertThat(all.toSeconds() / (double) promised(large).plan().length().toSeconds()).isLessThan(ofAllLarge);
        assertThat(all.toSeconds() / (double) one.toSeconds()).isBetween(0.97, 1 + over);
    }

    private static LessonRequest strands(double calls, double minutes, List<Work> work) {
        StudentTime knot = new StudentTime(Duration.ofSeconds(90), Duration.ofSeconds(120), Duration.ofSeconds(180), work);
        return LessonRequest.builder().headcount(10).meeting(TEN, TEN.plusHours(4))
                .step(new Step.Make("knot", "Knot the strand", knot, List.of(), new Help(calls, minutes), 1, true)).build();
    }

    /** One glue gun for eight, a wait of 5 min, at most 10: each presses as soon as the own glue is ready, so nobody's is too old. */
    @Test
    void letsEachGoOnWhoseGlueIsReady() {
        Promised promised = promised(glue(8));
        assertThat(promised.risk().ageing()).isEmpty();
        assertThat(promised.plan().blocksOf("press").get(0).start()).isBefore(promised.plan().blocksOf("glue").get(0).end());
    }

    /** With one press as well, which takes longer than the glue, they queue for it and the glue ages. */
    @Test
    void saysWhereAPieceGrowsTooOld() {
        Promised promised = promised(glue(1));
        Risk.Ageing ageing = promised.risk().ageing().get(0);
        assertThat(ageing.classes()).isEqualTo(1);
        assertThat(ageing.students()).isGreaterThan(0.5);
        assertThat(ageing.oldest()).isGreaterThan(Duration.ofMinutes(20));
        assertThat(ageing.sentence()).startsWith("In 100 of 100 classes at least one piece is older than 10 min after \"Glue\" when \"Press\" begins; in one of ten it is ");
    }

    private static LessonRequest glue(int presses) {
        return LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusHours(3)).tool("glue gun", 1).tool("press", presses)
                .step(new Step.Make("glue", "Glue", StudentTime.ofMinutes(2, 3, 5), List.of(new ToolUse("glue gun", 1)), Help.NONE, 1, true))
                .step(new Step.Wait("tack", "Let it tack", Duration.ofMinutes(5), Optional.of(Duration.ofMinutes(10)), List.of(), false))
                .step(new Step.Make("press", "Press", StudentTime.ofMinutes(8, 9, 10), List.of(new ToolUse("press", 1)), Help.NONE, 1, true))
                .link("glue", "tack").link("tack", "press").build();
    }

    /** Twenty steps of 61 s for one student take 20 min 20 s, not forty minutes. */
    @Test
    void roundsTheClockAndNotEachStep() {
        LessonRequest.Builder lesson = LessonRequest.builder().meeting(TEN, TEN.plusHours(1));
        Duration length = Duration.ofSeconds(61);
        for (int i = 0; i < 20; i++) {
            lesson.step(new Step.Make("s" + i, "Step " + i, new StudentTime(length, length, length)));
        }
        assertThat(order(lesson.build()).length()).isEqualTo(Duration.ofSeconds(20 * 61));
        assertThat(promised(lesson.build()).plan().length()).isEqualTo(Duration.ofMinutes(21));
    }

    /** Thirty pieces in a kiln of four places take eight loads; one kiln more halves them. */
    @ParameterizedTest
    @CsvSource({"4, 1, 60", "30, 1, 480", "30, 2, 240", "8, 2, 60"})
    void firesLoadByLoad(int students, int kilns, int minutes) {
        LessonRequest request = LessonRequest.builder().headcount(students).meeting(TEN, TEN.plusHours(9)).tool("kiln", kilns)
                .step(new Step.Wait("fire", "Fire", Duration.ofMinutes(60), Optional.empty(), List.of(new ToolUse("kiln", 1)), 4, false)).build();
        assertThat(order(request).length()).isEqualTo(Duration.ofMinutes(minutes));
        assertThat(promised(request).plan().length()).isEqualTo(Duration.ofMinutes(minutes));
    }

    /** A load goes into the kiln when its last piece is ready, and does not wait for those of the next. */
    @Test
    void doesNotKeepTheFirstLoadWaitingForTheLastPiece() {
        StudentTime time = new StudentTime(Duration.ofMinutes(10), Duration.ofMinutes(10), Duration.ofMinutes(10),
                IntStream.range(0, 8).mapToObj(i -> new Work(i < 4 ? 1 : 6, 1)).toList());
        LessonRequest request = LessonRequest.builder().headcount(8).meeting(TEN, TEN.plusHours(9)).tool("kiln", 1).step(new Step.Make("paint", "Paint", time))
                .step(new Step.Wait("fire", "Fire", Duration.ofMinutes(40), Optional.empty(), List.of(new ToolUse("kiln", 1)), 4, false)).link("paint", "fire").build();
        assertThat(promised(request).plan().finish()).isEqualTo(TEN.plusMinutes(60 + 40));
    }

    /** Handing out takes 5 min and half a minute a head. */
    @ParameterizedTest
    @CsvSource({"1, 6", "10, 10", "30, 20"})
    void takesLongerToHandOutToMore(int students, int minutes) {
        LessonRequest request = LessonRequest.builder().headcount(students).meeting(TEN, TEN.plusHours(1))
                .step(new Step.Together("hand", "Hand out", Duration.ofMinutes(5), Duration.ofSeconds(30), List.of())).build();
        assertThat(promised(request).plan().length()).isEqualTo(Duration.ofMinutes(minutes));
    }

    static LongStream drawn() {
        return LongStream.range(0, 60);
    }

    /** The plan fits just where as many classes as are promised end in time, whatever is booked. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("drawn")
    void fitsJustWhereTheChanceIsWhatWasPromised(long seed) {
        LessonRequest drawn = Lessons.drawn(seed).toBuilder().replications(300).promise(0.5 + 0.45 * new Random(seed).nextDouble()).build();
        LocalDateTime finish = promised(drawn).plan().finish();
        for (int later : new int[] {-3, -1, 0, 1, 3}) {
            LessonRequest booked = bookedUntil(drawn, finish.plusMinutes(later));
            if (booked != null) {
                Promised promised = promised(booked);
                assertThat(promised.plan().fits()).isEqualTo(promised.risk().onTime() >= drawn.promise() - 1e-9);
            }
        }
    }

    private static LessonRequest bookedUntil(LessonRequest request, LocalDateTime end) {
        List<Meeting> meetings = new ArrayList<>(request.meetings());
        Meeting last = meetings.remove(meetings.size() - 1);
        if (!end.isAfter(last.start()) || request.breaks().stream().anyMatch(pause -> pause.end().isAfter(end))) {
            return null;
        }
        meetings.add(new Meeting(last.start(), end));
        return request.toBuilder().meetings(meetings).build();
    }

    /** Steps of one group never overlap on the board, but for those that each student begins alone; nobody works in a break. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("drawn")
    void writesTimesOnTheBoardThatFollowEachOther(long seed) {
        LessonRequest request = Lessons.drawn(seed).toBuilder().replications(200).build();
        LessonPlan plan = promised(request).plan();
        assertThat(plan.blocks()).allSatisfy(block -> assertThat(block.start()).isBeforeOrEqualTo(block.end()))
                .isSortedAccordingTo((a, b) -> a.start().compareTo(b.start()));
        assertThat(plan.blocks()).flatExtracting(block -> block.kind().needsClass() ? block.segments() : List.of())
                .allSatisfy(part -> assertThat(request.breaks()).noneMatch(pause -> pause.start().isBefore(part.end()) && part.start().isBefore(pause.end())));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.75})
    void promisesAnEarlierEndToFewer(double share) {
        LessonRequest request = Lessons.pendant().build();
        assertThat(promised(request.toBuilder().promise(share).build()).plan().finish()).isBefore(promised(request).plan().finish());
    }

    @Test
    void keepsTheProofOfItsOrder() {
        LessonRequest request = Lessons.pendant().build();
        assertThat(promised(request).plan().proof()).isEqualTo(order(request).proof());
        assertThat(promised(request.toBuilder().pacing(Pacing.OWN_PACE).build()).plan().proof().sentence()).endsWith(", were all to move on together.");
    }
}
