package benchful.core.lesson.order.solver;

import benchful.core.lesson.ClosedTime;
import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Gap;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.Presence;
import com.google.ortools.sat.Constraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.List;

/**
 * A model in the solver's words. Each activity has a start and an end. Closed times are holes in the domain of the
 * starts; an activity that may pause chooses for each closed time whether it lies before, after or across it. Resources are
 * cumulative constraints, seats of groups are "no overlap".
 */
final class SolverModel {

    private static final int PER_MILLE = 1000;

    private final Model model;
    private final long limit;
    private final CpModel solver = new CpModel();
    private final IntVar[] starts;
    private final LinearExpr[] ends;
    private final IntervalVar[] intervals;
    private final IntVar finish;
    private final List<Literal> switches = new ArrayList<>();
    private final boolean switchable;

    /**
     * @param limit      no start or counted end after this time
     * @param switchable whether each gap hangs on a literal of its own, see {@link #switches()}
     */
    SolverModel(Model model, long limit, boolean switchable) {
        this.model = model;
        this.limit = limit;
        this.switchable = switchable;
        this.starts = new IntVar[model.size()];
        this.ends = new LinearExpr[model.size()];
        this.intervals = new IntervalVar[model.size()];
        this.finish = solver.newIntVar(0, this.limit, "finish");
        model.activities().forEach(this::addActivity);
        model.gaps().forEach(this::addGap);
        for (int r = 0; r < model.capacity().length; r++) {
            addResource(r);
        }
    }

    CpModel solver() {
        return solver;
    }

    /** One literal for each gap, in the order of the gaps: true if it is kept. */
    List<Literal> switches() {
        return switches;
    }

    private void addActivity(Activity activity) {
        int i = activity.index();
        starts[i] = solver.newIntVarFromDomain(startDomain(activity), "start" + i);
        long work = activity.work();
        boolean splits = activity.pausable() && activity.work() > 0
                && model.hours().closed().stream().anyMatch(part -> part.from() < limit);
        if (splits) {
            addSplit(activity, work);
        } else {
            ends[i] = LinearExpr.newBuilder().add(starts[i]).add(work).build();
            intervals[i] = solver.newFixedSizeIntervalVar(starts[i], work, "step" + i);
        }
        if (!activity.atHome()) {
            solver.addGreaterOrEqual(finish, ends[i]);
        }
    }

    private void addSplit(Activity activity, long work) {
        int i = activity.index();
        IntVar end = solver.newIntVar(work, limit, "end" + i);
        IntVar length = solver.newIntVar(work, limit, "length" + i);
        LinearExprBuilder parts = LinearExpr.newBuilder().add(work);
        for (ClosedTime part : model.hours().closed()) {
            Literal across = solver.newBoolVar("across");
            Literal after = solver.newBoolVar("after");
            Literal before = solver.newBoolVar("before");
            solver.addExactlyOne(new Literal[] {across, after, before});
            solver.addLessOrEqual(starts[i], part.from() - 1).onlyEnforceIf(across);
            solver.addGreaterOrEqual(end, part.to() + 1).onlyEnforceIf(across);
            solver.addGreaterOrEqual(starts[i], part.to()).onlyEnforceIf(after);
            solver.addLessOrEqual(end, part.from()).onlyEnforceIf(before);
            parts.addTerm(across, part.to() - part.from());
        }
        solver.addEquality(length, parts);
        ends[i] = LinearExpr.affine(end, 1, 0);
        intervals[i] = solver.newIntervalVar(starts[i], length, end, "step" + i);
    }

    /** All grains up to the limit at which the hours let the activity begin. */
    private Domain startDomain(Activity activity) {
        List<long[]> open = new ArrayList<>();
        long from = activity.notBefore();
        long most = Math.min(limit, activity.notAfter());
        for (ClosedTime part : model.hours().closedTo(activity)) {
            long last = Math.min(most, lastStartBefore(activity, part));
            if (from <= last) {
                open.add(new long[] {from, last});
            }
            from = Math.max(from, part.to());
        }
        if (from <= most) {
            open.add(new long[] {from, most});
        }
        return Domain.fromIntervals(open.toArray(new long[0][]));
    }

