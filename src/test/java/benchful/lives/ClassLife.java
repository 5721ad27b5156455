package benchful.lives;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jsoup.nodes.Element;

/**
 * One class from its file to its end: brought in, shown, printed, reserved for, cut, packed, ordered for, assessed, reviewed,
 * saved as it stands, exported, removed with all that came with it, and brought in again as it was.
 */
final class ClassLife {
    private final Watch watch;
    private final ObjectNode file;
    private final Chance chance;
    private String home;
    private String project;

    /** @param seed of the file and of what is printed */
    ClassLife(URL address, long seed, Outcomes outcomes) {
        this.watch = new Watch(address, "life " + seed, outcomes);
        this.file = new ClassFileMaker(seed).made();
        this.chance = new Chance(-seed);
    }

    /** @return what was found wrong with the file, each with its place; empty where it was lived to its end */
    List<String> lived() throws IOException {
        bring(SpecFormat.json().writeValueAsBytes(file));
        if (watch.tutor().status() == 422) {
            return refusals();
        }
        byte[] first = exported();
        look();
        prepare();
        teach();
        saveAsTheyStand();
        removeAll();
        bring(first);
        assertThat(new String(exported(), StandardCharsets.UTF_8)).as("what was brought in again").isEqualTo(new String(first, StandardCharsets.UTF_8));
        removeAll();
        return List.of();
    }

    private void bring(byte[] content) {
        watch.open("/classes/imports").tutor().pick("file", "class.yaml", "application/yaml", content);
        watch.press("Import");
        home = watch.tutor().path();
    }

    private List<String> refusals() {
        List<String> refusals = watch.tutor().page().select(".summary.faulty li").eachText();
        assertThat(refusals).as("a refusal says why").isNotEmpty();
        return refusals;
    }

    private byte[] exported() {
        assertThat(home).as("%s", watch.tutor()).matches("/classes/\\d+");
        project = watch.open(home).tutor().page().selectFirst("a[href~=^/projects/\\d+$]").attr("href");
        return watch.open(home + "/file").tutor().bytes();
    }

    private void look() {
        for (String page : List.of("/", home, home + "/setup", home + "/suggestions", home + "/documents", project, project + "/edit", project + "/reviews")) {
            assertThat(watch.open(page).tutor().status()).as(page).isEqualTo(200);
        }
        print();
    }

    /** One of the print-outs, whichever it is. */
    private void print() {
        List<String> prints = watch.open(home + "/documents").tutor().page().select("a[href*=.pdf]").eachAttr("href");
        if (!prints.isEmpty()) {
            assertThat(watch.open(chance.of(prints)).tutor().status()).as("%s", watch.tutor()).isEqualTo(200);
        }
    }

    private void prepare() {
        pressEach(home + "/reservation", home + "/reservation");
        pressEach("/orders/new?class=" + home.replaceAll("\\D", ""), "/orders");
        pressEach(home + "/cutting", home + "/cutting/\\d+");
        print();
        pack();
        assertThat(watch.open("/").tutor().status()).isEqualTo(200);
        assertThat(watch.open("/orders/new").tutor().status()).isEqualTo(200);
    }

    private void pack() {
        watch.open(home + "/packing");
        for (int presses = 0; presses < 3; presses++) {
            Element whole = watch.tutor().page().selectFirst("button[name=whole]");
            if (whole != null) {
                watch.press(whole);
            }
        }
        assertThat(watch.open(home + "/packing").tutor().status()).isEqualTo(200);
    }

    private void teach() {
        pressEach(home + "/assessment", home + "/assessment");
        watch.open(home + "/review");
        watch.tutor().page().select("form[action$=/review] input[name$=/took]").eachAttr("name").forEach(step -> watch.tutor().type(step, "1 h 5 min"));
        watch.tutor().page().select("form[action$=/review] input[name$=/broken]").eachAttr("name").forEach(m -> watch.tutor().type(m, ""));
        watch.buttons(home + "/review").forEach(watch::press);
        assertThat(watch.open(home + "/review").tutor().status()).isEqualTo(200);
        assertThat(watch.open(project + "/reviews").tutor().status()).isEqualTo(200);
    }

    /** A form saved with nothing changed is a form that can be saved. */
    private void saveAsTheyStand() {
        pressEach(home + "/setup", home + "/setup");
        watch.open(project + "/edit").press("Save the project");
        assertThat(watch.tutor().status()).as("%s", watch.tutor()).isEqualTo(200);
        print();
    }

    private void pressEach(String page, String action) {
        int most = watch.open(page).buttons(action).size();
        for (int i = 0; i < most; i++) {
            List<Element> left = watch.open(page).buttons(action);
            if (!left.isEmpty()) {
                watch.press(left.get(0));
                assertThat(watch.tutor().status()).as("%s", watch.tutor()).isIn(200, 409);
            }
        }
    }

    private void removeAll() {
        removeDrafts();
        remove(home, home + "/removal");
        remove(project, project + "/removal");
        file.at("/materials").forEach(m -> removeListed("/materials", m.get("name").asText()));
        file.at("/suppliers").forEach(s -> removeListed("/suppliers", s.get("name").asText()));
        removeListed("/venues", file.at("/venue/name").asText("no room"));
    }

    private void removeListed(String list, String name) {
        Element link = watch.open(list).tutor().page().select("main a[href~=^%s/\\d+]".formatted(list)).stream()
                .filter(a -> a.text().equals(name)).findFirst().orElse(null);
        if (link != null) {
            String thing = link.attr("href").replaceAll("/edit$", "");
            remove(link.attr("href"), thing + "/removal");
        }
    }

    /** Drafts that this life wrote would keep its materials. */
    private void removeDrafts() {
        List<String> things = watch.open("/orders").tutor().page().select("main a[href~=^/orders/\\d+$]").eachAttr("href");
        for (String thing : things) {
            watch.open(thing).buttons("/orders/\\d+/removal").stream().findFirst().ifPresent(watch::press);
        }
    }

    private void remove(String page, String action) {
        watch.open(page);
        List<Element> buttons = watch.buttons(action);
        if (buttons.isEmpty()) {
            watch.open(page + "/edit");
            buttons = watch.buttons(action);
        }
        assertThat(buttons).as("a way to remove %s", page).isNotEmpty();
        watch.press(buttons.get(0));
        assertThat(watch.tutor().status()).as("%s", watch.tutor()).isEqualTo(200);
    }
}
