package benchful.core.day;

import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/** What is told of a step or a pause. */
final class Told {
    @Nullable LocalDateTime began;
    @Nullable LocalDateTime ended;
    boolean skipped;
    int more;
    int finished;

    void take(Tap tap) {
        switch (tap.kind()) {
            case START -> {
                began = tap.at();
                ended = null;
                skipped = false;
            }
            case FINISH -> {
                ended = tap.at();
                skipped = false;
            }
            case SKIP -> {
                ended = null;
                skipped = true;
            }
            case MORE -> more += tap.number();
            default -> finished = Math.max(0, tap.number());
        }
    }
}
