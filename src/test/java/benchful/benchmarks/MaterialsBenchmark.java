package benchful.benchmarks;

import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetPlan;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.sheets.SheetPlanner;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.MaterialsPlanner;
import benchful.plans.materials.TermPlan;
import benchful.plans.materials.TermPlanner;
import benchful.plans.materials.TermRequest;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Prints the time to work out what is needed and to buy it, for one class and for a term of 60 classes with 200 materials and
 * 12 suppliers, with the proof, and to cut a class's rectangles. Times are of the second run in one process.
 */
public final class MaterialsBenchmark {
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private MaterialsBenchmark() {}

    public static void main(String[] arguments) {
        PrintStream out = System.out;
        TermRequest term = new InventedTerm(2027, 200, 12).classes(60);
        MaterialsPlan one = timed(out, "need and buy, 1 class", () -> MaterialsPlanner.plan(term.parts().get(0).file(), null));
        out.printf("  %d materials, %s; %s%n", one.materials().size(), one.total(), one.proof());
        TermPlan all = timed(out, "need and buy, 60 classes together", () -> TermPlanner.plan(term, null));
        out.printf("  %d materials, %d orders, %s; %s%n", all.materials().size(), all.orders().size(), all.total(), all.proof());
        List<CuttingPlan> cuttings = all.materials().stream().map(TermPlan.TermMaterial::cutting).filter(Objects::nonNull).toList();
        out.printf("  %d materials are cut, %d of them proven%n", cuttings.size(), cuttings.stream().filter(CuttingPlan::isProven).count());
        sheets(out);
    }

    private static <T> T timed(PrintStream out, String what, Supplier<T> work) {
        work.get();
        long begun = System.nanoTime();
        long busy = CLOCK.getCurrentThreadCpuTime();
        T answer = work.get();
        out.printf("%s: %.2f s, of them %.2f s at work%n", what, (System.nanoTime() - begun) / 1e9, (CLOCK.getCurrentThreadCpuTime() - busy) / 1e9);
        return answer;
    }

    /** A class's rectangles of two and of six sizes, for twelve students, from two sizes of sheet. */
    private static void sheets(PrintStream out) {
        for (int sizes : new int[] {2, 6}) {
            List<Rectangle> pieces = IntStream.range(0, sizes)
                    .mapToObj(i -> new Rectangle("size " + i, mm(112 - 9 * i, 20 + 7 * i), i % 3 == 2, 24 / sizes)).toList();
            SheetCuttingRequest request = new SheetCuttingRequest(pieces, List.of(mm(150, 90)), List.of(new SheetStock(mm(300, 200), new BigDecimal("17.90")),
                    new SheetStock(mm(300, 100), new BigDecimal("9.80"))), Quantity.of(1, Unit.MM), pieces.get(0));
            SheetPlan plan = (SheetPlan) timed(out, "24 rectangles of %d sizes from sheet".formatted(sizes), () -> SheetPlanner.plan(request));
            out.printf("  cost %s, no plan below %s%n", plan.cost(), plan.bound());
        }
    }

    private static Extent mm(long length, long width) {
        return new Extent(Quantity.of(length, Unit.MM), Quantity.of(width, Unit.MM));
    }
}
