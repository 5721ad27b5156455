package benchful.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * The Chromium of this machine, driven as a person would. Where there is none its tests are skipped with the reason; with
 * {@code CI=true} that is an error.
 */
final class Browser implements AutoCloseable {
    private static final List<String> ARGUMENTS = List.of("--disable-gpu", "--disable-quic", "--no-first-run",
            "--disable-background-networking", "--disable-component-update", "--disable-sync");

    private final Path program;
    private final Playwright playwright;
    private final com.microsoft.playwright.Browser chromium;

    private Browser(Path program) {
        this.program = program;
        playwright = Playwright.create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        chromium = playwright.chromium().launch(new BrowserType.LaunchOptions()
                .setExecutablePath(program).setChromiumSandbox(false).setArgs(ARGUMENTS));
    }

    static Browser open() {
        Optional<Path> program = program();
        if (program.isEmpty() && "true".equals(System.getenv("CI"))) {
            throw new AssertionError("No Chromium was found on the PATH; with CI=true the browser tests must run.");
        }
        Assumptions.assumeTrue(program.isPresent(), "Skipped: no Chromium (chromium, chromium-browser, google-chrome) on the PATH.");
        return new Browser(program.get());
    }

    /** A person's window, so many pixels wide. */
    BrowserContext window(int width) {
        return chromium.newContext(new com.microsoft.playwright.Browser.NewContextOptions().setViewportSize(width, 900).setAcceptDownloads(true));
    }

    /** The same without JavaScript. */
    BrowserContext plainWindow(int width) {
        return chromium.newContext(new com.microsoft.playwright.Browser.NewContextOptions().setViewportSize(width, 900).setJavaScriptEnabled(false));
    }

    /** A window of a browser of its own, whose databases lie in a folder and outlive it, as on a phone that is switched off and on. */
    BrowserContext lasting(Path folder, int width) {
        return playwright.chromium().launchPersistentContext(folder, new BrowserType.LaunchPersistentContextOptions()
                .setExecutablePath(program).setChromiumSandbox(false).setArgs(ARGUMENTS).setViewportSize(width, 900));
    }

    private static Optional<Path> program() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
                .flatMap(folder -> Stream.of("chromium", "chromium-browser", "google-chrome").map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    @Override
    public void close() {
        chromium.close();
        playwright.close();
    }
}
