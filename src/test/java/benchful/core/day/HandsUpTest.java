package benchful.core.day;

import static benchful.core.day.RunningTest.at;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.day.Course.Item;
import benchful.core.day.HandsUp.Asked;
import benchful.core.day.Tap.Kind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Nine students pour from 10 to 40, have a break from 60 to 70 and knot from 40 to 80; what leads and ends is for all. */
class HandsUpTest {
    private int number;

    private Tap tap(int minute, Kind kind, String step, int amount) {
        return new Tap("t" + (100 + ++number), at(minute), kind, step, amount, "");
    }

    private static Item item(String key, int group, int from, int to, boolean own) {
        return new Item(key, key, group, true, own, at(from), at(to), Duration.ofMinutes(to - from));
    }

    private static Map<String, Asked> asked(List<Item> items, List<Tap> taps) {
        Course course = new Course(items, List.of(new Course.Pause("break-1", at(60), at(70))), 9, at(120));
        return HandsUp.of(Running.of(course, taps, at(200)));
    }

    private static final List<Item> STEPS = List.of(item("welcome", 0, 0, 10, false), item("pour", 0, 10, 40, true), item("knot", 0, 40, 80, true), item("tidy", 0, 80, 90, false));

    private List<Tap> run(Tap... more) {
        List<Tap> taps = new ArrayList<>(List.of(tap(0, Kind.START, "welcome", 0), tap(10, Kind.FINISH, "welcome", 0), tap(40, Kind.FINISH, "pour", 0), tap(80, Kind.FINISH, "knot", 0),
                tap(90, Kind.FINISH, "tidy", 0)));
        taps.addAll(List.of(more));
        return taps;
    }

    @Test
    void countsHandsThatGoUpAndTheTimeThatTheOthersWork() {
        Map<String, Asked> asked = asked(STEPS, run(tap(5, Kind.HELP, null, 1), tap(6, Kind.HELP, null, 0), tap(20, Kind.HELP, null, 1), tap(22, Kind.HELP, null, 3),
                tap(25, Kind.HELP, null, 1), tap(30, Kind.HELP, null, 0), tap(50, Kind.HELP, null, 1), tap(55, Kind.HELP, null, 0)));
        assertThat(asked).containsOnlyKeys("pour", "knot");
        assertThat(asked.get("pour")).as("one from 20, three from 22, one from 25 to 30").isEqualTo(new Asked(3, Duration.ofMinutes(30 * 9 - 2 - 9 - 5)));
        assertThat(asked.get("knot")).as("not in the break").isEqualTo(new Asked(1, Duration.ofMinutes(30 * 9 - 5)));
    }

    @Test
    void leavesOutWhoHasFinishedIsAbsentOrHasLeft() {
        Map<String, Asked> asked = asked(STEPS, run(tap(11, Kind.ABSENT, null, 4), tap(30, Kind.COUNT, "pour", 2), tap(35, Kind.LEFT, null, 9), tap(38, Kind.HELP, null, 1), tap(39, Kind.HELP, null, 0)));
        assertThat(asked.get("pour")).isEqualTo(new Asked(1, Duration.ofMinutes(20 * 8 + 5 * 6 + 5 * 5 - 1)));
        assertThat(asked.get("knot")).isEqualTo(new Asked(0, Duration.ofMinutes(30 * 7)));
    }

    @Test
    void knowsNothingWhereNoHandWasCountedOrTheEndIsNotKnown() {
        assertThat(asked(STEPS, run())).isEmpty();
        Tap hand = tap(20, Kind.HELP, null, 1);
        assertThat(asked(STEPS, run(hand, tap(21, Kind.UNDO, hand.id(), 0)))).isEmpty();
        assertThat(asked(STEPS, List.of(tap(0, Kind.START, "welcome", 0), tap(10, Kind.FINISH, "welcome", 0), tap(20, Kind.HELP, null, 1)))).isEmpty();
    }

    @Test
    void knowsNothingOfStepsSideBySideAsNobodyKnowsWhoseHandItWas() {
        List<Item> groups = List.of(item("pour", 1, 10, 40, true), item("knot", 2, 10, 40, true));
        assertThat(asked(groups, List.of(tap(10, Kind.START, "pour", 0), tap(20, Kind.HELP, null, 1), tap(40, Kind.FINISH, "pour", 0), tap(40, Kind.FINISH, "knot", 0)))).isEmpty();
        List<Tap> beside = run(tap(30, Kind.START, "knot", 0), tap(35, Kind.HELP, null, 1));
        assertThat(asked(STEPS, beside)).isEmpty();
    }
}
