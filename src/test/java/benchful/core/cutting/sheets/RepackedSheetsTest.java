package benchful.core.cutting.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
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

/** Two or three sheets filled anew at a time, on rectangles of a fixed seed. */
class RepackedSheetsTest {
    private static final long ONE_SHEET = 10_000;
    private static final long NO_AIM = 0;

    /** Rectangles from 1 to 100 mm, as those of class 6 of Berkey and Wang (1987) are drawn. */
    private static SheetKinds kinds(int pieces, long seed, List<Extent> onHand, List<SheetStock> stocks) {
        Random random = new Random(seed);
        return SheetKinds.of(new SheetCuttingRequest(
                IntStream.range(0, pieces).mapToObj(i -> new Rectangle("r" + i, mm(1 + random.nextInt(100), 1 + random.nextInt(100)), false, 1)).toList(),
                onHand, stocks, Quantity.zero(Unit.MM), null));
    }

    private static SheetKinds sixty(long seed) {
        return kinds(60, seed, List.of(), List.of(new SheetStock(mm(300, 300), BigDecimal.ONE)));
    }

    private static Extent mm(int length, int width) {
        return new Extent(Quantity.of(length, Unit.MM), Quantity.of(width, Unit.MM));
    }

    private static FilledSheets first(SheetKinds kinds) {
        return FilledSheets.of(kinds, SheetFill.fill(kinds).orElseThrow());
    }

    private static int[] laid(SheetKinds kinds, List<Layout> layouts) {
        return IntStream.range(0, kinds.shapes().size()).map(kind -> layouts.stream().mapToInt(layout -> layout.counts()[kind]).sum()).toArray();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 9})
    void emptiesASheetThatTheUsualOrdersLeave(long seed) {
        SheetKinds kinds = sixty(seed);
        FilledSheets start = first(kinds);
        assertThat(start.layouts()).hasSize(3);
        FilledSheets found = RepackedSheets.of(kinds, start, 2 * ONE_SHEET, Work.among(1));
        assertThat(found.layouts()).hasSize(2);
        assertThat(found.cost()).isEqualTo(2 * ONE_SHEET);
        assertThat(laid(kinds, found.layouts())).isEqualTo(kinds.areas().demand());
    }

    @Test
    void isTheSameEachTimeAndNoWorseThanItsStart() {
        SheetKinds kinds = sixty(3);
        FilledSheets found = RepackedSheets.of(kinds, first(kinds), NO_AIM, Work.among(4));
        assertThat(found.isNoWorseThan(first(kinds))).isTrue();
        assertThat(found).usingRecursiveComparison().isEqualTo(RepackedSheets.of(kinds, first(kinds), NO_AIM, Work.among(4)));
    }

    @Test
    void leavesItsStartWhereThereIsNothingToDo() {
        SheetKinds kinds = sixty(1);
        FilledSheets start = first(kinds);
        assertThat(RepackedSheets.of(kinds, start, start.cost(), Work.among(1))).as("the aim is reached").isSameAs(start);
        Work spent = Work.among(1);
        spent.spend(Long.MAX_VALUE);
        assertThat(RepackedSheets.of(kinds, start, NO_AIM, spent)).as("no work is left").isSameAs(start);
        SheetKinds few = kinds(5, 1, List.of(), List.of(new SheetStock(mm(300, 300), BigDecimal.ONE)));
        assertThat(RepackedSheets.of(few, first(few), NO_AIM, Work.among(1)).layouts()).as("one sheet").hasSize(1);
    }

    @Test
    void takesNoMoreOfASheetThanThereIs() {
        SheetKinds kinds = kinds(60, 1, List.of(mm(300, 200)), List.of(new SheetStock(mm(300, 150), BigDecimal.ONE)));
        FilledSheets found = RepackedSheets.of(kinds, first(kinds), NO_AIM, Work.among(4));
        assertThat(laid(kinds, found.layouts())).isEqualTo(kinds.areas().demand());
        IntStream.range(0, kinds.sheets().size()).filter(sheet -> kinds.areas().lengths().get(sheet).limited())
                .forEach(sheet -> assertThat(found.layouts().stream().filter(layout -> layout.sheet() == sheet).count()).isLessThanOrEqualTo(kinds.areas().lengths().get(sheet).available()));
    }

    /** A little less full is taken while it is hot, and never once it is cold; what costs more never. */
    @Test
    void goesOnFromWhatIsALittleWorseOnlyWhileHot() {
        FilledSheets full = new FilledSheets(List.of(), 10, 1.5);
        FilledSheets lessFull = new FilledSheets(List.of(), 10, 1.499);
        FilledSheets dearer = new FilledSheets(List.of(), 11, 3);
        Random random = new Random(5);
        assertThat(IntStream.range(0, 100).filter(i -> lessFull.isTakenFor(full, 0.01, random)).count()).isBetween(80L, 97L);
        assertThat(IntStream.range(0, 100).filter(i -> lessFull.isTakenFor(full, 0, random)).count()).isZero();
        assertThat(IntStream.range(0, 100).filter(i -> dearer.isTakenFor(full, 0.01, random)).count()).isZero();
        assertThat(full.isTakenFor(dearer, 0, random)).isTrue();
        assertThat(full.isNoWorseThan(full)).isTrue();
        assertThat(lessFull.isNoWorseThan(full)).isFalse();
        assertThat(full.isNoWorseThan(dearer)).isTrue();
    }
}
