package benchful.core.cutting.lengths;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.CutLength;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.NotCuttable;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Stock;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CuttingPlannerTest {
    @Test
    void losesAtEachCutButNotAtTheEnd() {
        CuttingPlan plan = plan(request("1 m", "2 mm", piece("a", "332 mm", 3)));

        // 332 + 2 + 332 + 2 + 332 = 1000
        assertThat(plan.bought()).isEqualTo(1);
        assertThat(plan.lengths().get(0).cuts()).extracting(CutLength.Cut::at)
                .containsExactly(Quantity.parse("0 mm"), Quantity.parse("334 mm"), Quantity.parse("668 mm"));
        assertThat(plan.lengths().get(0).offcut()).isEqualTo(Quantity.parse("0 mm"));
    }

    @Test
    void usesWhatIsOnHandFirstAndKeepsOffcutsWorthKeeping() {
        CuttingPlan plan = plan(new CuttingRequest(List.of(piece("a", "60 cm", 4)), List.of(Quantity.parse("70 cm"), Quantity.parse("65 cm")),
                stock("2 m"), Quantity.parse("0 mm"), Quantity.parse("60 cm")));

        assertThat(plan.lengths()).extracting(CutLength::bought).containsExactly(false, false, true);
        assertThat(plan.lengths()).extracting(CutLength::kept).containsExactly(false, false, true);
        assertThat(plan.reasons()).extracting(Sentence::toString).containsExactly(
                "4 pieces are cut from 2 lengths on hand and 1 new length of 2 m; each cut loses 0 mm.");
        assertThat(plan.proof()).isEqualTo("Proven least: no other cutting takes fewer new lengths.");
    }

    /** Whoever cuts both of 40 cm from one has a piece of 30 cm too many for the other; one of 40 and two of 30 fill each. */
    @Test
    void findsTheOnlyWayInWhichWhatIsOnHandReaches() {
        CuttingPlan plan = plan(new CuttingRequest(List.of(piece("a", "40 cm", 2), piece("b", "30 cm", 4)),
                List.of(Quantity.parse("1 m"), Quantity.parse("1 m")), List.of(), Quantity.parse("0 mm"), Quantity.parse("60 cm")));

        assertThat(plan.lengths()).extracting(length -> length.cuts().size()).containsExactly(3, 3);
        assertThat(plan.bought()).isZero();
    }

    @Test
    void keepsAnOffcutThatIsJustLongEnough() {
        assertThat(offcut("60 cm")).isEqualTo(true);
        assertThat(offcut("60.1 cm")).isEqualTo(false);
    }

    private static boolean offcut(String keep) {
        CutLength length = plan(new CuttingRequest(List.of(piece("a", "40 cm", 1)), List.of(), stock("1 m"), Quantity.parse("0 mm"), Quantity.parse(keep))).lengths().get(0);
        assertThat(length.offcut()).isEqualTo(Quantity.parse("60 cm"));
        return length.kept();
    }

    @Test
    void namesThePieceThatNoLengthGives() {
        assertThat(refusal(request("1 m", "0 mm", piece("long", "1.2 m", 1))))
                .isEqualTo("A piece for “long” takes 1.2 m, but the longest length there is has 1 m. Offer a longer one, or join pieces.");
    }

    @Test
    void cutsWhatIsJustAsLongAsALength() {
        assertThat(plan(request("1 m", "2 mm", piece("rod", "1 m", 2))).bought()).isEqualTo(2);
    }

    @Test
    void keepsNothingWhereNothingIsLeft() {
        CuttingPlan plan = plan(new CuttingRequest(List.of(piece("rod", "1 m", 1), piece("pin", "99 cm", 1)), List.of(), stock("1 m"), Quantity.parse("0 mm"), Quantity.parse("0 mm")));
        assertThat(plan.lengths()).extracting(CutLength::kept).containsExactly(false, true);
    }

    @Test
    void refusesMoreThanTwentyThousandPieces() {
        assertThat(refusal(request("1 m", "0 mm", piece("bead", "1 mm", 20_001)))).startsWith("20001 pieces are more than a cutting plan can show");
        assertThat(plan(request("1 m", "0 mm", piece("bead", "1 mm", 20_000))).bought()).isEqualTo(20);
    }

    /** The name of a size may be a measure, which is not that of the piece. */
    @Test
    void doesNotPutASizeCalledByAMeasureBesideThePiecesOwn() {
        assertThat(refusal(new CuttingRequest(List.of(piece("45 cm", "300 mm", 1)), List.of(), List.of(), Quantity.parse("0 mm"), Quantity.parse("5 cm"))))
                .isEqualTo("There is no length to cut the pieces for “45 cm” from, of 300 mm each.");
    }

    private static String refusal(CuttingRequest request) {
        return ((NotCuttable) CuttingPlanner.plan(request)).reason().toString();
    }

    static List<CuttingRequest> generated() {
        Random random = new Random(77);
        return IntStream.range(0, 100).mapToObj(i -> {
            List<Piece> pieces = new ArrayList<>();
            IntStream.rangeClosed(0, random.nextInt(5)).forEach(k -> pieces.add(piece("p" + k, 1 + random.nextInt(990) + " mm", 1 + random.nextInt(8))));
            List<Quantity> onHand = IntStream.range(0, random.nextInt(3)).mapToObj(k -> Quantity.parse(50 + random.nextInt(900) + " mm")).toList();
            return new CuttingRequest(pieces, onHand, stock("1 m"), Quantity.parse(random.nextInt(6) + " mm"), Quantity.parse("50 mm"));
        }).toList();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("generated")
    void cutsEveryPieceOnceAndNeverBeyondALength(CuttingRequest request) {
        CuttingPlan plan = plan(request);

        Map<String, Integer> cut = new TreeMap<>();
        for (CutLength length : plan.lengths()) {
            Quantity end = Quantity.parse("0 mm");
            for (CutLength.Cut piece : length.cuts()) {
                assertThat(piece.at()).isGreaterThanOrEqualTo(end);
                cut.merge(piece.label() + " " + piece.length(), 1, Integer::sum);
                end = piece.at().plus(piece.length()).plus(request.loss());
            }
            assertThat(end.minus(request.loss()).plus(length.offcut())).isLessThanOrEqualTo(length.length());
        }
        assertThat(cut).isEqualTo(request.pieces().stream().collect(Collectors.toMap(
                p -> p.label() + " " + p.length(), Piece::count, Integer::sum, TreeMap::new)));
        List<Quantity> used = plan.lengths().stream().filter(l -> !l.bought()).map(CutLength::length).sorted().toList();
        assertThat(request.onHand()).containsAll(used);
        assertThat(plan.bound()).isLessThanOrEqualTo(plan.cost());
    }

    /** Wikipedia, "Cutting stock problem": master rolls of 5600 mm, 13 widths; the least is 73, the linear bound 72.7. */
    @Test
    void reproducesTheRollsOfThePaperMachine() {
        int[][] widths = {{1380, 22}, {1520, 25}, {1560, 12}, {1710, 14}, {1820, 18}, {1880, 18}, {1930, 20}, {2000, 10}, {2050, 12},
            {2100, 14}, {2140, 16}, {2150, 18}, {2200, 20}};
        CuttingPlan plan = plan(request("5600 mm", "0 mm",
                Arrays.stream(widths).map(w -> piece("width", w[0] + " mm", w[1])).toArray(Piece[]::new)));

        assertThat(plan.bought()).isEqualTo(73);
        assertThat(plan.isProven()).isTrue();
    }

    static List<CuttingRequest> small() {
        Random random = new Random(4);
        return IntStream.range(0, 150).mapToObj(i -> {
            List<Piece> pieces = IntStream.range(0, 3 + random.nextInt(6)).mapToObj(k -> piece("p" + k, 8 + random.nextInt(50) + " cm", 1)).toList();
            List<Quantity> onHand = IntStream.range(0, random.nextInt(3)).mapToObj(k -> Quantity.parse(20 + random.nextInt(60) + " cm")).toList();
            return new CuttingRequest(pieces, onHand, stock("1 m"), Quantity.parse(random.nextInt(20) + " mm"), Quantity.parse("50 mm"));
        }).toList();
    }

    /** Every way of putting every piece onto every length is tried. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("small")
    void provesTheLeastThatTryingEverythingFinds(CuttingRequest request) {
        CuttingPlan plan = plan(request);
        long loss = Micrometres.up(request.loss());
        List<Long> free = new ArrayList<>(request.onHand().stream().map(q -> Micrometres.down(q) + loss).toList());
        int least = least(request.pieces().stream().mapToLong(p -> Micrometres.up(p.length()) + loss).toArray(), 0, free, free.size(), 1_000_000 + loss, 99);

        assertThat(plan.bought()).isEqualTo(least);
        assertThat(plan.isProven()).isTrue();
    }

    private static int least(long[] pieces, int at, List<Long> free, int onHand, long stock, int best) {
        if (at == pieces.length || free.size() - onHand >= best) {
            return Math.min(best, free.size() - onHand);
        }
        int least = best;
        for (int b = 0; b <= free.size(); b++) {
            boolean opened = b == free.size();
            if (opened) {
                free.add(stock);
            }
            if (free.get(b) >= pieces[at]) {
                free.set(b, free.get(b) - pieces[at]);
                least = Math.min(least, least(pieces, at + 1, free, onHand, stock, least));
                free.set(b, free.get(b) + pieces[at]);
            }
            if (opened) {
                free.remove(b);
                return least;
            }
        }
        return least;
    }

    /** 15 pieces of 91 mm and their cuts: three lengths of 500 mm at 5.90, or one of 1 m at 10.80 and one of 500 mm. */
    @Test
    void mixesStockLengthsForTheLeastCost() {
        List<Stock> wires = List.of(new Stock(Quantity.parse("500 mm"), new BigDecimal("5.90")), new Stock(Quantity.parse("1 m"), new BigDecimal("10.80")));
        CuttingPlan plan = plan(new CuttingRequest(List.of(piece("hook", "91 mm", 15)), List.of(), wires, Quantity.parse("1 mm"), Quantity.parse("91 mm")));

        assertThat(plan.cost()).isEqualByComparingTo("16.70");
        assertThat(plan.isProven()).isTrue();
        assertThat(plan.reasons()).extracting(Sentence::toString).containsExactly(
                "15 pieces are cut from 1 new length of 500 mm and 1 new length of 1 m; each cut loses 1 mm.");
        assertThat(plan.proof()).isEqualTo("Proven least: no other cutting costs less for new lengths, deliveries left aside.");
    }

    static List<CuttingRequest> mixed() {
        Random random = new Random(8);
        return IntStream.range(0, 60).mapToObj(i -> {
            List<Piece> pieces = IntStream.range(0, 3 + random.nextInt(4)).mapToObj(k -> piece("p" + k, 8 + random.nextInt(50) + " cm", 1)).toList();
            List<Quantity> onHand = IntStream.range(0, random.nextInt(2)).mapToObj(k -> Quantity.parse(20 + random.nextInt(60) + " cm")).toList();
            List<Stock> stocks = List.of(new Stock(Quantity.parse("1 m"), BigDecimal.valueOf(80 + random.nextInt(40))),
                    new Stock(Quantity.parse("65 cm"), BigDecimal.valueOf(50 + random.nextInt(40))));
            return new CuttingRequest(pieces, onHand, stocks, Quantity.parse(random.nextInt(20) + " mm"), Quantity.parse("50 mm"));
        }).toList();
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("mixed")
    void provesTheLeastCostThatTryingEverythingFinds(CuttingRequest request) {
        CuttingPlan plan = plan(request);
        long loss = Micrometres.up(request.loss());
        long[] pieces = request.pieces().stream().mapToLong(p -> Micrometres.up(p.length()) + loss).toArray();
        List<Long> free = new ArrayList<>(request.onHand().stream().map(q -> Micrometres.down(q) + loss).toList());

        assertThat(plan.cost().intValueExact()).isEqualTo(cheapest(pieces, 0, free, request.stocks(), loss, 0, 9999));
        assertThat(plan.isProven()).isTrue();
    }

    private static int cheapest(long[] pieces, int at, List<Long> free, List<Stock> stocks, long loss, int spent, int best) {
        if (at == pieces.length || spent >= best) {
            return Math.min(best, spent);
        }
        int least = best;
        for (int b = 0; b < free.size(); b++) {
            if (free.get(b) >= pieces[at]) {
                free.set(b, free.get(b) - pieces[at]);
                least = cheapest(pieces, at + 1, free, stocks, loss, spent, least);
                free.set(b, free.get(b) + pieces[at]);
            }
        }
        for (Stock stock : stocks) {
            long length = Micrometres.down(stock.length()) + loss;
            if (length >= pieces[at]) {
                free.add(length - pieces[at]);
                least = cheapest(pieces, at + 1, free, stocks, loss, spent + stock.cost().intValueExact(), least);
                free.remove(free.size() - 1);
            }
        }
        return least;
    }

    @Test
    void saysThatLengthsOnHandDoNotReach() {
        assertThat(CuttingPlanner.plan(new CuttingRequest(List.of(piece("a", "60 cm", 3)), List.of(Quantity.parse("1 m"), Quantity.parse("90 cm")), List.of(),
                Quantity.parse("0 mm"), Quantity.parse("10 cm")))).isInstanceOf(NotCuttable.class);
    }

    private static CuttingPlan plan(CuttingRequest request) {
        return (CuttingPlan) CuttingPlanner.plan(request);
    }

    private static CuttingRequest request(String stock, String loss, Piece... pieces) {
        return new CuttingRequest(List.of(pieces), List.of(), stock(stock), Quantity.parse(loss), Quantity.parse("5 cm"));
    }

    private static List<Stock> stock(String length) {
        return List.of(new Stock(Quantity.parse(length), BigDecimal.ONE));
    }

    private static Piece piece(String label, String length, int count) {
        return new Piece(label, Quantity.parse(length), count);
    }
}
