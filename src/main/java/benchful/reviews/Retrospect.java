package benchful.reviews;

import benchful.classes.ClassSetup;
import benchful.classes.Promise;
import benchful.core.learning.Outcome;
import benchful.core.learning.PlannedStep;
import benchful.core.learning.StepReview;
import benchful.core.learning.Tendency;
import benchful.web.Formats;
import benchful.web.Trouble;
import io.quarkus.qute.TemplateData;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Over all reviewed classes: how far they ran over by what they have in common, whether the promised times were kept, what ran short,
 * and what was last said of each project.
 *
 * @param all every class together; null where none has told all its times
 * @param promised those of which nine in ten were to keep their time; null where there is none
 * @param by what they have in common, in words, each with its groups
 * @param sayings of each project its last note
 */
@TemplateData
public record Retrospect(Tendency all, Tendency promised, Map<String, List<Tendency>> by, List<Shortage> shortages, List<Saying> sayings, List<Trouble> troubles) {

    private static final double NINE_IN_TEN = 0.9;

    /** The first line of what was last noted of a project. */
    @TemplateData
    public record Saying(long project, String name, LocalDate day, String words) {}

    /** One reviewed class, as it outlives the transaction. */
    record Part(String project, ClassSetup setup, String room, Outcome outcome, ReviewSpec sheet) {

        /** Without an outcome where not the whole class was timed. */
        static Part of(Review review) {
            List<StepReview> steps = review.steps();
            Map<String, PlannedStep> planned = review.plan().steps().stream().collect(Collectors.toMap(PlannedStep::key, Function.identity()));
            List<StepReview> handsOn = steps.stream().filter(s -> planned.get(s.key()).handsOn()).toList();
            boolean whole = !handsOn.isEmpty() && handsOn.stream().allMatch(s -> s.actual() != null && s.group() == 0);
            Duration over = handsOn.stream().map(StepReview::difference).reduce(Duration.ZERO, Duration::plus);
            LocalDate day = review.craftClass().startsAt().toLocalDate();
            return new Part(review.craftClass().project().name(), review.plan().file().setup(), review.plan().file().venue() == null ? "not known" : review.plan().file().venue().name(),
                    whole ? new Outcome(day, over) : null, review.sheet());
        }
    }

    static Retrospect of(List<Part> parts, List<Saying> sayings, List<Trouble> troubles) {
        List<Part> timed = parts.stream().filter(p -> p.outcome() != null).toList();
        Map<String, List<Tendency>> by = new LinkedHashMap<>();
        if (!timed.isEmpty()) {
            by.put("Project", grouped(timed, Part::project));
            by.put("Level", grouped(timed, p -> p.setup().level().word()));
            by.put("Students", grouped(timed, p -> band(p.setup().headcount())));
            by.put("Room", grouped(timed, Part::room));
            List<Tendency> reasons = reasons(timed);
            if (!reasons.isEmpty()) {
                by.put("Reason", reasons);
            }
            by.put("Helpers", grouped(timed, p -> p.setup().helpers() == 0 ? "none" : Formats.counted(p.setup().helpers(), "helper")));
        }
        List<Part> promised = timed.stream().filter(p -> p.setup().promise() == Promise.NINE_IN_TEN).toList();
        return new Retrospect(together(timed), together(promised), by, shortages(parts), sayings, troubles);
    }

    private static Tendency together(List<Part> parts) {
        return parts.isEmpty() ? null : Tendency.of("All classes", outcomes(parts));
    }

    /** Whether fewer than nine in ten keep their time, as far as can be told. */
    public boolean tooShort() {
        return promised.most() < NINE_IN_TEN;
    }

    private static List<Tendency> grouped(List<Part> parts, Function<Part, String> common) {
        return parts.stream().collect(Collectors.groupingBy(common, LinkedHashMap::new, Collectors.toList())).entrySet().stream()
                .map(g -> Tendency.of(g.getKey(), outcomes(g.getValue()))).sorted(Comparator.comparing(Tendency::middle).reversed()).toList();
    }

    /** A class counts for each of its reasons. */
    private static List<Tendency> reasons(List<Part> parts) {
        Map<String, List<Part>> of = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        parts.forEach(part -> part.sheet().reasons().forEach(why -> of.computeIfAbsent(why, w -> new ArrayList<>()).add(part)));
        return of.entrySet().stream().map(e -> Tendency.of(e.getKey(), outcomes(e.getValue()))).sorted(Comparator.comparing(Tendency::classes).reversed()).toList();
    }

    private static List<Outcome> outcomes(List<Part> parts) {
        return parts.stream().map(Part::outcome).toList();
    }

    private static String band(int students) {
        return students <= 5 ? "1 to 5" : students <= 10 ? "6 to 10" : students <= 15 ? "11 to 15" : "more than 15";
    }

    private static List<Shortage> shortages(List<Part> parts) {
        Map<String, int[]> counts = new LinkedHashMap<>();
        for (Part part : parts) {
            part.sheet().materials().forEach((material, note) -> {
                int[] count = counts.computeIfAbsent(material, m -> new int[2]);
                count[0] += note.missing() != null && note.missing().amount().signum() > 0 ? 1 : 0;
                count[1] += note.broken() != null && note.broken().amount().signum() > 0 ? 1 : 0;
            });
        }
        return counts.entrySet().stream().map(e -> new Shortage(e.getKey(), e.getValue()[0], e.getValue()[1])).filter(s -> s.shortIn() + s.brokenIn() > 0)
                .sorted(Comparator.comparing(Shortage::shortIn).thenComparing(Shortage::brokenIn).reversed()).toList();
    }

    /** Of reviews in order of time, the latest last. */
    static List<Saying> sayings(List<Review> reviews) {
        Map<Long, Saying> last = new LinkedHashMap<>();
        reviews.forEach(r -> saying(r).ifPresent(s -> last.put(s.project(), s)));
        return new ArrayList<>(last.values());
    }

    private static Optional<Saying> saying(Review review) {
        return review.readable().map(ReviewSpec::notes).flatMap(n -> n.lines().filter(l -> !l.isBlank()).findFirst())
                .map(words -> new Saying(review.craftClass().project().id(), review.craftClass().project().name(), review.craftClass().startsAt().toLocalDate(), words));
    }
}
