package benchful.projects;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.Fault;
import benchful.web.forms.SheetFormat;
import benchful.web.forms.SheetReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ProjectFileTest {
    private static final SheetReader<ProjectSheet> READER = ProjectFiles.READER;

    @ParameterizedTest
    @MethodSource("seeds")
    void comesBackWholeFromItsFile(long seed) {
        ProjectSheet sheet = ProjectSheets.generated(seed);
        String yaml = READER.yaml(sheet);
        assertThat(faults(READER.file(yaml.getBytes(StandardCharsets.UTF_8)))).as(yaml).isEmpty();
        assertThat(sheet(READER.file(yaml.getBytes(StandardCharsets.UTF_8)))).isEqualTo(sheet);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void comesBackWholeFromJson(long seed) throws IOException {
        ProjectSheet sheet = ProjectSheets.generated(seed);
        byte[] json = SheetFormat.json().writeValueAsBytes(sheet);
        assertThat(sheet(READER.file(json))).isEqualTo(sheet);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void readsEverySample(Path file) throws IOException {
        assertThat(faults(READER.file(Files.readAllBytes(file)))).isEmpty();
    }

    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    static Stream<Path> samples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("sample-classes/projects"))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
        }
    }

    private static ProjectSheet sheet(SheetReader.Reading<ProjectSheet> reading) {
        return ((SheetReader.Read<ProjectSheet>) reading).sheet();
    }

    private static List<Fault> faults(SheetReader.Reading<ProjectSheet> reading) {
        return reading instanceof SheetReader.Faulty<ProjectSheet> faulty ? faulty.faults() : List.of();
    }
}
