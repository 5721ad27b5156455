package benchful.hostile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.quantity.Quantity;
import benchful.projects.lines.LineBoxes;
import benchful.web.Times;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Long texts that nearly fit a pattern are refused at once. */
@Timeout(5)
class PatientPatternsTest {
    private static final String BLANKS = " ".repeat(100_000);

    @Test
    void refusesTimesOfBlanksAtOnce() {
        assertThatThrownBy(() -> Times.parse("1" + BLANKS + "x")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Times.parse(BLANKS + "x1")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Times.parse("1".repeat(100_000) + "\n")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesAmountsOfBlanksAtOnce() {
        assertThatThrownBy(() -> Quantity.parse("1" + BLANKS + "!")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void readsTimesAsBefore() {
        assertThat(Times.parse(" - 1 day 2 hours 3 mins 4 seconds ")).isEqualTo(Duration.parse("-P1DT2H3M4S"));
        assertThat(Times.parse("90 s")).isEqualTo(Duration.ofSeconds(90));
        assertThat(Times.parse("20")).isEqualTo(Duration.ofMinutes(20));
        assertThat(Times.parse("1h30min")).isEqualTo(Duration.ofMinutes(90));
    }

    /** A name of twenty thousand letters comes back as it was, in a tool, a step, a material and a size. */
    @ParameterizedTest
    @ValueSource(strings = {"a x ", "1 a ", "a (", "-: ", "a 1, "})
    void writesLinesOfLongNamesAtOnce(String part) {
        String name = part.repeat(20_000 / part.length()) + "a";
        ObjectNode sheet = SpecFormat.json().createObjectNode();
        sheet.putArray("tools").addObject().put("name", name);
        sheet.putArray("steps").addObject().put("id", "a").put("title", name).put("kind", "make");
        sheet.putArray("materials").addObject().put("material", name).put("amount", "2 g");
        sheet.putArray("sizes").addObject().put("name", name);
        LineBoxes boxes = new LineBoxes(sheet, Map.of());
        LineBoxes.LISTS.forEach(list -> assertThat(boxes.written(list)).contains(part.strip()));
    }
}
