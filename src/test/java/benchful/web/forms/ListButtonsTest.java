package benchful.web.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import benchful.projects.ProjectSpec;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Buttons pressed one after another on a form that is sent and shown again each time. */
class ListButtonsTest {
    private static final FormTree TREES = new FormTree(SpecSchema.of(ProjectSpec.class));

    private ObjectNode tree = TREES.of(new MultivaluedHashMap<>());
    private List<RemovedRow> removed = List.of();
    private ListButtons last;

    @Test
    void putsARemovedRowBackAsItWasTyped() {
        shows("/steps/0/title", "Fold", "/steps/1/title", "Sew", "/steps/1/student/quick", "about 4", "/steps/1/after", "[]", "/steps/1/pictures/0", "sew", "/steps/2/title", "Trim");
        ObjectNode before = tree.deepCopy();
        press("remove", "/steps/1");
        assertThat(titles()).isEqualTo("Fold,Trim");
        assertThat(removed).extracting(RemovedRow::name, RemovedRow::place, RemovedRow::justNow).containsExactly(tuple("Sew", "/steps/1", true));
        press("add", "/tools");
        assertThat(removed).extracting(RemovedRow::justNow).containsExactly(false);
        press("remove", "/tools/0");
        putBack("Sew");
        assertThat((JsonNode) tree).isEqualTo(before);
        assertThat(removed).isEmpty();
    }

    @Test
    void remembersNoBlankRow() {
        shows("/steps/0/title", "Fold");
        press("add", "/steps");
        press("remove", "/steps/1");
        assertThat(removed).isEmpty();
        assertThat(titles()).isEqualTo("Fold");
    }

    @Test
    void putsRowsBackInTheirOrderWhicheverComesFirst() {
        for (List<String> back : List.of(List.of("B", "C"), List.of("C", "B"))) {
            for (List<String> out : List.of(List.of("/steps/1", "/steps/1"), List.of("/steps/2", "/steps/1"))) {
                removed = List.of();
                shows("/steps/0/title", "A", "/steps/1/title", "B", "/steps/2/title", "C", "/steps/3/title", "D");
                out.forEach(row -> press("remove", row));
                back.forEach(this::putBack);
                assertThat(titles()).isEqualTo("A,B,C,D");
            }
        }
    }

    @Test
    void findsThePlaceAgainAfterOtherRowsMoved() {
        shows("/steps/0/title", "A", "/steps/1/title", "B", "/steps/2/title", "C", "/steps/3/title", "D");
        press("remove", "/steps/2");
        press("remove", "/steps/0");
        press("copy", "/steps/0");
        assertThat(titles()).isEqualTo("B,B,D");
        press("up", "/steps/2");
        putBack("C");
        assertThat(titles()).isEqualTo("B,D,C,B");
        putBack("A");
        assertThat(titles()).isEqualTo("A,B,D,C,B");
    }

    @Test
    void carriesARowWithinARowThatMovesAndForgetsItWithTheRow() {
        shows("/steps/0/title", "A", "/steps/1/title", "B", "/steps/1/pictures/0", "one", "/steps/1/pictures/1", "two");
        press("remove", "/steps/1/pictures/0");
        press("up", "/steps/1");
        assertThat(removed).extracting(RemovedRow::place).containsExactly("/steps/0/pictures/0");
        putBack("one");
        assertThat(tree.at("/steps/0/pictures")).hasToString("[\"one\",\"two\"]");
        press("remove", "/steps/0/pictures/1");
        press("remove", "/steps/0");
        assertThat(removed).extracting(RemovedRow::name).containsExactly("B");
    }

    @Test
    void makesTheListAnewWhereItsLastRowWasRemoved() {
        shows("/name", "Ring", "/tools/0/name", "awl");
        press("remove", "/tools/0");
        assertThat(tree.at("/tools").size()).isZero();
        putBack("awl");
        assertThat(tree.at("/tools/0/name").asText()).isEqualTo("awl");
    }

    @Test
    void carriesWhatStandsBesideARow() {
        MultivaluedMap<String, String> form = form("/pictures/0/name", "cover", "stored:/pictures/0", "front", "was:/pictures/0", "cover", "remove", "/pictures/0");
        ObjectNode sent = TREES.of(form);
        ListButtons buttons = ListButtons.of(form, sent, TREES);
        assertThat(buttons.removed().get(0).beside()).containsEntry("stored", "front").containsEntry("was", "cover").hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "null", "[]", "{\"at\": \"/steps/0\"}", "{\"at\": \"/name/0\", \"row\": \"x\"}", "{\"at\": 3, \"row\": {}}", "{\"at\": \"/steps/-1\", \"row\": {\"title\": \"x\"}}",
            "{\"at\": \"/steps/0\", \"row\": {}}", "{\"at\": \"/steps/99999\", \"row\": {\"title\": \"x\"}}"})
    void passesOverWhatNoFormWasGiven(String text) {
        MultivaluedMap<String, String> form = form("/steps/0/title", "A", "removed", text, "putback", text);
        tree = TREES.of(form);
        last = ListButtons.of(form, tree, TREES);
        assertThat(last.pressed()).isTrue();
        assertThat(last.putBack()).isEmpty();
        assertThat(titles()).isEqualTo("A");
    }

    @Test
    void losesNothingOverAnyRun() {
        Random random = new Random(16);
        for (int run = 0; run < 200; run++) {
            removed = List.of();
            shows("/steps/0/title", "0", "/steps/1/title", "1", "/steps/2/title", "2", "/steps/3/title", "3", "/steps/4/title", "4");
            for (int i = 0; i < 12; i++) {
                int row = random.nextInt(5);
                if (removed.isEmpty() || random.nextBoolean()) {
                    press("remove", "/steps/" + row);
                } else {
                    press("putback", removed.get(row % removed.size()).text());
                }
            }
            while (!removed.isEmpty()) {
                press("putback", removed.get(random.nextInt(removed.size())).text());
            }
            assertThat(titles()).isEqualTo("0,1,2,3,4");
        }
    }

    private void putBack(String name) {
        press("putback", removed.stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow().text());
    }

    /** As a page sends it: every field that is shown, and what was removed. */
    private void press(String button, String value) {
        MultivaluedMap<String, String> form = new MultivaluedHashMap<>();
        fields(tree, "", form);
        removed.forEach(r -> form.add("removed", r.text()));
        form.add(button, value);
        tree = TREES.of(form);
        last = ListButtons.of(form, tree, TREES);
        removed = last.removed();
    }

    private static void fields(JsonNode node, String at, MultivaluedMap<String, String> form) {
        if (node.isObject() && !node.isEmpty()) {
            node.properties().forEach(e -> fields(e.getValue(), at + "/" + e.getKey(), form));
        } else if (node.isArray() && !node.isEmpty()) {
            for (int i = 0; i < node.size(); i++) {
                fields(node.get(i), at + "/" + i, form);
            }
        } else if (at.matches("/(steps|tools)/\\d+")) {
            form.add(at + "/title", "");
        } else if (!at.matches("/(steps|tools)?")) {
            form.add(at, node.isArray() ? "[]" : node.asText());
        }
    }

    private String titles() {
        return StreamSupport.stream(tree.path("steps").spliterator(), false).map(s -> s.path("title").asText()).collect(Collectors.joining(","));
    }

    private void shows(String... namesAndValues) {
        tree = TREES.of(form(namesAndValues));
    }

    private static MultivaluedMap<String, String> form(String... namesAndValues) {
        MultivaluedMap<String, String> form = new MultivaluedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            form.add(namesAndValues[i], namesAndValues[i + 1]);
        }
        return form;
    }
}
