package benchful.lives;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import java.net.URL;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jsoup.nodes.Element;

/** A visitor whose every answer is looked at: none is a fault of the program, none names its classes, none takes too long. */
final class Watch {
    private static final Duration LONGEST = Duration.ofSeconds(10);

    private final Visitor tutor;
    private final String whose;
    private Duration slowest = Duration.ZERO;
    private int answers;

    Watch(URL address, String whose) {
        this.tutor = new Visitor(address);
        this.whose = whose;
    }

    Visitor tutor() {
        return tutor;
    }

    Watch open(String path) {
        return looked("GET " + path, t -> t.open(path));
    }

    /** Presses a button, having typed what its form is to be sent with. */
    Watch press(Element button) {
        String what = "press “%s” on %s".formatted(button.text(), tutor.path());
        return looked(what, t -> t.press(button));
    }

    Watch press(String words) {
        return looked("press “%s” on %s".formatted(words, tutor.path()), t -> t.press(words));
    }

    /** The buttons of the page's forms whose action fits, the first of each form. */
    List<Element> buttons(String action) {
        List<Element> buttons = new ArrayList<>();
        tutor.page().select("form[method=post]").stream().filter(f -> f.attr("action").matches(action))
                .forEach(f -> f.select("button").stream().findFirst().ifPresent(buttons::add));
        return buttons;
    }

    private Watch looked(String what, Consumer<Visitor> does) {
        long before = System.nanoTime();
        does.accept(tutor);
        Duration took = Duration.ofNanos(System.nanoTime() - before);
        slowest = took.compareTo(slowest) > 0 ? took : slowest;
        answers++;
        assertThat(tutor.status()).as("%s: %s answered %s", whose, what, tutor).isLessThan(500);
        assertThat(took).as("%s: %s", whose, what).isLessThan(LONGEST);
        assertThat(Words.foreign(tutor.answer())).as("%s: %s", whose, what).isEmpty();
        return this;
    }

    Duration slowest() {
        return slowest;
    }

    int answers() {
        return answers;
    }
}
