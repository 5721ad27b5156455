package benchful.benchmarks;

import benchful.documents.PrintBench;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Prints how fast print-outs are typeset, cold and warm, beside headless Chromium printing the same page in the same run.
 * Start it with {@code -Xmx256m} to see that long print-outs need no more memory than short ones.
 * Argument: the path of Chromium; /usr/bin/chromium where none is given, left out where there is none.
 */
public final class DocumentsBenchmark {
    private static final int WARM = 5;

    private DocumentsBenchmark() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        PrintStream out = System.out;
        PrintBench bench = new PrintBench();
        say(out, "handout, cold", bench.handout());
        say(out, "handout, warm", best(bench));
        say(out, "labels for 12 kits", bench.labels(12));
        say(out, "labels for 500 kits, cold", bench.labels(500));
        say(out, "labels for 500 kits, warm", bench.labels(500));
        say(out, "handouts for 60 students", bench.handouts(60));
        out.printf("All in a heap of at most %d MB.%n", Runtime.getRuntime().maxMemory() >> 20);
        String chromium = List.of(arguments).stream().findFirst().orElse("/usr/bin/chromium");
        if (Files.isExecutable(Path.of(chromium))) {
            say(out, "handout by headless Chromium, its start included", bench.browser(chromium));
            say(out, "the same again", bench.browser(chromium));
        } else {
            out.println("No Chromium at " + chromium + ": the comparison is left out.");
        }
    }

    private static PrintBench.Printed best(PrintBench bench) throws IOException {
        PrintBench.Printed best = bench.handout();
        for (int i = 1; i < WARM; i++) {
            PrintBench.Printed next = bench.handout();
            best = next.millis() < best.millis() ? next : best;
        }
        return best;
    }

    private static void say(PrintStream out, String what, PrintBench.Printed printed) {
        out.printf("%-50s %3d pages %8.0f ms %6.1f pages/s%n", what, printed.pages(), printed.millis(), printed.pagesPerSecond());
    }
}
