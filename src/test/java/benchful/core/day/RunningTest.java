package benchful.core.day;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.day.Running.Remedy;
import benchful.core.day.Running.Stage;
import benchful.core.day.Tap.Kind;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

public class RunningTest {
    public static final LocalDateTime ONE = LocalDateTime.of(2027, 3, 6, 13, 0);

    /** Welcome 10, pour 30, (cure 20), knot 20 with a break of 10, hang 20, tidy 10; booked until 15:00. */
    public static final Course COURSE = new Course(List.of(item("welcome", 0, 10, true), item("pour", 10, 40, true), item("cure", 40, 60, false),
            item("knot", 40, 60, true), item("hang", 70, 90, true), item("tidy", 90, 100, true)),
            List.of(new Course.Pause("break-1", at(60), at(70))), 9, at(120));

    /** The same with another break soon after the first. */
    public static final Course TWO_BREAKS = new Course(COURSE.steps(), List.of(Course.Pause.rest(1, at(60), at(70)), Course.Pause.rest(2, at(75), at(80))), 9, at(120));

    /** The same with a time that the tutor asked for. */
    public static final Course ASKED = new Course(COURSE.steps().stream().map(s -> s.key().equals("hang")
            ? new Course.Item(s.key(), s.title(), 0, true, true, s.start(), s.end(), s.length(), at(85)) : s).toList(), COURSE.pauses(), 9, at(120));

    /** Two groups, each shown by itself how to saw; the second files meanwhile. */
    public static final Course IN_GROUPS = new Course(List.of(shown("show/1", 1, 0, 10), made("file/2", 2, 0, 20), made("saw/1", 1, 10, 30), shown("show/2", 2, 20, 30), made("saw/2", 2, 30, 50),
            made("file/1", 1, 30, 50), item("tidy", 50, 60, true)), List.of(), 8, at(60));

    private int number;

    private static Course.Item shown(String key, int group, int from, int to) {
        return new Course.Item(key, key, group, true, false, at(from), at(to), Duration.ofMinutes(to - from));
    }

    private static Course.Item made(String key, int group, int from, int to) {
        return new Course.Item(key, key, group, true, true, at(from), at(to), Duration.ofMinutes(to - from));
    }

    static LocalDateTime at(int minute) {
        return ONE.plusMinutes(minute);
    }

    private static Course.Item item(String key, int from, int to, boolean handsOn) {
        return new Course.Item(key, key, 0, handsOn, true, at(from), at(to), Duration.ofMinutes(to - from));
    }

    private Tap tap(int minute, Kind kind, String step, int amount) {
        return new Tap("t" + ++number, at(minute), kind, step, amount, "");
    }

    private static List<String> stages(Running running) {
        return running.steps().stream().map(s -> s.item().key() + " " + s.stage() + " " + s.begins().toLocalTime() + " " + s.ends().toLocalTime()).toList();
    }

    @Test
    void waitsForItsFirstTap() {
        Running running = Running.of(COURSE, List.of(), at(-2));
        assertThat(running.begun()).isFalse();
        assertThat(stages(running)).containsExactly("welcome TO_COME 13:00 13:10", "pour TO_COME 13:10 13:40", "cure TO_COME 13:40 14:00",
                "knot TO_COME 13:40 14:00", "hang TO_COME 14:10 14:30", "tidy TO_COME 14:30 14:40");
        assertThat(running.behind()).isZero();
    }

    @Test
    void goesFromStepToStepByTheTapThatOneIsOver() {
        Running running = Running.of(COURSE, List.of(tap(5, Kind.START, "welcome", 0), tap(17, Kind.FINISH, "welcome", 0), tap(50, Kind.FINISH, "pour", 0)), at(55));
        assertThat(stages(running)).containsExactly("welcome OVER 13:05 13:17", "pour OVER 13:17 13:50", "cure NOW 13:50 14:10", "knot NOW 13:50 14:20",
                "hang TO_COME 14:20 14:40", "tidy TO_COME 14:40 14:50");
        assertThat(running.behind()).isEqualTo(Duration.ofMinutes(10));
        assertThat(running.end()).isEqualTo(at(110));
    }

