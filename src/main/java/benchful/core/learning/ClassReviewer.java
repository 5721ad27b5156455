package benchful.core.learning;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Puts what really happened beside the plan. Where only the end of a step was typed, it took the time since the last
 * hands-on step before it that has an end, pauses left out; a first step counts from the start of the class. A wait whose end
 * was typed counts from the planned start moved by as much as the class was late then.
 */
public final class ClassReviewer {
    private final LocalDateTime start;
    private final List<Pause> pauses;

    /** @param start when the class really began */
    public ClassReviewer(LocalDateTime start, List<Pause> pauses) {
        this.start = start;
        this.pauses = List.copyOf(pauses);
    }

    /**
     * @param planned the steps of the plan
     * @param actuals what was typed, at most one for a step
     * @return one review for each planned step, in order of their planned start
     */
    public List<StepReview> review(List<PlannedStep> planned, List<Actual> actuals) {
        Map<String, Actual> typed = actuals.stream().collect(Collectors.toMap(Actual::step, Function.identity()));
        List<StepReview> reviews = new ArrayList<>();
        LocalDateTime since = start;
        boolean unbroken = true;
        for (PlannedStep p : planned.stream().sorted(Comparator.comparing(PlannedStep::start)).toList()) {
            Actual a = typed.get(p.step());
            LocalDateTime began = p.handsOn() ? (unbroken ? since : null) : p.start().plus(late(planned, since, p));
            reviews.add(new StepReview(p.step(), p.title(), p.length(), took(a, began, p.handsOn())));
            if (p.handsOn()) {
                LocalDateTime ended = ended(a, since, unbroken);
                unbroken = ended != null;
                since = ended == null ? since : ended;
            }
        }
        return List.copyOf(reviews);
    }

    /** How late the class was when it last ended a step; zero before that. */
    private static Duration late(List<PlannedStep> planned, LocalDateTime since, PlannedStep wait) {
        return planned.stream()
                .filter(p -> p.handsOn() && !p.end().isAfter(wait.start()))
                .map(PlannedStep::end)
                .max(Comparator.naturalOrder())
                .map(end -> Duration.between(end, since))
                .orElse(Duration.ZERO);
    }

    private Duration took(Actual a, LocalDateTime began, boolean handsOn) {
        if (a == null || a.took() != null) {
            return a == null ? null : a.took();
        }
        if (a.ended() == null || began == null || a.ended().isBefore(began)) {
            return null;
        }
        Duration clock = Duration.between(began, a.ended());
        return handsOn ? clock.minus(paused(began, a.ended())) : clock;
    }

    private Duration paused(LocalDateTime from, LocalDateTime to) {
        return pauses.stream().map(p -> p.within(from, to)).reduce(Duration.ZERO, Duration::plus);
    }

    /** Where minutes alone were typed, the end is worked out from the last known one; null where it can't be. */
    private LocalDateTime ended(Actual a, LocalDateTime since, boolean unbroken) {
        if (a == null || (a.ended() == null && (a.took() == null || !unbroken))) {
            return null;
        }
        return a.ended() != null ? a.ended() : worked(since, a.took());
    }

    private LocalDateTime worked(LocalDateTime from, Duration took) {
        LocalDateTime end = from.plus(took);
        LocalDateTime moved = from.plus(took).plus(paused(from, end));
        while (moved.isAfter(end)) {
            end = moved;
            moved = from.plus(took).plus(paused(from, end));
        }
        return end;
    }
}
