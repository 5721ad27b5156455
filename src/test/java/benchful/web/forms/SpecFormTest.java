package benchful.web.forms;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.Fault;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpecFormTest {
    private static final JsonNode RING = tree("""
            {"name": "Ring", "minimum_age": 8, "sizes": [{"name": "S"}, {"name": "L"}]}""");

    @Test
    void showsWhatStandsInEachField() {
        SpecForm form = SpecForm.of(RING, 3);
        assertThat(form.value("/name")).isEqualTo("Ring");
        assertThat(form.value("/minimum_age")).isEqualTo("8");
        assertThat(form.value("/sizes")).isEmpty();
        assertThat(form.value("/sizes/4/name")).isEmpty();
        assertThat(form.is("/sizes/1/name", "L")).isTrue();
        assertThat(form.rows("/sizes")).containsExactly("/sizes/0", "/sizes/1");
        assertThat(form.rowsAndBlank("/tools")).containsExactly("/tools/0");
    }

    @Test
    void addsABlankRowWhereThereIsNone() {
        SpecForm form = SpecForm.of(tree("{\"sizes\": [{\"name\": \"S\"}], \"tools\": [{\"name\": \"awl\"}, {}], \"hazards\": [\"x\"]}"), 0);
        assertThat(form.rowsAndBlank("/sizes")).containsExactly("/sizes/0", "/sizes/1");
        assertThat(form.rowsAndBlank("/tools")).containsExactly("/tools/0", "/tools/1");
        assertThat(form.rowsAndBlank("/hazards")).containsExactly("/hazards/0", "/hazards/1");
    }

    @Test
    void showsAFaultAtItsField() {
        SpecForm form = SpecForm.faulty(RING, List.of(new Fault("/sizes/1/name", "Mend it.")), 3);
        assertThat(form.fault("/sizes/1/name")).isEqualTo("Mend it.");
        assertThat(form.fault("/sizes/0/name")).isNull();
        assertThat(form.faultBelow("/sizes/1")).isTrue();
        assertThat(form.faultBelow("/sizes/10")).isFalse();
        assertThat(form.faultBelow("/sizes/1/n")).isFalse();
    }

    @Test
    void comparesBothVersionsPlaceByPlace() {
        JsonNode mine = tree("""
                {"name": "Ring", "minimum_age": "9", "sizes": [{"name": "S"}]}""");
        assertThat(SpecForm.stale(mine, RING, 4).differences())
                .containsExactly(new Difference("/minimum_age", "8", "9"), new Difference("/sizes/1/name", "L", ""));
        assertThat(SpecForm.stale(RING, RING, 4).differences()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /steps/3/student/quick | steps 4, student, quick
            /minimum_age           | minimum age
            /sizes/0/measures/a~1b | sizes 1, measures, a/b
            ''                     | ''
            """)
    void namesAPlaceInWords(String pointer, String words) {
        assertThat(SpecForm.of(RING, 0).place(pointer)).isEqualTo(words);
    }

    private static JsonNode tree(String json) {
        try {
            return SpecFormat.json().readTree(json);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
