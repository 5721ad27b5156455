package benchful.findings;

import benchful.core.SkillLevel;
import benchful.core.learning.Count;
import benchful.core.learning.CountedPace;
import benchful.core.learning.CountedPace.Estimate;
import benchful.core.learning.PlannedStep;
import benchful.core.learning.StepPace.Seen;
import benchful.core.learning.StepReview;
import benchful.core.lesson.risk.StepLengths.Length;
import benchful.projects.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * What one class shows of each step's minutes: how long it took and who had finished when against its own simulation, and what the
 * minutes were then against those typed now. What groups did counts as one, by its geometric mean.
 */
final class Evidence {
    /** Beyond this it is rather mistyped than seen. */
    private static final double MOST = 10;

    private final Reviewed reviewed;
    private final Map<String, Length> usual;
    private final Map<String, Setting> typed;
    private final ToDoubleFunction<SkillLevel> typedPace;

    /**
     * @param usual how long each step takes the class when it is simulated
     * @param typed what the tutor typed for each step
     * @param typedPace how many times as long a level takes, as the tutor typed it
     */
    Evidence(Reviewed reviewed, List<Length> usual, Map<String, Setting> typed, ToDoubleFunction<SkillLevel> typedPace) {
        this.reviewed = reviewed;
        this.usual = usual.stream().collect(Collectors.toMap(l -> PlannedStep.key(l.step(), l.group()), Function.identity()));
        this.typed = typed;
        this.typedPace = typedPace;
    }

    Map<String, Seen> seen() {
        Map<String, List<Estimate>> estimates = new LinkedHashMap<>();
        reviewed.steps().forEach(review -> estimate(review).ifPresent(e -> estimates.computeIfAbsent(review.step(), s -> new ArrayList<>()).add(e)));
        Map<String, Seen> seen = new LinkedHashMap<>();
        estimates.forEach((step, all) -> seen.put(step, new Seen(reviewed.day(), Math.exp(mean(all, Estimate::log)), mean(all, Estimate::precision))));
        return seen;
    }

    private static double mean(List<Estimate> all, ToDoubleFunction<Estimate> of) {
        return all.stream().mapToDouble(of).average().orElseThrow();
    }

    /** Against the minutes typed now; nothing where it can't be said. */
    private Optional<Estimate> estimate(StepReview review) {
        Length length = usual.get(review.key());
        double then = then(review.step());
        if (length == null || length.work() <= 0 || then <= 0) {
            return Optional.empty();
        }
        return paced(review, length).map(e -> new Estimate(e.log() + Math.log(then), e.precision())).filter(e -> Math.abs(e.log()) < Math.log(MOST));
    }

    /** Against the minutes that the class was planned with. */
    private Optional<Estimate> paced(StepReview review, Length length) {
        Double worked = review.actual() == null ? null : review.actual().toSeconds() - (reviewed.typed().contains(review.key()) ? 0 : length.idle());
        List<Count> counts = review.counts().stream().map(c -> new Count(c.after() - length.idle(), c.finished()))
                .filter(c -> c.after() > 0 && c.finished() > 0 && (worked == null || c.after() < worked)).toList();
        boolean counted = !counts.isEmpty() && !length.finished().isEmpty() && (worked == null || worked > 0);
        if (counted) {
            return Optional.of(new CountedPace(length.finished(), length.students(), length.needed()).of(counts, worked));
        }
        return worked == null || worked <= 0 ? Optional.empty() : Optional.of(new Estimate(Math.log(worked / length.work()), 1));
    }

    /** The minutes with which the class was planned, as a multiple of those typed, for students of the same level. */
    private double then(String step) {
        Optional<Step> planned = reviewed.file().project().step(step);
        Setting now = typed.get(step);
        if (planned.isEmpty() || now == null) {
            return 0;
        }
        SkillLevel students = reviewed.file().setup().level();
        double level = planned.get().student() == null ? 1 : reviewed.file().project().pace(students) / typedPace.applyAsDouble(students);
        return level * Setting.of(planned.get()).against(now);
    }
}
