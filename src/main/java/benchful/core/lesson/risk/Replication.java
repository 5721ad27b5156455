package benchful.core.lesson.risk;

import static java.util.Objects.requireNonNull;

import benchful.core.lesson.risk.Script.Bench;
import benchful.core.lesson.risk.Script.Need;
import benchful.core.lesson.risk.Script.Part;
import benchful.core.lesson.risk.Script.Stage;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One class after another, played on the same arrays: [part][student] for what is done, [cause][student] for time lost. Clock times
 * unless "working" is said. A pace is half the student's own in all steps and half new in each step (correlation 0.5: common
 * practice, no source). What is shown or done together lasts as long as planned or longer, the less likely the longer: its density
 * falls to nothing at the most that it may run over (triangular; common practice, no source). It is begun where all of it fits before a
 * break.
 */
final class Replication {

    private static final double OWN = Math.sqrt(0.5);
    private static final long SHOWINGS_APART = 1L << 48;

    private final Script script;
    private final int students;
    final double[][] begun;
    final double[][] done;
    final double[][] lost;
    final double[] start;
    final double[] end;
    final double[] unfinished;
    final double[] spare;
    private final double[] own;
    private final double[] idle;
    private final long[] state;
    private final double[] pace;
    private final BenchRun bench;
    private final List<Part> drying;
    private double now;
    private long talks;

    Replication(Script script) {
        this.script = script;
        this.students = script.students().length;
        int parts = script.parts().size();
        begun = new double[parts][students];
        done = new double[parts][students];
        lost = new double[script.causes().size()][students];
        start = new double[parts];
        end = new double[parts];
        unfinished = new double[parts];
        spare = new double[parts];
        own = new double[students];
        idle = new double[students];
        state = new long[students];
        pace = new double[students];
        bench = new BenchRun(script, this);
        drying = script.parts().stream().filter(part -> script.causes().get(part.index()).cause() == Risk.Cause.DRYING
                && !script.stages().contains(new Script.Batch(part.index()))).toList();
    }

    /** Plays one class; the arrays then hold what became of it. */
    void play(long seed, int number) {
        reset(Draws.mix(seed, number));
        for (Stage stage : script.stages()) {
            if (stage instanceof Bench makes) {
                now = Math.max(now, bench.play(makes, own, now));
            } else if (stage instanceof Script.Gather gather) {
                gather(script.parts().get(gather.part()));
            } else if (stage instanceof Script.Batch batch) {
                batch(script.parts().get(batch.part()));
            }
        }
        drying.forEach(this::each);
    }

    private void reset(long seed) {
        now = 0;
        talks = Draws.mix(seed, -3);
        Arrays.fill(own, 0);
        Arrays.fill(end, 0);
        Arrays.fill(unfinished, 0);
        for (double[] row : lost) {
            Arrays.fill(row, 0);
        }
        for (int s = 0; s < students; s++) {
            state[s] = Draws.mix(seed, s);
            pace[s] = OWN * Draws.normal(Draws.mix(state[s], -2));
        }
    }

    /** The state from which all draws of a student in a step come. */
    long stepState(int student, Part part) {
        return Draws.mix(state[student], part.key());
    }

    /** How long a student works at a make step [s]. */
    double work(int student, Part part, long stepState) {
        return part.scales()[student] * requireNonNull(part.pace()).at(pace[student] + OWN * Draws.normal(stepState));
    }

    /** When what a part needs is over for a student. */
    double ready(Part part, int student) {
        double ready = part.release();
        for (Need need : part.needs()) {
            ready = Math.max(ready, need.delay() + (need.part() < 0 ? 0 : done[need.part()][student]));
        }
        return ready;
    }

    /** What the student waits for last, -1 if for nothing. */
    int cause(Part part, int student) {
        double latest = part.release();
        int cause = -1;
        for (Need need : part.needs()) {
            double over = need.delay() + (need.part() < 0 ? 0 : done[need.part()][student]);
            if (over > latest) {
                latest = over;
                cause = need.cause();
            }
        }
        return cause;
    }

