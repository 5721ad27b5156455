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
