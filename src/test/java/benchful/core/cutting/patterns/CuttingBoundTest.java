package benchful.core.cutting.patterns;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CuttingBoundTest {
    private static final EqualLengths HUNDRED_FOR_FIVE = stock(100, 5);

    /** Seven of 30 take 210, so three lengths of 100. */
    @Test
    void takesWholeLengthsForAllPieces() {
        assertThat(bound(new long[] {30}, new int[] {7}, HUNDRED_FOR_FIVE)).isEqualTo(15);
        assertThat(bound(new long[] {50}, new int[] {2}, HUNDRED_FOR_FIVE)).isEqualTo(5);
        assertThat(bound(new long[] {25}, new int[] {8}, HUNDRED_FOR_FIVE)).isEqualTo(10);
    }

    /** 39 are left beside each 61, so the three of 40 take two more; beside each 60 there is room for one. */
    @Test
    void countsPiecesThatLeaveNoRoomForOthers() {
        assertThat(bound(new long[] {61, 40}, new int[] {3, 3}, HUNDRED_FOR_FIVE)).isEqualTo(25);
        assertThat(bound(new long[] {60, 40}, new int[] {3, 3}, HUNDRED_FOR_FIVE)).isEqualTo(15);
        assertThat(bound(new long[] {60}, new int[] {3}, HUNDRED_FOR_FIVE)).isEqualTo(15);
        assertThat(bound(new long[] {51, 50}, new int[] {2, 1}, HUNDRED_FOR_FIVE)).isEqualTo(15);
        assertThat(bound(new long[] {61, 40, 10}, new int[] {1, 1, 4}, HUNDRED_FOR_FIVE)).isEqualTo(10);
    }

    /** Of 301 a length of 100 is there: 201 take three. Two of 150 there leave 300 of 600. */
    @Test
    void takesOffWhatIsOnHand() {
        assertThat(bound(new long[] {43}, new int[] {7}, new EqualLengths(100, 0, 1, false), HUNDRED_FOR_FIVE)).isEqualTo(15);
        assertThat(bound(new long[] {30}, new int[] {20}, new EqualLengths(150, 0, 2, false), HUNDRED_FOR_FIVE)).isEqualTo(15);
        assertThat(bound(new long[] {43}, new int[] {7}, new EqualLengths(1000, 0, 1, false), HUNDRED_FOR_FIVE)).isZero();
        assertThat(bound(new long[] {43}, new int[] {7}, new EqualLengths(1000, 0, 1, false))).isZero();
    }

    /** At the least that a part of either costs, rounded up: 15 for 200 are 22.5 for 300. */
    @Test
    void sharesWhereSeveralAreOnOffer() {
        assertThat(bound(new long[] {30}, new int[] {10}, stock(100, 10), stock(200, 15))).isEqualTo(23);
        assertThat(bound(new long[] {40}, new int[] {10}, stock(100, 10), stock(200, 15))).isEqualTo(30);
        assertThat(bound(new long[] {40}, new int[] {10}, new EqualLengths(200, 0, 1, false), stock(100, 10), stock(200, 15))).isEqualTo(15);
    }

    private static EqualLengths stock(long length, long cost) {
        return new EqualLengths(length, cost, EqualLengths.UNLIMITED, true);
    }

    private static long bound(long[] sizes, int[] demand, EqualLengths... lengths) {
        return CuttingBound.of(new Kinds(sizes, demand, List.of(lengths)));
    }
}
