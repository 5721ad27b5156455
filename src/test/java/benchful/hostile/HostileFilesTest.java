package benchful.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.hostile.HostileFiles.File;
import benchful.hostile.HostileFiles.Good;
import benchful.lives.Effort;
import benchful.lives.Outcomes;
import benchful.lives.Watch;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Hostile files, each sent to the page that takes such files: each is taken, or refused in a sentence that says what and where. */
@QuarkusTest
class HostileFilesTest {
    private static final int FILES = Effort.of(60, 500);
    private static final int UNTIL_SAMPLES_ARE_FRESH = 50;
    private static final int UNPROCESSABLE = 422;
    private static final int ASKS_FIRST = 409;

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    @Test
    void areTakenOrRefusedInWords() {
        data.onlySamples();
        Outcomes outcomes = new Outcomes("files");
        List<File> files = HostileFiles.all(good(), FILES);
        for (int i = 0; i < files.size(); i++) {
            if (i % UNTIL_SAMPLES_ARE_FRESH == 0) {
                data.onlySamples();
            }
            File file = files.get(i);
            try {
                outcomes.count("%s %s".formatted(file.place(), sent(file, outcomes) ? "taken" : "refused"));
            } catch (AssertionError | RuntimeException e) {
                outcomes.fault("%s: %s".formatted(file.name(), String.valueOf(e.getMessage()).lines().limit(6).reduce("", (a, b) -> a + "\n  " + b)));
                outcomes.count("failed");
            }
        }
        outcomes.tell();
        assertThat(outcomes.faults()).isEmpty();
    }

    private Good good() {
        Visitor tutor = new Visitor(address);
        byte[] project = tutor.open("/projects/1/file").bytes();
        byte[] craftClass = tutor.open("/classes/1/file").bytes();
        Element download = tutor.open("/backups").page().selectFirst("button[formaction$=/downloads]");
        return new Good(project, craftClass, tutor.press(download).bytes());
    }

    private boolean sent(File file, Outcomes outcomes) {
        Watch watch = new Watch(address, file.name(), outcomes);
        boolean taken = switch (file.place()) {
            case LIST -> list("prices", file, watch) | list("stock", file, watch);
            case PICTURE -> picture(file, watch);
            case PROJECT -> project(file, watch);
            case CLASS -> imported("/classes/imports", file, watch);
            case BACKUP -> backup(file, watch);
        };
        assertThat(taken && file.refused()).as("taken, though it must not be: %s", watch.tutor()).isFalse();
        return taken;
    }

    private static boolean list(String kind, File file, Watch watch) {
        watch.open("/materials/lists").tutor().type("kind", kind).type("adds-new", "true").pick("file", "list.csv", "text/csv", file.content());
        boolean previewed = taken(watch.press("Show what it would change"), "[Rr]ow|[Cc]ell|[Cc]olumn|file|workbook|table");
        if (previewed && !watch.buttons("/materials/lists").isEmpty()) {
            return taken(watch.press("Import all of it"), "[Rr]ow");
        }
        return previewed;
    }

    private static boolean picture(File file, Watch watch) {
        watch.open("/projects/1/edit");
        String field = watch.tutor().page().selectFirst("input[type=file]").attr("name");
        watch.tutor().pick(field, "picture.png", "image/png", file.content());
        if (!taken(watch.press("Save the project"), "at Picture|picture|drawing")) {
            return false;
        }
        return keptNothingSecret("/projects/1", watch);
    }

    private static boolean project(File file, Watch watch) {
        if (!imported("/projects/imports", file, watch)) {
            return false;
        }
        return keptNothingSecret(watch.tutor().path(), watch);
    }

    private static boolean keptNothingSecret(String project, Watch watch) {
        for (String source : watch.open(project).tutor().page().select("img[src*=/pictures/]").eachAttr("src")) {
            String picture = new String(watch.open(source).tutor().bytes(), StandardCharsets.ISO_8859_1);
            assertThat(picture.contains(HostilePhotos.SECRET)).as("%s tells where it was taken", source).isFalse();
        }
        return true;
    }

    private static boolean imported(String page, File file, Watch watch) {
        watch.open(page).tutor().pick("file", "sheet.yaml", "application/yaml", file.content());
        watch.press("Import");
        if (watch.tutor().status() == ASKS_FIRST) {
            watch.press("Import as a copy");
        }
        return taken(watch, "line \\d|at the beginning|/\\w");
    }

    private static boolean backup(File file, Watch watch) {
        watch.open("/backups/files").tutor().pick("file", "benchful-brought.zip", "application/zip", file.content());
        watch.press("Look into it");
        List<Element> yes = watch.tutor().page().select("form[action$=/restoration] button");
        if (yes.isEmpty()) {
            List<Element> open = watch.tutor().page().select("form[action$=/opening] button");
            return !open.isEmpty() ? taken(watch.press(open.get(0)), "file|archive|passphrase") : refused(watch, "file|archive|backup");
        }
        return taken(watch.press(yes.get(0)), "file|archive|backup");
    }

    private static boolean taken(Watch watch, String place) {
        assertThat(watch.tutor().status()).as("%s", watch.tutor()).isIn(200, UNPROCESSABLE);
        return watch.tutor().status() == 200 || refused(watch, place);
    }

    /** @return false, having looked at the words */
    private static boolean refused(Watch watch, String place) {
        List<String> sentences = watch.tutor().page().select(".summary.faulty li, .summary.faulty p:last-child").eachText();
        assertThat(sentences).as("%s", watch.tutor()).isNotEmpty().allMatch(s -> s.matches("(?s).*\\p{L}{2}.*[.?!”)].*"));
        assertThat(sentences).as("each says where").allMatch(s -> Pattern.compile(place).matcher(s).find());
        return false;
    }
}
