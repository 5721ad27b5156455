package benchful.core.learning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * How one step went over several classes of a project.
 *
 * @param classes in how many it was typed
 * @param over in how many of them it ran over
 * @param ratio median of actual to planned time [1 = as planned]
 */
public record Habit(String step, String title, int classes, int over, double ratio) {

    /** Ran over in two classes or more, and in at least half of them. */
    public boolean againAndAgain() {
        return over >= 2 && 2 * over >= classes;
    }

    /** Steps by how far they run over, worst first; a step that was never typed is left out. What groups did counts once for a class. */
    public static List<Habit> over(List<List<StepReview>> classes) {
        Map<String, List<StepReview>> bySteps = new LinkedHashMap<>();
        classes.forEach(reviews -> typed(reviews).forEach((step, groups) ->
                bySteps.computeIfAbsent(step, s -> new ArrayList<>()).add(StepReview.together(groups))));
        return bySteps.values().stream()
                .map(Habit::of)
                .sorted(Comparator.comparingDouble(Habit::ratio).reversed())
                .toList();
    }

    private static Map<String, List<StepReview>> typed(List<StepReview> reviews) {
        return reviews.stream().filter(r -> r.actual() != null && !r.planned().isZero())
                .collect(Collectors.groupingBy(StepReview::step, LinkedHashMap::new, Collectors.toList()));
    }

    private static Habit of(List<StepReview> reviews) {
        StepReview last = reviews.get(reviews.size() - 1);
        int over = (int) reviews.stream().filter(StepReview::ranOver).count();
        return new Habit(last.step(), last.title(), reviews.size(), over, median(reviews));
    }

    private static double median(List<StepReview> reviews) {
        double[] ratios = reviews.stream()
                .mapToDouble(r -> (double) Objects.requireNonNull(r.actual()).toSeconds() / r.planned().toSeconds())
                .sorted()
                .toArray();
        int middle = ratios.length / 2;
        return ratios.length % 2 == 1 ? ratios[middle] : (ratios[middle - 1] + ratios[middle]) / 2;
    }
}
