package benchful.core.cutting.lengths;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Stock;
import benchful.core.cutting.patterns.ColumnGeneration;
import benchful.core.cutting.patterns.CuttingProof;
import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Pattern;
import benchful.core.cutting.patterns.Work;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Patterns near the best, against all patterns of small drawn classes: nothing that a plan could have is missing. */
class NearPatternsTest {

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 60);
    }

    /** Up to five kinds of piece, from two stocks or one, with some lengths on hand or planned. */
    private static Kinds drawn(int seed) {
        Random random = new Random(seed);
        List<Piece> pieces = IntStream.rangeClosed(1, 2 + random.nextInt(4)).mapToObj(i -> new Piece("p", mm(50 + random.nextInt(600)), 1 + random.nextInt(4))).toList();
        List<Stock> stocks = new ArrayList<>(List.of(new Stock(mm(1000), new BigDecimal("5.00"))));
        if (random.nextBoolean()) {
            stocks.add(new Stock(mm(700), new BigDecimal("3.80")));
        }
        List<Quantity> onHand = random.nextInt(3) == 0 ? List.of(mm(650)) : List.of();
        List<Quantity> planned = random.nextInt(3) == 0 ? List.of(mm(900)) : List.of();
        return Kinds.of(new CuttingRequest(pieces, onHand, planned, stocks, mm(2), Quantity.zero(Unit.MM)));
    }

    private static Quantity mm(int length) {
        return Quantity.of(length, Unit.MM);
    }

    private static Optional<List<Pattern>> near(Kinds kinds, long cost) {
        return new ColumnGeneration(kinds, List.of(), Work.among(1)).prices().flatMap(prices -> NearPatterns.of(kinds, prices, cost, Work.among(1)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void holdAPlanAtEachCostThatHasOne(int seed) {
        Kinds kinds = drawn(seed);
        long least = kinds.cost(CuttingProof.ask(kinds, AllPatterns.of(kinds, Work.among(1)).orElseThrow(), Work.among(1)).plan().orElseThrow());
        for (long cost : new long[] {least - 1, least, least + kinds.step(), 2 * least}) {
            List<Pattern> near = near(kinds, cost).orElseThrow();
            CuttingProof.Answer answer = CuttingProof.ask(kinds, near, Work.among(1));
            assertThat(answer.settled()).isTrue();
            assertThat(answer.plan().map(kinds::cost).filter(found -> found <= cost)).as("at %s of %s", cost, least).isEqualTo(cost < least ? Optional.empty() : Optional.of(least));
        }
    }

    @Test
    void areFewNearTheBound() {
        Kinds kinds = Kinds.of(new CuttingRequest(List.of(new Piece("a", mm(600), 3), new Piece("b", mm(400), 3), new Piece("c", mm(90), 1)), List.of(), List.of(),
                List.of(new Stock(mm(1000), BigDecimal.ONE)), Quantity.zero(Unit.MM), Quantity.zero(Unit.MM)));
        assertThat(near(kinds, 30_000 - 1).orElseThrow()).as("below the bound").isEmpty();
        List<String> listed = near(kinds, 40_000).orElseThrow().stream().map(p -> Arrays.toString(p.counts())).toList();
        assertThat(listed).contains("[1, 1, 0]", "[0, 2, 1]").doesNotHaveDuplicates();
        assertThat(near(kinds, 30_000).orElseThrow().size()).isLessThan(listed.size());
    }

    @Test
    void areNotListedWhereTheyAreTooManyOrNothingCosts() {
        List<Piece> pieces = IntStream.rangeClosed(1, 40).mapToObj(i -> new Piece("p", mm(20 + i), 5)).toList();
        Kinds many = Kinds.of(new CuttingRequest(pieces, List.of(), List.of(), List.of(new Stock(mm(1000), BigDecimal.ONE)), Quantity.zero(Unit.MM), Quantity.zero(Unit.MM)));
        assertThat(near(many, 200_000)).isEmpty();
        Kinds free = Kinds.of(new CuttingRequest(List.of(new Piece("a", mm(600), 3)), List.of(), List.of(), List.of(new Stock(mm(1000), BigDecimal.ZERO)),
                Quantity.zero(Unit.MM), Quantity.zero(Unit.MM)));
        assertThat(near(free, 0)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void knowTheWorthOfWhatIsLeft(int seed) {
        Kinds kinds = drawn(seed);
        Random random = new Random(seed);
        long[] worths = IntStream.range(0, kinds.kinds()).mapToLong(i -> random.nextInt(5) == 0 ? 0 : random.nextInt(1000)).toArray();
        Fronts fronts = Fronts.of(kinds, worths, Work.among(1)).orElseThrow();
        for (int kind = 0; kind <= kinds.kinds(); kind++) {
            for (long free : new long[] {0, 49_000, 300_000, kinds.sizes()[0], 1_002_000}) {
                assertThat(fronts.best(kind, free)).isEqualTo(tried(kinds, worths, kind, free));
            }
        }
    }

    private static long tried(Kinds kinds, long[] worths, int kind, long free) {
        if (kind == kinds.kinds()) {
            return 0;
        }
        long best = 0;
        for (int n = 0; n <= kinds.demand()[kind] && n * kinds.sizes()[kind] <= free; n++) {
            best = Math.max(best, n * worths[kind] + tried(kinds, worths, kind + 1, free - n * kinds.sizes()[kind]));
        }
        return best;
    }
}
