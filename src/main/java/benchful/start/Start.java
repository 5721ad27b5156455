package benchful.start;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Starts the program and, if that fails, says why in words. It ends with a code other than 0 then. */
@QuarkusMain
public final class Start {
    /** What is told before the log is set up is written so where the start fails: the time, how grave it is, the words. */
    private static final String FIRST_WORDS = "%1$tT %4$s  %5$s%n";
    /** Held, as a level lasts only as long as somebody holds its logger; what this library tells of itself would bury the words. */
    private static final Logger TALKATIVE = Logger.getLogger("org.hibernate");

    private Start() {}

    public static void main(String... arguments) {
        System.setProperty("java.util.logging.SimpleFormatter.format", FIRST_WORDS);
        TALKATIVE.setLevel(Level.WARNING);
        Optional<Desk> desk = Desk.one();
        Optional<String> running = desk.flatMap(Desk::running);
        if (running.isPresent()) {
            Browser.open(running.get());
            return;
        }
        try {
            desk.ifPresent(d -> d.platform().forEach(System::setProperty));
        } catch (RuntimeException e) {
            end(1, e);
        }
        Quarkus.run(null, Start::end, arguments);
    }

    /** Not by the log: much that can be amiss is so before there is one. */
    private static void end(int code, Throwable failure) {
        if (failure != null) {
            PrintStream console = new PrintStream(new FileOutputStream(FileDescriptor.err), true, Charset.defaultCharset());
            Optional<String> words = StartFailure.words(failure);
            words.ifPresentOrElse(console::println, () -> failure.printStackTrace(console));
            Desk.one().ifPresent(desk -> desk.failed(words.orElseGet(() -> desk.unforeseen(failure))));
        }
        System.exit(failure != null && code == 0 ? 1 : code);
    }
}