    @Test
    void pushesTheRestOnWhileAStepRunsOver() {
        Running running = Running.of(COURSE, List.of(tap(0, Kind.START, "welcome", 0)), at(25));
        assertThat(running.steps().get(0).ends()).isEqualTo(at(25));
        assertThat(running.behind()).isEqualTo(Duration.ofMinutes(15));
    }

    @Test
    void holdsBackWhatIsNotDryYet() {
        Running running = Running.of(COURSE, List.of(tap(0, Kind.START, "welcome", 0), tap(10, Kind.FINISH, "welcome", 0), tap(55, Kind.FINISH, "pour", 0),
                tap(56, Kind.FINISH, "knot", 0)), at(57));
        assertThat(stages(running)).contains("cure NOW 13:55 14:15", "hang TO_COME 14:15 14:35");
    }

    /** The tutor shows the first group until 13:25; the second has filed by 13:20 and waits for her. */
    @Test
    void showsASecondGroupNothingBeforeTheFirstHasSeenIt() {
        Running running = Running.of(IN_GROUPS, List.of(tap(0, Kind.START, "show/1", 0), tap(20, Kind.FINISH, "file/2", 0)), at(25));
        assertThat(stages(running)).containsExactly("show/1 NOW 13:00 13:25", "file/2 OVER 13:00 13:20", "saw/1 TO_COME 13:25 13:45", "show/2 TO_COME 13:25 13:35",
                "saw/2 TO_COME 13:35 13:55", "file/1 TO_COME 13:45 14:05", "tidy TO_COME 14:05 14:15");
        Running after = Running.of(IN_GROUPS, List.of(tap(0, Kind.START, "show/1", 0), tap(20, Kind.FINISH, "file/2", 0), tap(25, Kind.FINISH, "show/1", 0)), at(26));
        assertThat(stages(after)).contains("saw/1 NOW 13:25 13:45", "show/2 NOW 13:25 13:35");
    }

    @Test
    void countsMinutesMoreAndWhatIsLeftOut() {
        Running running = Running.of(COURSE, List.of(tap(0, Kind.START, "welcome", 0), tap(1, Kind.MORE, "welcome", 5), tap(2, Kind.SKIP, "hang", 0),
                tap(3, Kind.SKIP, "break-1", 0)), at(4));
        assertThat(stages(running)).containsExactly("welcome NOW 13:00 13:15", "pour TO_COME 13:15 13:45", "cure TO_COME 13:45 14:05", "knot TO_COME 13:45 14:05",
                "hang LEFT_OUT 14:05 14:05", "tidy TO_COME 14:05 14:15");
    }

    private Running begun(int now, Tap... more) {
        List<Tap> taps = new ArrayList<>(List.of(tap(0, Kind.START, "welcome", 0), tap(10, Kind.FINISH, "welcome", 0), tap(40, Kind.FINISH, "pour", 0)));
        taps.addAll(List.of(more));
        return Running.of(COURSE, taps, at(now));
    }

    private static String rest(Running running) {
        Break rest = running.breaks().get(0);
        return "%s %s %s to %s".formatted(rest.said() ? "said" : "by the clock", rest.stage(), rest.begins().toLocalTime(), rest.ends().toLocalTime());
    }

    @Test
    void takesABreakByTheClockWhereNobodySaysAnythingOfIt() {
        assertThat(rest(begun(59))).isEqualTo("by the clock TO_COME 14:00 to 14:10");
        assertThat(rest(begun(65))).isEqualTo("by the clock NOW 14:00 to 14:10");
        assertThat(rest(begun(70))).isEqualTo("by the clock OVER 14:00 to 14:10");
        assertThat(rest(begun(59, tap(50, Kind.SKIP, "break-1", 0)))).isEqualTo("by the clock LEFT_OUT 14:00 to 14:10");
    }

