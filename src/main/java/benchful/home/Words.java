package benchful.home;

import benchful.web.Writing;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.core.type.TypeReference;
import io.quarkus.qute.TemplateData;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** What the words on the pages mean, in a tutor's words: one source for the page of words and for the fields that lead there. */
final class Words {
    private static final String PLACE = "/words.yaml";
    private static final List<Group> GROUPS = read();

    private Words() {}

    /** Words that are met together. */
    @TemplateData
    public record Group(String title, List<Word> words) {}

    /** @param id what a field's link leads to */
    @TemplateData
    public record Word(String id, String word, String means) {}

    static List<Group> groups() {
        Writing writing = Writing.current();
        return GROUPS.stream().map(group -> new Group(writing.spelt(group.title()), group.words().stream()
                .map(word -> new Word(word.id(), writing.spelt(word.word()), writing.spelt(word.means()))).toList())).toList();
    }

    private static List<Group> read() {
        try (InputStream in = Words.class.getResourceAsStream(PLACE)) {
            return SpecFormat.yaml().readValue(in, new TypeReference<List<Group>>() {});
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
