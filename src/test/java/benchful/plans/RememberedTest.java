package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.core.quantity.Quantity;
import benchful.web.forms.SpecReader;
import benchful.web.tasks.Memory;
import benchful.web.tasks.Workroom;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RememberedTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 2, 1);

    private final List<LessonRequest> planned = new ArrayList<>();
    private final LessonPlanner counting = request -> {
        planned.add(request);
        return new SolverPlanner().plan(request);
    };
    private final Remembered remembered = new Remembered(counting, new Memory(new Workroom(2, 10), 10_000));
    private final ClassPlanner planner = new ClassPlanner(remembered);

    @Test
    void plansALessonOnceHoweverOftenAndOnWhateverPageItIsAsked() {
        assertThat(List.of(planner.fits(ending("13:00", "4 m")), planner.fits(ending("13:00", "4 m")))).containsOnly(true);
        assertThat(planner.plan(ending("13:00", "4 m")).lesson().fits()).isTrue();
        assertThat(planned).hasSize(1);
    }

    @Test
    void plansAnewWhereAnythingOfTheLessonChangedAndNotWhereStockMoved() {
        assertThat(List.of(planner.fits(ending("13:00", "4 m")), planner.fits(ending("10:30", "4 m")), planner.fits(ending("13:00", "1 m")))).containsExactly(true, false, true);
        assertThat(planned).hasSize(2);
    }

    @Test
    void answersAsIfItHadNotBeenAskedBefore() {
        ClassFile file = ending("13:00", "4 m");
        ClassPlan first = planner.plan(file, TODAY);
        ClassPlan again = planner.plan(ending("13:00", "4 m"), TODAY);
        assertThat(again).isEqualTo(first).isEqualTo(freshly(file));
    }

    @Test
    void reckonsWithWhatLiesOnTheShelfNow() {
        assertThat(bought("4 m")).isEqualTo(Quantity.parse("0 m"));
        assertThat(bought("1 m").signum()).isPositive();
    }

    private Quantity bought(String onHand) {
        return planner.plan(ending("13:00", onHand), TODAY).materials().materials().get(0).bought().missing();
    }

    private static ClassPlan freshly(ClassFile file) {
        return ComputedPlans.planner(new SolverPlanner()).plan(file, TODAY);
    }

    /** Half an hour of work for four, with invented times. */
    private static ClassFile ending(String end, String onHand) {
        String file = """
                project:
                  name: Folded box
                  craft: bookbinding
                  level: improver
                  sizes: [{name: one}]
                  materials: [{material: paper tape, amount: 80 cm}]
                  steps:
                    - {id: show, title: Show the folds, kind: show, lasts: 15 min}
                    - {id: fold, title: Fold the box, kind: make, student: {quick: 20 min, usual: 25 min, slow: 30 min}}
                class:
                  headcount: 4
                  level: improver
                  meetings: [{date: 2027-03-06, starts: "10:00", ends: "%s"}]
                materials:
                  - {name: paper tape, unit: m, on_hand: %s}
                """.formatted(end, onHand);
        return ((SpecReader.Read<ClassFile>) BroughtHazards.reader().read(file.getBytes(StandardCharsets.UTF_8))).sheet();
    }
}
