package benchful.core.lesson.time;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Segment;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.TutorLoad;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two groups who share a tutor, with tea from 10:50 to 11:00; the class works at something for 70 min up to 11:30. */
class ClassLoadTest {

    private static final List<Block> BLOCKS = List.of(
            block("Show", StepKind.SHOW, Lane.CLASS, 0, 1, part(0, 30)),
            block("Cut", StepKind.MAKE, Lane.CLASS, 1, 0.25, part(30, 50), part(60, 70)),
            block("Join", StepKind.MAKE, Lane.CLASS, 2, 0.5, part(30, 45)),
            block("Sand", StepKind.MAKE, Lane.CLASS, 2, 0.5, part(40, 50)),
            block("Dry", StepKind.WAIT, Lane.WAIT, 0, 0, part(30, 120)),
            block("Sign", StepKind.MAKE, Lane.CLASS, 1, 0, part(80, 90)));

    private static LessonRequest.Builder groups() {
        return LessonRequest.builder().headcount(6).groups(2).helpers(1).meeting(TEN, TEN.plusHours(3))
                .pause("tea", at(50), at(60)).pause("sweep", at(120), at(130));
    }

    /** 30 min at 1, 10 at 0.75, 5 at more than all, 5 at 0.75 and 10 at 0.25 are 48.75 of 70. */
    @Test
    void sumsWhatAllGroupsAskOfTheTutor() {
        TutorLoad load = new ClassLoad(groups().build(), BLOCKS).tutor();
        assertThat(load.spans()).containsExactly(
                new TutorLoad.Span(at(0), at(30), "Show", 1, 0),
                new TutorLoad.Span(at(30), at(40), "Cut (group 1), Join (group 2)", 0.75, 0.75),
                new TutorLoad.Span(at(40), at(45), "Cut (group 1), Join (group 2), Sand (group 2)", 1, 1),
                new TutorLoad.Span(at(45), at(50), "Cut (group 1), Sand (group 2)", 0.75, 0.75),
                new TutorLoad.Span(at(60), at(70), "Cut (group 1)", 0.25, 0.25));
        assertThat(load.peak()).isEqualTo(1);
        assertThat(load.mean()).isCloseTo(48.75 / 70, within(1e-9));
    }

    @Test
    void sharesNothingWithHelpersWhoAreNotThere() {
        assertThat(new ClassLoad(groups().helpers(0).build(), BLOCKS).tutor().spans()).hasSize(5).allMatch(span -> span.helping() == 0);
    }

    /** Of 80 min up to 11:30, tea left out, the first group works 70 and the second 50: what it does side by side counts once. */
    @Test
    void leavesTheGroupsIdleForTwentyMinutesOnAverage() {
        assertThat(new ClassLoad(groups().build(), BLOCKS).idle()).isEqualTo(Duration.ofMinutes(20));
    }

    @Test
    void isIdleInNoTimeWhereNothingIsDone() {
        ClassLoad nothing = new ClassLoad(groups().build(), new ArrayList<>());
        assertThat(nothing.tutor()).isEqualTo(new TutorLoad(List.of(), 0, 0));
        assertThat(nothing.idle()).isZero();
    }

    private static Block block(String title, StepKind kind, Lane lane, int group, double tutorShare, Segment... parts) {
        return new Block(title.toLowerCase(), title, kind, lane, group, parts[0].start(), parts[parts.length - 1].end(), Arrays.asList(parts), List.of(),
                Duration.ZERO, false, tutorShare, List.of());
    }

    private static Segment part(int from, int to) {
        return new Segment(at(from), at(to));
    }

    private static LocalDateTime at(int minutes) {
        return TEN.plusMinutes(minutes);
    }
}
