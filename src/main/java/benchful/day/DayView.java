package benchful.day;

import benchful.classes.ClassSetup;
import benchful.classes.CraftClass;
import benchful.core.day.Break;
import benchful.core.day.Course;
import benchful.core.day.Running;
import benchful.core.day.Running.Presence;
import benchful.core.day.Running.Remedy;
import benchful.core.day.Running.Stage;
import benchful.core.day.Running.Step;
import benchful.core.day.Tap;
import benchful.web.Formats;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.TemplateData;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * What the page of a running class shows, as far as it is known here; a browser with scripts goes on from it by itself.
 *
 * @param moment as of which it is shown
 * @param phone address of this page on a phone; null where only this machine reaches it
 * @param fault what was wrong with the last tap; null for nothing
 */
@TemplateData
public record DayView(CraftClass craftClass, ClassSetup setup, Course course, List<Tap> log, Running running, LocalDateTime moment, String phone, String fault) {
    /** So long after its time a break can still be begun late. */
    private static final Duration MISSED = Duration.ofMinutes(30);
    private static final ObjectMapper JSON = new ObjectMapper();

    /** One step as a line or a card. */
    @TemplateData
    public record Line(String key, String title, String stage, String clock, String left, int finished, int next, int students, boolean own) {}

    public List<Line> now() {
        return running.steps().stream().filter(s -> s.stage() == Stage.NOW && s.item().handsOn()).map(this::line).toList();
    }

    /** The first that is to come. */
    public List<Line> next() {
        return running.steps().stream().filter(s -> s.stage() == Stage.TO_COME && s.item().handsOn()).limit(1).map(this::line).toList();
    }

    public List<Line> drying() {
        return running.steps().stream().filter(s -> s.stage() == Stage.NOW && !s.item().handsOn()).map(this::line).toList();
    }

    public List<Line> all() {
        return running.steps().stream().map(this::line).toList();
    }

    private Line line(Step s) {
        String clock = Formats.clock(s.begins()) + " to " + Formats.clock(s.ends());
        return new Line(s.item().key(), s.item().title(), Formats.word(s.stage()), clock, left(s), s.finished(), Math.min(s.finished() + 1, running.present()), running.present(), s.item().own());
    }

    /** Against the plan: "12 min left", "4 min over". */
    private String left(Step s) {
        return left(s.stage() == Stage.NOW && s.item().handsOn() ? planned(s) : s.ends());
    }

    private String left(LocalDateTime until) {
        Duration left = Duration.between(moment, until);
        long minutes = Math.round(left.toSeconds() / 60.0);
        return minutes < 0 ? -minutes + " min over" : minutes + " min left";
    }

    private static LocalDateTime planned(Step s) {
        return s.begins().plus(s.item().length());
    }

    /** "5 min behind", "on time". */
    public String behind() {
        long minutes = Math.round(running.behind().toSeconds() / 60.0);
        return !running.begun() ? "not begun" : minutes == 0 ? "on time" : minutes > 0 ? minutes + " min behind" : -minutes + " min ahead";
    }

    public String end() {
        return Formats.clock(running.end());
    }

    public String booked() {
        return Formats.clock(running.bookedEnd());
    }

    /**
     * A break as a line.
     *
     * @param shown whether it is one to speak of now: see {@link #isShown}
     * @param left against the plan, while it goes on; empty otherwise
     * @param begin whether it can still be said that it begins, and {@code end} and {@code skip} the same
     */
    @TemplateData
    public record Rest(String key, String stage, String clock, boolean shown, String left, boolean begin, boolean end, boolean skip) {}

    public List<Rest> breaks() {
        return running.breaks().stream().map(this::rest).toList();
    }

    private Rest rest(Break b) {
        boolean now = b.stage() == Stage.NOW;
        return new Rest(b.key(), Formats.word(b.stage()), Formats.clock(b.begins()) + " to " + Formats.clock(now ? b.due() : b.ends()), isShown(b), now ? left(b.due()) : "", !b.said() && !(now && b.begun()), now,
                b.stage() == Stage.TO_COME || now && !b.begun());
    }

