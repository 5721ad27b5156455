package benchful.core.lesson.order.solver;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.Turn;
import benchful.core.lesson.Planned;
import benchful.core.lesson.order.Firings;
import benchful.core.lesson.order.LessonChecker;
import benchful.core.lesson.order.ListPlanner;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A search that may take minutes, on loads of three kilns that a short one does not settle. */
class LongSearchTest {
    static LessonPlan plan(LessonRequest request, SearchWatch watch) {
        return ((Planned) new SolverPlanner().search(request, watch)).plan();
    }

    /** Tells whoever asks what it was told. */
    private static final class Log implements SearchWatch {
        private final List<LocalDateTime> finishes = new ArrayList<>();
        private final List<LocalDateTime> bounds = new ArrayList<>();
        private final boolean enough;

        Log(boolean enough) {
            this.enough = enough;
        }

        @Override
        public synchronized void tell(LocalDateTime finish, LocalDateTime bound) {
            finishes.add(finish);
            bounds.add(bound);
        }

        @Override
        public boolean isEnough() {
            return enough;
        }
    }

    @Test
    void provesWhatAShortSearchLeavesOpen() {
        LessonRequest request = Firings.request(4, 16).timeLimit(Duration.ofMillis(100)).build();
        LessonPlan brief = plan(request, SearchWatch.NONE);
        assertThat(brief.proof().isShortest()).isFalse();
        Log log = new Log(false);
        LessonPlan best = plan(request.toBuilder().timeLimit(Duration.ofMinutes(2)).build(), log);
        assertThat(best.proof().isShortest()).isTrue();
        assertThat(best.length()).isEqualTo(Duration.ofMinutes(57)).isLessThan(brief.length());
        assertThat(LessonChecker.faults(request, best)).isEmpty();
        assertThat(log.finishes).isSortedAccordingTo(Comparator.reverseOrder()).endsWith(best.finish());
        assertThat(log.bounds).isSorted().doesNotContain(best.finish()).hasSizeGreaterThan(1);
        assertThat(plan(request.toBuilder().timeLimit(Duration.ofMinutes(2)).build(), SearchWatch.NONE)).as("a watch changes nothing").isEqualTo(best);
    }

    /** Ten minutes of work, which end with the best found as soon as somebody has enough. */
    @Test
    void endsSoonerWithWhatItHas() {
        LessonRequest request = Firings.request(2, 20).timeLimit(Duration.ofMinutes(10)).build();
        Log log = new Log(true);
        LessonPlan found = plan(request, log);
        assertThat(found.proof().isShortest()).isFalse();
        assertThat(LessonChecker.faults(request, found)).isEmpty();
        assertThat(log.finishes.get(log.finishes.size() - 1)).isAfterOrEqualTo(found.finish());
        assertThat(log.bounds.get(log.bounds.size() - 1)).isBeforeOrEqualTo(found.proof().bound());
    }

    @Test
    void beginsWithAnOrderThatWasFound() {
        LessonRequest request = Firings.request(4, 16).timeLimit(Duration.ofMinutes(2)).build();
        LessonPlan best = plan(request, SearchWatch.NONE);
        List<Turn> order = best.blocks().stream().sorted(Comparator.comparing(Block::start)).map(b -> new Turn(b.step(), b.group())).toList();
        LessonRequest begun = request.toBuilder().timeLimit(Duration.ofMillis(100)).searchFrom(order).build();
        assertThat(plan(begun, SearchWatch.NONE).length()).isEqualTo(best.length());
        assertThat(listed(begun)).as("also without the solver").isEqualTo(best.length()).isLessThan(listed(request));
    }

    /** An order to begin with asks for nothing: a bad one makes no plan worse, and nothing is refused for what is no step. */
    @Test
    void isNoWorseForABadOrder() {
        LessonRequest request = Firings.request(4, 16).build();
        List<Turn> backwards = new ArrayList<>(List.of(new Turn("gone", 3)));
        for (int i = 15; i >= 0; i--) {
            backwards.add(new Turn("load" + i, 0));
        }
        LessonRequest begun = request.toBuilder().searchFrom(backwards).build();
        assertThat(listed(begun)).isLessThanOrEqualTo(listed(request));
        assertThat(plan(begun, SearchWatch.NONE).length()).isEqualTo(Duration.ofMinutes(57));
    }

    private static Duration listed(LessonRequest request) {
        return ((Planned) new ListPlanner().plan(request)).plan().length();
    }
}
