package benchful.core.lesson.order.model;

import static benchful.core.lesson.order.Lessons.TEN;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HoursTest {

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    /** Each start tried one by one: no later one ends by a time, and no earlier one ends from it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void findsTheStartFromTheEnd(long seed) {
        Random random = new Random(seed);
        Hours hours = Hours.of(drawn(random)).in(60);
        for (int i = 0; i < 60; i++) {
            Activity activity = activity(random.nextInt(40), random.nextBoolean(), random.nextBoolean());
            long end = random.nextInt(1700);
            long latest = LongStream.range(0, 2000).filter(start -> hours.end(activity, hours.earliestStart(activity, start)) <= end).max().orElse(-1);
            assertThat(hours.latestStartEndingBy(activity, end, 2000)).as("%s by %d in %s", activity, end, hours.closed()).isEqualTo(latest);
            long earliest = LongStream.range(0, 2000).filter(start -> hours.end(activity, hours.earliestStart(activity, start)) >= end).min().orElse(2000);
            assertThat(hours.earliestStartEndingFrom(activity, end, 2000)).isEqualTo(earliest);
        }
    }

    /** Up to three breaks, and a second meeting on the next day in some. */
    private static LessonRequest drawn(Random random) {
        LessonRequest.Builder request = LessonRequest.builder().meeting(TEN, TEN.plusHours(4));
        if (random.nextBoolean()) {
            request.meeting(TEN.plusDays(1), TEN.plusDays(1).plusHours(4));
        }
        for (int i = 0, from = 20; i < random.nextInt(4); i++, from += 60) {
            int start = from + random.nextInt(30);
            request.pause("Break", TEN.plusMinutes(start), TEN.plusMinutes(start + 5L + random.nextInt(20)));
        }
        return request.build();
    }

    private static Activity activity(long work, boolean hands, boolean pausable) {
        return new Activity(0, new Step.Show("a", "A", java.time.Duration.ZERO), 0, work,
                !hands ? Presence.BEGUN_IN_MEETING : pausable ? Presence.CLASS_WITH_BREAKS : Presence.CLASS, false, new int[0], 0, List.of());
    }
}
