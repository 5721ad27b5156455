package benchful.benchmarks;

import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetPlan;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.Stock;
import benchful.core.cutting.lengths.CuttingPlanner;
import benchful.core.cutting.sheets.SheetPlanner;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.MaterialsPlanner;
import benchful.plans.materials.TermPlan;
import benchful.plans.materials.TermPlanner;
import benchful.plans.materials.TermRequest;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Prints the time to work out what is needed and to buy it, for one class and for a term of 60 classes with 200 materials and
 * 12 suppliers, with the proof; then, where {@code -Dbenchful.published} gives their folder, how many published cutting
 * instances are solved to proof, and in what time. Times are of the second run in one process.
 */
public final class MaterialsBenchmark {
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private MaterialsBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        PrintStream out = System.out;
        TermRequest term = new InventedTerm(2027, 200, 12).classes(60);
        MaterialsPlan one = timed(out, "need and buy, 1 class", () -> MaterialsPlanner.plan(term.parts().get(0).file(), null));
        out.printf("  %d materials, %s; %s%n", one.materials().size(), one.total(), one.proof());
        TermPlan all = timed(out, "need and buy, 60 classes together", () -> TermPlanner.plan(term, null));
        out.printf("  %d materials, %d orders, %s; %s%n", all.materials().size(), all.orders().size(), all.total(), all.proof());
        List<CuttingPlan> cuttings = all.materials().stream().map(TermPlan.TermMaterial::cutting).filter(Objects::nonNull).toList();
        out.printf("  %d materials are cut, %d of them proven%n", cuttings.size(), cuttings.stream().filter(CuttingPlan::isProven).count());
        sheets(out);
        Path cutting = Path.of(System.getProperty("benchful.published", ""), "cutting");
        if (!Files.isDirectory(cutting)) {
            out.println("cutting: skipped, -Dbenchful.published names no folder with cutting/t60, u120 and scholl1");
            return;
        }
        for (String set : List.of("t60", "u120", "scholl1")) {
            cut(out, cutting.resolve(set));
        }
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

    private static void cut(PrintStream out, Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(f -> f.toString().endsWith(".txt")).sorted().toList();
        }
        double[] seconds = new double[files.size()];
        int proven = 0;
        for (int i = 0; i < seconds.length; i++) {
            CuttingRequest request = read(files.get(i));
            long begun = System.nanoTime();
            CuttingPlan plan = (CuttingPlan) CuttingPlanner.plan(request);
            seconds[i] = (System.nanoTime() - begun) / 1e9;
            proven += plan.isProven() ? 1 : 0;
        }
        Arrays.sort(seconds);
        out.printf("cutting %s: %d of %d proven, median %.3f s, longest %.3f s%n", folder.getFileName(), proven, seconds.length,
                seconds[seconds.length / 2], seconds[seconds.length - 1]);
    }

    private static CuttingRequest read(Path file) throws IOException {
        List<Long> numbers = Files.readAllLines(file).stream().map(String::strip).filter(l -> !l.isEmpty()).map(Long::valueOf).toList();
        List<Piece> pieces = IntStream.range(2, numbers.size()).mapToObj(i -> new Piece("item", Quantity.of(numbers.get(i), Unit.MM), 1)).toList();
        List<Stock> stock = List.of(new Stock(Quantity.of(numbers.get(1), Unit.MM), BigDecimal.ONE));
        return new CuttingRequest(pieces, List.of(), stock, Quantity.zero(Unit.MM), Quantity.zero(Unit.MM));
    }
}
