package benchful.web.forms;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.forms.fields.Spec;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The served schemas are prints of what the records say, so that a change of one is seen by whoever looks at the change. */
class SchemaDocumentTest {
    private static final Path SERVED = Path.of("src/main/resources/META-INF/resources/schema");
    private static final String RENEW = "run mvn test -Dtest=SchemaDocumentTest -Dbenchful.schemas=true to renew it, and look at what changed";
    private static final Pattern INNERMOST = Pattern.compile("\\{\n[^{}]*\n *\\}");

    static Stream<Class<?>> specs() {
        return new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("benchful").stream()
                .filter(type -> type.isAnnotatedWith(Spec.class)).map(JavaClass::reflect);
    }

    private static String file(Class<?> spec) {
        return spec.getAnnotation(Spec.class).name() + ".json";
    }

    @ParameterizedTest
    @MethodSource("specs")
    void isServedAsItsRecordSaysIt(Class<?> spec) throws IOException {
        Path served = SERVED.resolve(file(spec));
        if (Boolean.getBoolean("benchful.schemas")) {
            Files.writeString(served, printed(spec));
        }
        assertThat(served).as(RENEW).hasContent(printed(spec));
    }

    @Test
    void isServedForEachSpecAndForNothingElse() throws IOException {
        try (Stream<Path> served = Files.list(SERVED)) {
            assertThat(served.map(f -> f.getFileName().toString())).containsExactlyInAnyOrderElementsOf(specs().map(SchemaDocumentTest::file).toList());
        }
    }

    /** What holds nothing further stands on one line. */
    private static String printed(Class<?> spec) throws JsonProcessingException {
        String text = SpecFormat.json().writerWithDefaultPrettyPrinter().writeValueAsString(SpecSchema.of(spec).at("")).replace("\" : ", "\": ");
        return INNERMOST.matcher(text).replaceAll(m -> Matcher.quoteReplacement(m.group().replaceAll("\\n *", " "))) + "\n";
    }
}
