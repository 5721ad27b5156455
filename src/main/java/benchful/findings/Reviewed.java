package benchful.findings;

import benchful.classes.ClassFile;
import benchful.core.day.Course;
import benchful.core.day.HandsUp.Asked;
import benchful.core.day.Tap;
import benchful.core.learning.StepReview;
import benchful.day.Days;
import benchful.reviews.Review;
import benchful.reviews.ReviewSpec;
import benchful.reviews.ReviewSpec.MaterialNote;
import benchful.web.forms.SpecFormat;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One reviewed class, as findings are made of it; it outlives the transaction.
 *
 * @param craftClass its identifier
 * @param evidence tells this review, with the figures in it, from all others; what is said in words is no new data
 * @param students who came; null for all
 * @param materials what was noted of them, by name
 * @param asked how often hands went up, by the keys of the steps of which it is known
 * @param breaks how many times as long as planned breaks of so many planned minutes were, where it is known; two of as many count as one, by their geometric mean
 * @param waited names of the tools that students waited for
 * @param typed keys of the steps whose minutes were typed, rather than when they ended
 */
record Reviewed(long craftClass, String evidence, LocalDate day, ClassFile file, Integer students, List<StepReview> steps, Map<String, MaterialNote> materials,
        Map<String, Asked> asked, Map<Duration, Double> breaks, Set<String> waited, Set<String> typed) {
    /** Beyond this, either way, a break is rather mistyped than seen, or was left out. */
    private static final double MOST = 4;

    /**
     * @param counted who had finished when, as it was tapped on the day
     * @param asked the same of hands that went up
     */
    static Reviewed of(Review review, List<Tap> counted, Map<String, Asked> asked) {
        ReviewSpec sheet = review.sheet();
        Set<String> typed = sheet.steps().entrySet().stream().filter(e -> e.getValue().took() != null).map(Map.Entry::getKey).collect(Collectors.toSet());
        String evidence = review.craftClass().id() + ":" + Integer.toHexString(SpecFormat.json().valueToTree(sheet.figures()).toString().hashCode()) + (counted.isEmpty() ? "" : ":" + counted.size());
        return new Reviewed(review.craftClass().id(), evidence, review.craftClass().startsAt().toLocalDate(), review.plan().file(),
                sheet.students(), review.steps(counted).stream().filter(s -> s.actual() != null || !s.counts().isEmpty()).toList(), sheet.materials(), asked, breaks(review), Set.copyOf(sheet.waited()), typed);
    }

    private static Map<Duration, Double> breaks(Review review) {
        Map<Duration, List<Double>> logs = new TreeMap<>();
        for (Course.Pause planned : Days.breaks(review.plan())) {
            ReviewSpec.BreakNote note = review.sheet().breaks().get(planned.key());
            double log = note == null || note.took() == null || planned.length().isZero() ? Double.NaN : Math.log((double) note.took().toSeconds() / planned.length().toSeconds());
            if (Math.abs(log) <= Math.log(MOST)) {
                logs.computeIfAbsent(planned.length(), x -> new ArrayList<>()).add(log);
            }
        }
        Map<Duration, Double> multiples = new TreeMap<>();
        logs.forEach((length, all) -> multiples.put(length, Math.exp(all.stream().mapToDouble(x -> x).average().orElseThrow())));
        return multiples;
    }
}
