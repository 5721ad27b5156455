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
public final class Watch {
    private static final Duration LONGEST = Effort.longest();

    private final Visitor tutor;
    private final String whose;
    private final Outcomes outcomes;

    public Watch(URL address, String whose, Outcomes outcomes) {
        this.tutor = new Visitor(address);
        this.whose = whose;
        this.outcomes = outcomes;
    }

    public Visitor tutor() {
        return tutor;
    }

    public Watch open(String path) {
        return looked("GET " + path, t -> t.open(path));
    }

    /** Presses a button, having typed what its form is to be sent with. */
    public Watch press(Element button) {
        String what = "press “%s” on %s".formatted(button.text(), tutor.path());
        return looked(what, t -> t.press(button));
    }

    public Watch press(String words) {
        return looked("press “%s” on %s".formatted(words, tutor.path()), t -> t.press(words));
    }

    /** The buttons of the page's forms whose action fits, the first of each form. */
    public List<Element> buttons(String action) {
        List<Element> buttons = new ArrayList<>();
        tutor.page().select("form[method=post]").stream().filter(f -> f.attr("action").matches(action))
                .forEach(f -> f.select("button").stream().findFirst().ifPresent(buttons::add));
        return buttons;
    }

    private Watch looked(String what, Consumer<Visitor> does) {
        long before = System.nanoTime();
        does.accept(tutor);
        Duration took = Duration.ofNanos(System.nanoTime() - before);
        outcomes.answered(whose + ": " + what, what.replaceAll("\\d+", "N"), took);
        assertThat(tutor.status()).as("%s: %s answered %s", whose, what, tutor).isLessThan(500);
        assertThat(took).as("%s: %s", whose, what).isLessThan(LONGEST);
        assertThat(Words.foreign(tutor.answer())).as("%s: %s", whose, what).isEmpty();
        return this;
    }
}
