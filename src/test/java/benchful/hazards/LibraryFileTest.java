package benchful.hazards;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.SheetFormat;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The hazards the program brings along: whole, at one with themselves, and honest about where they come from. */
class LibraryFileTest {
    private static final Path FOLDER = Path.of("src/main/resources/hazards");

    static List<JsonNode> hazards() throws IOException {
        return SheetFormat.yaml().readTree(Files.readString(FOLDER.resolve("library.yaml"))).get("hazards").findParents("id");
    }

    @ParameterizedTest
    @MethodSource("hazards")
    void saysWhatToDoForEachHazard(JsonNode hazard) {
        assertThat(hazard.path("id").asText()).matches("[a-z0-9]+(-[a-z0-9]+)*");
        assertThat(hazard.path("harm").asText()).isNotBlank();
        assertThat(hazard.path("cautions")).isNotEmpty();
        assertThat(hazard.path("first_response")).isNotEmpty();
        assertThat(hazard.path("ventilation").asText()).isIn("none", "windows", "extractor");
        assertThat(hazard.path("minimum_age").asInt()).isBetween(3, 18);
        assertThat(hazard.path("severity").asInt()).isBetween(1, 5);
        assertThat(hazard.path("likelihood").asInt()).isBetween(1, 5);
    }

    @ParameterizedTest
    @MethodSource("hazards")
    void namesASourceOrSaysThatThereIsNone(JsonNode hazard) {
        assertThat(hazard.path("sources")).isNotEmpty().anyMatch(s -> s.asText().matches(".*(no source|from memory|read in|[12]\\d{3}).*"));
    }

    @Test
    void usesEachNameOnce() throws IOException {
        assertThat(hazards()).extracting(h -> h.get("id").asText()).doesNotHaveDuplicates();
        assertThat(hazards()).extracting(h -> h.get("name").asText()).doesNotHaveDuplicates();
    }

    /** Statement texts from the UN GHS, names of signs from ISO 7010:2019. */
    @Test
    void givesACodeTheSameWordsEverywhere() throws IOException {
        Map<String, String> words = new HashMap<>();
        for (JsonNode hazard : hazards()) {
            for (JsonNode coded : hazard.findParents("code")) {
                String text = coded.path("text").asText(coded.path("name").asText());
                assertThat(words.getOrDefault(coded.get("code").asText(), text)).describedAs(coded.toString()).isEqualTo(text);
                words.put(coded.get("code").asText(), text);
            }
        }
        assertThat(words).containsEntry("H317", "May cause an allergic skin reaction").containsEntry("M004", "Wear eye protection")
                .containsEntry("W017", "Hot surface").containsEntry("GHS07", "exclamation mark");
    }

    @Test
    void drawsOnlySignsThatAHazardShows() throws IOException {
        List<String> shown = hazards().stream().flatMap(h -> h.findValuesAsText("code").stream()).toList();
        try (Stream<Path> drawn = Files.list(FOLDER.resolve("signs"))) {
            assertThat(drawn.map(f -> f.getFileName().toString().replace(".svg", ""))).isNotEmpty().isSubsetOf(shown);
        }
    }
}
