package benchful.documents.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.Optional;
import org.apache.batik.util.HaltingThread;

/**
 * One try at typesetting a manuscript, in a thread of its own that can be given up: a drawing that takes longer than any
 * ordinary one, or all the memory or stack there is, ends the try and is named.
 */
final class Typesetting {
    private static final Duration LOOKS = Duration.ofMillis(50);
    private static final Duration GRACE = Duration.ofSeconds(1);

    private final ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    private final DrawingWatch watch = new DrawingWatch();
    private final HaltingThread thread;
    private Throwable failure;
    private String undrawn;

    Typesetting(PdfRenderer renderer, Manuscript manuscript, Duration longestDrawing, Press press) throws IOException {
        thread = new HaltingThread(() -> run(renderer, manuscript, press), "typesetting");
        thread.setDaemon(true);
        thread.start();
        await(longestDrawing);
        if (undrawn == null && failure != null) {
            tell(manuscript);
        }
    }

    private void run(PdfRenderer renderer, Manuscript manuscript, Press press) {
        try {
            renderer.typeset(manuscript, watch, press, pdf);
        } catch (IOException | RuntimeException | Error e) {
            failure = e;
        }
    }

    private void await(Duration longestDrawing) {
        try {
            for (; thread.isAlive() && undrawn == null; thread.join(LOOKS.toMillis())) {
                undrawn = watch.underWay(longestDrawing);
            }
            if (undrawn != null) {
                thread.halt();
                thread.join(GRACE.toMillis());
            }
        } catch (InterruptedException e) {
            thread.halt();
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Typesetting was given up.", e);
        }
    }

    /** What failed at a drawing of the project is told by its name; anything else is a fault of the program. */
    private void tell(Manuscript manuscript) throws IOException {
        String name = watch.underWay(Duration.ZERO);
        if (name != null && manuscript.drawings().contains(name)) {
            undrawn = name;
        } else if (failure instanceof IOException e) {
            throw e;
        } else {
            throw new IllegalStateException("A print-out can't be typeset.", failure);
        }
    }

    /** The drawing that could not be drawn. */
    Optional<String> undrawn() {
        return Optional.ofNullable(undrawn);
    }

    byte[] pdf() {
        if (undrawn != null) {
            throw new IllegalStateException("The drawing %s can't be drawn.".formatted(undrawn));
        }
        return pdf.toByteArray();
    }
}
