package benchful.core.lesson.advice;

import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.risk.Promised;
import benchful.core.lesson.risk.Risk;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Plans and simulates a class under every single change, and under pairs of the best that do not suffice alone, on the same simulated
 * students. The suggestions come in the order that {@link Advice#ORDER} says.
 * Cost: one plan and one simulation of up to 1,000 classes for each change and pair, usually some thirty in all.
 */
public final class Advisor {

    private static final int CLASSES = 1_000;
    private static final int BEST = 6;
    private static final int PAIRS_SHOWN = 5;
    /** A pair must gain more than its better half by this much to be worth showing. */
    private static final Duration WORTH_A_PAIR = Duration.ofMinutes(5);
    private static final double WORTH_A_PAIR_IN_CHANCE = 0.03;

    private final LessonPlanner planner;
    private final Costs costs;

    public Advisor(LessonPlanner planner, Costs costs) {
        this.planner = planner;
        this.costs = costs;
    }

    /**
     * @param others changes that only the caller knows, such as smaller sizes ({@link Change.Other}); each is tried alone and in pairs
     *     with the rest, so it changes the request it is given and leaves all else in it as it is
     * @param progress asked before each change whether to go on; what was found until then is answered
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
        private final Risk risk;
        private final Progress progress;
        private int done;
        private int all;

        Round(LessonRequest request, LessonPlan order, Progress progress) {
            this.replications = request.replications();
            this.request = request.toBuilder().replications(Math.min(CLASSES, replications)).build();
            Promised now = Promised.of(this.request, order);
            this.plan = now.plan();
            this.risk = now.risk();
            this.progress = progress;
        }

        Advice advice(List<Change> others) {
            List<List<Change>> singles = Stream.concat(new Changes(request, plan.finish()).all().stream(), others.stream()).map(List::of).toList();
            all = singles.size() + BEST * (BEST - 1) / 2;
            List<Suggestion> alone = new ArrayList<>(allTried(singles));
            fewEnough(alone).ifPresent(alone::add);
            List<List<Change>> pairs = pairs(alone);
            all = done + pairs.size();
            List<Suggestion> together = allTried(pairs).stream().filter(pair -> isWorthIt(pair, alone)).limit(PAIRS_SHOWN).toList();
            return new Advice(risk.onTime(), Stream.concat(alone.stream(), together.stream()).sorted(Ranking.BEST_FIRST).toList(),
                    !progress.isCancelled());
        }

        private List<Suggestion> allTried(List<List<Change>> changes) {
            return changes.stream().map(this::tried).flatMap(Optional::stream).filter(Ranking::gains).sorted(Ranking.MOST_GAINED).toList();
        }

        /** Nothing where there is no plan, and when cancelled. */
        private Optional<Suggestion> tried(List<Change> changes) {
            if (progress.isCancelled()) {
                return Optional.empty();
            }
            LessonRequest changed = request;
            for (Change change : changes) {
                changed = change.apply(changed);
            }
            Optional<Suggestion> suggestion = planner.plan(changed) instanceof Planned planned
                    ? Optional.of(compared(changes, changed, planned.plan())) : Optional.empty();
            progress.tried(++done, Math.max(all, done));
            return suggestion;
        }

        private Suggestion compared(List<Change> changes, LessonRequest changed, LessonPlan order) {
            Promised promised = Promised.of(changed, order);
            LessonPlan other = promised.plan();
            Duration gained = margin(other).minus(margin(plan));
            double onTime = promised.risk().onTime();
            Duration preparation = other.preparation().total().minus(plan.preparation().total());
            LessonRequest whole = changed.toBuilder().replications(replications).build();
            return new Suggestion(changes, whole, other, gained, onTime, onTime - risk.onTime(), preparation, cost(changes));
        }

        /** The fewest students to turn away so that it is good, where one does not suffice and half of the class would. */
        private Optional<Suggestion> fewEnough(List<Suggestion> alone) {
            boolean oneIsNotEnough = alone.stream().anyMatch(one -> one.changes().get(0) instanceof Change.FewerStudents && !Ranking.isGood(one));
            int most = Math.min(request.headcount() / 2, request.headcount() - request.groups());
            return oneIsNotEnough && most > 1 ? fewest(2, most) : Optional.empty();
        }

        private Optional<Suggestion> fewest(int least, int most) {
            Optional<Suggestion> best = tried(List.of(new Change.FewerStudents(most))).filter(Ranking::isGood);
            int low = least;
            int high = best.isPresent() ? most : low;
            while (low < high) {
                int middle = (low + high) / 2;
                Optional<Suggestion> fewer = tried(List.of(new Change.FewerStudents(middle))).filter(Ranking::isGood);
                best = fewer.isPresent() ? fewer : best;
                low = fewer.isPresent() ? low : middle + 1;
                high = fewer.isPresent() ? middle : high;
            }
            return best;
        }

        private List<List<Change>> pairs(List<Suggestion> alone) {
            List<Change> best = alone.stream().filter(one -> !Ranking.isGood(one)).sorted(Ranking.MOST_GAINED)
                    .map(suggestion -> suggestion.changes().get(0)).limit(BEST).toList();
            List<List<Change>> pairs = new ArrayList<>();
            for (int i = 0; i < best.size(); i++) {
                for (int j = i + 1; j < best.size(); j++) {
                    if (goTogether(best.get(i), best.get(j))) {
                        pairs.add(List.of(best.get(i), best.get(j)));
                    }
                }
            }
            return pairs;
        }

        private boolean isWorthIt(Suggestion pair, List<Suggestion> alone) {
            return alone.stream().filter(one -> pair.changes().containsAll(one.changes()))
                    .allMatch(half -> pair.gained().minus(half.gained()).compareTo(WORTH_A_PAIR) >= 0
                            || pair.chance() - half.chance() >= WORTH_A_PAIR_IN_CHANCE);
        }
    }

    /** Two of a kind, or an earlier begin with a later end, are only more of one. */
    private static boolean goTogether(Change one, Change other) {
        return one instanceof Change.MoreTools || one.getClass() != other.getClass() && !(movesHours(one) && movesHours(other));
    }

    private static boolean movesHours(Change change) {
        return change instanceof Change.EarlierStart || change instanceof Change.LongerBooking;
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
