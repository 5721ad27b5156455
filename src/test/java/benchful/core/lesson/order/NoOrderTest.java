package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Conflict;
import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.ModelBuilder;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NoOrderTest {

    /** So many steps one after the other, each within ten minutes of the one before. */
    private static Model row(int steps) {
        LessonRequest.Builder lesson = LessonRequest.builder().meeting(TEN, TEN.plusHours(2));
        for (int i = 0; i < steps; i++) {
            lesson.step(new Step.Make("s" + i, "Step " + i, StudentTime.ofMinutes(5, 5, 5)));
            if (i > 0) {
                lesson.link(new Link("s" + (i - 1), "s" + i, Duration.ZERO, Optional.of(Duration.ofMinutes(10))));
            }
        }
        return new ModelBuilder(lesson.build()).build();
    }

    private static Contradiction refused(boolean proven, String what, String mend, String... steps) {
        return new Contradiction(List.of(new Conflict(Conflict.Kind.NO_ORDER, List.of(steps), what, mend)), proven);
    }

    @Test
    void namesTheStepsOfTheGapsOnceAndInOrder() {
        Model model = row(3);
        assertThat(NoOrder.proven(model.gaps(), List.of(), model)).isEqualTo(refused(true,
                "No order keeps the greatest gaps between \"Step 0\", \"Step 1\", \"Step 2\" with the hours and tools there are.",
                "Lengthen one of the greatest gaps, bring more of the tools, or move a break.", "s0", "s1", "s2"));
        assertThat(NoOrder.proven(model.gaps().subList(1, 2), List.of(), model).conflicts().get(0).steps()).containsExactly("s1", "s2");
    }

    @Test
    void namesNobodyWhereNoGapIsAtFault() {
        assertThat(NoOrder.proven(List.of(), List.of("kiln", "saw"), row(2))).isEqualTo(refused(true,
                "No order keeps the greatest gaps with the hours and tools there are.",
                "With more of this it can be done: kiln, or saw. Or lengthen one of the greatest gaps."));
    }

    @Test
    void countsTheStepsBeyondFive() {
        assertThat(found(5)).isEqualTo("\"Step 0\", \"Step 1\", \"Step 2\", \"Step 3\", \"Step 4\"");
        assertThat(found(6)).isEqualTo("\"Step 0\", \"Step 1\", \"Step 2\", \"Step 3\", \"Step 4\" and 1 more step");
        assertThat(found(7)).isEqualTo("\"Step 0\", \"Step 1\", \"Step 2\", \"Step 3\", \"Step 4\" and 2 more steps");
    }

    private static String found(int steps) {
        Contradiction refused = NoOrder.notFound(row(steps));
        assertThat(refused.proven()).isFalse();
        String what = refused.conflicts().get(0).what().toString();
        assertThat(what).startsWith("No order was found that keeps the greatest gaps between ").endsWith("; one may exist.");
        return what.substring("No order was found that keeps the greatest gaps between ".length(), what.length() - "; one may exist.".length());
    }

    /** Only greatest gaps may be at fault. */
    @Test
    void passesOverStepsThatJustFollow() {
        LessonRequest lesson = LessonRequest.builder().meeting(TEN, TEN.plusHours(2)).step(new Step.Show("a", "A", Duration.ofMinutes(5)))
                .step(new Step.Show("b", "B", Duration.ofMinutes(5))).link("a", "b").build();
        assertThat(NoOrder.notFound(new ModelBuilder(lesson).build()).conflicts().get(0).what()).hasToString("No order was found that keeps the greatest gaps; one may exist.");
    }
}
