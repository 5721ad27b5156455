package benchful.core.learning;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The pace at which one class went at a step of which somebody counted now and then who had finished. Each student is taken to finish at a
 * moment drawn from all moments of the simulated classes, stretched by the pace, and independently of the others; what is known of each is
 * between which two moments it was, or after which. The pace is the mean, over all paces from a tenth to ten times, of the likelihood of
 * just these counts. Cost O(paces x counts).
 */
public final class CountedPace {
    private static final double STEP = 0.01;
    private static final int STEPS = (int) Math.ceil(Math.log(10) / STEP);

    /** A moment that is written down is off by so much: half a minute [s], or this share of the time (common practice, no source). */
    private static final double NOTED_WITHIN = 30;

    private static final double NOTED_WITHIN_SHARE = 0.05;

    /** What no simulated class did may still happen. */
    private static final double LEAST_CHANCE = 1e-6;

    /** By so much the same class goes quicker or slower as a whole on another day; logarithmic (common practice, no source). */
    private static final double WHOLE_CLASS = 0.1;

    private final List<Double> usual;
    private final int students;
    private final int needed;
    /** How many of the usual times are not infinite. */
    private final int known;

    /** By what power of the time those who have not finished get fewer, beyond the last known time. */
    private final double tail;

    /**
     * @param usual    when students of simulated classes finish the step at the minutes as typed, in order; infinite where they don't [s]
     * @param students of the class, at least 1
     * @param needed   how many must have finished before the class moves on, from 1 to all
     */
    public CountedPace(List<Double> usual, int students, int needed) {
        if (usual.isEmpty() || needed < 1 || needed > students) {
            throw new IllegalArgumentException("Of %d students %d can't be waited for, or no class was simulated".formatted(students, needed));
        }
        this.usual = List.copyOf(usual);
        this.students = students;
        this.needed = needed;
        this.known = (int) usual.stream().filter(Double::isFinite).count();
        this.tail = known < 2 || known == usual.size() ? 1 : tail();
    }

    /** As it was from the middle one of the known times to the last. */
    private double tail() {
        double left = (usual.size() - known / 2.0) / (usual.size() - known);
        return Math.log(left) / Math.log(Math.max(1.01, usual.get(known - 1) / Math.max(1, usual.get(known / 2))));
    }

    /**
     * What was seen of a class.
     *
     * @param log       logarithm of the multiple of the typed minutes
     * @param precision how many times as much it tells as the end of the step alone would, above 0
     */
    public record Estimate(double log, double precision) {}

    /**
     * @param counts in any order; a lower count puts earlier higher ones right
     * @param end    when the class moved on, null where that is not known [s]
     */
    public Estimate of(List<Count> counts, @Nullable Double end) {
        Believed all = believed(groups(counts, end));
        double alone = believed(groups(List.of(), end == null ? middle() : end)).variance();
        return new Estimate(all.mean(), (square(WHOLE_CLASS) + alone) / (square(WHOLE_CLASS) + all.variance()));
    }

    /** So many students finished between two moments [s]. */
    private record Group(double from, double to, int students) {}

    private record Believed(double mean, double variance) {}

    private List<Group> groups(List<Count> counts, @Nullable Double end) {
        List<Group> groups = new ArrayList<>();
        double from = 0;
        int finished = 0;
        for (Count count : right(counts, end)) {
            groups.add(new Group(from, count.after(), count.finished() - finished));
            from = count.after();
            finished = count.finished();
        }
        if (end != null && finished < needed) {
            double window = Math.max(NOTED_WITHIN, NOTED_WITHIN_SHARE * end);
            double before = Math.max(from, end - window);
            groups.add(new Group(from, before, needed - finished - 1));
            groups.add(new Group(before, end + window, 1));
            from = end + window;
            finished = needed;
        }
        groups.add(new Group(from, Double.POSITIVE_INFINITY, students - finished));
        return groups;
    }

    /** In order of time and never falling; what was counted when the class had moved on, or of more than there are, is left out. */
    private List<Count> right(List<Count> counts, @Nullable Double end) {
        List<Count> right = new ArrayList<>();
        int most = students;
        for (Count count : counts.stream().sorted((a, b) -> Double.compare(b.after(), a.after())).toList()) {
            if (count.finished() <= most && count.after() > 0 && (end == null || count.after() < end)) {
                right.add(0, count);
                most = count.finished();
            }
        }
        return right;
    }

    private Believed believed(List<Group> groups) {
        double[] logs = new double[2 * STEPS + 1];
        double top = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < logs.length; i++) {
            logs[i] = logLikelihood(groups, Math.exp(-(i - STEPS) * STEP));
            top = Math.max(top, logs[i]);
        }
        double sum = 0;
        double first = 0;
        double second = 0;
        for (int i = 0; i < logs.length; i++) {
            double x = (i - STEPS) * STEP;
            double weight = Math.exp(logs[i] - top);
            sum += weight;
            first += weight * x;
            second += weight * x * x;
        }
        double mean = first / sum;
        return new Believed(mean, Math.max(0, second / sum - mean * mean));
    }

    private double logLikelihood(List<Group> groups, double slower) {
        double log = 0;
        for (Group group : groups) {
            if (group.students() > 0) {
                log += group.students() * Math.log(Math.max(LEAST_CHANCE, share(group.to() * slower) - share(group.from() * slower)));
            }
        }
        return log;
    }

    /** The share of students who have finished by then, in a straight line from one known time to the next. */
    private double share(double time) {
        if (time == Double.POSITIVE_INFINITY) {
            return 1;
        }
        if (known == 0 || time >= usual.get(known - 1)) {
            return known == usual.size() ? 1 : 1 - (1 - (double) known / usual.size()) * (known == 0 ? 1 : Math.pow(usual.get(known - 1) / time, tail));
        }
        int low = 0;
        int high = known;
        while (low < high) {
            int middle = (low + high) / 2;
            boolean later = usual.get(middle) > time;
            low = later ? low : middle + 1;
            high = later ? middle : high;
        }
        double before = low == 0 ? 0 : usual.get(low - 1);
        double after = usual.get(low);
        return (low + (after <= before ? 0 : Math.max(0, (time - before) / (after - before)))) / usual.size();
    }

    /** About when the class would move on [s]. */
    private double middle() {
        int place = (int) Math.round(usual.size() * (needed - 0.5) / students);
        return known == 0 ? 1 : usual.get(Math.min(known - 1, place));
    }

    private static double square(double x) {
        return x * x;
    }
}
