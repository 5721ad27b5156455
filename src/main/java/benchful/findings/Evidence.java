package benchful.findings;

import benchful.core.SkillLevel;
import benchful.core.learning.PlannedStep;
import benchful.core.learning.StepPace.Seen;
import benchful.core.learning.StepReview;
import benchful.core.lesson.risk.StepLengths.Length;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What one class shows of each step's minutes: how long it took against its own simulation, and what the minutes were then against
 * those typed now. What groups did counts as one, by its geometric mean.
 */
final class Evidence {
    /** Beyond this it is rather mistyped than seen. */
    private static final double MOST = 10;

    private final Reviewed reviewed;
    private final Map<String, Length> usual;
    private final ProjectSpec project;
    private final Map<String, Setting> typed;

    /**
     * @param usual how long each step takes the class when it is simulated
     * @param project as it is now
     * @param typed what the tutor typed for each step
     */
    Evidence(Reviewed reviewed, List<Length> usual, ProjectSpec project, Map<String, Setting> typed) {
        this.reviewed = reviewed;
        this.usual = usual.stream().collect(Collectors.toMap(l -> PlannedStep.key(l.step(), l.group()), Function.identity()));
        this.project = project;
        this.typed = typed;
    }

    Map<String, Seen> seen() {
        Map<String, List<Double>> logs = new LinkedHashMap<>();
        reviewed.steps().forEach(review -> multiple(review).ifPresent(m -> logs.computeIfAbsent(review.step(), s -> new ArrayList<>()).add(Math.log(m))));
        Map<String, Seen> seen = new LinkedHashMap<>();
        logs.forEach((step, all) -> seen.put(step, new Seen(reviewed.day(), Math.exp(all.stream().mapToDouble(x -> x).average().orElseThrow()))));
        return seen;
    }

    /** Against the minutes typed now; nothing where it can't be said. */
    private Optional<Double> multiple(StepReview review) {
        String key = review.key();
        Length length = usual.get(key);
        double then = then(review.step());
        if (length == null || length.work() <= 0 || then <= 0) {
            return Optional.empty();
        }
        double worked = review.actual().toSeconds() - (reviewed.typed().contains(key) ? 0 : length.idle());
        double multiple = worked / length.work() * then;
        return multiple > 1 / MOST && multiple < MOST ? Optional.of(multiple) : Optional.empty();
    }

    /** The minutes with which the class was planned, as a multiple of those typed now, for students of the same level. */
    private double then(String step) {
        Optional<Step> planned = reviewed.file().project().step(step);
        Setting now = typed.get(step);
        if (planned.isEmpty() || now == null) {
            return 0;
        }
        SkillLevel before = reviewed.file().project().timesOf();
        double level = planned.get().student() == null ? 1 : project.timesOf().paceAgainst(before);
        return level * Setting.of(planned.get()).against(now);
    }
}
