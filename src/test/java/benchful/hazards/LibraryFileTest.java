package benchful.hazards;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The hazards the program brings along: whole, at one with themselves, and honest about where they come from. */
class LibraryFileTest {
    private static final Path FOLDER = Path.of("src/main/resources/hazards");

    static List<JsonNode> hazards() throws IOException {
        return SpecFormat.yaml().readTree(Files.readString(FOLDER.resolve("library.yaml"))).get("hazards").findParents("id");
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

    /** The bench's hazards, and what must be said of each: statements as in safety data sheets and the UN GHS; signs of ISO 7010:2019. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            solvent-vapour  | H225 H315 H336             | GHS02 GHS07             | W021 P003 | windows
            contact-cement  | H225 H315 H336             | GHS02 GHS07             | W021 P003 | windows
            cyanoacrylate   | H315 H319 H335 EUH202      | GHS07                   | M004      | windows
            epoxy           | H314 H315 H317 H319 H411   | GHS05 GHS07 GHS09       | M004 M009 | windows
            uv-resin        | H315 H317 H319             | GHS07                   | M004 M009 | windows
            acid-pickle     | H318                       | GHS05                   | M004 M009 E011 | windows
            open-flame      | H220                       | GHS02                   | F001 M004 | extractor
            hot-surface     |                            |                         | W017      | windows
            stone-dust      | H372                       | GHS08                   | M017      | extractor
            wood-dust       |                            |                         | M016      | extractor
            sharp-tools     |                            |                         | W022 E003 | none
            eye-strain      |                            |                         |           | none
            repetitive-work |                            |                         |           | none
            magnets         |                            |                         | P007      | none
            small-parts     |                            |                         | M055      | none
            nickel          | H317                       | GHS07                   |           | none
            """)
    void saysOfEveryHazardOfTheBenchWhatItsLabelAndItsSignsSay(String id, String statements, String pictograms, String signs, String air) {
        HazardSpec hazard = LibraryFile.byId().get(id);
        assertThat(hazard.ghs()).extracting(HazardSpec.Statement::code).contains(codes(statements));
        assertThat(hazard.ghs()).allSatisfy(statement -> assertThat(statement.text()).isNotBlank());
        assertThat(hazard.pictograms()).extracting(HazardSpec.Sign::code).contains(codes(pictograms));
        assertThat(hazard.signs()).extracting(HazardSpec.Sign::code).contains(codes(signs));
        assertThat(hazard.ventilation()).hasToString(air.toUpperCase(Locale.ROOT));
        assertThat(hazard.ghs().isEmpty() || hazard.storage() != null && !hazard.protectiveGear().isEmpty() || id.equals("nickel")).isTrue();
    }

    private static String[] codes(String codes) {
        return codes == null ? new String[0] : codes.split(" ");
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
