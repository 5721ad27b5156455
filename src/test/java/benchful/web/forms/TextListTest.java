package benchful.web.forms;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.Fault;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextListTest {
    private static final TextList CAUTIONS = TextList.plain("/cautions");
    private static final TextList STATEMENTS = TextList.coded("/ghs", "text");

    @Test
    void takesEachLineThatSaysSomethingAsAnEntry() {
        assertThat(fields("lines/cautions", " Open windows. \r\n\r\nWear gloves."))
                .containsEntry("/cautions/0", List.of("Open windows."))
                .containsEntry("/cautions/1", List.of("Wear gloves."))
                .doesNotContainKey("/cautions/2");
    }

    @Test
    void partsACodeFromItsWords() {
        assertThat(fields("lines/ghs", "H317  May cause an allergic skin reaction\nH315"))
                .containsEntry("/ghs/0/code", List.of("H317"))
                .containsEntry("/ghs/0/text", List.of("May cause an allergic skin reaction"))
                .containsEntry("/ghs/1/code", List.of("H315"))
                .containsEntry("/ghs/1/text", List.of(""));
    }

    @Test
    void writesAListBackAsItWasTyped() {
        var tree = SpecFormat.json().createObjectNode();
        tree.putArray("cautions").add("Open windows.").add("Wear gloves.");
        tree.putArray("ghs").addObject().put("code", "H317").put("text", "May cause an allergic skin reaction");
        SpecForm form = SpecForm.of(tree, 0);
        assertThat(CAUTIONS.text(form)).isEqualTo("Open windows.\nWear gloves.");
        assertThat(STATEMENTS.text(form)).isEqualTo("H317 May cause an allergic skin reaction");
    }

    @Test
    void saysWhichLineAFaultIsAbout() {
        SpecForm form = SpecForm.faulty(SpecFormat.json().createObjectNode(), List.of(
                new Fault("/ghs", "Too many."), new Fault("/ghs/2/text", "Write the words."), new Fault("/name", "Give a name.")), 0);
        assertThat(STATEMENTS.faults(form)).containsExactly(new Fault("/ghs", "Too many."), new Fault("/ghs/2/text", "Line 3: Write the words."));
    }

    private static MultivaluedMap<String, String> fields(String name, String text) {
        MultivaluedMap<String, String> form = new MultivaluedHashMap<>();
        form.putSingle(name, text);
        return TextList.asFields(form, List.of(CAUTIONS, STATEMENTS));
    }
}