    /** What goes on; else what comes next, and what was due just now though nobody said that it began. */
    private boolean isShown(Break b) {
        boolean goesOn = running.breaks().stream().anyMatch(other -> other.stage() == Stage.NOW);
        return switch (b.stage()) {
            case NOW -> true;
            case TO_COME -> !goesOn && running.breaks().stream().filter(other -> other.stage() == Stage.TO_COME).findFirst().filter(b::equals).isPresent();
            case OVER -> !goesOn && !b.begun() && !b.said() && b.due().plus(MISSED).isAfter(moment);
            case LEFT_OUT -> false;
        };
    }

    public boolean anyBreak() {
        return breaks().stream().anyMatch(Rest::shown);
    }

    /** A proposal as a button. */
    @TemplateData
    public record Proposal(String tap, String words, String gain) {}

    public List<Proposal> proposals() {
        return running.remedies().stream().limit(6).map(r -> new Proposal(tap(r), words(r), "gains " + r.gain().toMinutes() + " min")).toList();
    }

    private static String tap(Remedy r) {
        return r.what() == Remedy.What.SHORTEN ? "more %s -%d".formatted(r.step(), r.minutes()) : "skip " + r.step();
    }

    private static String words(Remedy r) {
        return switch (r.what()) {
            case LEAVE_OUT -> "Leave out or take home: " + r.title();
            case SHORTEN -> "Shorten %s by %d min".formatted(r.title(), r.minutes());
            case NO_BREAK -> "No break";
        };
    }

    /** A student of the register. */
    @TemplateData
    public record Seat(int number, String name, String presence) {}

    public List<Seat> seats() {
        Map<Integer, Presence> told = running.seats();
        return IntStream.rangeClosed(1, setup.headcount()).mapToObj(n -> new Seat(n, name(n), told.containsKey(n) ? Formats.word(told.get(n)) : "")).toList();
    }

    private String name(int seat) {
        return seat <= setup.students().size() ? setup.students().get(seat - 1).name() : "Student " + seat;
    }

    /** The last tap that counts; null where there is none. */
    public Tap last() {
        return running.taps().isEmpty() ? null : running.taps().get(running.taps().size() - 1);
    }

    public String lastWords() {
        Tap last = last();
        return last == null ? "" : "%s %s".formatted(Formats.word(last.kind()), title(last.step()));
    }

    private String title(String key) {
        return course.steps().stream().filter(s -> s.key().equals(key)).map(Course.Item::title).findFirst()
                .orElse(running.breaks().stream().anyMatch(b -> b.key().equals(key)) ? "the break" : "");
    }

    public int helpMore() {
        return running.help() + 1;
    }

    public int helpLess() {
        return Math.max(0, running.help() - 1);
    }

    /** The step that a note is of; empty where none goes on. */
    public String nowKey() {
        return now().stream().map(Line::key).findFirst().orElse("-");
    }

    /** A note with its time. */
    @TemplateData
    public record Note(String clock, String about, String text) {}

    public List<Note> notes() {
        return running.notes().stream().map(n -> new Note(Formats.clock(n.at()), n.kind() == Tap.Kind.INCIDENT ? "Incident" : title(n.step()), n.text())).toList();
    }

    /** For the script: what the class is run by. */
    public String courseData() {
        return json(Map.of("steps", course.steps().stream().map(DayView::data).toList(), "students", course.students(), "end", course.end().toString(),
                "pauses", course.pauses().stream().map(p -> Map.of("key", p.key(), "start", p.start().toString(), "end", p.end().toString())).toList()));
    }

    private static Map<String, Object> data(Course.Item s) {
        return Map.of("key", s.key(), "title", s.title(), "group", s.group(), "handsOn", s.handsOn(), "own", s.own(), "start", s.start().toString(),
                "end", s.end().toString(), "length", s.length().toSeconds(), "notBefore", s.notBefore() == null ? "" : s.notBefore().toString());
    }

    /** For the script: all that was told. */
    public String logData() {
        return json(log.stream().map(DayView::data).toList());
    }

    private static Map<String, Object> data(Tap t) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("id", t.id());
        data.put("at", t.at().toString());
        data.put("kind", Formats.word(t.kind()));
        data.put("step", Objects.requireNonNullElse(t.step(), ""));
        data.put("number", t.number());
        data.put("text", t.text());
        return data;
    }

    private static String json(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }
}
