package benchful.start;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** The browser of whoever sits at this machine. */
final class Browser {
    private Browser() {}

    /** Asks the system to show an address; where it has no way to, the address stands on the console and in the log. */
    static void open(String address) {
        try {
            new ProcessBuilder(command(System.getProperty("os.name"), address))
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        } catch (IOException e) {
            System.err.println("Open " + address + " in your browser.");
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
