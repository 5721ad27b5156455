package benchful.core.learning;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Puts what really happened beside the plan. Where only the end of a step was typed, it took the time since the last
 * hands-on step before it that has an end, pauses left out; a first step counts from the start of the class. Groups go on side
 * by side: what one group does follows what that group or the whole class did, and what the whole class does follows what all
 * groups did. A wait whose end was typed counts from the planned start moved by as much as the class was late then.
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
     * @param actuals what was typed, at most one for a step and group
     * @return one review for each planned step, in order of their planned start
     */
    public List<StepReview> review(List<PlannedStep> planned, List<Actual> actuals) {
        return review(planned, actuals, List.of());
    }

    /** @param counted of who had finished when; of a step of which it is not known when it could begin nothing is made of it */
    public List<StepReview> review(List<PlannedStep> planned, List<Actual> actuals, List<Counted> counted) {
        Map<String, Actual> typed = actuals.stream().collect(Collectors.toMap(Actual::key, Function.identity()));
        Course course = new Course(counted.stream().collect(Collectors.groupingBy(Counted::key)));
        return planned.stream().sorted(Comparator.comparing(PlannedStep::start)).map(p -> course.next(p, typed.get(p.key()))).toList();
    }

    /** The class as it went on, step by step. */
    private final class Course {
        /** When each group last ended a step, and under 0 the whole class; null where that is not known. */
        private final Map<Integer, @Nullable LocalDateTime> ended = new HashMap<>();
        private final List<Known> known = new ArrayList<>();
        private final Map<String, List<Counted>> counted;

        Course(Map<String, List<Counted>> counted) {
            this.counted = counted;
            ended.put(0, start);
        }

        StepReview next(PlannedStep p, @Nullable Actual a) {
            @Nullable LocalDateTime began = p.handsOn() ? free(p.group()) : p.start().plus(late(p));
            if (p.handsOn()) {
                end(p, ended(a, began));
            }
            return new StepReview(p.step(), p.group(), p.title(), p.length(), took(a, began, p.handsOn()), counts(p, began));
        }

        private List<Count> counts(PlannedStep p, @Nullable LocalDateTime began) {
            return began == null || !p.handsOn() ? List.of() : counted.getOrDefault(p.key(), List.of()).stream().filter(c -> c.at().isAfter(began))
                    .map(c -> new Count(worked(began, c.at()), c.finished())).toList();
        }

        private double worked(LocalDateTime from, LocalDateTime to) {
            return Duration.between(from, to).minus(paused(from, to)).toMillis() / 1000.0;
        }

        /** When a group, or for 0 everybody, was free for the next step; null where that is not known. */
        private @Nullable LocalDateTime free(int group) {
            if (group > 0) {
                return ended.containsKey(group) ? ended.get(group) : ended.get(0);
            }
            return ended.containsValue(null) ? null : ended.values().stream().max(Comparator.naturalOrder()).orElseThrow();
        }

        private void end(PlannedStep p, @Nullable LocalDateTime moment) {
            if (p.group() == 0) {
                ended.clear();
            }
            ended.put(p.group(), moment);
            if (moment != null) {
                known.add(new Known(p, Duration.between(p.end(), moment)));
            }
        }

        /** How late those who wait were when they last ended a step; zero where that is not known. */
        private Duration late(PlannedStep wait) {
            return known.stream().filter(k -> k.before(wait)).max(Comparator.comparing(k -> k.step().end())).map(Known::late).orElse(Duration.ZERO);
        }
    }

    /** @param late how much later than planned it ended */
    private record Known(PlannedStep step, Duration late) {
        boolean before(PlannedStep wait) {
            boolean same = step.group() == 0 || wait.group() == 0 || step.group() == wait.group();
            return same && !step.end().isAfter(wait.start());
        }
    }

    private @Nullable Duration took(@Nullable Actual a, @Nullable LocalDateTime began, boolean handsOn) {
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

    /** Where minutes alone were typed, the end is worked out from when it began; null where it can't be. */
    private @Nullable LocalDateTime ended(@Nullable Actual a, @Nullable LocalDateTime began) {
        if (a == null || a.ended() != null) {
            return a == null ? null : a.ended();
        }
        return a.took() == null || began == null ? null : worked(began, a.took());
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