    /** Knot has 5 of its 20 minutes left when the break begins. */
    @Test
    void pushesTheRestOnWhileABreakIsNotOver() {
        Tap begins = tap(55, Kind.START, "break-1", 0);
        assertThat(rest(begun(60, begins))).isEqualTo("by the clock NOW 13:55 to 14:05");
        assertThat(stages(begun(60, begins))).contains("knot NOW 13:40 14:10", "tidy TO_COME 14:30 14:40");
        assertThat(rest(begun(72, begins))).isEqualTo("by the clock NOW 13:55 to 14:12");
        assertThat(stages(begun(72, begins))).contains("knot NOW 13:40 14:17", "tidy TO_COME 14:37 14:47");
        Running over = begun(75, begins, tap(74, Kind.FINISH, "break-1", 0));
        assertThat(rest(over)).isEqualTo("said OVER 13:55 to 14:14");
        assertThat(over.breaks().get(0).due()).isEqualTo(at(65));
        assertThat(stages(over)).contains("knot NOW 13:40 14:19", "tidy TO_COME 14:39 14:49");
    }

    @Test
    void takesABreakThatNobodyEndsToBeAsLongAsPlannedOnceWorkIsToldOf() {
        Tap begins = tap(62, Kind.START, "break-1", 0);
        assertThat(rest(begun(90, begins, tap(70, Kind.COUNT, "knot", 2)))).as("still within its time").isEqualTo("by the clock NOW 14:02 to 14:30");
        assertThat(rest(begun(90, begins, tap(80, Kind.COUNT, "knot", 2)))).isEqualTo("by the clock OVER 14:02 to 14:12");
        assertThat(rest(begun(90, begins, tap(80, Kind.FINISH, "cure", 0)))).as("what dries is nobody's work").isEqualTo("by the clock NOW 14:02 to 14:30");
    }

    @Test
    void takesABreakOfWhichOnlyItsEndIsSaidToHaveBegunAsPlanned() {
        assertThat(rest(begun(80, tap(73, Kind.FINISH, "break-1", 0)))).isEqualTo("said OVER 14:00 to 14:13");
        assertThat(rest(begun(80, tap(58, Kind.FINISH, "break-1", 0)))).isEqualTo("said OVER 13:58 to 13:58");
        assertThat(rest(begun(65, tap(61, Kind.MORE, "break-1", 5)))).isEqualTo("by the clock NOW 14:00 to 14:15");
    }

    @Test
    void countsABreakThatIsNotOverBeforeTheNextOneOnce() {
        Running running = Running.of(TWO_BREAKS, List.of(tap(0, Kind.START, "welcome", 0), tap(10, Kind.FINISH, "welcome", 0), tap(45, Kind.FINISH, "pour", 0),
                tap(60, Kind.START, "break-1", 0), tap(78, Kind.FINISH, "break-1", 0)), at(79));
        assertThat(stages(running)).contains("knot NOW 13:45 14:25");
    }

    @Test
    void doesNotBeginWithABreakNorLeaveOutTheTimeBetweenMeetings() {
        assertThat(Running.of(COURSE, List.of(tap(0, Kind.START, "break-1", 0)), at(1)).begun()).isFalse();
        Course meetings = new Course(COURSE.steps(), List.of(new Course.Pause("pause-1", at(60), at(70)), Course.Pause.rest(2, at(75), at(80))), 9, at(90));
        assertThat(Running.of(meetings, List.of(), at(0)).remedies().stream().filter(r -> r.what() == Remedy.What.NO_BREAK).map(Remedy::step)).containsExactly("break-2");
        assertThat(Running.of(meetings, List.of(), at(0)).breaks()).extracting(Break::key).containsExactly("break-2");
    }

    @Test
    void takesBackTheLastTapAndTheTakingBack() {
        Tap start = tap(0, Kind.START, "welcome", 0);
        Tap finish = tap(3, Kind.FINISH, "welcome", 0);
        Tap undo = new Tap("u1", at(4), Kind.UNDO, finish.id(), 0, "");
        Tap redo = new Tap("u2", at(5), Kind.UNDO, undo.id(), 0, "");
        assertThat(Running.of(COURSE, List.of(start, finish, undo), at(6)).steps().get(0).stage()).isEqualTo(Stage.NOW);
        assertThat(Running.of(COURSE, List.of(start, finish, undo, redo), at(6)).steps().get(0).stage()).isEqualTo(Stage.OVER);
    }

