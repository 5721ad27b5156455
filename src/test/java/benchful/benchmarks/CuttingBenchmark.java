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
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Prints how many published cutting instances in the folder {@code -Dbenchful.published} are solved to proof and how many are as good as
 * the best published, with the time of a processor: lengths (t60, u120, scholl1 and hard28), and rectangles from equal sheets (classes of Berkey
 * and Wang 1987 and of Martello and Vigo 1998), 20 and 40 pieces, against the best plans known of cuts from edge to edge in three stages.
 * With arguments only the sets that they name: {@code hard28 sheets}.
 */
public final class CuttingBenchmark {
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final PrintStream OUT = System.out;

    private CuttingBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        Set<String> asked = arguments.length == 0 ? Set.of("t60", "u120", "scholl1", "hard28", "sheets") : Set.of(arguments);
        Path published = Path.of(System.getProperty("benchful.published", ""));
        if (!Files.isDirectory(published.resolve("cutting"))) {
            OUT.println("Skipped: -Dbenchful.published names no folder with cutting/t60, u120 and scholl1.");
            return;
        }
        for (String set : Stream.of("t60", "u120", "scholl1").filter(asked::contains).toList()) {
            lengths(published.resolve("cutting").resolve(set), Map.of());
        }
        Path whole = published.resolve("whole-sets");
        if (Files.isDirectory(whole) && asked.contains("hard28")) {
            lengths(whole.resolve("hard28"), best(whole.resolve("hard28-best-from-memory.csv"), 1));
        }
        if (Files.isDirectory(whole) && asked.contains("sheets")) {
            sheets(whole.resolve("sheets"), 3, true);
            sheets(whole.resolve("sheets"), 4, false);
        }
    }

    /** By instance, the figure in this column. */
    private static Map<String, Long> best(Path file, int column) throws IOException {
        Map<String, Long> best = new HashMap<>();
        List<String> lines = Files.readAllLines(file);
        lines.subList(1, lines.size()).stream().map(line -> line.split(",")).filter(cells -> cells.length > column && !cells[column].isBlank())
                .forEach(cells -> best.put(cells[0], Long.valueOf(cells[column].strip())));
        return best;
    }

    private static void lengths(Path folder, Map<String, Long> best) throws IOException {
        Tally tally = new Tally();
        for (Path file : files(folder)) {
            CuttingRequest request = readLengths(file);
            Long known = best.get(file.getFileName().toString());
            tally.add(() -> {
                CuttingPlan plan = (CuttingPlan) CuttingPlanner.plan(request);
                return new Solved(plan.cost().longValueExact(), plan.isProven());
            }, known == null ? OptionalLong.empty() : OptionalLong.of(known));
        }
        tally.print("lengths, " + folder.getFileName());
    }

    private static void sheets(Path folder, int column, boolean grain) throws IOException {
        Map<String, Long> best = best(folder.resolve("best-known.csv"), column);
        Tally tally = new Tally();
        for (String name : best.keySet().stream().sorted().toList()) {
            SheetCuttingRequest request = readSheets(folder, name, grain);
            tally.add(() -> {
                SheetPlan plan = (SheetPlan) SheetPlanner.plan(request);
                return new Solved(plan.cost().longValueExact(), plan.isProven());
            }, OptionalLong.of(best.get(name)));
        }
        tally.print(grain ? "sheets, pieces fixed" : "sheets, pieces turned");
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(f -> f.toString().endsWith(".txt")).sorted().toList();
        }
    }

    private static CuttingRequest readLengths(Path file) throws IOException {
        List<Long> numbers = Files.readAllLines(file).stream().map(String::strip).filter(l -> !l.isEmpty()).map(Long::valueOf).toList();
        List<Piece> pieces = IntStream.range(2, numbers.size()).mapToObj(i -> new Piece("item", Quantity.of(numbers.get(i), Unit.MM), 1)).toList();
        List<Stock> stock = List.of(new Stock(Quantity.of(numbers.get(1), Unit.MM), BigDecimal.ONE));
        return new CuttingRequest(pieces, List.of(), stock, Quantity.zero(Unit.MM), Quantity.zero(Unit.MM));
    }

    private static SheetCuttingRequest readSheets(Path folder, String name, boolean grain) throws IOException {
        List<Rectangle> pieces = extents(folder.resolve(name + "_items.csv")).stream().map(size -> new Rectangle("item", size, grain, 1)).toList();
        List<SheetStock> stock = List.of(new SheetStock(extents(folder.resolve(name + "_bins.csv")).get(0), BigDecimal.ONE));
        return new SheetCuttingRequest(pieces, List.of(), stock, Quantity.zero(Unit.MM), null);
    }

    private static List<Extent> extents(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        return lines.subList(1, lines.size()).stream().map(line -> line.split(","))
                .map(cells -> new Extent(Quantity.of(Long.parseLong(cells[1].strip()), Unit.MM), Quantity.of(Long.parseLong(cells[2].strip()), Unit.MM))).toList();
    }

    private record Solved(long stock, boolean proven) {}

    /** What came of one set. */
    private static final class Tally {
        private final List<Double> seconds = new ArrayList<>();
        private int proven;
        private int better;
        private int worse;

        void add(Supplier<Solved> work, OptionalLong best) {
            long begun = CLOCK.getCurrentThreadCpuTime();
            Solved solved = work.get();
            seconds.add((CLOCK.getCurrentThreadCpuTime() - begun) / 1e9);
            proven += solved.proven() ? 1 : 0;
            better += best.isPresent() && solved.stock() < best.getAsLong() ? 1 : 0;
            worse += best.isPresent() && solved.stock() > best.getAsLong() ? 1 : 0;
        }

        void print(String set) {
            List<Double> sorted = seconds.stream().sorted().toList();
            OUT.printf("%s: %d of %d proven, %d worse and %d better than the best known; median %.3f s, longest %.3f s of a processor%n", set, proven, sorted.size(), worse, better,
                    sorted.get(sorted.size() / 2), sorted.get(sorted.size() - 1));
        }
    }
}
