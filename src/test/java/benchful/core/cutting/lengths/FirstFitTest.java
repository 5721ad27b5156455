package benchful.core.cutting.lengths;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Stock;
import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Pattern;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Plans are written as "which length: pieces of each kind", the lengths on hand first, the longest kind first. */
class FirstFitTest {
    private static final List<Stock> ONE_METRE_OR_TWO = List.of(stock("1 m", 10), stock("2 m", 15));

    /** From lengths of 1 m two for 20, from one of 2 m all for 15. */
    @Test
    void opensTheLengthThatMakesTheCheapestPlan() {
        assertThat(plan(List.of(), ONE_METRE_OR_TWO, piece("60 cm", 2), piece("40 cm", 2))).containsExactly("1: [2, 2]");
    }

    /** Three on one of 2 m for 15, and the fourth not on another but on one of 1 m for 10. */
    @Test
    void exchangesALengthForTheCheapestThatHoldsWhatWasPutOnIt() {
        assertThat(plan(List.of(), ONE_METRE_OR_TWO, piece("60 cm", 4))).containsExactly("1: [3]", "0: [1]");
        assertThat(plan(List.of(), ONE_METRE_OR_TWO, piece("1 m", 1))).containsExactly("0: [1]");
        assertThat(plan(List.of(), List.of(stock("1 m", 10), stock("1.5 m", 8)), piece("60 cm", 1))).containsExactly("1: [1]");
    }

    @Test
    void takesALengthThatIsJustAsLongAsThePiece() {
        assertThat(plan(List.of(), List.of(stock("1 m", 10)), piece("1 m", 2))).containsExactly("0: [1]", "0: [1]");
        assertThat(plan(List.of("1 m"), List.of(), piece("1 m", 1))).containsExactly("0: [1]");
    }

    /** A piece of 1.5 m fits on none of 1 m. */
    @Test
    void opensAnotherLengthForWhatDoesNotFit() {
        assertThat(plan(List.of(), ONE_METRE_OR_TWO, piece("1.5 m", 1), piece("60 cm", 1))).containsExactly("1: [1, 0]", "0: [0, 1]");
    }

    @Test
    void fillsWhatIsOnHandFirst() {
        assertThat(plan(List.of("70 cm", "65 cm"), List.of(stock("1 m", 10)), piece("60 cm", 3))).containsExactly("0: [1]", "1: [1]", "2: [1]");
        assertThat(plan(List.of("70 cm", "70 cm"), List.of(stock("1 m", 10)), piece("60 cm", 3))).containsExactly("0: [1]", "0: [1]", "1: [1]");
        assertThat(plan(List.of("1 m"), List.of(), piece("50 cm", 2))).containsExactly("0: [2]");
    }

    @Test
    void findsNothingWhereTheLengthsDoNotReach() {
        assertThat(FirstFit.fill(kinds(List.of("70 cm"), List.of(), piece("60 cm", 2)))).isEmpty();
        assertThat(FirstFit.fill(kinds(List.of(), List.of(stock("50 cm", 10)), piece("60 cm", 1)))).isEmpty();
    }

    private static List<String> plan(List<String> onHand, List<Stock> stocks, Piece... pieces) {
        Optional<List<Pattern>> plan = FirstFit.fill(kinds(onHand, stocks, pieces));
        return plan.orElseThrow().stream().map(pattern -> pattern.length() + ": " + Arrays.toString(pattern.counts())).toList();
    }

    private static Kinds kinds(List<String> onHand, List<Stock> stocks, Piece... pieces) {
        return Kinds.of(new CuttingRequest(List.of(pieces), onHand.stream().map(Quantity::parse).toList(), stocks, Quantity.parse("0 mm"), Quantity.parse("5 cm")));
    }

    private static Piece piece(String length, int count) {
        return new Piece(length, Quantity.parse(length), count);
    }

    private static Stock stock(String length, int cost) {
        return new Stock(Quantity.parse(length), BigDecimal.valueOf(cost));
    }
}
