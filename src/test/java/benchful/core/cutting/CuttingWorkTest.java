package benchful.core.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import benchful.core.cutting.lengths.CuttingPlanner;
import benchful.core.cutting.patterns.Knapsack;
import benchful.core.cutting.patterns.Work;
import benchful.core.cutting.sheets.SheetPlanner;
import benchful.core.cutting.sheets.SixtyRectangles;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Fringe, tassels and mosaics: many pieces, few sizes. The times are generous; without a count these take minutes or all memory. */
class CuttingWorkTest {
    private static final Duration GENEROUS = Duration.ofSeconds(20);

    @Tag("long")
    @ParameterizedTest
    @ValueSource(ints = {20, 40, 100})
    void cutsAHundredPiecesAStudentOfFourSizesForFourteen(int each) {
        CuttingRequest request = new CuttingRequest(
                List.of(piece("a", "187 mm", 3 * each), piece("b", "203.5 mm", 4 * each), piece("c", "221 mm", 4 * each), piece("d", "246.3 mm", 3 * each)),
                List.of(q("3 m"), q("1.5 m")), List.of(new Stock(q("10 m"), new BigDecimal("3.30")), new Stock(q("25 m"), new BigDecimal("7.10"))), q("2 mm"), q("187 mm"));

        CuttingPlan plan = assertTimeout(GENEROUS, () -> (CuttingPlan) CuttingPlanner.plan(request));

        assertThat(plan.lengths().stream().mapToInt(l -> l.cuts().size()).sum()).isEqualTo(14 * each);
        assertThat(plan.bound()).isLessThanOrEqualTo(plan.cost()).isGreaterThan(plan.cost().multiply(new BigDecimal("0.9")));
        assertThat(plan.proof()).startsWith(plan.isProven() ? "Proven least" : "Best cutting found");
        assertThat(CuttingPlanner.plan(request)).isEqualTo(plan);
    }

    @Test
    void takesAsLongForManyPiecesAsForFewOfTheSameSizes() {
        CuttingRequest request = new CuttingRequest(IntStream.range(0, 4).mapToObj(i -> piece("k" + i, 187 + 17 * i + " mm", 5000)).toList(), List.of(),
                List.of(new Stock(q("1 m"), BigDecimal.ONE)), q("1 mm"), q("100 mm"));
        assertThat(assertTimeout(GENEROUS, () -> (CuttingPlan) CuttingPlanner.plan(request)).isProven()).isTrue();
    }

    @Tag("long")
    @Test
    void givesTheBestItFoundAndABoundWhenTheWorkIsSpent() {
        Random random = new Random(3);
        CuttingRequest request = new CuttingRequest(
                IntStream.range(0, 60).mapToObj(i -> piece("k" + i, 100 + random.nextInt(900) + " mm", 1 + random.nextInt(20))).toList(), List.of(),
                List.of(new Stock(q("2 m"), BigDecimal.ONE)), q("1 mm"), q("100 mm"));
        CuttingPlan hasty = (CuttingPlan) CuttingPlanner.plan(request, Work.among(1_000_000));
        CuttingPlan thorough = (CuttingPlan) CuttingPlanner.plan(request);
        assertThat(hasty.proof()).isEqualTo("Best cutting found; another might take fewer new lengths.");
        assertThat(hasty.bound()).isLessThanOrEqualTo(thorough.cost());
        assertThat(thorough.cost()).isLessThanOrEqualTo(hasty.cost());
    }

    @Test
    void refusesMorePiecesThanAPlanCanShow() {
        assertThat(CuttingPlanner.plan(new CuttingRequest(List.of(piece("a", "1 mm", 20_001)), List.of(), List.of(new Stock(q("1 m"), BigDecimal.ONE)), q("0 mm"), q("1 mm"))))
                .isInstanceOfSatisfying(NotCuttable.class, none -> assertThat(none.reason()).asString().startsWith("20001 pieces are more than a cutting plan can show"));
    }

