package benchful.start;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.URL;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.jsoup.nodes.FormElement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills the packaged program between taps of a running class and while a project is being written, as often as {@code -Dbenchful.kills}
 * says, and compares what was acknowledged with what is there. Taps are sent as the page of the day sends them: all that the log has not
 * shown yet. The project is written on in the page that was open when the program was killed.
 */
class DayKilledIT {
    /** Whoever taps waits for the program to come back rather than going on for ever. */
    private static final int FEW = 5;
    private static final int KILLS = Integer.getInteger("benchful.kills", 3);

    @TempDir
    Path folder;

    private final Random random = new Random(17);
    private final Map<String, String> unsent = new LinkedHashMap<>();
    private final Set<String> acknowledged = new ConcurrentSkipListSet<>();
    private URL address;
    private volatile boolean over;
    private int taps;

    @Test
    void losesAndDoublesNoAcknowledgedTapAndNoDraft() throws Exception {
        Map<String, String> settings = Map.of("BENCHFUL_DATA", folder.resolve("data").toString(), "QUARKUS_HTTP_PORT", String.valueOf(freePort()));
        Program program = Program.start(folder, settings).whenReady();
        address = program.address().toURL();
        new Visitor(address).open("/").press("Load the sample classes");
        Thread phone = new Thread(this::tapOn);
        phone.start();
        Visitor writer = new Visitor(address).open("/projects/new").type("/name", "Half a lantern");
        for (int kill = 0; kill < KILLS; kill++) {
            somethingIsAcknowledged();
            String text = "Kept before the end number %d.".formatted(kill);
            writer.type("/summary", text).press("Keep as a draft");
            TimeUnit.MILLISECONDS.sleep(random.nextInt(1500));
            program.kill();
            program = Program.start(folder, settings).whenReady();
            assertThat(new Visitor(address).open(writer.path()).field("/summary")).isEqualTo(text);
        }
        writer.type("/craft", "paper").type("lines/steps", "make: Fold it, 4-6-10 min").press("Save the project");
        assertThat(writer.page().select("h1").text()).isEqualTo("Half a lantern");
        somethingIsAcknowledged();
        over = true;
        phone.join();
        List<String> ids = ids();
        System.out.printf("%d kills, %d taps acknowledged, %d in the log%n", KILLS, acknowledged.size(), ids.size());
        program.close();
        assertThat(acknowledged).hasSizeGreaterThan(KILLS);
        assertThat(ids).doesNotHaveDuplicates().containsAll(acknowledged);
    }

    /** Since the program came back. */
    private void somethingIsAcknowledged() throws InterruptedException {
        int before = acknowledged.size();
        for (int tries = 0; tries < 1200 && acknowledged.size() == before; tries++) {
            TimeUnit.MILLISECONDS.sleep(100);
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket free = new ServerSocket(0)) {
            return free.getLocalPort();
        }
    }

    private void tapOn() {
        while (!over) {
            try {
                tap();
            } catch (UncheckedIOException | AssertionError | NullPointerException gone) {
                pause();
            }
        }
    }

    private static void pause() {
        try {
            TimeUnit.MILLISECONDS.sleep(250);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void tap() {
        if (unsent.size() < FEW) {
            String id = "tap-" + ++taps;
            unsent.put(id, "{\"id\":\"%s\",\"at\":\"%s\",\"kind\":\"more\",\"step\":\"knot\",\"number\":1}".formatted(id, LocalDateTime.now().withNano(0)));
        }
        pause();
        Visitor phone = new Visitor(address).open("/classes/1/day");
        FormElement form = (FormElement) phone.page().selectFirst("form[data-day]");
        form.addElement(form.appendElement("input").attr("type", "hidden").attr("name", "taps").attr("value", "[" + String.join(",", unsent.values()) + "]"));
        phone.press(form.selectFirst("button"));
        acknowledged.addAll(ids(phone));
        unsent.keySet().removeAll(acknowledged);
    }

    private List<String> ids() {
        return ids(new Visitor(address).open("/classes/1/day"));
    }

    private static List<String> ids(Visitor phone) {
        return Pattern.compile("\"id\":\"(tap-\\d+)\"").matcher(phone.page().selectFirst("form[data-day]").attr("data-log"))
                .results().map(found -> found.group(1)).toList();
    }
}
