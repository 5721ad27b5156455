package benchful.core.lesson.risk;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonRequest;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Clocks, lines and the soonest of many. A break from 100 s to 160 s; meetings from 0 to 1,200 s and from 3,600 s to 4,800 s. */
class ClockTest {
    private static final Clock CLOCK = new Clock(LessonRequest.builder().meeting(TEN, TEN.plusMinutes(20)).meeting(TEN.plusHours(1), TEN.plusMinutes(80))
            .pause("Tea", TEN.plusSeconds(100), TEN.plusSeconds(160)).build());

    @Test
    void standsStillInBreaksAndBetweenMeetings() {
        assertThat(CLOCK.toWorking(100)).isEqualTo(100);
        assertThat(CLOCK.toWorking(130)).isEqualTo(100);
        assertThat(CLOCK.toWorking(160)).isEqualTo(100);
        assertThat(CLOCK.toWorking(200)).isEqualTo(140);
        assertThat(CLOCK.toWorking(2000)).isEqualTo(1140);
        assertThat(CLOCK.toWorking(3700)).isEqualTo(1240);
    }

    @Test
    void goesOnBehindABreak() {
        assertThat(CLOCK.toClock(100)).isEqualTo(100);
        assertThat(CLOCK.toClockOnward(100)).isEqualTo(160);
        assertThat(CLOCK.toClock(140)).isEqualTo(200);
        assertThat(CLOCK.toClockOnward(99)).isEqualTo(99);
        assertThat(CLOCK.toClock(1240)).isEqualTo(3700);
        assertThat(CLOCK.toClockOnward(1140)).isEqualTo(3600);
    }

    @Test
    void beginsWhereAllOfItFits() {
        assertThat(CLOCK.wholeFrom(90, 10)).isEqualTo(90);
        assertThat(CLOCK.wholeFrom(90, 11)).isEqualTo(160);
        assertThat(CLOCK.wholeFrom(120, 1)).isEqualTo(160);
        assertThat(CLOCK.wholeFrom(160, 1040)).isEqualTo(160);
        assertThat(CLOCK.wholeFrom(160, 1041)).isEqualTo(3600);
        assertThat(CLOCK.outsideFrom(0, 2400)).isEqualTo(1200);
        assertThat(CLOCK.outsideFrom(0, 2401)).isEqualTo(4800);
        assertThat(CLOCK.outsideFrom(1200, 60)).isEqualTo(1200);
        assertThat(CLOCK.outsideFrom(3600, 60)).isEqualTo(4800);
    }

    @Test
    void knowsTheMeetingOfATimeAndTheMinuteAbove() {
        assertThat(CLOCK.meetingOf(3599)).isZero();
        assertThat(CLOCK.meetingOf(3600)).isEqualTo(3600);
        assertThat(CLOCK.seconds(TEN.plusMinutes(2))).isEqualTo(120);
        assertThat(CLOCK.time(120)).isEqualTo(TEN.plusMinutes(2));
        assertThat(CLOCK.time(120.0005)).isEqualTo(TEN.plusMinutes(2));
        assertThat(CLOCK.time(120.1)).isEqualTo(TEN.plusMinutes(3));
    }

    @Test
    void servesWhoCameFirst() {
        Line line = new Line(3);
        assertThat(line.isEmpty()).isTrue();
        line.add(5);
        line.add(7);
        line.add(9);
        assertThat(line.isEmpty()).isFalse();
        assertThat(line.get(1)).isEqualTo(7);
        assertThat(line.take(1)).isEqualTo(7);
        assertThat(line.size()).isEqualTo(2);
        assertThat(line.take(0)).isEqualTo(5);
        assertThat(line.take(0)).isEqualTo(9);
        line.add(1);
        line.clear();
        assertThat(line.isEmpty()).isTrue();
    }

    @Test
    void findsWhoComesNext() {
        Soonest soonest = new Soonest(5);
        soonest.set(0, 30);
        soonest.set(3, 20);
        soonest.set(4, 40);
        assertThat(soonest.student()).isEqualTo(3);
        assertThat(soonest.time(3)).isEqualTo(20);
        soonest.never(3);
        assertThat(soonest.student()).isZero();
        soonest.set(0, 50);
        assertThat(soonest.student()).isEqualTo(4);
        Soonest one = new Soonest(1);
        one.set(0, 3);
        assertThat(one.student()).isZero();
        Soonest two = new Soonest(2);
        two.set(1, 3);
        assertThat(two.student()).isEqualTo(1);
    }

    @Test
    void findsTheSmallestWithoutSortingAll() {
        Random random = new Random(5);
        for (int n = 1; n < 30; n++) {
            float[] numbers = new float[n];
            for (int i = 0; i < n; i++) {
                numbers[i] = random.nextInt(10);
            }
            float[] sorted = numbers.clone();
            Arrays.sort(sorted);
            for (int k = 0; k < n; k++) {
                assertThat(Selection.smallest(numbers.clone(), k)).isEqualTo(sorted[k]);
            }
        }
    }
}
