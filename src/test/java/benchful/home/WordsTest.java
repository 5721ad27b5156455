package benchful.home;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.StepKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each field that asks what is meant gets an answer, and no answer is there twice. */
class WordsTest {
    private static final Path TEMPLATES = Path.of("src/main/resources/templates");
    private static final Pattern ASKED = Pattern.compile(" word='([^']+)'");

    private static List<String> ids() {
        return Words.groups().stream().flatMap(group -> group.words().stream()).map(Words.Word::id).toList();
    }

    @Test
    void saysEachWordOnceInWholeSentences() {
        assertThat(ids()).doesNotHaveDuplicates().allMatch(id -> id.matches("[a-z]+(-[a-z]+)*"));
        assertThat(Words.groups()).allSatisfy(group -> {
            assertThat(group.title()).isNotBlank();
            assertThat(group.words()).isNotEmpty().allSatisfy(word -> {
                assertThat(word.word()).isNotBlank();
                assertThat(word.means()).endsWith(".").hasSizeBetween(30, 400);
            });
        });
    }

    @Test
    void answersEveryFieldThatAsks() throws IOException {
        try (Stream<Path> templates = Files.walk(TEMPLATES)) {
            List<String> asked = templates.filter(file -> file.toString().endsWith(".html")).flatMap(WordsTest::asked).distinct().toList();
            assertThat(asked).hasSizeGreaterThan(15);
            assertThat(ids()).containsAll(asked);
        }
    }

    @Test
    void saysEveryKindOfStep() {
        assertThat(ids()).containsAll(Arrays.stream(StepKind.values()).map(kind -> kind.name().toLowerCase(Locale.ROOT)).toList());
    }

    private static Stream<String> asked(Path template) {
        try {
            return ASKED.matcher(Files.readString(template)).results().map((MatchResult result) -> result.group(1)).toList().stream();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
