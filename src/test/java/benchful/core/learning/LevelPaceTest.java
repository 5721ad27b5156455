package benchful.core.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.learning.StepPace.Seen;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LevelPaceTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 6);

    private static Map<String, Seen> seen(double knot, double saw) {
        return Map.of("knot", new Seen(TODAY, knot), "saw", new Seen(TODAY, saw));
    }

    /** Worked out by hand: both steps 1.3 times what the others took, one class of each, so a precision of a half against a prior of a quarter. */
    @Test
    void putsDownToTheLevelWhatItsClassesTakeMoreInAllSteps() {
        LevelPace pace = LevelPace.of(List.of(seen(1.3, 1.95)), List.of(seen(1, 1.5)), TODAY).orElseThrow();
        assertThat(pace.classes()).isEqualTo(1);
        assertThat(pace.after().mean()).isCloseTo(Math.log(1.3) * 0.5 / 0.75, within(1e-12));
        assertThat(pace.multiple()).isBetween(pace.least(), pace.most());
    }

    @Test
    void findsNothingWhereTheStepsWereOffForBothAlike() {
        assertThat(LevelPace.of(List.of(seen(1.6, 1.6), seen(1.6, 1.6)), List.of(seen(1.6, 1.6)), TODAY).orElseThrow().multiple()).isCloseTo(1, within(1e-12));
    }

    @Test
    void comparesOnlyStepsThatBothDid() {
        LevelPace pace = LevelPace.of(List.of(seen(1.3, 9)), List.of(Map.of("knot", new Seen(TODAY, 1))), TODAY).orElseThrow();
        assertThat(pace.after().mean()).isCloseTo(Math.log(1.3) * 0.5 / 0.75, within(1e-12));
        assertThat(LevelPace.of(List.of(Map.of("saw", new Seen(TODAY, 2))), List.of(Map.of("knot", new Seen(TODAY, 1))), TODAY)).isEmpty();
        assertThat(LevelPace.of(List.of(), List.of(seen(1, 1)), TODAY)).isEmpty();
    }

    @Test
    void isSurerAfterMoreClassesAndLetsOldOnesCountForLess() {
        LevelPace one = LevelPace.of(List.of(seen(1.3, 1.3)), List.of(seen(1, 1)), TODAY).orElseThrow();
        LevelPace three = LevelPace.of(List.of(seen(1.3, 1.3), seen(1.3, 1.3), seen(1.3, 1.3)), List.of(seen(1, 1), seen(1, 1), seen(1, 1)), TODAY).orElseThrow();
        assertThat(three.multiple()).isBetween(one.multiple(), 1.3);
        assertThat(Math.log(three.most() / three.least())).isLessThan(Math.log(one.most() / one.least()));
        assertThat(LevelPace.of(List.of(seen(1.3, 1.3)), List.of(seen(1, 1)), TODAY.plusYears(8)).orElseThrow().multiple()).isLessThan(one.multiple());
    }

    /** Drawn levels, off as the prior has it, and steps that are off by much more: what they share by chance is not the level's. */
    @Test
    void coversTheTruthOfDrawnLevelsAtTheStatedRate() {
        Random random = new Random(20_270_306);
        int inside = 0;
        int drawn = 2000;
        for (int i = 0; i < drawn; i++) {
            double level = 0.24 * random.nextGaussian();
            double knot = 0.38 * random.nextGaussian();
            double saw = 0.38 * random.nextGaussian();
            int classes = 1 + random.nextInt(4);
            List<Map<String, Seen>> own = new ArrayList<>();
            List<Map<String, Seen>> others = new ArrayList<>();
            for (int c = 0; c < classes; c++) {
                own.add(seen(Math.exp(knot + level + 0.12 * random.nextGaussian()), Math.exp(saw + level + 0.12 * random.nextGaussian())));
                others.add(new HashMap<>(seen(Math.exp(knot + 0.12 * random.nextGaussian()), Math.exp(saw + 0.12 * random.nextGaussian()))));
            }
            LevelPace pace = LevelPace.of(own, others, TODAY).orElseThrow();
            inside += Math.exp(level) >= pace.least() && Math.exp(level) <= pace.most() ? 1 : 0;
        }
        System.out.printf("of a level's pace the interval of nine in ten covers %.1f %% of %d true ones%n", 100.0 * inside / drawn, drawn);
        assertThat(inside / (double) drawn).isBetween(0.87, 0.98);
    }
}
