package benchful.core.lesson;

import java.time.Duration;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What the tutor does before the class. */
public record Preparation(List<Item> items) {

    /** One step done ahead, with the tutor's time for the whole class. */
    public record Item(String step, String title, Duration length, Reason reason) {
    }

    public Preparation {
        items = List.copyOf(items);
    }

    public Duration total() {
        return items.stream().map(Item::length).reduce(Duration.ZERO, Duration::plus);
    }

    /**
     * What goes with steps that are prepared: the wait behind them (it has dried before the class) unless what it holds must be used
     * in time, and the demonstration of what nobody makes in the class.
     */
    static final class Whole {
        private final List<Step> steps;
        private final List<Link> links;

        Whole(List<Step> steps, List<Link> links) {
            this.steps = steps;
            this.links = links;
        }

        Set<String> with(Collection<String> prepared) {
            Set<String> all = new HashSet<>(prepared);
            Set<String> over = steps.stream().filter(step -> step.kind().isBeforeClass()).map(Step::id).collect(Collectors.toSet());
            over.addAll(all);
            boolean more = !all.isEmpty();
            while (more) {
                List<String> next = steps.stream().filter(step -> !over.contains(step.id()) && goesAlong(step, over, all)).map(Step::id).toList();
                all.addAll(next);
                over.addAll(next);
                more = !next.isEmpty();
            }
            return Set.copyOf(all);
        }

        private boolean goesAlong(Step step, Set<String> over, Set<String> prepared) {
            return switch (step.kind()) {
                case WAIT -> ((Step.Wait) step).greatest().isEmpty() && areAll(before(step), over, prepared);
                case SHOW -> areAll(after(step), over, prepared);
                case MAKE, TOGETHER, AHEAD, BETWEEN, HOMEWORK, COLLECT -> false;
            };
        }

        private static boolean areAll(List<String> others, Set<String> over, Set<String> prepared) {
            return over.containsAll(others) && others.stream().anyMatch(prepared::contains);
        }

        private List<String> before(Step step) {
            return links.stream().filter(link -> link.to().equals(step.id())).map(Link::from).toList();
        }

        private List<String> after(Step step) {
            return links.stream().filter(link -> link.from().equals(step.id())).map(Link::to).toList();
        }
    }
}
