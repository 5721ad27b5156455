package benchful.plans.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.SetupRules;
import benchful.core.Progress;
import benchful.core.lesson.LessonPlanner;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.risk.Promised;
import benchful.plans.ClassPlanner;
import benchful.web.forms.FormTree;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Classes of several crafts, each written down with what a good colleague would say first and what nobody would say, before the
 * advice was asked. {@code first} is how the first suggestion begins, empty where there is none to give; nothing that is suggested
 * holds one of the phrases of {@code never}.
 */
class ColleagueTest {
    private static final Path FOLDER = Path.of("src/test/resources/advice");
    private static final int CLASSES = 400;

    private final LessonPlanner planner = new ListPlanner();

    static Stream<Path> written() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().toList().stream();
        }
    }

    @Test
    void asksAboutFourteenClasses() throws IOException {
        assertThat(written()).hasSize(14);
    }

    @ParameterizedTest
    @MethodSource("written")
    void saysFirstWhatAColleagueWouldAndNothingThatNobodyWould(Path written) throws IOException {
        JsonNode node = SpecFormat.yaml().readTree(Files.readAllBytes(written));
        SuggestionList advice = advice(file(node.get("asked")));
        List<String> titles = advice.suggestions().stream().map(said -> said.title().toString()).toList();
        String first = node.get("first").asText("");
        assertThat(advice.comfortable()).isEqualTo(first.isEmpty());
        assertThat(titles.stream().findFirst().orElse("")).as("first of %s", titles).startsWith(first);
        node.get("never").forEach(never -> assertThat(titles).noneMatch(title -> title.contains(never.asText())));
    }

    /** The whole way round: each suggestion's fields are put into the class, and the class is planned anew. */
    @ParameterizedTest
    @MethodSource("written")
    void saysOfEachChangeWhatTheClassThenComesTo(Path written) throws IOException {
        ClassFile file = file(SpecFormat.yaml().readTree(Files.readAllBytes(written)).get("asked"));
        SpecReader<ClassSetup> reader = SetupRules.reader(file.project());
        assertThat(advice(file).suggestions()).allSatisfy(said -> {
            SpecReader.Reading<ClassSetup> taken = reader.tree(said.whatIf().over(new FormTree(reader.schema()), reader.written(file.setup())));
            Promised then = promised(request(file.with(((SpecReader.Read<ClassSetup>) taken).sheet())));
            assertThat(then.plan().finish()).as(said.title().toString()).isEqualTo(said.finish());
            assertThat(then.risk().onTime()).as(said.title().toString()).isEqualTo(said.chance());
        });
    }

    private SuggestionList advice(ClassFile file) {
        LessonRequest request = request(file);
        return new ClassAdvisor(planner, file).suggestions(request, promised(request), Progress.NONE);
    }

    private static LessonRequest request(ClassFile file) {
        return ClassPlanner.request(file).toBuilder().replications(CLASSES).build();
    }

    private Promised promised(LessonRequest request) {
        return Promised.of(request, ((Planned) planner.plan(request)).plan());
    }

    private static ClassFile file(JsonNode asked) {
        SpecReader.Reading<ClassFile> reading = new SpecReader<>(ClassFile.class, sheet -> List.of()).tree(asked);
        assertThat(reading).as(reading.toString()).isInstanceOf(SpecReader.Read.class);
        return ((SpecReader.Read<ClassFile>) reading).sheet();
    }
}
