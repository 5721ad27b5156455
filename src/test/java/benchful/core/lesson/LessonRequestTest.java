package benchful.core.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LessonRequestTest {
    private static final LocalDateTime TEN = LocalDateTime.of(2025, 3, 8, 10, 0);
    private static final Duration MINUTE = Duration.ofMinutes(1);

    /** Seven in three groups are three, two and two, side by side. */
    @Test
    void dividesTheClassIntoGroupsSideBySide() {
        LessonRequest seven = booked().headcount(7).groups(3).build();
        assertThat(IntStream.rangeClosed(0, 3).map(seven::members)).containsExactly(7, 3, 2, 2);
        assertThat(IntStream.rangeClosed(0, 3).map(seven::firstSeat)).containsExactly(0, 0, 3, 5);
    }

    @Test
    void countsAToolWhereverItStandsInTheRoom() {
        LessonRequest request = booked().tool("kiln", 1).tool("rack", 5).tool("kiln", 2).build();
        assertThat(request.inRoom("kiln")).isEqualTo(3);
        assertThat(request.inRoom("lamp")).isZero();
        assertThat(request.loadsAtOnce(drying(0, new ToolUse("rack", 2)))).isEqualTo(2);
        assertThat(request.loadsAtOnce(drying(0, new ToolUse("rack", 2), new ToolUse("kiln", 3)))).isEqualTo(1);
        assertThat(request.loadsAtOnce(drying(0, new ToolUse("rack", 6)))).isEqualTo(1);
        assertThat(request.loadsAtOnce(drying(0))).isEqualTo(1);
    }

    /** Two loads of four side by side take eight pieces at once: nine take two rounds of ten minutes. */
    @Test
    void lastsAsManyLoadsAsThereAreStudentsFor() {
        LessonRequest request = booked().tool("rack", 2).build();
        Step.Wait loads = drying(4, new ToolUse("rack", 1));
        assertThat(request.length(loads, 8)).hasMinutes(10);
        assertThat(request.length(loads, 9)).hasMinutes(20);
        assertThat(request.length(drying(1, new ToolUse("rack", 2)), 3)).hasMinutes(30);
        assertThat(request.length(drying(0, new ToolUse("rack", 1)), 9)).hasMinutes(10);
        assertThat(request.length(new Step.Show("s", "Show", Duration.ofMinutes(5), Duration.ofMinutes(2), List.of()), 3)).hasMinutes(11);
    }

    @Test
    void beginsWithTheFirstMeetingAndEndsWithTheLast() {
        LessonRequest request = booked().meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(2)).build();
        assertThat(request.start()).isEqualTo(TEN);
        assertThat(request.bookedEnd()).isEqualTo(TEN.plusDays(1).plusHours(2));
    }

    @Test
    void knowsWhatIsOverBeforeTheClass() {
        Step ahead = new Step.Ahead("kits", "Cut the kits", MINUTE);
        Step make = new Step.Make("make", "Make", StudentTime.ofMinutes(1, 1, 1));
        LessonRequest request = booked().step(ahead).step(make).build();
        assertThat(request.isAhead(ahead)).isTrue();
        assertThat(request.isAhead(make)).isFalse();
        assertThat(booked().step(make).preparedAhead(Set.of("make")).build().isAhead(make)).isTrue();
    }

    @Test
    void findsItsStepsAndWhatFollowsThem() {
        Step first = new Step.Show("a", "First", MINUTE);
        LessonRequest request = booked().step(first).step(new Step.Show("a", "Second", MINUTE)).link("a", "b").link("b", "a").link("a", "c").build();
        assertThat(request.after("a")).extracting(Link::to).containsExactly("b", "c");
        assertThat(request.stepsById().get("a")).isSameAs(first);
        assertThat(request.stepsById().has("a")).isTrue();
        assertThat(request.stepsById().has("b")).isFalse();
        assertThatThrownBy(() -> request.stepsById().get("b")).isInstanceOf(NoSuchElementException.class).hasMessage("There is no step \"b\".");
    }

    @Test
    void takesAThousandOfEachAndNoMore() {
        Step step = new Step.Show("s", "Show", MINUTE);
        assertThat(booked().steps(Collections.nCopies(1000, step)).headcount(1000).helpers(1000).groups(1).replications(1).timeLimit(Duration.ZERO).build().steps()).hasSize(1000);
        refuses(booked().steps(Collections.nCopies(1001, step)), "The number of steps must be at most 1000, not 1001");
        refuses(booked().headcount(1001), "The number of students must be at most 1000, not 1001");
        refuses(booked().headcount(0), "The number of students must be at least 1, not 0");
        refuses(booked().helpers(1001), "The number of helpers must be at most 1000, not 1001");
        refuses(booked().helpers(-1), "The number of helpers must be at least 0, not -1");
        refuses(booked().groups(0), "The number of groups must be at least 1, not 0");
        refuses(LessonRequest.builder(), "The number of meetings must be at least 1, not 0");
        refuses(booked().replications(0), "The number of simulated classes must be at least 1, not 0");
        refuses(booked().timeLimit(MINUTE.negated()), "The length of \"time limit\" must be zero or more, not PT-1M");
        refuses(booked().promise(0), "The share of classes that keep the plan must be above 0 and below 1, not 0.0");
        refuses(booked().promise(1), "The share of classes that keep the plan must be above 0 and below 1, not 1.0");
    }

    @Test
    void isBuiltAgainAsItWasAndEachListAnew() {
        LessonRequest request = booked().step(new Step.Show("s", "Show", MINUTE)).link("s", "s").tool("kiln", 1).pause("tea", TEN, TEN.plusMinutes(5))
                .headcount(5).helpers(2).groups(3).pacing(Pacing.OWN_PACE).preparedAhead(Set.of("s")).promise(0.8).seed(7).replications(9).timeLimit(MINUTE).build();
        assertThat(request.toBuilder().build()).isEqualTo(request);
        LessonRequest other = request.toBuilder().steps(List.of()).links(List.of()).room(List.of()).breaks(List.of()).meetings(List.of(new Meeting(TEN, TEN.plusHours(1)))).build();
        assertThat(other.steps()).isEmpty();
        assertThat(other.links()).isEmpty();
        assertThat(other.room()).isEmpty();
        assertThat(other.breaks()).isEmpty();
        assertThat(other.meetings()).containsExactly(new Meeting(TEN, TEN.plusHours(1)));
    }

    private static LessonRequest.Builder booked() {
        return LessonRequest.builder().meeting(TEN, TEN.plusHours(2));
    }

    private static void refuses(LessonRequest.Builder builder, String why) {
        assertThatThrownBy(builder::build).isInstanceOf(IllegalArgumentException.class).hasMessage(why);
    }

    private static Step.Wait drying(int places, ToolUse... uses) {
        return new Step.Wait("w", "Dry", Duration.ofMinutes(10), Optional.empty(), List.of(uses), places, false);
    }
}
