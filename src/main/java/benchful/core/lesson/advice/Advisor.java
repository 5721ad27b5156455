package benchful.core.lesson.advice;

import benchful.core.Progress;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.risk.Calls;
import benchful.core.lesson.risk.Promised;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * Tries every single change, and pairs of the best that do not suffice alone, on the same simulated students: each first in a short
 * simulation of a quickly made order, and the best of them then just as the class itself is planned, so that their figures are those
 * of the class's page once the change is made. The suggestions come in the order that {@link Advice#ORDER} says.
 * Cost: some thirty to sixty short trials, and {@link #wholeTrials} whole ones.
 */
public final class Advisor {

    private static final int SHORT = 200;
    private static final int FEWEST_SHORT = 50;
    /** Students x steps x classes in a short trial. */
    private static final double SHORT_WORK = 150_000;
    private static final int BEST = 6;
    private static final int PAIRS = 5;
    /** Whoever needs more of them teaches a course. */
    private static final int MOST_MEETINGS = 8;
    /** Students x steps x classes in all whole trials, about a second and a half of work. */
    private static final double WHOLE_WORK = 12_000_000;
    private static final int FEWEST_WHOLE = 4;
    private static final int MOST_WHOLE = 24;
    /** A class that ends in time as surely as this needs no change. */
    private static final double COMFORTABLE = 0.97;
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
                ? Optional.of(advise(request, Promised.of(request, planned.plan()), others, progress)) : Optional.empty();
    }

    /**
     * The same for a request that is planned already.
     *
     * @param now the times to promise for it, of the planner's order
     */
    public Advice advise(LessonRequest request, Promised now, List<Change> others, Progress progress) {
        boolean comfortable = now.plan().fits() && now.risk().onTime() >= COMFORTABLE;
        return comfortable ? new Advice(now.risk().onTime(), List.of(), true, true) : new Round(request, now, progress).advice(others);
    }

    /** How many changes are tried wholly: fewer of a large class. */
    private static int wholeTrials(LessonRequest request, LessonPlan plan, int classes) {
        double each = classes * Calls.cost(request, plan.blocks().size());
        return (int) Math.max(FEWEST_WHOLE, Math.min(MOST_WHOLE, WHOLE_WORK / each));
    }

    /** One request's advice in the making. */
    private final class Round {
        private final LessonRequest request;
        private final Promised now;
        private final Trial quick;
        private final Progress progress;
        private int done;
        private int all;

        Round(LessonRequest request, Promised now, Progress progress) {
            this.request = request;
            this.now = now;
            this.progress = progress;
            int classes = (int) Math.max(FEWEST_SHORT, Math.min(SHORT, SHORT_WORK / Calls.cost(request, now.plan().blocks().size())));
            LessonRequest brief = request.toBuilder().replications(Math.min(classes, request.replications())).build();
            this.quick = new ListPlanner().plan(brief) instanceof Planned listed ? new Trial(new ListPlanner(), brief, Promised.of(brief, listed.plan()))
                    : new Trial(planner, brief, Promised.of(brief, ((Planned) planner.plan(brief)).plan()));
        }

        Advice advice(List<Change> others) {
            List<List<Change>> singles = Stream.concat(new Changes(request, now.plan().finish()).all().stream(), others.stream()).map(List::of).toList();
            int most = wholeTrials(request, now.plan(), now.risk().classes());
            all = singles.size() + BEST * (BEST - 1) / 2 + most;
            List<Suggestion> alone = withBestMoves(allTried(quick, singles));
            fewEnough(alone).ifPresent(alone::add);
            oftenEnough(alone).ifPresent(alone::add);
            List<List<Change>> pairs = pairs(alone);
            all = done + pairs.size() + most;
            List<Suggestion> together = allTried(quick, pairs).stream().filter(pair -> isWorthIt(pair, alone)).limit(PAIRS).toList();
            List<List<Change>> best = Stream.concat(alone.stream(), together.stream()).sorted(Ranking.BEST_FIRST).limit(most).map(Suggestion::changes).toList();
            all = done + best.size();
            List<Suggestion> whole = allTried(new Trial(planner, request, now), best);
            List<Suggestion> said = new WorthSaying(whole, margin(now.plan()).negated()).suggestions();
            return new Advice(now.risk().onTime(), said.stream().sorted(Ranking.BEST_FIRST).toList(), false, !progress.isGivenUp());
        }

        /** Of all other times for a break, and for its two halves, those that gain most. */
        private static List<Suggestion> withBestMoves(List<Suggestion> mostGainedFirst) {
            Set<Object> moved = new HashSet<>();
            return mostGainedFirst.stream().filter(one -> !isElsewhere(one.changes().get(0)) || moved.add(one.changes().get(0).kind()))
                    .collect(Collectors.toCollection(ArrayList::new));
        }

        private static boolean isElsewhere(Change change) {
            return change instanceof BreakChange.Moved || change instanceof BreakChange.Split;
        }

        private List<Suggestion> allTried(Trial trial, List<List<Change>> changes) {
            return changes.stream().map(change -> tried(trial, change)).flatMap(Optional::stream).filter(Ranking::gains).sorted(Ranking.MOST_GAINED).toList();
        }

        /** Nothing where there is no plan, and when cancelled. */
        private Optional<Suggestion> tried(Trial trial, List<Change> changes) {
            if (progress.isGivenUp()) {
                return Optional.empty();
            }
            Optional<Suggestion> suggestion = trial.of(changes);
            progress.tell(++done, Math.max(all, done));
            return suggestion;
        }

        /** The fewest students to turn away so that it is good, where one does not suffice and half of the class would. */
        private Optional<Suggestion> fewEnough(List<Suggestion> alone) {
            boolean oneIsNotEnough = alone.stream().anyMatch(one -> one.changes().get(0) instanceof Change.FewerStudents && !Ranking.isGood(one));
            int most = Math.min(request.headcount() / 2, request.headcount() - request.groups());
            return oneIsNotEnough && most > 1 ? fewest(most, Change.FewerStudents::new) : Optional.empty();
        }

        /** How often to meet again so that it is good, where once does not suffice. */
        private Optional<Suggestion> oftenEnough(List<Suggestion> alone) {
            boolean onceIsNotEnough = alone.stream().noneMatch(one -> one.changes().get(0) instanceof Change.MoreMeetings && Ranking.isGood(one));
            return onceIsNotEnough ? fewest(MOST_MEETINGS, Changes::again) : Optional.empty();
        }

        /** The least number, from two up to the most, with which it is good; nothing where it is not good with the most. */
        private Optional<Suggestion> fewest(int most, IntFunction<Change> change) {
            Optional<Suggestion> best = tried(quick, List.of(change.apply(most))).filter(Ranking::isGood);
            int low = 2;
            int high = best.isPresent() ? most : low;
            while (low < high) {
                int middle = (low + high) / 2;
                Optional<Suggestion> fewer = tried(quick, List.of(change.apply(middle))).filter(Ranking::isGood);
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

    /** How changes are tried: upon a request whose own plan is known, with a planner. */
    private final class Trial {
        private final LessonPlanner orders;
        private final LessonRequest request;
        private final Promised now;

        Trial(LessonPlanner orders, LessonRequest request, Promised now) {
            this.orders = orders;
            this.request = request;
            this.now = now;
        }

        /** Nothing where there is no plan. */
        Optional<Suggestion> of(List<Change> changes) {
            LessonRequest changed = request;
            for (Change change : changes) {
                changed = change.apply(changed);
            }
            return orders.plan(changed) instanceof Planned planned
                    ? Optional.of(compared(changes, changed, Promised.of(changed, planned.plan()))) : Optional.empty();
        }

        private Suggestion compared(List<Change> changes, LessonRequest changed, Promised then) {
            Duration gained = margin(then.plan()).minus(margin(now.plan()));
            double onTime = then.risk().onTime();
            Duration preparation = then.plan().preparation().total().minus(now.plan().preparation().total());
            return new Suggestion(changes, changed, then.plan(), gained, onTime, onTime - now.risk().onTime(), preparation, cost(changes));
        }
    }

    /**
     * Two of a kind, an earlier begin with a later end, or a break changed twice, are only more of one; two halves have other breaks; and
     * what is prepared and what is taken home together leave too little of a class.
     */
    private static boolean goTogether(Change one, Change other) {
        boolean both = movesHours(one) && movesHours(other) || one instanceof BreakChange && other instanceof BreakChange;
        boolean lost = one instanceof BreakChange && other instanceof Change.SplitInTwo || one instanceof Change.SplitInTwo && other instanceof BreakChange;
        both |= takesOut(one) && takesOut(other) || parts(one) && parts(other);
        return one instanceof Change.MoreTools || one.getClass() != other.getClass() && !both && !lost;
    }

    private static boolean takesOut(Change change) {
        return change instanceof Change.PrepareAhead || change instanceof Change.TakenHome;
    }

    private static boolean parts(Change change) {
        return change instanceof Change.OneMoreGroup || change instanceof Change.ShownToGroups;
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