    /** Two devices, one of which was without a network: whatever arrives first, and how often, the class is the same. */
    @Test
    void isTheSameWhateverOrderTheTapsComeInAndHoweverOften() {
        Random random = new Random(7);
        for (int round = 0; round < 100; round++) {
            List<Tap> taps = drawn(random, 12);
            Running one = Running.of(COURSE, taps, at(80));
            List<Tap> other = new ArrayList<>(taps);
            other.addAll(taps.subList(0, 5));
            Collections.shuffle(other, random);
            assertThat(stages(Running.of(COURSE, other, at(80)))).isEqualTo(stages(one));
        }
    }

    public static List<Tap> drawn(Random random, int number) {
        List<String> steps = List.of("welcome", "pour", "cure", "knot", "hang", "tidy", "break-1", "break-2", "none");
        List<Tap> taps = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            String step = kind == Kind.UNDO && i > 0 ? taps.get(random.nextInt(i)).id() : steps.get(random.nextInt(steps.size()));
            taps.add(new Tap("d" + i + "-" + random.nextInt(1000), ONE.plusSeconds(random.nextInt(7000)), kind, step, random.nextInt(10) - 2, "x"));
        }
        return taps;
    }

    @Test
    void proposesWhatEndsSoonerWithWhatItGains() {
        Running running = Running.of(COURSE, List.of(tap(0, Kind.START, "welcome", 0), tap(45, Kind.FINISH, "welcome", 0)), at(46));
        assertThat(running.end()).isEqualTo(at(135));
        assertThat(running.remedies()).contains(new Remedy(Remedy.What.LEAVE_OUT, "tidy", "tidy", 0, Duration.ofMinutes(10)),
                new Remedy(Remedy.What.SHORTEN, "tidy", "tidy", 3, Duration.ofMinutes(3)));
        assertThat(running.remedies().stream().map(Remedy::gain)).isSortedAccordingTo(Collections.reverseOrder());
        assertThat(Running.of(COURSE, List.of(tap(0, Kind.START, "welcome", 0)), at(5)).remedies()).isEmpty();
    }

    @Test
    void beginsNothingBeforeTheTimeThatTheTutorAskedForUnlessItIsSaidTo() {
        List<Tap> ahead = List.of(tap(0, Kind.START, "welcome", 0), tap(5, Kind.FINISH, "welcome", 0), tap(20, Kind.FINISH, "pour", 0), tap(40, Kind.FINISH, "knot", 0));
        assertThat(stages(Running.of(ASKED, ahead, at(80)))).contains("hang TO_COME 14:25 14:45", "tidy TO_COME 14:45 14:55");
        assertThat(stages(Running.of(ASKED, ahead, at(86)))).contains("hang NOW 14:25 14:45");
        List<Tap> sooner = Stream.concat(ahead.stream(), Stream.of(tap(75, Kind.START, "hang", 0))).toList();
        assertThat(stages(Running.of(ASKED, sooner, at(80)))).contains("hang NOW 14:15 14:35");
        List<Tap> late = List.of(tap(0, Kind.START, "welcome", 0), tap(40, Kind.FINISH, "welcome", 0));
        assertThat(stages(Running.of(ASKED, late, at(41)))).contains("hang TO_COME 14:40 15:00");
    }

    @Test
    void keepsTheRegister() {
        Running running = Running.of(COURSE, List.of(tap(0, Kind.ABSENT, null, 3), tap(1, Kind.ABSENT, null, 4), tap(9, Kind.LATE, null, 4), tap(9, Kind.HELP, null, 2)), at(10));
        assertThat(running.present()).isEqualTo(8);
        assertThat(running.help()).isEqualTo(2);
    }

    @Test
    void runsOnAnotherDayFromItsFirstTap() {
        Running running = Running.of(COURSE, List.of(new Tap("a", ONE.plusDays(2).plusMinutes(30), Kind.START, "welcome", 0, "")), ONE.plusDays(2).plusMinutes(35));
        assertThat(running.behind()).isZero();
        assertThat(running.end()).isEqualTo(ONE.plusDays(2).plusMinutes(130));
    }
}
