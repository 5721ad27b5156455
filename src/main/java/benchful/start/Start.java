package benchful.start;

import io.quarkus.bootstrap.logging.InitialConfigurator;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import org.jboss.logging.Logger;

/** Starts the program and, if that fails, says why in words. It ends with a code other than 0 then. */
@QuarkusMain
public final class Start {
    private static final Logger LOG = Logger.getLogger(Start.class);

    private Start() {}

    public static void main(String... arguments) {
        PassingFolder.take();
        Quarkus.run(null, Start::end, arguments);
    }

    private static void end(int code, Throwable failure) {
        if (failure != null) {
            StartFailure.words(failure).ifPresentOrElse(Start::say, () -> LOG.error("Benchful could not start", failure));
        }
        System.exit(failure != null && code == 0 ? 1 : code);
    }

    /** Not by the log: much that can be amiss is so before there is one. */
    private static void say(String words) {
        if (!InitialConfigurator.DELAYED_HANDLER.isActivated()) {
            // What libraries told about themselves until then would bury the words.
            InitialConfigurator.DELAYED_HANDLER.setHandlers(new Handler[] {new Silence()});
        }
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, Charset.defaultCharset()).println(words);
    }

    private static final class Silence extends Handler {
        @Override
        public void publish(LogRecord told) {
            // nobody needs to know
        }

        @Override
        public void flush() {
            // nothing is kept
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}
