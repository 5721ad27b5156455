package benchful.reviews;

import benchful.core.day.Break;
import benchful.core.day.Running;
import benchful.core.day.Running.Presence;
import benchful.core.day.Running.Stage;
import benchful.core.day.Tap;
import benchful.web.Formats;
import java.time.Duration;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A review as far as the taps of the day fill it in. */
final class FromTheDay {
    private static final int LONGEST = 300;

    private final Running day;
    private final int students;

    /** @param students who were expected */
    FromTheDay(Running day, int students) {
        this.day = day;
        this.students = students;
    }

    ReviewSpec sheet() {
        Map<String, ReviewSpec.StepNote> steps = new LinkedHashMap<>();
        day.steps().forEach(s -> note(s).ifPresent(note -> steps.put(s.item().key(), note)));
        long absent = day.seats().values().stream().filter(p -> p == Presence.ABSENT).count();
        LocalTime began = day.taps().stream().filter(t -> t.kind() == Tap.Kind.START && day.steps().stream().anyMatch(s -> s.item().key().equals(t.step()))).map(t -> clock(t.at().toLocalTime())).findFirst().orElse(null);
        return new ReviewSpec(began, absent == 0 ? null : students - (int) absent, steps, breaks(), null, null, null, notes());
    }

    private Map<String, ReviewSpec.BreakNote> breaks() {
        Map<String, ReviewSpec.BreakNote> breaks = new LinkedHashMap<>();
        day.breaks().forEach(b -> note(b).ifPresent(note -> breaks.put(b.key(), note)));
        return breaks;
    }

    /** What was left out took no time; of a break that nobody said was over it is not known how long it was. */
    private static Optional<ReviewSpec.BreakNote> note(Break b) {
        if (b.stage() == Stage.LEFT_OUT) {
            return Optional.of(new ReviewSpec.BreakNote(null, Duration.ZERO));
        }
        Duration took = b.said() ? Duration.ofMinutes(Math.round(Duration.between(b.begins(), b.ends()).toSeconds() / 60.0)) : null;
        LocalTime began = b.begun() ? clock(b.begins().toLocalTime()) : null;
        return took == null && began == null ? Optional.empty() : Optional.of(new ReviewSpec.BreakNote(began, took));
    }

    private static LocalTime clock(LocalTime time) {
        return time.truncatedTo(ChronoUnit.MINUTES);
    }

    /** What was left out took no time. */
    private Optional<ReviewSpec.StepNote> note(Running.Step step) {
        String key = step.item().key();
        String words = day.notes().stream().filter(n -> n.kind() == Tap.Kind.NOTE && key.equals(n.step())).map(Tap::text).collect(Collectors.joining("; "));
        LocalTime ended = last(key, Tap.Kind.FINISH).filter(t -> step.stage() == Stage.OVER).map(t -> clock(t.at().toLocalTime())).orElse(null);
        if (step.stage() == Stage.LEFT_OUT) {
            return Optional.of(new ReviewSpec.StepNote(Duration.ZERO, null, cut(words.isEmpty() ? "left out" : "left out; " + words)));
        }
        return ended == null && words.isEmpty() ? Optional.empty() : Optional.of(new ReviewSpec.StepNote(null, ended, words.isEmpty() ? null : cut(words)));
    }

    /** To what the note of a step may hold. */
    private static String cut(String words) {
        return words.length() > LONGEST ? words.substring(0, LONGEST - 1) + "…" : words;
    }

    private Optional<Tap> last(String step, Tap.Kind kind) {
        return day.taps().stream().filter(t -> t.kind() == kind && step.equals(t.step())).reduce((one, later) -> later);
    }

    /** What concerns the whole class, and what happened to anybody. */
    private String notes() {
        List<String> lines = day.notes().stream().filter(n -> n.kind() == Tap.Kind.INCIDENT || n.step() == null)
                .map(n -> n.kind() == Tap.Kind.INCIDENT ? "Incident at %s: %s".formatted(Formats.clock(n.at()), n.text()) : n.text()).toList();
        return lines.isEmpty() ? null : String.join("\n", lines);
    }
}
