package benchful.plans;

import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The numbers that steps carry on the class page, in its picture and on every print-out: 1, 2, 3 as the class comes to them,
 * so that students read their handout from top to bottom. A wait comes before the work that fills it; one that ends at home comes last.
 */
public final class StepNumbers {
    private StepNumbers() {}

    /** Number by step id, in rising order. */
    public static Map<String, Integer> of(LessonPlan plan) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        Comparator<Block> asTheClassComes = Comparator.comparing((Block block) -> block.lane() == Lane.HOME).thenComparing(block -> comes(plan, block))
                .thenComparing(block -> !block.kind().isUnattended());
        plan.blocks().stream().sorted(asTheClassComes).forEach(block -> numbers.putIfAbsent(block.step(), numbers.size() + 1));
        return Collections.unmodifiableMap(numbers);
    }

    /** A wait on the clock is that of the last student; where the first are at the next step by then, they have waited before it. */
    private static LocalDateTime comes(LessonPlan plan, Block block) {
        return plan.blocks().stream().filter(other -> block.kind().isUnattended() && other.lane() == Lane.CLASS)
                .filter(other -> other.start().isBefore(block.start()) && other.end().isAfter(block.end())).map(Block::start).min(Comparator.naturalOrder()).orElse(block.start());
    }
}
