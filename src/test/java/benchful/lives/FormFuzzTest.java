package benchful.lives;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** Forms sent with what nobody should type: each is saved, or shown again with what is wrong and what was typed. */
@QuarkusTest
class FormFuzzTest {
    private static final long FIRST = Long.getLong("benchful.lives.first", 1);
    private static final int FORMS = Effort.of(120, 20_000);
    private static final int UNTIL_SAMPLES_ARE_FRESH = 250;

    @TestHTTPResource
    URL address;

    @Inject
    SampleData data;

    private List<String> pages = List.of();

    @Test
    void areSavedOrShownAgain() {
        Outcomes outcomes = new Outcomes("forms");
        for (long seed = FIRST; seed < FIRST + FORMS; seed++) {
            if ((seed - FIRST) % UNTIL_SAMPLES_ARE_FRESH == 0) {
                data.onlySamples();
                pages = pages();
            }
            Watch watch = new Watch(address, "form " + seed, outcomes);
            try {
                outcomes.count(send(watch, new Chance(seed)) == 422 ? "refused" : "taken");
            } catch (AssertionError | RuntimeException e) {
                outcomes.fault("form %d: %s".formatted(seed, e.getMessage().lines().limit(4).reduce("", (a, b) -> a + "\n  " + b)));
                outcomes.count("failed");
            }
        }
        outcomes.tell();
        outcomes.tellDearest();
        assertThat(outcomes.faults()).isEmpty();
        assertThat(outcomes.of("refused")).as("some are refused, some saved").isBetween(1, FORMS - 1);
    }

    /** Every kind of page that holds a form, found as a tutor finds them. */
    private List<String> pages() {
        List<String> found = new ArrayList<>(List.of("/classes/new?project=1", "/projects/new", "/materials/new", "/suppliers/new", "/venues/new", "/hazards/new",
                "/batches/new?project=1", "/materials/1", "/materials/1/edit", "/suppliers/1/edit", "/venues/1/edit", "/orders/new", "/classes/imports", "/projects/imports"));
        for (int id = 1; id <= 6; id++) {
            for (String part : List.of("", "/setup", "/review", "/assessment", "/packing", "/cutting", "/reservation", "/comparison")) {
                found.add("/classes/" + id + part);
            }
            found.add("/projects/" + id + "/edit");
        }
        Visitor tutor = new Visitor(address);
        return found.stream().filter(p -> tutor.open(p).status() == 200 && !forms(tutor).isEmpty()).toList();
    }

    private static List<Element> forms(Visitor tutor) {
        return tutor.page().select("form[method=post]").stream().filter(f -> !f.attr("action").matches(".*removal|/samples.*")).toList();
    }

    private int send(Watch watch, Chance chance) {
        List<Element> forms = forms(watch.open(chance.of(pages)).tutor());
        Element form = chance.of(forms.isEmpty() ? forms(watch.open("/venues/new").tutor()) : forms);
        List<String> fields = form.select("input[name]:not([type=file]):not([type=hidden]), textarea[name], select[name], input[name=version]").eachAttr("name");
        int changes = fields.isEmpty() ? 0 : chance.between(1, 3);
        for (int i = 0; i < changes; i++) {
            watch.tutor().type(chance.of(fields), odd(chance));
        }
        List<Element> buttons = form.select("button");
        watch.press(buttons.isEmpty() ? form.ownerDocument().selectFirst("button[form=%s]".formatted(form.id())) : chance.of(buttons));
        return watch.tutor().status();
    }

    private static String odd(Chance chance) {
        return switch (chance.between(0, 4)) {
            case 0 -> null;
            case 1 -> chance.words(20_000);
            case 2 -> chance.of("", " ", "0", "-1", "1", "99999999999999999999", "1e400", "NaN", "½", "1,234", "1.5", "true", "on");
            case 3 -> chance.of("12 pcs", "1 km", "0.0000000000001 mm", "1234567890123 m", "3 cm3", "length / 0", "1/3 ml", "-3 g", "5 floz");
            default -> chance.of("2027-02-30", "9999-99-99", "25:61", "\u0000", "\uFFFE", "/../..", "x".repeat(100_000), "99999 h", "0 min", "\r\n", "%00");
        };
    }
}
