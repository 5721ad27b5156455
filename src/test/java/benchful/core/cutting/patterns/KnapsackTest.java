package benchful.core.cutting.patterns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The best pattern is written "value of at most bound: pieces of each kind". */
class KnapsackTest {
    private static final Work MUCH = Work.among(1);

    @Test
    void takesWhatIsWorthMostTogether() {
        assertThat(best(new long[] {60, 40}, new int[] {1, 2}, 100, 7, 4)).isEqualTo("11 of at most 11: [1, 1]");
        assertThat(best(new long[] {60, 50}, new int[] {1, 2}, 100, 61, 50)).isEqualTo("100 of at most 100: [0, 2]");
    }

    @Test
    void takesAsManyOfAKindAsFitAndAreAskedFor() {
        assertThat(best(new long[] {10}, new int[] {7}, 65, 3)).isEqualTo("18 of at most 18: [6]");
        assertThat(best(new long[] {10}, new int[] {5}, 65, 3)).isEqualTo("15 of at most 15: [5]");
        assertThat(best(new long[] {10}, new int[] {5}, 9, 3)).isEqualTo("0 of at most 0: [0]");
    }

    @Test
    void takesNothingThatIsWorthNothing() {
        assertThat(best(new long[] {10, 20}, new int[] {5, 5}, 50, 0, 5)).isEqualTo("10 of at most 10: [0, 2]");
        assertThat(densest(new long[] {10, 20}, new int[] {5, 5}, 50, 0, 5)).isEqualTo("10 of at most 13: [0, 2]");
    }

    /** The first of equals, and of two patterns of one value the shorter. */
    @Test
    void choosesBetweenEqualsAlwaysAlike() {
        assertThat(best(new long[] {10, 10}, new int[] {1, 1}, 10, 5, 5)).isEqualTo("5 of at most 5: [1, 0]");
        assertThat(best(new long[] {10, 10}, new int[] {1, 1}, 10, 3, 5)).isEqualTo("5 of at most 5: [0, 1]");
        assertThat(best(new long[] {20, 10}, new int[] {1, 1}, 20, 5, 5)).isEqualTo("5 of at most 5: [0, 1]");
    }

    /** With no work left: 60 for 61, and of the next a part for the 40 that are free: 40 of 50. */
    @Test
    void takesTheDensestFirstWhereTheWorkIsSpent() {
        assertThat(densest(new long[] {60, 50}, new int[] {1, 2}, 100, 61, 50)).isEqualTo("61 of at most 101: [1, 0]");
        assertThat(densest(new long[] {50, 60}, new int[] {2, 1}, 100, 50, 61)).isEqualTo("61 of at most 101: [0, 1]");
        assertThat(densest(new long[] {60, 50}, new int[] {1, 1}, 200, 61, 50)).isEqualTo("111 of at most 111: [1, 1]");
        assertThat(densest(new long[] {60, 10}, new int[] {2, 9}, 100, 120, 10)).isEqualTo("160 of at most 200: [1, 4]");
    }

    @Test
    void roundsThePartUpButNotWhereNothingIsFree() {
        assertThat(densest(new long[] {3}, new int[] {5}, 10, 1)).isEqualTo("3 of at most 4: [3]");
        assertThat(densest(new long[] {5}, new int[] {3}, 10, 1)).isEqualTo("2 of at most 2: [2]");
    }

    /** One piece: the list without it and the list with it, of one state each, are two steps. */
    @Test
    void spendsAStepForEachStateLookedAt() {
        Work three = left(3);
        new Knapsack(new long[] {10}, new int[] {1}, three).best(10, new long[] {5});
        assertThat(three.isSpent()).isFalse();
        Work two = left(2);
        new Knapsack(new long[] {10}, new int[] {1}, two).best(10, new long[] {5});
        assertThat(two.isSpent()).isTrue();
    }

    @Test
    void givesPiecesThatAreWorthWhatItSays() {
        Random random = new Random(8);
        for (int i = 0; i < 100; i++) {
            long[] sizes = random.longs(4, 5, 60).toArray();
            int[] most = random.ints(4, 0, 5).toArray();
            long[] worths = random.longs(4, 0, 100).toArray();
            Knapsack.Best best = new Knapsack(sizes, most, MUCH).best(150, worths);
            assertThat(IntStream.range(0, 4).mapToLong(k -> worths[k] * best.counts()[k]).sum()).isEqualTo(best.value());
            assertThat(IntStream.range(0, 4).allMatch(k -> best.counts()[k] <= most[k])).isTrue();
        }
    }

    @Test
    void sharesItsWorkAmongAttempts() {
        Work half = Work.among(2);
        half.spend(59_999_999);
        assertThat(half.isSpent()).isFalse();
        half.spend(1);
        assertThat(half.isSpent()).isTrue();
        Work all = Work.among(0);
        all.spend(119_999_999);
        assertThat(all.isSpent()).isFalse();
        all.spend(Long.MAX_VALUE);
        assertThat(all.isSpent()).isTrue();
    }

    /** @param steps that may still be done */
    static Work left(long steps) {
        Work work = Work.among(1);
        work.spend(120_000_000 - steps);
        return work;
    }

    private static String best(long[] sizes, int[] most, long capacity, long... worths) {
        return written(new Knapsack(sizes, most, MUCH).best(capacity, worths));
    }

    private static String densest(long[] sizes, int[] most, long capacity, long... worths) {
        return written(new Knapsack(sizes, most, left(0)).best(capacity, worths));
    }

    private static String written(Knapsack.Best best) {
        return best.value() + " of at most " + best.bound() + ": " + Arrays.toString(best.counts());
    }
}
