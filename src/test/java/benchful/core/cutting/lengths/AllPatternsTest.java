package benchful.core.cutting.lengths;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Stock;
import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Work;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Patterns are written as "which length: pieces of each kind", the longest kind first. */
class AllPatternsTest {
    @Test
    void listsThosePatternsOnWhichNoPieceMoreFits() {
        assertThat(listed(List.of(), "1 m", piece("60 cm", 2), piece("40 cm", 2))).containsExactly("0: [1, 1]", "0: [0, 2]");
        assertThat(listed(List.of("50 cm"), "1 m", piece("60 cm", 2), piece("40 cm", 2))).containsExactly("0: [0, 1]", "1: [1, 1]", "1: [0, 2]");
    }

    @Test
    void cutsNoMorePiecesThanAreAskedFor() {
        assertThat(listed(List.of(), "3 m", piece("60 cm", 1), piece("40 cm", 1))).containsExactly("0: [1, 1]");
    }

    @Test
    void listsNothingWhereThereAreTooMany() {
        Piece[] pieces = IntStream.range(0, 8).mapToObj(k -> piece(10 + k + " cm", 9)).toArray(Piece[]::new);
        assertThat(AllPatterns.of(kinds(List.of(), "3 m", pieces), Work.among(1))).isEmpty();
    }

    /** Of each length one pattern: the piece. */
    @Test
    void listsAtMostFourThousand() {
        assertThat(AllPatterns.of(ofLengths(4000, 1000, piece("50 cm", 1)), Work.among(1)).orElseThrow()).hasSize(4000);
        assertThat(AllPatterns.of(ofLengths(4001, 1000, piece("50 cm", 1)), Work.among(1))).isEmpty();
    }

    /** Two pieces fit on no length, so that each has as many patterns as there are kinds: 10 x 200 x 200 counts are just allowed. */
    @Test
    void listsAtMostSoManyCounts() {
        assertThat(AllPatterns.of(ofLengths(10, 1500, kinds(200)), Work.among(1)).orElseThrow()).hasSize(2000);
        assertThat(AllPatterns.of(ofLengths(10, 1500, kinds(201)), Work.among(1))).isEmpty();
    }

    private static Piece[] kinds(int kinds) {
        return IntStream.range(0, kinds).mapToObj(k -> piece(1001 + k + " mm", 1)).toArray(Piece[]::new);
    }

    /** From all of 19,999 pieces down to none are 20,000 steps on each length. */
    @Test
    void takesAtMostFourHundredThousandSteps() {
        assertThat(AllPatterns.of(ofLengths(20, 1_000_000, piece("1 mm", 19_999)), Work.among(1)).orElseThrow()).hasSize(20);
        assertThat(AllPatterns.of(ofLengths(20, 1_000_000, piece("1 mm", 20_000)), Work.among(1))).isEmpty();
    }

    /** From nine pieces down to none are ten steps. */
    @Test
    void spendsAStepOnEachWayTried() {
        assertThat(isSpent(10)).isTrue();
        assertThat(isSpent(11)).isFalse();
    }

    private static boolean isSpent(int steps) {
        Work work = Work.among(120_000_000 / steps);
        AllPatterns.of(ofLengths(1, 1000, piece("1 mm", 9)), work);
        return work.isSpent();
    }

    /** Each a millimetre longer than the one before. */
    private static Kinds ofLengths(int lengths, int first, Piece... pieces) {
        return kinds(IntStream.range(1, lengths).mapToObj(l -> first + l + " mm").toList(), first + " mm", pieces);
    }

    private static List<String> listed(List<String> onHand, String stock, Piece... pieces) {
        return AllPatterns.of(kinds(onHand, stock, pieces), Work.among(1)).orElseThrow().stream()
                .map(pattern -> pattern.length() + ": " + Arrays.toString(pattern.counts())).toList();
    }

    private static Kinds kinds(List<String> onHand, String stock, Piece... pieces) {
        return Kinds.of(new CuttingRequest(List.of(pieces), onHand.stream().map(Quantity::parse).toList(),
                List.of(new Stock(Quantity.parse(stock), BigDecimal.ONE)), Quantity.parse("0 mm"), Quantity.parse("5 cm")));
    }

    private static Piece piece(String length, int count) {
        return new Piece(length, Quantity.parse(length), count);
    }
}
