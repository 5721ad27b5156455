package benchful.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first command that a newcomer reads, given as it stands there but for what the build that runs this has done. */
class ReadmeIT {
    @TempDir
    private Path home;

    @Test
    void startsByItsFirstCommandAndPrintsItsAddress() throws Exception {
        int port = StartIT.freePort();
        List<String> settings = List.of("-o", "-Dmaven.repo.local=" + System.getProperty("localRepository"));
        List<String> command = Stream.concat(firstCommand().stream().filter(word -> !word.equals("package")), settings.stream()).toList();
        try (Program program = Program.start(command, Map.of("BENCHFUL_DATA", home.resolve("data").toString(), "QUARKUS_HTTP_PORT", "" + port)).whenReady()) {
            assertThat(program.said()).contains("http://127.0.0.1:" + port);
            assertThat(program.get("/").body()).contains("Load the sample classes");
        }
    }

    private static List<String> firstCommand() throws Exception {
        String readme = Files.readString(Path.of("README.md"));
        String block = readme.substring(readme.indexOf("```\n") + 4);
        List<String> words = Arrays.asList(block.substring(0, block.indexOf('#')).strip().split("\\s+"));
        assertThat(words).startsWith("mvn").contains("package", "quarkus:run");
        return words;
    }
}
