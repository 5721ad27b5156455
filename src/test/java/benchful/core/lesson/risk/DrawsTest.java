package benchful.core.lesson.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class DrawsTest {

    private static final int DRAWS = 1_000_000;

    @Test
    void drawsNormalNumbers() {
        double mean = LongStream.range(0, DRAWS).mapToDouble(i -> Draws.normal(Draws.mix(1, i))).average().orElseThrow();
        double square = LongStream.range(0, DRAWS).mapToDouble(i -> Math.pow(Draws.normal(Draws.mix(1, i)), 2)).average().orElseThrow();
        long beyond = LongStream.range(0, DRAWS).filter(i -> Draws.normal(Draws.mix(1, i)) > 1.959964).count();
        assertThat(mean).isCloseTo(0, within(0.004));
        assertThat(square).isCloseTo(1, within(0.006));
        assertThat(beyond / (double) DRAWS).isCloseTo(0.025, within(0.0006));
    }

    @Test
    void drawsExponentialNumbers() {
        double mean = LongStream.range(0, DRAWS).mapToDouble(i -> Draws.exponential(Draws.mix(3, i))).average().orElseThrow();
        long beyond = LongStream.range(0, DRAWS).filter(i -> Draws.exponential(Draws.mix(3, i)) > 3).count();
        assertThat(mean).isCloseTo(1, within(0.004));
        assertThat(beyond / (double) DRAWS).isCloseTo(Math.exp(-3), within(0.0008));
    }

    @Test
    void selectsWhatSortingFinds() {
        Random random = new Random(5);
        for (int size = 1; size < 200; size++) {
            float[] numbers = new float[size];
            for (int i = 0; i < size; i++) {
                numbers[i] = random.nextInt(20);
            }
            float[] sorted = numbers.clone();
            Arrays.sort(sorted);
            int k = random.nextInt(size);
            assertThat(Selection.smallest(numbers, k)).isEqualTo(sorted[k]);
        }
    }

    @Test
    void findsTheSoonestOfChangingTimes() {
        Random random = new Random(6);
        double[] times = new double[13];
        Soonest soonest = new Soonest(13);
        for (int i = 0; i < 13; i++) {
            times[i] = i;
            soonest.set(i, i);
        }
        for (int round = 0; round < 1000; round++) {
            int who = random.nextInt(13);
            times[who] = random.nextInt(100_000) / 7.0;
            soonest.set(who, times[who]);
            double first = Arrays.stream(times).min().orElseThrow();
            assertThat(soonest.time(soonest.student())).isCloseTo(first, within(1e-6));
        }
    }
}
