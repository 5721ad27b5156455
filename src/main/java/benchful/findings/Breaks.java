package benchful.findings;

import benchful.core.learning.BreakLength;
import benchful.core.learning.BreakLength.Seen;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What classes show of their breaks, by how long those were planned: a tea break tells nothing of lunch. */
final class Breaks {
    private final List<Reviewed> reviewed;
    private final History history;
    private final LocalDate today;

    Breaks(List<Reviewed> reviewed, History history, LocalDate today) {
        this.reviewed = reviewed;
        this.history = history;
        this.today = today;
    }

    /** The shortest first. */
    List<BreakFinding> findings() {
        TreeMap<Duration, List<Reviewed>> byPlan = new TreeMap<>();
        reviewed.forEach(one -> one.breaks().keySet().forEach(planned -> byPlan.merge(planned, List.of(one), Breaks::joined)));
        return byPlan.entrySet().stream().map(e -> finding(e.getKey(), e.getValue())).toList();
    }

    private static List<Reviewed> joined(List<Reviewed> some, List<Reviewed> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    private BreakFinding finding(Duration planned, List<Reviewed> classes) {
        List<Seen> seen = classes.stream().map(one -> new Seen(one.day(), one.breaks().get(planned))).toList();
        String evidence = classes.stream().map(one -> "%d:%.3f".formatted(one.craftClass(), one.breaks().get(planned))).sorted().collect(Collectors.joining(" "));
        return new BreakFinding(planned, BreakLength.of(seen, today), evidence, history.refused(BreakFinding.key(planned), Setting.lasts(planned), evidence));
    }
}
