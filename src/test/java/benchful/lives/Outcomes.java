package benchful.lives;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a search for faults did: each fault is told as soon as it is found, and the whole in one line from time to time and at the end. */
public final class Outcomes {
    private static final int BETWEEN_TELLINGS = 100;
    private static final int DEAREST = 6;

    private final String things;
    private final Map<String, Integer> counts = new TreeMap<>();
    private final Map<String, Duration> spent = new TreeMap<>();
    private final List<String> faults = new ArrayList<>();
    private Duration slowest = Duration.ZERO;
    private String slowestThing = "none";
    private int tried;

    /** @param things that are tried, as "lives" */
    public Outcomes(String things) {
        this.things = things;
    }

    /** Counts one more that was tried. */
    public void count(String outcome) {
        counts.merge(outcome, 1, Integer::sum);
        if (++tried % BETWEEN_TELLINGS == 0) {
            tell();
        }
    }

    /**
     * @param thing that was answered, as a fault would name it
     * @param kind of request, under which what is spent is summed
     */
    public void answered(String thing, String kind, Duration took) {
        spent.merge(kind, took, Duration::plus);
        if (took.compareTo(slowest) > 0) {
            slowest = took;
            slowestThing = thing;
        }
    }

    public void fault(String fault) {
        faults.add(fault);
        System.out.println("FAULT " + fault);
    }

    public int of(String outcome) {
        return counts.getOrDefault(outcome, 0);
    }

    public List<String> faults() {
        return faults;
    }

    public Duration slowest() {
        return slowest;
    }

    public void tell() {
        String each = counts.entrySet().stream().map(e -> "%d %s (%.1f %%)".formatted(e.getValue(), e.getKey(), 100.0 * e.getValue() / tried)).collect(Collectors.joining(", "));
        System.out.printf("%d %s: %s; %d faults; slowest answer %d ms (%s)%n", tried, things, each, faults.size(), slowest.toMillis(), slowestThing);
    }

    /** Says for which kinds of request most of the time was spent. */
    public void tellDearest() {
        spent.entrySet().stream().sorted(Map.Entry.comparingByValue(Comparator.reverseOrder())).limit(DEAREST)
                .forEach(e -> System.out.printf("  %d s for %s%n", e.getValue().toSeconds(), e.getKey()));
    }
}
