package benchful.core.cutting.sheets;

import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetPlan;
import benchful.core.cutting.SheetStock;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Sixty rectangles of 1 to 100 by 1 to 100 on sheets of 300 x 300, made anew by the definition of class 6 of Berkey and Wang,
 * "Two-dimensional finite bin-packing algorithms", Journal of the Operational Research Society 38 (1987). A main class, so that it
 * can be given a small heap; it prints the sheets and their bound for each seed.
 */
public final class SixtyRectangles {
    private SixtyRectangles() {}

    public static void main(String[] seeds) {
        for (String seed : seeds) {
            Random random = new Random(Long.parseLong(seed));
            List<Rectangle> pieces = IntStream.range(0, 60).mapToObj(i -> new Rectangle("r" + i, mm(1 + random.nextInt(100), 1 + random.nextInt(100)), false, 1)).toList();
            SheetPlan plan = (SheetPlan) SheetPlanner.plan(new SheetCuttingRequest(pieces, List.of(), List.of(new SheetStock(mm(300, 300), BigDecimal.ONE)), Quantity.zero(Unit.MM), null));
            System.out.printf("%d %d%n", plan.bought(), plan.bound().intValueExact());
        }
    }

    private static Extent mm(long length, long width) {
        return new Extent(Quantity.of(length, Unit.MM), Quantity.of(width, Unit.MM));
    }
}
