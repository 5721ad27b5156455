package benchful.start;

import benchful.database.DatabaseProblem;
import io.quarkus.runtime.QuarkusBindException;
import io.quarkus.runtime.configuration.ConfigurationException;
import io.smallrye.config.ConfigValidationException;
import java.sql.SQLException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.flywaydb.core.api.exception.FlywayValidateException;
import org.hibernate.tool.schema.spi.SchemaManagementException;

/** Why the program can't start, told by what failed and by its causes: what is amiss, where, and how to mend it. */
final class StartFailure {
    private static final int HIGHEST_PORT = 65535;
    private static final int FIRST_FREE_PORT = 1024;
    private static final int MOST_CAUSES = 20;
    /** How the configuration library says that it can't read a value. */
    private static final Pattern UNREADABLE = Pattern.compile("config property (\\S+) with the config value \"(.*?)\"", Pattern.DOTALL);
    private static final Pattern PORT_RANGE = Pattern.compile("port (p )?must be .*");
    private static final String NEWER = "The data were written by another version of Benchful than this one, most likely a newer one."
            + " Start that version on them, or choose another folder with the setting BENCHFUL_DATA. Nothing was changed.";

    private StartFailure() {}

    /** Empty for a failure that nobody foresaw. */
    static Optional<String> words(Throwable failure) {
        return Stream.iterate(failure, cause -> cause != null, Throwable::getCause).limit(MOST_CAUSES)
                .flatMap(cause -> told(cause).stream())
                .findFirst();
    }

    private static Optional<String> told(Throwable cause) {
        if (cause instanceof QuarkusBindException e) {
            return Optional.of(port(e));
        }
        if (cause instanceof FlywayValidateException || cause instanceof SchemaManagementException) {
            return Optional.of(NEWER);
        }
        if (cause instanceof DatabaseProblem) {
            return Optional.of(cause.getMessage());
        }
        if (cause instanceof SQLException e) {
            return DatabaseFailure.words(e);
        }
        if (cause instanceof ConfigurationException || cause instanceof ConfigValidationException) {
            return Optional.of(setting(cause.getMessage()));
        }
        return system(String.valueOf(cause.getMessage()));
    }

    private static String port(QuarkusBindException e) {
        if (!QuarkusBindException.isKnownHost(e.getHost())) {
            return "Benchful can't listen on %s, which is no address of this machine. Set QUARKUS_HTTP_HOST to one that is, or leave it out."
                    .formatted(e.getHost());
        }
        if (String.valueOf(e.getMessage()).contains("Permission denied")) {
            return "Port %d may not be opened by this account. Choose one from %d on with the setting QUARKUS_HTTP_PORT."
                    .formatted(e.getPort(), FIRST_FREE_PORT);
        }
        return "Port %1$d of %2$s is taken by another program, perhaps by a Benchful that runs already: open http://%2$s:%1$d to see."
                .formatted(e.getPort(), e.getHost())
                + " To start another one, choose a free port with the setting QUARKUS_HTTP_PORT, such as QUARKUS_HTTP_PORT=%d."
                .formatted(e.getPort() < HIGHEST_PORT ? e.getPort() + 1 : e.getPort() - 1);
    }

    private static String setting(String message) {
        Matcher unreadable = UNREADABLE.matcher(message);
        return unreadable.find()
                ? "The setting %s has the value “%s”, which can't be used. Mend it or leave it out (as a variable of the system it is called %s)."
                        .formatted(unreadable.group(1), unreadable.group(2), variable(unreadable.group(1)))
                : message;
    }

    static String variable(String setting) {
        return setting.replaceAll("[^A-Za-z0-9]", "_").toUpperCase(Locale.ROOT);
    }

    private static Optional<String> system(String message) {
        if (PORT_RANGE.matcher(message).matches()) {
            return Optional.of("The setting QUARKUS_HTTP_PORT is no port: choose a number from %d to %d.".formatted(FIRST_FREE_PORT, HIGHEST_PORT));
        }
        return message.contains("No space left on device")
                ? Optional.of("The disk is full, so Benchful can't start. Make room on it and start again; what was saved is safe.")
                : Optional.empty();
    }
}
