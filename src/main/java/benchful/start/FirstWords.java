package benchful.start;

import java.io.PrintStream;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import org.jboss.logmanager.ExtLogRecord;

/**
 * What the program itself tells before its log is set up, such as that a new database takes some seconds, told at once. What
 * libraries tell about themselves until then is left out: it would bury the words on why a start fails.
 */
final class FirstWords extends Handler {
    private final PrintStream console;

    FirstWords(PrintStream console) {
        this.console = console;
    }

    @Override
    public void publish(LogRecord told) {
        if (String.valueOf(told.getLoggerName()).startsWith("benchful.")) {
            console.printf("%s %-5s %s%n", LocalTime.now().truncatedTo(ChronoUnit.SECONDS), told.getLevel(), words(told));
        }
    }

    private static String words(LogRecord told) {
        return told instanceof ExtLogRecord own ? own.getFormattedMessage() : told.getMessage();
    }

    @Override
    public void flush() {
        console.flush();
    }

    @Override
    public void close() {
        // The console stays open.
    }
}
