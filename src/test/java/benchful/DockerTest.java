package benchful;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds the image and the compose file against each other, the program's settings and the build; there is no engine to run them. */
class DockerTest {
    private static final Path DOCKER = Path.of("docker");
    private static final int NATIVES_MB = 500;
    private static final Pattern VARIABLE = Pattern.compile("\\$\\{([A-Z_]+)");

    private static final Pattern SETTING = Pattern.compile("(?m)^(?:# )?(benchful[a-z.-]+)=");

    private static String dockerfile;
    private static JsonNode program;
    private static JsonNode database;
    private static JsonNode compose;

    @BeforeAll
    static void read() throws IOException {
        dockerfile = Files.readString(DOCKER.resolve("Dockerfile")).replace("\\\n", " ");
        compose = new YAMLMapper().readTree(DOCKER.resolve("compose.yaml").toFile());
        program = compose.at("/services/benchful");
        database = compose.at("/services/database");
    }

    @Test
    void buildsFromWhatTheProjectHolds() {
        Path folder = DOCKER.resolve(program.at("/build/context").asText()).normalize();

        assertThat(folder.resolve("pom.xml")).exists();
        assertThat(folder.resolve(program.at("/build/dockerfile").asText())).exists();
        assertThat(instruction("COPY --from=build")).isEqualTo("/build/target/quarkus-app /app");
        assertThat(instruction("FROM maven:")).startsWith("3.9-eclipse-temurin-17 ");
        assertThat(instruction("FROM eclipse-temurin:")).isEqualTo("17-jre");
    }

    @Test
    void runsWithTheJavaThatThePomAsksFor() throws IOException {
        assertThat(Files.readString(Path.of("pom.xml"))).contains("<maven.compiler.release>17<");
    }

    @Test
    void neverRunsAsRootNorWritesBesideItsFolders() {
        assertThat(instruction("USER")).isEqualTo("benchful");
        assertThat(program.path("read_only").asBoolean()).isTrue();
        assertThat(program.path("cap_drop")).extracting(JsonNode::asText).containsExactly("ALL");
        assertThat(program.path("security_opt")).extracting(JsonNode::asText).containsExactly("no-new-privileges:true");
        // The temporary folder takes the solver's libraries, which have to be runnable; the data folder belongs to the image's user.
        String uid = found("useradd .*--uid (\\d+)");
        assertThat(texts(program.path("tmpfs"))).anyMatch(mount -> mount.startsWith("/tmp:exec,"))
                .anyMatch(mount -> mount.startsWith(setting("BENCHFUL_DATA") + ":") && mount.contains("uid=" + uid));
    }

    @Test
    void publishesItsPortOnThisMachineOnly() {
        assertThat(texts(program.path("ports"))).containsExactly("127.0.0.1:8080:" + instruction("EXPOSE"));
        assertThat(database.has("ports")).isFalse();
        assertThat(dockerfile).contains("/dev/tcp/127.0.0.1/" + instruction("EXPOSE"), "Host: localhost");
    }

    @Test
    void leavesRoomBesideTheHeap() {
        int limit = megabytes(program.path("mem_limit").asText());
        int percent = Integer.parseInt(found("MaxRAMPercentage=(\\d+)"));

        assertThat(limit * percent / 100 + NATIVES_MB).isLessThanOrEqualTo(limit);
        assertThat(limit * percent / 100).as("heap of a shared server [MB]").isGreaterThanOrEqualTo(1024);
    }

    @Test
    void givesTheProgramARoleWithoutPowers() throws IOException {
        String role = program.at("/environment/QUARKUS_DATASOURCE_USERNAME").asText();
        String script = Files.readString(DOCKER.resolve("database.sh"));

        assertThat(role).isNotEqualTo(database.at("/environment/POSTGRES_USER").asText());
        assertThat(script).contains("create role " + role + " login nosuperuser nocreatedb nocreaterole", "create database benchful owner " + role);
        assertThat(program.at("/environment/QUARKUS_DATASOURCE_JDBC_URL").asText()).isEqualTo("jdbc:postgresql://database:5432/benchful");
        assertThat(texts(database.path("volumes"))).contains("./database.sh:/docker-entrypoint-initdb.d/database.sh:ro");
        assertThat(program.path("environment").toString()).doesNotContain("BENCHFUL_ADMIN_PASSWORD");
    }

    @Test
    void setsOnlyWhatTheProgramKnowsAndTellsWhatItTakes() throws IOException {
        String settings = Files.readString(Path.of("src/main/resources/application.properties"));
        String readme = Files.readString(Path.of("README.md"));
        List<String> known = SETTING.matcher(settings).results()
                .map(found -> found.group(1).replaceAll("[.-]", "_").toUpperCase(Locale.ROOT)).toList();

        assertThat(fieldNames(program.path("environment")).filter(name -> name.startsWith("BENCHFUL_")))
                .isNotEmpty()
                .allSatisfy(name -> assertThat(known).contains(name))
                .allSatisfy(name -> assertThat(readme).contains(name));
        String head = Files.readString(DOCKER.resolve("compose.yaml")).split("\nname:")[0];
        assertThat(VARIABLE.matcher(compose.toString()).results().map(found -> found.group(1)).distinct())
                .allSatisfy(variable -> assertThat(head).contains(variable + "="));
    }

    /** What follows the word that a line of the Dockerfile begins with; the last such line. */
    private static String instruction(String word) {
        return dockerfile.lines().filter(line -> line.startsWith(word)).reduce((one, next) -> next)
                .orElseThrow(() -> new AssertionError("The Dockerfile has no " + word)).substring(word.length()).strip();
    }

    private static String setting(String variable) {
        return found("ENV " + variable + "=(\\S+)");
    }

    private static String found(String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(dockerfile);
        assertThat(matcher.find()).as(pattern).isTrue();
        return matcher.group(1);
    }

    private static int megabytes(String limit) {
        int figure = Integer.parseInt(limit.replaceAll("\\D", ""));
        return limit.endsWith("g") ? figure * 1024 : figure;
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false).map(JsonNode::asText).toList();
    }

    private static Stream<String> fieldNames(JsonNode object) {
        return StreamSupport.stream(((Iterable<String>) object::fieldNames).spliterator(), false);
    }
}