    private double readyForAll(Part part) {
        double ready = part.release();
        for (int s = 0; s < students; s++) {
            ready = Math.max(ready, ready(part, s));
        }
        return ready;
    }

    private void gather(Part part) {
        int i = part.index();
        double ready = Math.max(now, readyForAll(part));
        double length = length(part);
        start[i] = script.clock().wholeFrom(ready, length);
        loseUntil(part, script.clock().toWorking(now), script.clock().toWorking(start[i]));
        now = start[i] + length;
        Arrays.fill(begun[i], start[i]);
        finish(part, now);
        Arrays.fill(own, script.clock().toWorking(now));
    }

    /** How long it is shown, talked or done together in this class, all showings one after the other. */
    double length(Part part) {
        double length = part.length();
        for (int showing = 0; part.over() > 0 && showing < part.showings(); showing++) {
            length += part.over() * (1 - Math.sqrt(1 - Draws.uniform(Draws.mix(talks, part.key() + SHOWINGS_APART * showing))));
        }
        return length;
    }

    /** What the quickest quarter had to spare while they waited for the others before a part. */
    void spareBefore(int part) {
        System.arraycopy(lost[part], 0, idle, 0, students);
        spare[part] = ofTheQuickest();
    }

    /** Up to the gathering the quick wait for the class, and then all wait for what is not dry yet. */
    private void loseUntil(Part part, double gathered, double begun) {
        for (int s = 0; s < students; s++) {
            lost[part.index()][s] += Math.max(0, gathered - own[s]);
            int cause = cause(part, s);
            if (cause >= 0) {
                lost[cause][s] += begun - gathered;
            }
        }
        spareBefore(part.index());
    }

    private double ofTheQuickest() {
        Arrays.sort(idle);
        int quarter = (students + 3) / 4;
        double sum = 0;
        for (int s = students - quarter; s < students; s++) {
            sum += idle[s];
        }
        return sum / quarter;
    }

    private void batch(Part part) {
        if (part.places() > 0) {
            loads(part);
            return;
        }
        double ready = readyForAll(part);
        start[part.index()] = part.outside() ? script.clock().outsideFrom(ready, part.length()) : ready;
        Arrays.fill(begun[part.index()], start[part.index()]);
        finish(part, start[part.index()] + part.length());
    }

    /** Whoever is ready first goes in first; a load goes when it is full and there is room for it. */
    private void loads(Part part) {
        int i = part.index();
        int[] members = IntStream.range(0, students).filter(s -> script.takesPart(s, part)).boxed()
                .sorted(Comparator.comparingDouble(s -> ready(part, s))).mapToInt(Integer::intValue).toArray();
        double[] free = new double[part.loads()];
        start[i] = Double.MAX_VALUE;
        for (int first = 0; first < members.length; first += part.places()) {
            int next = Math.min(members.length, first + part.places());
            Arrays.sort(free);
            double begin = Math.max(free[0], ready(part, members[next - 1]));
            free[0] = begin + part.length();
            start[i] = Math.min(start[i], begin);
            end[i] = Math.max(end[i], free[0]);
            for (int m = first; m < next; m++) {
                begun[i][members[m]] = begin;
                done[i][members[m]] = free[0];
            }
        }
    }

    private void finish(Part part, double time) {
        Arrays.fill(done[part.index()], time);
        end[part.index()] = time;
    }

    /** A wait that runs for each student's piece on its own: from the first begin to the last end. */
    private void each(Part part) {
        double first = Double.MAX_VALUE;
        double last = 0;
        for (int s = 0; s < students; s++) {
            if (script.takesPart(s, part)) {
                double ready = ready(part, s);
                begun[part.index()][s] = ready;
                first = Math.min(first, ready);
                last = Math.max(last, ready + part.length());
            }
        }
        start[part.index()] = first;
        end[part.index()] = last;
    }
}
