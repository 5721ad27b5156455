package benchful.web.door;

import benchful.web.tasks.Busy;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What may be amiss round the program, as the causes of a failure tell: it is no fault of the program, and it may pass. */
enum Outage {
    DISK_FULL("The disk is full, so nothing more can be saved. Make room on it, then send this again. What was saved before is safe.", 30),
    DATABASE_AWAY("The database can't be reached just now; it may be starting again. Try again in a moment. What was saved before is safe.", 5),
    BUSY("The program is busy with other work. Try again in a moment.", 5);

    private final String words;
    private final int retryAfter;

    Outage(String words, int retryAfter) {
        this.words = words;
        this.retryAfter = retryAfter;
    }

    String words() {
        return words;
    }

    /** [s] */
    int retryAfter() {
        return retryAfter;
    }

    static Optional<Outage> of(Throwable failure) {
        return causes(failure, Collections.newSetFromMap(new IdentityHashMap<>())).flatMap(cause -> told(cause).stream()).findFirst();
    }

    /** The failure, what caused it and what was put aside for it, each once. */
    static Stream<Throwable> causes(Throwable failure, Set<Throwable> met) {
        if (failure == null || !met.add(failure)) {
            return Stream.empty();
        }
        Stream<Throwable> aside = Arrays.stream(failure.getSuppressed()).flatMap(one -> causes(one, met));
        return Stream.concat(Stream.of(failure), Stream.concat(causes(failure.getCause(), met), aside));
    }

    private static Optional<Outage> told(Throwable cause) {
        String message = String.valueOf(cause.getMessage());
        if (message.contains("No space left on device")) {
            return Optional.of(DISK_FULL);
        }
        if (cause instanceof Busy || cause instanceof SQLException && message.contains("acquisition timeout")) {
            return Optional.of(BUSY);
        }
        return cause instanceof SQLException e && e.getSQLState() != null ? ofState(e.getSQLState()) : Optional.empty();
    }

    /** PostgreSQL's error codes (appendix A of its manual). */
    private static Optional<Outage> ofState(String state) {
        return switch (state) {
            case "53100" -> Optional.of(DISK_FULL);
            case "53200", "53300" -> Optional.of(BUSY);
            case "57P01", "57P02", "57P03", "57P05" -> Optional.of(DATABASE_AWAY);
            default -> state.startsWith("08") ? Optional.of(DATABASE_AWAY) : Optional.empty();
        };
    }
}
