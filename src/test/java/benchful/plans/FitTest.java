package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.order.SolverPlanner;
import benchful.web.SheetReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FitTest {
    private final List<LessonRequest> planned = new ArrayList<>();
    private final Fit fit = new Fit(request -> {
        planned.add(request);
        return new SolverPlanner().plan(request);
    });

    @Test
    void plansAClassThatFitsOnceHoweverOftenItIsAsked() {
        assertThat(List.of(fit.of(ending("13:00")), fit.of(ending("13:00")), fit.of(ending("13:00")))).containsOnly(true);
        assertThat(planned).hasSize(1);
    }

    @Test
    void asksAgainWhereAnythingChangedAndWhereItDidNotFit() {
        assertThat(List.of(fit.of(ending("13:00")), fit.of(ending("10:30")), fit.of(ending("10:30")), fit.of(ending("13:00")))).containsExactly(true, false, false, true);
        assertThat(planned).hasSize(3);
        assertThat(fit.of(ending("12:45"))).isTrue();
        assertThat(planned).hasSize(4);
    }

    /** Half an hour of work for four, with invented times. */
    private static ClassFile ending(String end) {
        String file = """
                project:
                  name: Folded box
                  craft: bookbinding
                  level: improver
                  sizes: [{name: one}]
                  steps:
                    - {id: show, title: Show the folds, kind: show, lasts: 15 min}
                    - {id: fold, title: Fold the box, kind: make, student: {quick: 20 min, usual: 25 min, slow: 30 min}}
                class:
                  headcount: 4
                  level: improver
                  meetings: [{date: 2027-03-06, starts: "10:00", ends: "%s"}]
                """.formatted(end);
        return ((SheetReader.Read<ClassFile>) new ClassFiles().read(file.getBytes(StandardCharsets.UTF_8))).sheet();
    }
}