    @Tag("long")
    @Test
    void laysSixtyDifferentRectanglesWithoutFillingTheMemory() {
        Random random = new Random(9);
        SheetCuttingRequest request = sheets("300 mm", IntStream.range(0, 60)
                .mapToObj(i -> new Rectangle("r" + i, new Extent(q(20 + random.nextInt(800) / 10.0 + " mm"), q(20 + random.nextInt(800) / 10.0 + " mm")), false, 1)).toList());
        SheetPlan plan = assertTimeout(GENEROUS, () -> (SheetPlan) SheetPlanner.plan(request));
        assertThat(plan.sheets().stream().mapToInt(s -> s.pieces().size()).sum()).isEqualTo(60);
        assertThat(SheetPlanner.plan(request)).isEqualTo(plan);
    }

    /** Of these the first, ninth and fifteenth are not settled by the first way of filling sheets: all layouts of so many sizes would fill any memory. */
    @Tag("long")
    @Test
    void laysRectanglesOfSixtySizesInASmallHeap() throws Exception {
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx64m", "-cp", System.getProperty("java.class.path"),
                SixtyRectangles.class.getName(), "1", "9", "15").redirectErrorStream(true).start();
        List<String> printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines().toList();

        assertThat(process.waitFor()).as(printed.toString()).isZero();
        assertThat(printed.subList(printed.size() - 3, printed.size())).containsExactly("2 2", "2 2", "2 2");
    }

    @Tag("long")
    @Test
    void laysManyEqualRectangles() {
        List<Rectangle> pieces = IntStream.range(0, 4).mapToObj(i -> new Rectangle("r" + i, new Extent(q(40 + 13 * i + " mm"), q(31 + 7 * i + " mm")), false, 350)).toList();
        for (String edge : List.of("300 mm", "3000 mm")) {
            SheetPlan plan = assertTimeout(GENEROUS, () -> (SheetPlan) SheetPlanner.plan(sheets(edge, pieces)));
            assertThat(plan.sheets().stream().mapToInt(s -> s.pieces().size()).sum()).isEqualTo(1400);
        }
    }

    @Test
    void saysWhichSheetIsTooLargeToCountWith() {
        assertThat(SheetPlanner.plan(sheets("1000000 m", List.of(new Rectangle("a", new Extent(q("1 m"), q("1 m")), false, 1)))))
                .isInstanceOfSatisfying(NotCuttable.class, none -> assertThat(none.reason()).asString().endsWith("is more than can be planned; a sheet has at most 30 m x 30 m."));
    }

    /** Pieces are cut as the best of all patterns would, or at least no pattern is worth more than is said. */
    @Test
    void boundsWhatAPatternIsWorth() {
        Random random = new Random(8);
        for (int i = 0; i < 200; i++) {
            long[] sizes = random.longs(4, 5, 60).toArray();
            int[] most = random.ints(4, 0, 5).toArray();
            long[] worths = random.longs(4, 0, 100).toArray();
            long capacity = 20 + random.nextInt(150);
            Knapsack.Best exact = new Knapsack(sizes, most, Work.among(1)).best(capacity, worths);
            Work none = Work.among(1);
            none.spend(Long.MAX_VALUE);
            Knapsack.Best quick = new Knapsack(sizes, most, none).best(capacity, worths);
            assertThat(exact.value()).isEqualTo(exact.bound()).isEqualTo(best(sizes, most, worths, capacity, 0)).isBetween(quick.value(), quick.bound());
            assertThat(used(exact, sizes)).isLessThanOrEqualTo(capacity);
            assertThat(used(quick, sizes)).isLessThanOrEqualTo(capacity);
        }
    }

    private static long used(Knapsack.Best best, long[] sizes) {
        return IntStream.range(0, sizes.length).mapToLong(k -> sizes[k] * best.counts()[k]).sum();
    }

    private static long best(long[] sizes, int[] most, long[] worths, long capacity, int kind) {
        return kind == sizes.length ? 0 : IntStream.rangeClosed(0, most[kind]).filter(n -> n * sizes[kind] <= capacity)
                .mapToLong(n -> n * worths[kind] + best(sizes, most, worths, capacity - n * sizes[kind], kind + 1)).max().orElse(0);
    }

    private static SheetCuttingRequest sheets(String edge, List<Rectangle> pieces) {
        return new SheetCuttingRequest(pieces, List.of(), List.of(new SheetStock(new Extent(q(edge), q(edge)), BigDecimal.ONE)), q("1 mm"), null);
    }

    private static Piece piece(String label, String length, int count) {
        return new Piece(label, q(length), count);
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
