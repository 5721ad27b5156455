package benchful.documents.pdf;

import java.time.Duration;

/** Which drawing is being drawn, and since when; told by the thread that typesets, read by the one that waits for it. */
final class DrawingWatch {
    private record Drawing(String name, long since) {}

    private volatile Drawing drawing;

    void begin(String name) {
        drawing = new Drawing(name, System.nanoTime());
    }

    void end() {
        drawing = null;
    }

    /** The name of the drawing under way, where it has been for at least so long; null for none. */
    String underWay(Duration least) {
        Drawing current = drawing;
        return current == null || System.nanoTime() - current.since() < least.toNanos() ? null : current.name();
    }
}
