package benchful.core.cutting.lengths;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Stock;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * Instances of bin packing that others have published, solved to proof: t60 and u120 (Falkenauer, 1996) and scholl1
 * (Scholl, Klein, Juergens, 1997), as gathered in BPPLIB (Delorme, Iori, Martello). They are not part of the project; the
 * folder that holds {@code cutting/t60} and the others is given as the system property {@code benchful.published}.
 */
class PublishedCuttingTest {
    @Test
    void solvesPublishedInstancesToProof() throws IOException {
        String folder = System.getProperty("benchful.published", "");
        Path cutting = Path.of(folder, "cutting");
        Assumptions.assumeTrue(!folder.isEmpty() && Files.isDirectory(cutting),
                "Skipped: set -Dbenchful.published to a folder with cutting/t60, cutting/u120 and cutting/scholl1.");
        try (Stream<Path> files = Files.walk(cutting)) {
            files.filter(f -> f.toString().endsWith(".txt")).sorted().forEach(PublishedCuttingTest::solve);
        }
    }

    private static void solve(Path file) {
        CuttingPlan plan = (CuttingPlan) CuttingPlanner.plan(read(file));
        assertThat(plan.isProven()).as(file.getFileName().toString()).isTrue();
        if (file.getParent().endsWith("t60")) {
            assertThat(plan.bought()).as("triplets fill 20 lengths without waste").isEqualTo(20);
        }
    }

    /** Items, stock length, then one item a line. */
    static CuttingRequest read(Path file) {
        List<Long> numbers;
        try {
            numbers = Files.readAllLines(file).stream().map(String::strip).filter(l -> !l.isEmpty()).map(Long::valueOf).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<Piece> pieces = IntStream.range(2, numbers.size()).mapToObj(i -> new Piece("item", Quantity.of(numbers.get(i), Unit.MM), 1)).toList();
        return new CuttingRequest(pieces, List.of(), List.of(new Stock(Quantity.of(numbers.get(1), Unit.MM), BigDecimal.ONE)), Quantity.zero(Unit.MM), Quantity.zero(Unit.MM));
    }
}
