package benchful.projects.writing;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RenamesTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /measures/0 | name | length | reach  | /sizes/1/measures/length | 42 cm              | /sizes/1/measures/reach | 42 cm
            /measures/0 | name | length | reach  | /materials/0/amount      | 2*length + lengths | /materials/0/amount     | 2*reach + lengths
            /measures/0 | name | length | reach  | /sizing/0/values/target  | length             | /sizing/0/values/target | reach
            /measures/0 | name | length | reach  | /summary                 | length             | /summary                | length
            /sizing/0   | name | strand | row    | /steps/4/repeats         | strand_knots - 1   | /steps/4/repeats        | row_knots - 1
            /tools/3    | name | awl    | needle | /steps/0/tools/1/tool    | awl                | /steps/0/tools/1/tool   | needle
            /steps/3    | id   | knot   | tie    | /steps/4/after/0/step    | knot               | /steps/4/after/0/step   | tie
            /pictures/0 | name | one    | two    | /steps/4/pictures/1      | one                | /steps/4/pictures/1     | two
            /tools/3    | name | awl    | ''     | /steps/0/tools/1/tool    | awl                | /steps/0/tools/1/tool   | awl
            """)
    void carriesAChangedNameToWhereItIsUsed(String row, String key, String was, String now, String field, String value, String carriedField, String carried) {
        MultivaluedMap<String, String> fields = Renames.carried(form("was:" + row, was, row + "/" + key, now, field, value));
        assertThat(fields.getFirst(carriedField)).isEqualTo(carried);
    }

    @Test
    void letsTwoNamesChangePlaces() {
        MultivaluedMap<String, String> fields = Renames.carried(form("was:/steps/0", "a", "/steps/0/id", "b", "was:/steps/1", "b",
                "/steps/1/id", "a", "/steps/2/after/0/step", "a", "/steps/2/after/1/step", "b"));
        assertThat(fields.getFirst("/steps/2/after/0/step")).isEqualTo("b");
        assertThat(fields.getFirst("/steps/2/after/1/step")).isEqualTo("a");
    }

    private static MultivaluedMap<String, String> form(String... namesAndValues) {
        MultivaluedMap<String, String> form = new MultivaluedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            form.add(namesAndValues[i], namesAndValues[i + 1]);
        }
        return form;
    }
}
