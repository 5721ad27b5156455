package benchful.core.learning;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What several classes have in common that were alike in something: their level, their room, their project.
 *
 * @param name of what they have in common
 * @param over by how much each ran over, the least first
 * @param kept how many kept the promised time
 * @param least and {@code most}: between which shares of all such classes keep it, with nineteen chances in twenty [0 to 1]
 * @param earlier median of the first half of them in order of time, and {@code later} of the second; null below four classes
 */
public record Tendency(String name, List<Duration> over, int kept, double least, double most, @Nullable Duration earlier, @Nullable Duration later) {
    /** Of the standard normal distribution, for nineteen in twenty. */
    private static final double Z = 1.96;

    private static final int ENOUGH_FOR_A_TREND = 4;
    private static final Duration WORTH_SAYING = Duration.ofMinutes(3);

    public Tendency {
        over = List.copyOf(over);
    }

    /**
     * @param outcomes one at least, in any order
     * @return with the score interval of Wilson (1927) for the share that keeps its time; from memory: the centre is
     *     (k + z2/2) / (n + z2), the half width z / (n + z2) sqrt(k (n - k) / n + z2 / 4)
     */
    public static Tendency of(String name, List<Outcome> outcomes) {
        List<Duration> inTime = outcomes.stream().sorted(Comparator.comparing(Outcome::day)).map(Outcome::over).toList();
        int n = inTime.size();
        int kept = (int) outcomes.stream().filter(Outcome::kept).count();
        double square = Z * Z;
        double centre = (kept + square / 2) / (n + square);
        double half = Z / (n + square) * Math.sqrt((double) kept * (n - kept) / n + square / 4);
        boolean enough = n >= ENOUGH_FOR_A_TREND;
        return new Tendency(name, inTime.stream().sorted().toList(), kept, Math.max(0, centre - half), Math.min(1, centre + half),
                enough ? median(inTime.subList(0, n / 2)) : null, enough ? median(inTime.subList((n + 1) / 2, n)) : null);
    }

    private static Duration median(List<Duration> times) {
        List<Duration> sorted = times.stream().sorted().toList();
        int middle = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(middle) : sorted.get(middle - 1).plus(sorted.get(middle)).dividedBy(2);
    }

    public int classes() {
        return over.size();
    }

    /** Half ran over by less, half by more. */
    public Duration middle() {
        return median(over);
    }

    public Duration shortest() {
        return over.get(0);
    }

    public Duration longest() {
        return over.get(over.size() - 1);
    }

    /** Which way it goes. */
    public enum Trend {
        NOT_KNOWN, STEADY, BETTER, WORSE
    }

    /** Of the later half against the earlier; less than three minutes are not called a change (common practice, no source). */
    public Trend trend() {
        if (earlier == null || later == null) {
            return Trend.NOT_KNOWN;
        }
        Duration change = later.minus(earlier);
        return change.abs().compareTo(WORTH_SAYING) < 0 ? Trend.STEADY : change.isNegative() ? Trend.BETTER : Trend.WORSE;
    }
}
