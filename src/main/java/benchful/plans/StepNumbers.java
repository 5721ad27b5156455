package benchful.plans;

import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The numbers that steps carry on the class page, in its picture and on every print-out: 1, 2, 3 as the class comes to them,
 * so that students read their handout from top to bottom. A wait comes before the work that fills it; one that ends at home comes last.
 */
public final class StepNumbers {
    private static final Comparator<Block> AS_THE_CLASS_COMES =
            Comparator.comparing((Block block) -> block.lane() == Lane.HOME).thenComparing(Block::start).thenComparing(block -> !block.kind().isUnattended());

    private StepNumbers() {}

    /** Number by step id, in rising order. */
    public static Map<String, Integer> of(LessonPlan plan) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        plan.blocks().stream().sorted(AS_THE_CLASS_COMES).forEach(block -> numbers.putIfAbsent(block.step(), numbers.size() + 1));
        return Collections.unmodifiableMap(numbers);
    }
}
