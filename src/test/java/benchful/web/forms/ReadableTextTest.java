package benchful.web.forms;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class ReadableTextTest {
    private static final String NEEDLE = "\uD83E\uDDF5";

    @Test
    void marksWhatCanBeNeitherShownNorStoredWhereverItStands() throws JsonProcessingException {
        JsonNode tree = SpecFormat.json().readTree("{\"a\\u0000\": [\"b\\ud83e\", 1, null, {\"c\": \"line\\nline \\ud83e\\uddf5\"}]}");
        assertThat(ReadableText.marked(tree)).hasToString("{\"a\uFFFD\":[\"b\uFFFD\",1,null,{\"c\":\"line\\nline " + NEEDLE + "\"}]}");
        assertThat(ReadableText.faults(tree)).hasSize(2);
        assertThat(ReadableText.faults(ReadableText.marked(tree))).isEmpty();
    }

    @Test
    void cutsNoSignInHalf() {
        assertThat(ReadableText.cut("ab" + NEEDLE, 3)).isEqualTo("ab");
        assertThat(ReadableText.cut("ab" + NEEDLE, 4)).isEqualTo("ab" + NEEDLE);
        assertThat(ReadableText.cut("abc", 2)).isEqualTo("ab");
        assertThat(ReadableText.cut("abc", 9)).isEqualTo("abc");
        assertThat(ReadableText.cut("abc", 0)).isEmpty();
    }
}
