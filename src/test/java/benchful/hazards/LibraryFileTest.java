package benchful.hazards;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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
        assertThat(hazard.path("minimum_age").asInt(3)).isBetween(3, 18);
        assertThat(hazard.path("who").asText()).isNotBlank();
        assertThat(hazard.path("severity").asInt()).isBetween(1, 5);
        assertThat(hazard.path("likelihood").asInt()).isBetween(1, 5);
    }

    /** A source says what it is for, and every statement is spoken for: by what was published, with its edition or day, or as common practice. */
    @ParameterizedTest
    @MethodSource("sheets")
    void namesForEachStatementASourceOrSaysThatThereIsNone(HazardSpec hazard) {
        Sourced sourced = Sourced.of(hazard);
        assertThat(sourced.told()).isTrue();
        long practice = Stream.concat(sourced.cautions().stream(), sourced.firstResponse().stream()).filter(Sourced.Line::practice).count();
        assertThat(practice > 0).isEqualTo(hazard.sources().stream().anyMatch(s -> s.matches("(Cautions|First response)[^:]*: common practice, no source")
                || s.matches("[^:]*first response[^:]*: common practice, no source")));
        assertThat(hazard.sources()).noneMatch(s -> s.contains("from memory"))
                .allMatch(s -> s.matches(".*([12]\\d{3}|no source|data sheets?|journal|Annex|CFR|EN \\d+|9th ATP).*"));
    }

    static Collection<HazardSpec> sheets() {
        return LibraryFile.byId().values();
    }

    @Test
    void leavesLessThanAFifthOfItsStatementsWithoutAPublishedSource() {
        int all = sheets().stream().map(Sourced::of).mapToInt(Sourced::all).sum();
        int with = sheets().stream().map(Sourced::of).mapToInt(Sourced::with).sum();
        System.out.printf("%d hazards: %d statements with a published source, %d without (%.1f %%)%n", sheets().size(), with, all - with, 100.0 * (all - with) / all);
        assertThat(all).isGreaterThan(500);
        assertThat((all - with) * 5).isLessThan(all);
    }

    /** What was read in published advice, against what stood here before. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            wood-dust      | FFP3 or another of protection factor 20               # HSE, woodworking questions, no. 8
            lead-cadmium   | No leaded solder in a kit or for sale to the public    # REACH Annex XVII entry 30, since 1 March 2018
            solder-fume    | leaded solder is not for the public                    # the same
            stone-dust     | lung cancer                                            # IARC 68, 1997; HSE, INDG463
            cyanoacrylate  | In the eye: rinse the open eye with lukewarm water for at least 15 minutes # clinical pages
            plaster        | it reaches 60 °C                                       # NSEAD; CLEAPSS PS072
            magnets        | it gives no age                                        # 16 CFR 1262
            small-parts    | 31.7 mm                                                # 16 CFR 1501.4
            children       | 1 to 6 from 4 to 8 years                               # NSPCC, 2023
            rotating-tools | nearly half of drill accidents begin with a glove      # HSE, PM83
            machine-noise  | at two metres                                          # HSE, L108
            """)
    void saysWhatIsPublished(String id, String words) {
        assertThat(LibraryFile.byId().get(id).toString()).contains(words.replaceFirst("\\s*#.*", ""));
    }

    /** NHS and HSE: chemicals on the skin 20 minutes or more; in the eye 10 to 15, so one figure, 15, everywhere. */
    @Test
    void rinsesEyesForTheSameTimeEverywhere() {
        List<String> eyes = sheets().stream().flatMap(h -> h.firstResponse().stream()).filter(line -> line.startsWith("In the eye") && line.contains("minutes")).toList();
        assertThat(eyes).hasSizeGreaterThan(12).allMatch(line -> line.contains("at least 15 minutes"));
    }

    /** CLP is about substances and mixtures: beads, clasps and fibres are articles. */
    @ParameterizedTest
    @ValueSource(strings = {"nickel", "natural-fibre-allergy", "small-parts", "sharp-tools", "long-cords"})
    void putsNoChemicalPictogramOnArticles(String id) {
        assertThat(LibraryFile.byId().get(id).pictograms()).isEmpty();
        assertThat(LibraryFile.byId().get(id).ghs()).isEmpty();
    }

    /** The room's green cross says where first aid is, and warns of nothing. */
    @Test
    void warnsOfNothingByTheGreenCross() {
        assertThat(sheets().stream().flatMap(h -> h.signs().stream()).map(HazardSpec.Sign::code)).doesNotContain("E003");
    }

    /** The weightiest statement decides the word: CLP Annex I, tables of labels. */
    @ParameterizedTest
    @MethodSource("sheets")
    void bearsASignalWordWhereItsLabelDoes(HazardSpec hazard) {
        boolean danger = hazard.ghs().stream().anyMatch(s -> List.of("H220", "H222", "H225", "H314", "H318", "H330", "H334", "H350", "H360", "H372").contains(s.code()));
        assertThat(hazard.signal()).isEqualTo(hazard.ghs().isEmpty() ? null : danger ? HazardSpec.Signal.DANGER : HazardSpec.Signal.WARNING);
        assertThat(hazard.precautions().isEmpty()).isEqualTo(hazard.ghs().isEmpty());
        assertThat(hazard.precautions()).allMatch(s -> s.code().startsWith("P"));
    }

    /** The bench's hazards, and what must be said of each: statements as in safety data sheets and the UN GHS; signs of ISO 7010:2019. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            solvent-vapour  | H225 H315 H336             | GHS02 GHS07             | W021 P003 | windows
            contact-cement  | H225 H315 H336             | GHS02 GHS07             | W021 P003 | windows
            cyanoacrylate   | H315 H319 H335 EUH202      | GHS07                   | M004      | windows
            epoxy           | H317                       | GHS07                   | M004 M009 | windows
            epoxy-resin     | H315 H317 H319 H411        | GHS07 GHS09             | M004 M009 | windows
            epoxy-hardener  | H314 H317                  | GHS05 GHS07             | W023 M004 M009 | windows
            lead-cadmium    | H330 H341 H350 H360 H372 H410 | GHS06 GHS08 GHS09    | W016      | extractor
            gas-cylinder    | H220 H280                  | GHS02 GHS04             | W029 M046 | windows
            solder-fume     | H334                       | GHS08                   | M057      | extractor
            dye-powder      | H317 H334                  | GHS08                   | M016      | extractor
            isocyanates     | H334 H351                  | GHS08                   | M017      | extractor
            bleach          | H314 EUH031                | GHS05                   | W023      | windows
            aerosol         | H222 H229                  | GHS02                   | P003      | extractor
            kiln            |                            |                         | W017      | extractor
            uv-resin        | H315 H317 H319             | GHS07                   | M004 M009 | windows
            acid-pickle     | H318                       | GHS05                   | M004 M009 E011 | windows
            open-flame      |                            |                         | F001 M004 | extractor
            hot-surface     |                            |                         | W017      | windows
            stone-dust      | H350 H372                  | GHS08                   | M017      | extractor
            wood-dust       |                            |                         | M017      | extractor
            sharp-tools     |                            |                         | W022      | none
            eye-strain      |                            |                         |           | none
            repetitive-work |                            |                         |           | none
            magnets         |                            |                         | P007      | none
            small-parts     |                            |                         | M055      | none
            nickel          |                            |                         |           | none
            """)
    void saysOfEveryHazardOfTheBenchWhatItsLabelAndItsSignsSay(String id, String statements, String pictograms, String signs, String air) {
        HazardSpec hazard = LibraryFile.byId().get(id);
        assertThat(hazard.ghs()).extracting(HazardSpec.Statement::code).contains(codes(statements));
        assertThat(hazard.ghs()).allSatisfy(statement -> assertThat(statement.text()).isNotBlank());
        assertThat(hazard.pictograms()).extracting(HazardSpec.Sign::code).contains(codes(pictograms));
        assertThat(hazard.signs()).extracting(HazardSpec.Sign::code).contains(codes(signs));
        assertThat(hazard.ventilation()).hasToString(air.toUpperCase(Locale.ROOT));
        assertThat(hazard.ghs().isEmpty() || hazard.storage() != null && !hazard.protectiveGear().isEmpty()).isTrue();
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
    void drawsEverySignThatAHazardShows() {
        assertThat(sheets().stream().flatMap(h -> Stream.concat(h.signs().stream(), h.pictograms().stream())).map(HazardSpec.Sign::code).distinct())
                .hasSizeGreaterThan(40).allSatisfy(code -> assertThat(Signs.svg(code)).as(code).isPresent());
    }

    /** ISO 3864-1: a triangle, a crossed ring of 0.1 and a bar of 0.08 of the diameter, a disc, a square; UN GHS: a square on its corner. */
    @Test
    void drawsEachSignInTheShapeOfItsKind() throws IOException {
        Map<Character, String> shapes = Map.of('W', "M50 6L95 84H5Z", 'P', "M19.6 19.6L80.4 80.4\" stroke=\"#9b2423\" stroke-width=\"8\"", 'M', "circle cx=\"50\" cy=\"50\" r=\"49\" fill=\"#005387\"",
                'F', "rect width=\"100\" height=\"100\" fill=\"#9b2423\"", 'E', "rect width=\"100\" height=\"100\" fill=\"#237f52\"", 'G', "M50 4L96 50L50 96L4 50Z");
        try (Stream<Path> drawn = Files.list(FOLDER.resolve("signs"))) {
            assertThat(drawn.map(f -> f.getFileName().toString().replace(".svg", ""))).allSatisfy(code ->
                    assertThat(Signs.svg(code).orElseThrow()).contains(shapes.get(code.charAt(0))).contains("<title>" + code + " "));
        }
    }

    /** The green signs show the way on the emergency card. */
    @Test
    void drawsNoOtherSignsButTheGreenOnesOfTheEmergencyCard() throws IOException {
        List<String> shown = hazards().stream().flatMap(h -> h.findValuesAsText("code").stream()).toList();
        try (Stream<Path> drawn = Files.list(FOLDER.resolve("signs"))) {
            assertThat(drawn.map(f -> f.getFileName().toString().replace(".svg", ""))).isNotEmpty().isSubsetOf(Stream.concat(shown.stream(), Stream.of("E003", "E007", "E010")).toList());
        }
    }
}