    private static long lastStartBefore(Activity activity, ClosedTime part) {
        if (activity.presence() == Presence.BEGUN_IN_MEETING) {
            return part.from();
        }
        boolean pauses = activity.pausable() && activity.work() > 0;
        return part.from() - (pauses ? 1 : activity.work());
    }

    private void addGap(Gap gap) {
        LinearExpr anchor = gap.fromStart() ? LinearExpr.affine(starts[gap.from()], 1, 0) : ends[gap.from()];
        LinearExpr length = LinearExpr.newBuilder().add(starts[gap.to()]).addTerm(anchor, -1).build();
        long least = gap.hasLeast() ? gap.least() : -2 * limit;
        long greatest = gap.hasGreatest() ? gap.greatest() : 2 * limit;
        Constraint kept = solver.addLinearConstraint(length, least, greatest);
        if (switchable) {
            Literal literal = solver.newBoolVar("kept" + switches.size());
            switches.add(literal);
            kept.onlyEnforceIf(literal);
        }
    }

    private void addResource(int resource) {
        List<Activity> users = model.activities().stream()
                .filter(activity -> activity.uses()[resource] > 0 && activity.work() > 0).toList();
        if (resource >= model.firstSeat()) {
            solver.addNoOverlap(users.stream().map(activity -> intervals[activity.index()]).toList());
        } else if (!users.isEmpty()) {
            CumulativeConstraint together = solver.addCumulative(model.capacity()[resource]);
            users.forEach(activity -> together.addDemand(intervals[activity.index()], activity.uses()[resource]));
        }
    }

    void finishBetween(long least, long most) {
        solver.addLinearConstraint(finish, least, most);
    }

    /** Makes it the goal that steps begin at the times asked for, or little later. */
    void minimiseLateness() {
        LinearExprBuilder late = LinearExpr.newBuilder();
        model.activities().stream().filter(Activity::isAskedFor).forEach(activity -> late.add(starts[activity.index()]).add(-activity.notBefore()));
        solver.minimize(late);
    }

    void minimiseFinish() {
        solver.minimize(finish);
    }

    /** Makes the greatest sum of shares of the tutor's time at once the goal, and answers its variable. */
    IntVar minimisePeak() {
        IntVar peak = solver.newIntVar(0, (long) PER_MILLE * model.size(), "peak");
        CumulativeConstraint load = solver.addCumulative(peak);
        model.activities().stream().filter(activity -> activity.tutorShare() > 0 && activity.work() > 0).forEach(activity ->
                load.addDemand(intervals[activity.index()], Math.round(activity.tutorShare() * PER_MILLE)));
        solver.minimize(peak);
        return peak;
    }

    /** Makes the end of the last work of the class the goal, so that the class waits for nothing in vain. */
    void minimiseIdle() {
        IntVar last = solver.newIntVar(0, limit, "last");
        model.activities().stream().filter(Activity::hands).forEach(activity -> solver.addGreaterOrEqual(last, ends[activity.index()]));
        solver.minimize(last);
    }

    void workEndsBy(long time) {
        model.activities().stream().filter(Activity::hands).forEach(activity -> solver.addLessOrEqual(ends[activity.index()], time));
    }

    /** Makes the time between demonstrations and what they show the goal. */
    void minimiseForgetting() {
        LinearExprBuilder forgetting = LinearExpr.newBuilder();
        model.showings().forEach(shown -> forgetting.add(starts[shown.to()]).addTerm(ends[shown.from()], -1));
        solver.minimize(forgetting);
    }

    void hint(long[] times) {
        solver.clearHints();
        for (int i = 0; i < starts.length; i++) {
            solver.addHint(starts[i], times[i]);
        }
    }

    long[] starts(CpSolver found) {
        long[] times = new long[starts.length];
        for (int i = 0; i < starts.length; i++) {
            times[i] = found.value(starts[i]);
        }
        return times;
    }
}
