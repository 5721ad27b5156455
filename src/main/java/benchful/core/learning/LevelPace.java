package benchful.core.learning;

import benchful.core.learning.NormalInverseGamma.Weighted;
import benchful.core.learning.StepPace.Seen;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How much longer or shorter students of a level take than was typed of them, in all that they do by themselves: their classes are held
 * against those of the students whose times were typed, step by step. The model is explained at the package.
 *
 * @param classes of the level
 * @param after what is believed of the logarithm of the multiple of what was typed
 */
public record LevelPace(int classes, NormalInverseGamma after) implements Multiple {
    /** What was typed of a level is off by a quarter or so (sqrt(v / k) = 0.24): common practice, no source. */
    static final NormalInverseGamma PRIOR = new NormalInverseGamma(0, 0.25, 3, 2 * 0.12 * 0.12);

    /**
     * @param ofLevel classes of the level, each with what was seen of its steps
     * @param others  the same of the students whose times were typed
     * @return nothing where they have no step in common
     */
    public static Optional<LevelPace> of(List<Map<String, Seen>> ofLevel, List<Map<String, Seen>> others, LocalDate today) {
        List<Weighted> values = new ArrayList<>();
        ofLevel.forEach(one -> against(one, others, today).ifPresent(values::add));
        return values.isEmpty() ? Optional.empty() : Optional.of(new LevelPace(values.size(), PRIOR.updated(values)));
    }

    /** The mean over the steps that both have; its precision is that of a difference from the mean of so many. */
    private static Optional<Weighted> against(Map<String, Seen> one, List<Map<String, Seen>> others, LocalDate today) {
        double sum = 0;
        double counts = 0;
        double weight = 0;
        int steps = 0;
        for (Map.Entry<String, Seen> step : one.entrySet()) {
            List<Weighted> beside = others.stream().filter(o -> o.containsKey(step.getKey())).map(o -> o.get(step.getKey()).weighted(today)).toList();
            double all = beside.stream().mapToDouble(Weighted::counts).sum();
            if (all > 0) {
                Weighted own = step.getValue().weighted(today);
                sum += own.value() - beside.stream().mapToDouble(w -> w.counts() * w.value()).sum() / all;
                counts += all;
                weight = own.weight();
                steps++;
            }
        }
        double usual = counts / Math.max(1, steps);
        return steps == 0 ? Optional.empty() : Optional.of(new Weighted(sum / steps, weight, usual / (1 + usual)));
    }
}
