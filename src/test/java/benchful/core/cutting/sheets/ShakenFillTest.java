package benchful.core.cutting.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetPlan;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.patterns.Work;
import benchful.core.cutting.sheets.SheetKinds.Layout;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets filled in many orders, on rectangles that the usual orders leave a sheet too many for. */
class ShakenFillTest {
    private static final long NO_AIM = 0;

    /** Sixty rectangles as in {@link SixtyRectangles}. */
    private static SheetCuttingRequest sixty(long seed, List<SheetStock> stocks) {
        Random random = new Random(seed);
        return new SheetCuttingRequest(IntStream.range(0, 60).mapToObj(i -> new Rectangle("r" + i, mm(1 + random.nextInt(100), 1 + random.nextInt(100)), false, 1)).toList(),
                List.of(), stocks, Quantity.zero(Unit.MM), null);
    }

    private static List<SheetStock> at(int cost) {
        return List.of(new SheetStock(mm(300, 300), BigDecimal.valueOf(cost)));
    }

    private static Extent mm(int length, int width) {
        return new Extent(Quantity.of(length, Unit.MM), Quantity.of(width, Unit.MM));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 9, 15})
    void findsWhatTheUsualOrdersDoNot(long seed) {
        SheetKinds kinds = SheetKinds.of(sixty(seed, at(1)));
        assertThat(SheetFill.fill(kinds).orElseThrow()).hasSize(3);
        List<Layout> found = ShakenFill.of(kinds, 20_000, Work.among(1)).orElseThrow().layouts();
        assertThat(found).hasSize(2);
        assertThat(IntStream.range(0, kinds.shapes().size()).map(kind -> found.stream().mapToInt(layout -> layout.counts()[kind]).sum()).toArray()).isEqualTo(kinds.areas().demand());
        SheetPlan plan = (SheetPlan) SheetPlanner.plan(sixty(seed, at(1)));
        assertThat(plan.isProven()).isTrue();
        plan.sheets().forEach(sheet -> SheetChecker.check(sheet, 0));
    }

    @Test
    void isTheSameEachTime() {
        SheetKinds kinds = SheetKinds.of(sixty(3, at(1)));
        assertThat(ShakenFill.of(kinds, NO_AIM, Work.among(1)).orElseThrow()).usingRecursiveComparison().isEqualTo(ShakenFill.of(kinds, NO_AIM, Work.among(1)).orElseThrow());
    }

    @Test
    void endsAtItsAimOrWhenTheWorkIsSpent() {
        SheetKinds kinds = SheetKinds.of(sixty(1, at(1)));
        assertThat(ShakenFill.of(kinds, 1_000_000, Work.among(1))).as("the first will do").isPresent();
        Work spent = Work.among(1);
        spent.spend(Long.MAX_VALUE);
        assertThat(ShakenFill.of(kinds, NO_AIM, spent).orElseThrow().layouts()).as("the first is all there is").hasSizeGreaterThanOrEqualTo(3);
    }

    @Test
    void findsNothingWhereNothingIsOffered() {
        assertThat(ShakenFill.of(SheetKinds.of(sixty(1, List.of())), NO_AIM, Work.among(1))).isEmpty();
        assertThat(ShakenFill.of(SheetKinds.of(sixty(1, List.of(new SheetStock(mm(50, 50), BigDecimal.ONE)))), NO_AIM, Work.among(1))).as("too small a sheet").isEmpty();
    }

    /** Two thin sheets for less than one large one. */
    @Test
    void takesTheCheaperOfTheSheetsOnOffer() {
        List<SheetStock> stocks = List.of(new SheetStock(mm(300, 300), BigDecimal.valueOf(100)), new SheetStock(mm(300, 150), BigDecimal.valueOf(20)));
        SheetKinds kinds = SheetKinds.of(sixty(1, stocks));
        List<Layout> found = ShakenFill.of(kinds, NO_AIM, Work.among(1)).orElseThrow().layouts();
        assertThat(SheetFill.cost(kinds, found)).isLessThanOrEqualTo(5 * 200_000L);
    }
}
