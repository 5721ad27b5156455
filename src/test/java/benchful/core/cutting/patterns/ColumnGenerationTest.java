package benchful.core.cutting.patterns;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchful.core.cutting.StockFloor;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class ColumnGenerationTest {
    private static final EqualLengths NEW = new EqualLengths(100, 10_000, EqualLengths.UNLIMITED, true);
    private static final EqualLengths ON_HAND = new EqualLengths(100, 0, 1, false);
    private static final EqualLengths PLANNED = new EqualLengths(100, 0, 1, true);

    /** Two of 60 and two of 40 fill two lengths. */
    @Test
    void findsThePatternsThatCostLeast() {
        ColumnGeneration columns = of(kinds(2, 2, NEW));
        assertThat(columns.bound()).isEqualTo(20_000);
        assertThat(written(columns)).contains("0: [1, 1]");
        assertThat(columns.uses()).hasSameSizeAs(columns.patterns());
        assertThat(DoubleStream.of(columns.uses()).sum()).isCloseTo(2, within(1e-6));
    }

    /** Three of 40 on a length of which two fit: one and a half are a bound of no whole number of lengths. */
    @Test
    void countsPartsOfLengths() {
        assertThat(new ColumnGeneration(new Kinds(new long[] {40}, new int[] {3}, List.of(NEW)), List.of(), Work.among(1)).bound()).isEqualTo(15_000);
    }

    @Test
    void takesWhatIsThereFirst() {
        assertThat(of(kinds(2, 2, ON_HAND, NEW)).bound()).isEqualTo(10_000);
        assertThat(of(kinds(2, 2, PLANNED, NEW)).bound()).isEqualTo(10_000);
        assertThat(of(kinds(1, 1, ON_HAND, NEW)).bound()).isZero();
        assertThat(of(kinds(2, 2, new EqualLengths(100, 0, 0, false), NEW)).bound()).isEqualTo(20_000);
    }

    /** All pieces from one of 200 for 15, not from two of 100 at 10; at 25 the two are cheaper. */
    @Test
    void weighsLengthsAgainstEachOther() {
        assertThat(of(kinds(2, 2, NEW, new EqualLengths(200, 15_000, EqualLengths.UNLIMITED, true))).bound()).isEqualTo(15_000);
        assertThat(of(kinds(2, 2, NEW, new EqualLengths(200, 25_000, EqualLengths.UNLIMITED, true))).bound()).isEqualTo(20_000);
    }

    /** Two lengths are enough and one is not, whether one of them is planned or none; with one on hand, one new one is. */
    @Test
    void tellsWhatIsEnough() {
        StockFloor plain = of(kinds(2, 2, NEW)).floor().orElseThrow();
        assertThat(plain.least()).isBetween(plain.worths().get(0) + 1, 2 * plain.worths().get(0));
        StockFloor planned = of(kinds(2, 2, PLANNED, NEW)).floor().orElseThrow();
        assertThat(planned.least()).isBetween(planned.worths().get(0) + 1, planned.worths().get(0) + planned.worths().get(1));
        StockFloor onHand = of(kinds(2, 2, ON_HAND, NEW)).floor().orElseThrow();
        assertThat(onHand.least()).isBetween(1L, onHand.worths().get(1));
    }

    @Test
    void tellsNothingWhereNothingCanBeBought() {
        ColumnGeneration columns = of(kinds(2, 2, new EqualLengths(100, 0, 2, false)));
        assertThat(columns.bound()).isZero();
        assertThat(columns.floor()).isEmpty();
        assertThat(written(columns)).contains("0: [1, 1]");
    }

    @Test
    void beginsWithThoseKnownThatCanStillBeCut() {
        ColumnGeneration columns = new ColumnGeneration(kinds(2, 2, NEW), List.of(new Pattern(0, new int[] {3, 0}), new Pattern(0, new int[] {0, 2})), Work.among(1));
        assertThat(written(columns)).startsWith("0: [0, 2]").doesNotContain("0: [3, 0]");
        assertThat(columns.bound()).isEqualTo(20_000);
    }

    /** The first solving takes a thousand steps, the next as many and one for each piece's kind in each pattern. */
    @Test
    void stopsWhenTheWorkIsSpent() {
        ColumnGeneration none = new ColumnGeneration(kinds(2, 2, NEW), List.of(), KnapsackTest.left(1_000));
        assertThat(none.patterns()).isEmpty();
        assertThat(none.bound()).isZero();
        assertThat(new ColumnGeneration(kinds(2, 2, NEW), List.of(), KnapsackTest.left(1_001)).patterns()).isNotEmpty();
        assertThat(new ColumnGeneration(kinds(2, 2, NEW), List.of(new Pattern(0, new int[] {1, 0})), KnapsackTest.left(1_002)).patterns()).hasSize(1);
        assertThat(new ColumnGeneration(kinds(2, 2, NEW), List.of(new Pattern(0, new int[] {1, 0})), KnapsackTest.left(1_003)).patterns()).hasSizeGreaterThan(1);
    }

    private static ColumnGeneration of(Kinds kinds) {
        return new ColumnGeneration(kinds, List.of(), Work.among(1));
    }

    private static List<String> written(ColumnGeneration columns) {
        return columns.patterns().stream().map(p -> p.length() + ": " + Arrays.toString(p.counts())).toList();
    }

    /** So many pieces of 60 and of 40. */
    private static Kinds kinds(int long60, int short40, EqualLengths... lengths) {
        return new Kinds(new long[] {60, 40}, new int[] {long60, short40}, List.of(lengths));
    }
}
