package benchful.start;

import io.quarkus.bootstrap.logging.InitialConfigurator;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.util.logging.Handler;

/** Starts the program and, if that fails, says why in words. It ends with a code other than 0 then. */
@QuarkusMain
public final class Start {
    /** Not the log: much that can be amiss is so before there is one. */
    private static final PrintStream CONSOLE = new PrintStream(new FileOutputStream(FileDescriptor.err), true, Charset.defaultCharset());

    private Start() {}

    public static void main(String... arguments) {
        InitialConfigurator.DELAYED_HANDLER.setHandlers(new Handler[] {new FirstWords(CONSOLE)});
        Quarkus.run(null, Start::end, arguments);
    }

    private static void end(int code, Throwable failure) {
        if (failure != null) {
            StartFailure.words(failure).ifPresentOrElse(CONSOLE::println, () -> failure.printStackTrace(CONSOLE));
        }
        System.exit(failure != null && code == 0 ? 1 : code);
    }
}
