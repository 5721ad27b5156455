package benchful.web.forms;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.projects.ProjectSpec;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormTreeTest {
    private static final FormTree TREE = new FormTree(SpecSchema.of(ProjectSpec.class));

    @Test
    void buildsTheSheetAndLeavesOutWhatIsBlank() {
        assertTree(TREE.of(form("/name", " Ring ", "/craft", "", "/sizes/0/name", "S", "/sizes/0/measures/length", "42 cm",
                        "/sizes/1/name", " ", "/sizes/2/name", "L", "csrf-token", "x", "version", "3")),
                """
                {"name": "Ring", "sizes": [{"name": "S", "measures": {"length": "42 cm"}}, {"name": "L"}]}""");
    }

    @Test
    void keepsRowsInTheOrderOfTheirNumbers() {
        assertTree(TREE.of(form("/sizes/10/name", "ten", "/sizes/9/name", "nine", "/sizes/0/name", "none")),
                """
                {"sizes": [{"name": "none"}, {"name": "nine"}, {"name": "ten"}]}""");
    }

    @Test
    void tellsTheEmptyListFromNone() {
        assertTree(TREE.of(form("/steps/0/id", "a", "/steps/0/after", "[]", "/steps/1/id", "b", "/steps/1/after", "")),
                """
                {"steps": [{"id": "a", "after": []}, {"id": "b"}]}""");
        assertTree(TREE.of(form("/steps/0/after", "[]", "/steps/0/after/0/step", "x")),
                """
                {"steps": [{"after": [{"step": "x"}]}]}""");
    }

    @Test
    void writesLineEndsAsFilesDo() {
        assertThat(TREE.of(form("/summary", "one\r\ntwo")).get("summary").textValue()).isEqualTo("one\ntwo");
    }

    @Test
    void keepsASlashInAKey() {
        assertTree(TREE.of(form("/sizes/0/measures/a~1b~0", "1")), """
                {"sizes": [{"measures": {"a/b~": "1"}}]}""");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            add    | /sizes   | S,,L,*
            add    | /nothing | S,,L
            add    | name     | S,,L
            add    |          | S,,L
            add    | /name    | S,,L
            remove | /sizes/2 | S,
            remove | /sizes/1 | S,L
            remove | /sizes/7 | S,,L
            remove | /sizes   | S,,L
            remove | x        | S,,L
            up     | /sizes/2 | S,L,
            up     | /sizes/0 | S,,L
            up     | /        | S,,L
            """)
    void movesRowsAsTheButtonsSay(String button, String place, String sizes) {
        MultivaluedMap<String, String> form =
                form("/name", "Ring", "/sizes/0/name", "S", "/sizes/1/name", "", "/sizes/2/name", "L", button, place == null ? "" : place);
        ObjectNode tree = TREE.of(form);
        assertThat(ListButtons.of(form, tree, TREE).pressed()).isTrue();
        StringBuilder names = new StringBuilder();
        for (JsonNode size : tree.get("sizes")) {
            names.append(names.isEmpty() ? "" : ",").append(size.path("name").asText(""));
        }
        assertThat(names).hasToString(sizes.replace("*", ""));
    }

    @Test
    void keepsBlankRowsOfTheSheetWhileAListButtonIsPressedButNotThoseWithinRows() {
        assertTree(TREE.of(form("/tools/0/name", "", "/steps/0/id", "", "/steps/0/after/0/step", "", "/hazards/0", "", "add", "/tools")),
                """
                {"tools": [{}], "steps": [{}]}""");
        assertTree(TREE.of(form("/steps/0/after/0/step", "", "/steps/0/after/1/step", "a", "remove", "/steps/0/after/1")),
                """
                {"steps": [{"after": [{}, {"step": "a"}]}]}""");
    }

    @Test
    void addsNothingWhereAButtonNamesNoList() {
        MultivaluedMap<String, String> form = form("/name", "Ring", "add", "");
        ObjectNode tree = TREE.of(form);
        ListButtons.of(form, tree, TREE);
        assertTree(tree, "{\"name\": \"Ring\"}");
    }

    @Test
    void savesWhereNoListButtonIsPressed() {
        MultivaluedMap<String, String> form = form("/name", "Ring");
        assertThat(ListButtons.of(form, TREE.of(form), TREE).pressed()).isFalse();
    }

    @Test
    void passesOverNamesThatLeadTooDeep() {
        assertTree(TREE.of(form("/a".repeat(100_000), "x", "/name", "Ring")), "{\"name\": \"Ring\"}");
    }

    private static void assertTree(ObjectNode tree, String expected) {
        try {
            assertThat((JsonNode) tree).isEqualTo(SpecFormat.json().readTree(expected));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }

    private static MultivaluedMap<String, String> form(String... namesAndValues) {
        MultivaluedMap<String, String> form = new MultivaluedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            form.add(namesAndValues[i], namesAndValues[i + 1]);
        }
        return form;
    }
}
