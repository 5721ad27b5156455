package benchful.core.lesson.risk;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Block;
import benchful.core.lesson.Help;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.Preparation;
import benchful.core.lesson.Proof;
import benchful.core.lesson.Segment;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.TutorLoad;
import benchful.core.lesson.risk.Script.Need;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Glue that must be pressed within five minutes; the class works at something else until 10:20. The second block is asked about. */
class HeldBackTest {
    private static final Duration FIVE = Duration.ofMinutes(5);
    private static final Optional<Duration> IN_FIVE = Optional.of(FIVE);
    private static final List<Need> NONE = List.of();

    @Test
    void waitsWhereAllOfTheGapIsUsed() {
        LessonRequest request = steps(make("glue", true)).link(new Link("glue", "press", Duration.ZERO, IN_FIVE)).build();
        assertThat(held(request, NONE, block("other", 0, 20), block("glue", 25, 35), block("press", 40, 50))).isTrue();
        assertThat(held(request, NONE, block("other", 0, 20), block("glue", 25, 35), block("press", 39, 50))).isFalse();
        assertThat(held(request, NONE, block("other", 0, 20), block("glue", 20, 30), block("press", 40, 50))).as("no sooner than the class is free").isFalse();
        assertThat(held(steps(make("glue", true)).link("glue", "press").build(), NONE, block("other", 0, 20), block("glue", 25, 35), block("press", 40, 50))).as("without a limit").isFalse();
    }

    /** From the beginning of what sets, and, through it, from the end of what was poured and the gap to it. */
    @Test
    void countsTheTimeOfAWait() {
        LessonRequest sets = steps(new Step.Wait("glue", "Glue", FIVE, IN_FIVE, List.of(), false)).link("glue", "press").build();
        assertThat(held(sets, NONE, block("other", 0, 20), block("glue", 25, 30), block("press", 30, 50))).isTrue();
        assertThat(held(sets, NONE, block("other", 0, 20), block("glue", 26, 30), block("press", 30, 50))).isFalse();
        assertThat(held(sets, NONE, block("other", 0, 20), block("glue", 0, 5), block("press", 30, 50))).as("nobody is needed").isFalse();
        LessonRequest poured = steps(make("glue", true)).step(new Step.Wait("set", "Set", FIVE, IN_FIVE, List.of(), false))
                .link(new Link("glue", "set", Duration.ofMinutes(2), Optional.empty())).link("set", "press").build();
        assertThat(held(poured, NONE, block("other", 0, 20), block("glue", 25, 35), block("press", 42, 50))).isTrue();
        assertThat(held(poured, NONE, block("other", 0, 20), block("glue", 25, 35), block("press", 41, 50))).isFalse();
    }

    /** What it needs ends at 10:20, and five minutes after that it may begin. */
    @Test
    void beginsNoSoonerThanItCould() {
        LessonRequest request = steps(make("glue", true)).link(new Link("glue", "press", Duration.ZERO, IN_FIVE)).build();
        assertThat(held(request, List.of(new Need(0, 300, 0)), block("other", 0, 20), block("glue", 25, 35), block("press", 40, 50))).isFalse();
        assertThat(held(request, List.of(new Need(0, 299, 0)), block("other", 0, 20), block("glue", 25, 35), block("press", 40, 50))).isTrue();
        assertThat(held(request, List.of(new Need(-1, 1500, 0)), block("other", 0, 20), block("glue", 25, 35), block("press", 40, 50))).isFalse();
    }

    /** A break from 10:22 to 10:30: what may not pause is begun behind it in any case, what may could be begun before. */
    @Test
    void goesAroundBreaks() {
        LessonRequest.Builder tea = steps(make("glue", false)).link(new Link("glue", "press", Duration.ZERO, IN_FIVE)).pause("Tea", TEN.plusMinutes(22), TEN.plusMinutes(30));
        assertThat(held(tea.build(), NONE, block("other", 0, 20), block("glue", 30, 40), block("press", 45, 50))).isFalse();
        LessonRequest may = tea.steps(List.of(make("other", true), make("glue", true), make("press", true))).build();
        assertThat(held(may, NONE, block("other", 0, 20), block("glue", 30, 40), block("press", 45, 50))).isTrue();
        assertThat(held(may, NONE, block("other", 0, 22), block("glue", 30, 40), block("press", 45, 50))).isFalse();
    }

    /** The other group's work holds up nobody, nor does its press count. */
    @Test
    void looksAtItsOwnGroup() {
        LessonRequest request = steps(make("glue", true)).link(new Link("glue", "press", Duration.ZERO, IN_FIVE)).headcount(2).groups(2).build();
        assertThat(held(request, NONE, group(2, block("other", 0, 25)), group(1, block("glue", 25, 35)), group(1, block("press", 40, 50)))).isTrue();
        assertThat(held(request, NONE, group(1, block("other", 0, 25)), group(1, block("glue", 25, 35)), group(1, block("press", 40, 50)))).isFalse();
        assertThat(held(request, NONE, group(1, block("other", 0, 20)), group(1, block("glue", 25, 35)), group(2, block("press", 40, 50)))).isFalse();
    }

    private static boolean held(LessonRequest request, List<Need> needs, Block... blocks) {
        LessonPlan plan = new LessonPlan(List.of(blocks), TEN, TEN.plusHours(1), TEN.plusHours(2), List.of(), new TutorLoad(List.of(), 0, 0), Duration.ZERO,
                new Proof(Proof.Method.LIST, Pacing.TOGETHER, TEN, TEN), new Preparation(List.of()));
        return new HeldBack(request, plan, new Clock(request)).isHeldBack(1, needs);
    }

    private static LessonRequest.Builder steps(Step second) {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).step(make("other", true)).step(second).step(make("press", true));
    }

    private static Step make(String id, boolean mayPause) {
        return new Step.Make(id, id.toUpperCase(Locale.ROOT), StudentTime.ofMinutes(10, 10, 10), List.of(), Help.NONE, 1, mayPause);
    }

    private static Block block(String step, int from, int to) {
        return new Block(step, step, StepKind.MAKE, Lane.CLASS, 0, TEN.plusMinutes(from), TEN.plusMinutes(to),
                List.of(new Segment(TEN.plusMinutes(from), TEN.plusMinutes(to))), List.of(), Duration.ZERO, false, 0, List.of());
    }

    private static Block group(int group, Block one) {
        return new Block(one.step(), one.title(), one.kind(), one.lane(), group, one.start(), one.end(), one.segments(), one.uses(), one.slack(), false, 0, List.of());
    }
}
