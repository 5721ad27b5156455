package benchful.core.cutting.patterns;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Stock;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class KindsTest {
    private static final int UNLIMITED = EqualLengths.UNLIMITED;

    /** A cut of 2 mm is added to pieces and lengths. Equal pieces are one kind, and equal lengths on hand two of one. */
    @Test
    void countsInWholeNumbersWithTheLoss() {
        Kinds kinds = Kinds.of(new CuttingRequest(List.of(piece("30 cm", 2), piece("40 cm", 1), piece("300 mm", 5)), quantities("1 m", "50 cm", "1 m"), quantities("60 cm"),
                List.of(stock("2 m", "1.5"), stock("1 m", "2.00005"), stock("1 m", "1")), q("2 mm"), q("0 mm")));

        assertThat(kinds.sizes()).containsExactly(402_000, 302_000);
        assertThat(kinds.demand()).containsExactly(1, 7);
        assertThat(kinds.lengths()).containsExactly(new EqualLengths(502_000, 0, 1, false), new EqualLengths(1_002_000, 0, 2, false), new EqualLengths(602_000, 0, 1, true),
                new EqualLengths(1_002_000, 10_000, UNLIMITED, true), new EqualLengths(1_002_000, 20_001, UNLIMITED, true), new EqualLengths(2_002_000, 15_000, UNLIMITED, true));
        assertThat(kinds.kinds()).isEqualTo(2);
        assertThat(kinds.pieces()).isEqualTo(8);
        assertThat(kinds.total()).isEqualTo(402_000 + 7 * 302_000);
        assertThat(kinds.of(1_002_000)).isEqualTo(3);
        assertThat(kinds.of(2_002_000)).isEqualTo(5);
        assertThatThrownBy(() -> kinds.of(602_000)).isInstanceOf(NoSuchElementException.class);
    }

    /** Lengths at 1.50 and 2.50 cost multiples of 0.50 together. */
    @Test
    void raisesABoundToWhatLengthsCanCost() {
        Kinds kinds = kinds(new EqualLengths(10, 15_000, UNLIMITED, true), new EqualLengths(20, 25_000, UNLIMITED, true));
        assertThat(kinds.step()).isEqualTo(5_000);
        assertThat(kinds.whole(12_001)).isEqualTo(15_000);
        assertThat(kinds.whole(15_000)).isEqualTo(15_000);
        assertThat(kinds.cost(List.of(new Pattern(0, new int[2]), new Pattern(1, new int[2]), new Pattern(1, new int[2])))).isEqualTo(65_000);
        assertThat(kinds(new EqualLengths(10, 0, 1, false)).step()).isEqualTo(1);
        assertThat(Kinds.cost(new BigDecimal("1.00005"))).isEqualTo(10_001);
    }

    @Test
    void knowsWhatIsLeftAndHowOftenAPatternCanBeCut() {
        Kinds kinds = kinds(new EqualLengths(100, 0, 3, false), new EqualLengths(100, 5, UNLIMITED, true));
        assertThat(kinds.times(new Pattern(0, new int[] {1, 0}))).isEqualTo(3);
        assertThat(kinds.times(new Pattern(1, new int[] {1, 0}))).isEqualTo(7);
        assertThat(kinds.times(new Pattern(1, new int[] {3, 2}))).isEqualTo(2);
        assertThat(kinds.times(new Pattern(1, new int[] {0, 6}))).isZero();
        Kinds rest = kinds.without(new Pattern(0, new int[] {3, 2}), 2);
        assertThat(rest.demand()).containsExactly(1, 1);
        assertThat(rest.lengths()).containsExactly(new EqualLengths(100, 0, 1, false), new EqualLengths(100, 5, UNLIMITED, true));
        assertThat(kinds.without(new Pattern(1, new int[] {1, 1}), 2).lengths()).isEqualTo(kinds.lengths());
        assertThat(kinds.demand()).containsExactly(7, 5);
    }

    @Test
    void addsUpWhatAPatternTakes() {
        assertThat(new Pattern(0, new int[] {2, 3}).used(kinds())).isEqualTo(2 * 30 + 3 * 20);
        assertThat(new Pattern(0, new int[] {0, 0}).isEmpty()).isTrue();
        assertThat(new Pattern(0, new int[] {0, 1}).isEmpty()).isFalse();
    }

    /** A tenth of a micrometre is none of what there is, and one of what is needed; what division left unfinished is neither. */
    @Test
    void roundsToWholeMicrometres() {
        assertThat(Micrometres.up(q("0.0001 mm"))).isEqualTo(1);
        assertThat(Micrometres.down(q("0.0001 mm"))).isZero();
        assertThat(Micrometres.up(q("1.0000000001 mm"))).isEqualTo(1_000);
        assertThat(Micrometres.down(q("0.9999999999 mm"))).isEqualTo(1_000);
        assertThat(Micrometres.quantity(1_500)).isEqualTo(q("1.5 mm"));
        assertThat(Micrometres.whole(q("1.0009 mm"))).isEqualTo(q("1 mm"));
        assertThat(Micrometres.whole(new Extent(q("2.0009 mm"), q("1.0009 mm")))).isEqualTo(new Extent(q("2 mm"), q("1 mm")));
    }

    /** Seven pieces of 30 and five of 20. */
    private static Kinds kinds(EqualLengths... lengths) {
        return new Kinds(new long[] {30, 20}, new int[] {7, 5}, List.of(lengths));
    }

    private static Piece piece(String length, int count) {
        return new Piece(length, q(length), count);
    }

    private static Stock stock(String length, String cost) {
        return new Stock(q(length), new BigDecimal(cost));
    }

    private static List<Quantity> quantities(String... written) {
        return Stream.of(written).map(KindsTest::q).toList();
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
