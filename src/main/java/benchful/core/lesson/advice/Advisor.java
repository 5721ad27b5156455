package benchful.core.lesson.advice;

import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.risk.ClassSimulation;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Plans and simulates a class under every single change, and under pairs of the best, on the same simulated students. First
 * stands what ends nine classes in ten in time, the least troublesome first, then the rest by the chance and the minutes gained.
 * Cost: one plan and one simulation of up to 1,000 classes for each change and pair, usually some thirty in all.
 */
public final class Advisor {

    private static final int CLASSES = 1_000;
    private static final int BEST = 6;
    private static final int PAIRS_SHOWN = 5;
    /** A pair must gain more than its better half by this much to be worth showing. */
    private static final Duration WORTH_A_PAIR = Duration.ofMinutes(5);
    private static final double WORTH_A_PAIR_IN_CHANCE = 0.03;

    /** A chance that a tutor can promise on. */
    private static final double GOOD = 0.9;
    private static final double SURE = 0.995;

    private static final Comparator<Suggestion> MOST_GAINED = Comparator
            .<Suggestion>comparingLong(suggestion -> -Math.round(suggestion.chanceGained() * 100))
            .thenComparing(Suggestion::gained, Comparator.reverseOrder())
            .thenComparing(Suggestion::preparation)
            .thenComparing(Suggestion::title);

    /** What makes the class end in time in nine of ten, by the trouble it gives; then the rest by what it gains. */
    private static final Comparator<Suggestion> BEST_FIRST = Comparator.comparing(Advisor::isGood).reversed()
            .thenComparing(suggestion -> isGood(suggestion) ? suggestion.trouble() : 0)
            .thenComparing(suggestion -> isGood(suggestion) ? suggestion.preparation() : Duration.ZERO)
            .thenComparing(MOST_GAINED);

    private final LessonPlanner planner;
    private final Costs costs;

    public Advisor(LessonPlanner planner, Costs costs) {
        this.planner = planner;
        this.costs = costs;
    }

    /**
     * @param others changes that only the caller knows, such as smaller sizes
     * @return nothing if the request itself cannot be planned
     */
    public Optional<Advice> advise(LessonRequest request, List<Change> others, Progress progress) {
        return planner.plan(request) instanceof Planned planned
                ? Optional.of(new Round(request, planned.plan(), progress).advice(others)) : Optional.empty();
    }

    /** One request's advice in the making. */
    private final class Round {
        private final LessonRequest request;
        private final int replications;
        private final LessonPlan plan;
        private final double chance;
        private final Progress progress;
        private int done;

        Round(LessonRequest request, LessonPlan plan, Progress progress) {
            this.replications = request.replications();
            this.request = request.toBuilder().replications(Math.min(CLASSES, replications)).build();
            this.plan = plan;
            this.chance = ClassSimulation.of(this.request, plan).onTime();
            this.progress = progress;
        }

        Advice advice(List<Change> others) {
            List<List<Change>> singles = Stream.concat(new Changes(request).all().stream(), others.stream()).map(List::of).toList();
            int expected = singles.size() + BEST * (BEST - 1) / 2;
            List<Suggestion> alone = tried(singles, expected);
            List<List<Change>> pairs = pairs(alone);
            List<Suggestion> together = tried(pairs, singles.size() + pairs.size()).stream().filter(pair -> isWorthIt(pair, alone))
                    .limit(PAIRS_SHOWN).toList();
            List<Suggestion> all = Stream.concat(alone.stream(), together.stream()).sorted(BEST_FIRST).toList();
            return new Advice(chance, all, !progress.isCancelled());
        }

        private List<Suggestion> tried(List<List<Change>> changes, int all) {
            List<Suggestion> tried = new ArrayList<>();
            for (List<Change> change : changes) {
                if (progress.isCancelled()) {
                    break;
                }
                suggestion(change).filter(this::gains).ifPresent(tried::add);
                progress.tried(++done, all);
            }
            tried.sort(MOST_GAINED);
            return tried;
        }

        private boolean gains(Suggestion suggestion) {
            return suggestion.gained().toMinutes() >= 1 || suggestion.chanceGained() >= 0.01;
        }

        private Optional<Suggestion> suggestion(List<Change> changes) {
            LessonRequest changed = request;
            for (Change change : changes) {
                changed = change.apply(changed);
            }
            LessonOutcome outcome = planner.plan(changed);
            return outcome instanceof Planned planned ? Optional.of(compared(changes, changed, planned.plan())) : Optional.empty();
        }

        private Suggestion compared(List<Change> changes, LessonRequest changed, LessonPlan other) {
            Duration gained = margin(other).minus(margin(plan));
            double onTime = ClassSimulation.of(changed, other).onTime();
            Duration preparation = other.preparation().total().minus(plan.preparation().total());
            LessonRequest whole = changed.toBuilder().replications(replications).build();
            return new Suggestion(changes, whole, other, gained, onTime, onTime - chance, preparation, cost(changes));
        }

        private List<List<Change>> pairs(List<Suggestion> alone) {
            List<Change> best = alone.stream().map(suggestion -> suggestion.changes().get(0)).limit(BEST).toList();
            List<List<Change>> pairs = new ArrayList<>();
            for (int i = 0; i < best.size(); i++) {
                for (int j = i + 1; j < best.size(); j++) {
                    if (best.get(i).getClass() != best.get(j).getClass() || best.get(i) instanceof Change.MoreTools) {
                        pairs.add(List.of(best.get(i), best.get(j)));
                    }
                }
            }
            return pairs;
        }

        private boolean isWorthIt(Suggestion pair, List<Suggestion> alone) {
            List<Suggestion> halves = alone.stream().filter(one -> pair.changes().containsAll(one.changes())).toList();
            return halves.stream().allMatch(half -> half.chance() < SURE && (pair.gained().minus(half.gained()).compareTo(WORTH_A_PAIR) >= 0
                    || pair.chance() - half.chance() >= WORTH_A_PAIR_IN_CHANCE));
        }
    }

    private static boolean isGood(Suggestion suggestion) {
        return suggestion.chance() >= GOOD && suggestion.plan().fits();
    }

    private static Duration margin(LessonPlan plan) {
        return plan.spare().minus(plan.over());
    }

    /** The sum, if all are known and in one currency. */
    private Optional<Money> cost(List<Change> changes) {
        List<Money> known = changes.stream().map(costs::of).flatMap(Optional::stream).toList();
        boolean whole = known.size() == changes.size()
                && known.stream().map(Money::getCurrencyUnit).distinct().count() == 1;
        return whole ? Optional.of(Money.total(known)) : Optional.empty();
    }
}
