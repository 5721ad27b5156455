package benchful.core.cutting.lengths;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Stock;
import benchful.core.cutting.StockFloor;
import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Pattern;
import benchful.core.cutting.patterns.Work;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Costs are in ten-thousandths. */
class CuttingSearchTest {
    /** The longest piece first puts both of 40 cm onto one; one of 40 and two of 30 fill each of two. */
    private static final List<Piece> TWO_FULL_METRES = List.of(piece(400, 2), piece(300, 4));
    private static final Stock METRE = stock(1000, "1");

    @Test
    void settlesWhatTheFirstFitSettles() {
        CuttingSearch.Found found = search(request(List.of(piece(500, 4)), List.of(), METRE), spent());
        assertThat(found.patterns()).extracting(Pattern::counts).containsExactly(new int[] {2}, new int[] {2});
        assertThat(found.bound()).isEqualTo(20_000);
    }

    @Test
    void settlesByAllPatternsWhereTheyAreFew() {
        CuttingSearch.Found found = search(request(TWO_FULL_METRES, List.of(), METRE), Work.among(1));
        assertThat(found.patterns()).extracting(Pattern::counts).containsExactlyInAnyOrder(new int[] {1, 2}, new int[] {1, 2});
        assertThat(found.bound()).isEqualTo(20_000);
    }

    /** Three of 60 cm take three lengths, though their 1.8 m would fit onto two. */
    @Test
    void provesThatNoLessIsEnough() {
        Kinds kinds = Kinds.of(request(List.of(piece(600, 3), piece(450, 1)), List.of(), stock(1000, "3"), stock(700, "2")));
        CuttingSearch.Found found = CuttingSearch.search(kinds, Work.among(1)).orElseThrow();
        assertThat(kinds.cost(found.patterns())).as("three of 70 cm for 60, one more for 45").isEqualTo(80_000);
        assertThat(found.bound()).isEqualTo(80_000);
    }

    @Test
    void keepsTheFirstFitAndThePlainBoundWhereTheWorkIsSpent() {
        Kinds few = Kinds.of(request(TWO_FULL_METRES, List.of(), METRE));
        CuttingSearch.Found found = CuttingSearch.search(few, spent()).orElseThrow();
        assertThat(few.cost(found.patterns())).isEqualTo(30_000);
        assertThat(found.bound()).isEqualTo(20_000);
        Kinds many = Kinds.of(request(cutUp(4, 1000, 1), List.of(), METRE));
        CuttingSearch.Found hasty = CuttingSearch.search(many, spent()).orElseThrow();
        assertThat(many.cost(hasty.patterns())).isEqualTo(50_000);
        assertThat(hasty.bound()).isEqualTo(40_000);
    }

    @Test
    void findsNothingWhereNothingReaches() {
        assertThat(CuttingSearch.search(Kinds.of(request(List.of(piece(600, 2)), List.of("1 m"))), Work.among(1))).isEmpty();
        CuttingSearch.Found onHand = search(request(TWO_FULL_METRES, List.of("1 m", "1 m")), Work.among(1));
        assertThat(onHand.patterns()).extracting(Pattern::counts).containsExactlyInAnyOrder(new int[] {1, 2}, new int[] {1, 2});
        assertThat(onHand.bound()).isZero();
    }

