package benchful.projects;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.Fault;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecReader;
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
    private static final SpecReader<ProjectSpec> READER = ProjectFiles.READER;

    @ParameterizedTest
    @MethodSource("seeds")
    void comesBackWholeFromItsFile(long seed) {
        ProjectSpec sheet = ProjectSpecs.generated(seed);
        String yaml = READER.yaml(sheet);
        assertThat(faults(READER.file(yaml.getBytes(StandardCharsets.UTF_8)))).as(yaml).isEmpty();
        assertThat(sheet(READER.file(yaml.getBytes(StandardCharsets.UTF_8)))).isEqualTo(sheet);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void comesBackWholeFromJson(long seed) throws IOException {
        ProjectSpec sheet = ProjectSpecs.generated(seed);
        byte[] json = SpecFormat.json().writeValueAsBytes(sheet);
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

    private static ProjectSpec sheet(SpecReader.Reading<ProjectSpec> reading) {
        return ((SpecReader.Read<ProjectSpec>) reading).sheet();
    }

    private static List<Fault> faults(SpecReader.Reading<ProjectSpec> reading) {
        return reading instanceof SpecReader.Faulty<ProjectSpec> faulty ? faulty.faults() : List.of();
    }
}
