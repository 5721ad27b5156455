package benchful.documents.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PdfRendererTest {
    private static final String PAGE = "<html lang=\"en\"><head><title>t</title><style>body { font-family: 'DejaVu Sans' }</style></head><body>"
            + "<p>Knot between the beads.</p>".repeat(300) + "</body></html>";

    private final PdfRenderer renderer = new PdfRenderer();

    @Test
    void typesetsNoMoreAtOnceThanThereAreProcessorsAndAllInTheEnd() {
        ExecutorService askers = Executors.newFixedThreadPool(12);
        List<CompletableFuture<byte[]>> asked = IntStream.range(0, 12).mapToObj(i -> CompletableFuture.supplyAsync(() -> typeset(i), askers)).toList();
        long most = 0;
        while (!asked.stream().allMatch(CompletableFuture::isDone)) {
            most = Math.max(most, Thread.getAllStackTraces().keySet().stream().filter(t -> t.getName().equals("typesetting")).count());
        }
        askers.shutdown();
        assertThat(most).isBetween(1L, (long) Math.max(2, Runtime.getRuntime().availableProcessors()));
        assertThat(asked).allSatisfy(pdf -> assertThat(pdf.join()).startsWith('%', 'P', 'D', 'F'));
    }

    /** A viewer that fetches a file again waits for it once. */
    @Test
    void handsOutTheSameFileForTheSamePagesAndPicturesOnly() {
        byte[] first = typeset(1);
        assertThat(typeset(1)).isEqualTo(first);
        assertThat(typeset(2)).isNotEqualTo(first);
        assertThat(RecentPrints.key(new Manuscript(PAGE, Map.of("a.png", new byte[] {1}))))
                .isEqualTo(RecentPrints.key(new Manuscript(PAGE, Map.of("a.png", new byte[] {1}))))
                .isNotEqualTo(RecentPrints.key(new Manuscript(PAGE, Map.of("a.png", new byte[] {2}))))
                .isNotEqualTo(RecentPrints.key(new Manuscript(PAGE, Map.of("b.png", new byte[] {1}))));
    }

    private byte[] typeset(int number) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            renderer.write(new Manuscript(PAGE.replace("</body>", "<p>%d</p></body>".formatted(number)), Map.of()), out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
