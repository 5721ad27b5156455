package benchful.start;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.jboss.logging.Logger;

/** The browser of whoever sits at this machine. */
final class Browser {
    private static final Logger LOG = Logger.getLogger(Browser.class);

    private Browser() {}

    /** Asks the system to show an address; where it has no way to, the log says so. */
    static void open(String address) {
        try {
            new ProcessBuilder(command(System.getProperty("os.name"), address))
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        } catch (IOException e) {
            LOG.infof("Open %s in your browser: this system has no %s.", address, command(System.getProperty("os.name"), address).get(0));
        }
    }

    static List<String> command(String system, String address) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return List.of("rundll32", "url.dll,FileProtocolHandler", address);
        }
        return List.of(name.startsWith("mac") ? "open" : "xdg-open", address);
    }
}