    /** So many metres, cut up without a rest, are cut from as many again: there are too many patterns to list, and the longest piece first takes one more. */
    @ParameterizedTest
    @CsvSource({"3, 2", "4, 1", "4, 2", "4, 3", "6, 1", "6, 2", "6, 3"})
    void putsTogetherAgainWhatWasCutUp(int metres, long seed) {
        Kinds kinds = Kinds.of(request(cutUp(metres, 1000, seed), List.of(), METRE));
        assertThat(AllPatterns.of(kinds, Work.among(1))).isEmpty();
        assertThat(FirstFit.fill(kinds)).hasValueSatisfying(plan -> assertThat(plan).hasSize(metres + 1));
        isFound(kinds, 10_000L * metres, 10_000L * metres);
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3"})
    void putsTogetherFromWhatIsOnHandFirst(long seed) {
        isFound(Kinds.of(request(cutUp(4, 1000, seed), List.of("1 m", "1 m"), METRE)), 20_000, 20_000);
    }

    /** Four metres for 38: one for 10 and twice a metre and a half for 14. At 9.33 a metre no less than 37.33 will do, and every price is even. */
    @ParameterizedTest
    @CsvSource({"1", "3"})
    void putsTogetherFromTheCheapestLengths(long seed) {
        isFound(Kinds.of(request(cutUp(4, 1000, seed), List.of(), stock(1000, "10"), stock(1500, "14"))), 380_000, 380_000);
    }

    /** The same for 10.03 and 14.11, multiples of 0.17: no less than 37.63, so 37.74, will do, but whole lengths of four metres cost 38.25 at least. */
    @ParameterizedTest
    @CsvSource({"1", "3"})
    void putsTogetherAsWellAsCanBeWhereTheBoundIsOutOfReach(long seed) {
        isFound(Kinds.of(request(cutUp(4, 1000, seed), List.of(), stock(1000, "10.03"), stock(1500, "14.11"))), 382_500, 377_400);
    }

    private static void isFound(Kinds kinds, long cost, long bound) {
        CuttingSearch.Found found = CuttingSearch.search(kinds, Work.among(1)).orElseThrow();
        assertThat(kinds.cost(found.patterns())).isEqualTo(cost);
        assertThat(found.bound()).isEqualTo(bound);
        assertThat(found.patterns()).allSatisfy(pattern -> assertThat(pattern.used(kinds)).isLessThanOrEqualTo(kinds.lengths().get(pattern.length()).capacity()));
        assertThat(IntStream.range(0, kinds.kinds()).map(kind -> found.patterns().stream().mapToInt(pattern -> pattern.counts()[kind]).sum()).toArray()).isEqualTo(kinds.demand());
    }

    /** With 10 mm lost at each cut a piece of 490 mm takes 500: four on two metres, two on one. So two metres are worth twice one, and six pieces three times. */
    @Test
    void saysWhatTheNewLengthsOfEveryPlanAreWorth() {
        StockFloor floor = CuttingPlanner.floor(hooks(List.of()), Work.among(1)).orElseThrow();
        long metre = floor.worths().get(1);
        assertThat(metre).isPositive();
        assertThat(floor).isEqualTo(new StockFloor(List.of(2 * metre, metre), 3 * metre));
        StockFloor less = CuttingPlanner.floor(hooks(List.of("990 mm")), Work.among(1)).orElseThrow();
        assertThat(less).as("one is there").isEqualTo(new StockFloor(List.of(2 * less.worths().get(1), less.worths().get(1)), 2 * less.worths().get(1)));
        assertThat(CuttingPlanner.floor(hooks(List.of()), spent())).isEmpty();
    }

    private static CuttingRequest hooks(List<String> onHand) {
        return new CuttingRequest(List.of(piece(490, 6)), onHand.stream().map(Quantity::parse).toList(), List.of(stock(1990, "16"), stock(990, "10")),
                Quantity.parse("10 mm"), Quantity.parse("5 cm"));
    }

    @Test
    void saysHowMuchLessAnotherCuttingMightCost() {
        List<Stock> stocks = List.of(stock(1000, "1.50"), stock(2500, "9"));
        CuttingPlan plan = (CuttingPlan) CuttingPlanner.plan(request(TWO_FULL_METRES, List.of(), stocks.toArray(Stock[]::new)), spent());
        assertThat(plan.cost()).isEqualByComparingTo("4.50");
        assertThat(plan.bound()).isEqualByComparingTo("3");
        assertThat(plan.proof()).isEqualTo("Best cutting found; another might cost up to 1.5 less for new lengths.");
    }

    private static CuttingSearch.Found search(CuttingRequest request, Work work) {
        return CuttingSearch.search(Kinds.of(request), work).orElseThrow();
    }

    private static Work spent() {
        Work work = Work.among(1);
        work.spend(Long.MAX_VALUE);
        return work;
    }

    private static CuttingRequest request(List<Piece> pieces, List<String> onHand, Stock... stocks) {
        return new CuttingRequest(pieces, onHand.stream().map(Quantity::parse).toList(), List.of(stocks), Quantity.parse("0 mm"), Quantity.parse("5 cm"));
    }

    /** Lengths cut into pieces of 90 to 300 mm with nothing left. */
    private static List<Piece> cutUp(int lengths, int millimetres, long seed) {
        Random random = new Random(seed);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < lengths; i++) {
            int left = millimetres;
            while (left > 300) {
                int cut = Math.min(90 + random.nextInt(211), left - 90);
                pieces.add(piece(cut, 1));
                left -= cut;
            }
            pieces.add(piece(left, 1));
        }
        return pieces;
    }

    private static Piece piece(int millimetres, int count) {
        return new Piece("piece", Quantity.parse(millimetres + " mm"), count);
    }

    private static Stock stock(int millimetres, String cost) {
        return new Stock(Quantity.parse(millimetres + " mm"), new BigDecimal(cost));
    }
}
