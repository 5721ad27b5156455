package benchful.web.forms;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.Fault;
import benchful.projects.ProjectSpec;
import benchful.web.forms.SpecReader.Faulty;
import benchful.web.forms.SpecReader.Read;
import benchful.web.forms.SpecReader.Reading;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(20)
class SpecReaderTest {
    private static final SpecReader<ProjectSpec> READER = new SpecReader<>(ProjectSpec.class, sheet -> List.of());
    private static final String SHEET = """
            benchful: project/1
            name: Ring
            craft: beads
            level: beginner
            sizes:
              - {name: M}
            steps:
              - {id: tidy, title: Tidy, kind: together, lasts: 10 min}
            """;

    @Test
    void readsASheet() {
        ProjectSpec sheet = read(SHEET);
        assertThat(sheet.name()).isEqualTo("Ring");
        assertThat(sheet.step("tidy").orElseThrow().lasts()).isEqualTo(Duration.ofMinutes(10));
    }

    @Test
    void takesABareNumberForMinutesAndForPieces() {
        ProjectSpec sheet = read(SHEET.replace("10 min", "20") + """
            materials:
              - {material: bead, amount: 12, pieces: 2, waste: "5,5"}
            """);
        assertThat(sheet.steps().get(0).lasts()).isEqualTo(Duration.ofMinutes(20));
        assertThat(sheet.materials().get(0).amount()).isEqualTo("12");
        assertThat(sheet.materials().get(0).waste()).isEqualTo("5.5");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0x1F", "1e3", "010", "1_000", "2027-03-06", "yes", "null-ish", "12:30:45"})
    void keepsANameAsItIsWritten(String name) {
        assertThat(read(SHEET.replace("name: M", "name: " + name)).sizes().get(0).name()).isEqualTo(name);
    }

    @Test
    void saysHowLongATextMayBe() {
        assertThat(faulty(bytes(SHEET.replace("name: M", "name: " + "M".repeat(41)))).faults()).extracting(f -> f.pointer() + " " + f.detail())
                .containsExactly("/sizes/0/name Shorten it to at most 40 letters.");
    }

    @Test
    void takesAKeyWithNothingAfterItForLeftOut() {
        assertThat(read(SHEET + "summary:\nmeasures: ~\n").summary()).isNull();
    }

    @Test
    void readsAByteOrderMark() {
        assertThat(read("\uFEFF" + SHEET).name()).isEqualTo("Ring");
    }

    @Test
    void readsJson() {
        assertThat(read("""
            {"name": "Ring", "craft": "beads", "level": "beginner", "sizes": [{"name": 42}],
             "steps": [{"id": "tidy", "title": "Tidy", "kind": "together", "lasts": 15}]}""").sizes().get(0).name()).isEqualTo("42");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            lasts: 10 min       | lasts: soon             | /steps/0/lasts | Give a time, such as 20 min, 1 h 30 min or 24 h.
            lasts: 10 min       | lasts: 10 parsecs       | /steps/0/lasts | “10 parsecs” is not a time. Write it like 20 min, 1 h 30 min, 24 h or 90 s.
            lasts: 10 min       | lasts: -10 min          | /steps/0/lasts | Give a time, such as 20 min, 1 h 30 min or 24 h.
            level: beginner     | level: wizard           | /level         | Choose beginner, improver or experienced.
            level: beginner     | craft_level: beginner   | /craft_level   | “craft_level” is not known here. Check its spelling.
            name: Ring          | name: "  "              | /name          | Give the project a name of up to 120 characters.
            name: Ring          | minimum_age: .nan       | /minimum_age   | Give the youngest age in whole years, from 3 to 99, or leave it empty.
            name: Ring          | minimum_age: 1e3        | /minimum_age   | Give the youngest age in whole years, from 3 to 99, or leave it empty.
            name: Ring          | minimum_age: -5         | /minimum_age   | Give the youngest age in whole years, from 3 to 99, or leave it empty.
            kind: together      | kind: nap               | /steps/0/kind  | Choose show, make, wait, together, ahead, between, homework or collect.
            - {name: M}         | - {name: M, measures: {length: 12 furlongs}} | /sizes/0/measures/length | “furlongs” is not a unit here. Use mm, cm, m, in, ft, yd, g, kg, oz, lb, ml, l, tsp, tbsp, floz, cup, pt, qt, gal, cm2, in2, in3 or pcs, or say what is counted, such as 3 sheets 70 x 50 cm.
            - {name: M}         | []                      | /sizes         | Give the project at least one size.
            benchful: project/1 | benchful: class/1       | /benchful      | The first line of a project file is “benchful: project/1”.
            """)
    void saysWhatIsWrongAndWhere(String right, String wrong, String pointer, String sentence) {
        assertThat(SHEET).contains(right);
        assertThat(faults(SHEET.replace(right, wrong))).contains(new Fault(pointer, sentence));
    }

    @Test
    void namesEveryFaultAtOnceWithItsLine() {
        Faulty<ProjectSpec> faulty = faulty(bytes(SHEET.replace("name: Ring", "name: Ring\nsizes_wanted: 3").replace("10 min", "10 parsecs")
                .replace("kind: together", "kind: nap")));
        assertThat(faulty.faults()).extracting(Fault::pointer).containsExactlyInAnyOrder("/sizes_wanted", "/steps/0/kind");
        assertThat(faulty.line("/sizes_wanted")).hasValue(3);
        assertThat(faulty.line("/steps/0/kind")).hasValue(9);
        assertThat(faulty.line("/steps/0/title/deeper")).hasValue(9);
    }

    @Test
    void namesEveryAmountAndTimeThatCannotBeRead() {
        List<Fault> faults = faults(SHEET.replace("- {name: M}", "- {name: M, measures: {a: 1 foo, b: 2 cm, c: 3 bar}}").replace("10 min", "10 x"));
        assertThat(faults).extracting(Fault::pointer).containsExactly("/sizes/0/measures/a", "/sizes/0/measures/c", "/steps/0/lasts");
    }

    @Test
    void tellsALatinFileToBeSavedAsUtf8() {
        assertUnreadable(SHEET.replace("Ring", "Bagué").getBytes(StandardCharsets.ISO_8859_1), "not in UTF-8");
        assertUnreadable(SHEET.getBytes(StandardCharsets.UTF_16), "not in UTF-8");
        assertUnreadable(SHEET.getBytes(Charset.forName("UTF-32LE")), "not in UTF-8");
    }

    @Test
    void refusesReferencesWithWhichASmallFileStandsForAHugeOne() {
        String bomb = "a: &a [x,x,x,x,x,x,x,x,x]\n" + IntStream.range(1, 12)
                .mapToObj(i -> "b%d: &b%d [%s]\n".formatted(i, i, "*%s,".formatted(i == 1 ? "a" : "b" + (i - 1)).repeat(9)))
                .reduce("", String::concat);
        assertUnreadable(bytes(bomb), "refers back to another of its places at line 2");
    }

    @Test
    void refusesWhatIsNestedTooDeeply() {
        assertUnreadable(bytes("a: " + "[".repeat(100_000)), "nested too deeply");
        assertUnreadable(bytes("{\"a\":" + "[".repeat(100_000)), "nested too deeply");
        assertUnreadable(bytes("a: " + "{b: ".repeat(40_000)), "nested too deeply");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\"", "'", "|\n  ", "!", "#"})
    void refusesALineThatWouldTakeMinutesToRead(String opens) {
        assertUnreadable((SHEET + "care: " + opens + "1".repeat(8_000_000)).getBytes(StandardCharsets.UTF_8), "Part it into shorter ones");
    }

    @Test
    void readsAPictureThatStandsInOneLineOfJson() {
        String json = "{\"benchful\": \"project/1\", \"name\": \"Ring\", \"craft\": \"beads\", \"level\": \"beginner\", \"sizes\": [{\"name\": \"M\"}],"
                + "\"steps\": [{\"id\": \"tidy\", \"title\": \"Tidy\", \"kind\": \"together\", \"lasts\": \"10 min\"}],"
                + "\"pictures\": [{\"name\": \"cover\", \"media_type\": \"image/png\", \"alt\": \"a ring\", \"content\": \"" + "AAAA".repeat(1_000_000) + "\"}]}";
        assertThat(read(json).pictures().get(0).content()).hasSize(3_000_000);
    }

    @Test
    void refusesAHugeFile() {
        assertUnreadable(new byte[SpecFormat.LARGEST + 1], "more than 16 MB");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            a: 1\\na: 2             | at line 2
            {"a": 1, "a": 2}       | “a” is there twice
            just words             | holds no sheet
            - a list               | holds no sheet
            ``                     | holds no sheet
            # only a remark        | holds no sheet
            a: 1\\n---\\nb: 2        | holds more than one sheet; the second begins at line 3
            a: "never closed       | at line
            a: 1\\n\\tb: 2           | at line
            {"a": nope}            | at line 1
            """)
    void refusesWhatIsNoSheet(String file, String words) {
        assertUnreadable(bytes(file.replace("\\n", "\n").replace("\\t", "\t")), words);
    }

    @Test
    void refusesCharactersThatCannotBeShownOrStored() {
        assertThat(faults(SHEET.replace("name: Ring", "name: \"Ri\\u0007ng\"")))
                .containsExactly(new Fault("/name", "This holds a character that can't be shown. Type it again."));
        assertThat(faults("{\"name\": \"Ri\\u0000ng\"}")).extracting(Fault::pointer).contains("/name");
        assertThat(faults("{\"name\": \"Ri\\ud800ng\"}")).extracting(Fault::pointer).contains("/name");
    }

    @Test
    void survivesAnyDamage() {
        byte[] sound = bytes(SHEET);
        for (int seed = 0; seed < 2000; seed++) {
            byte[] damaged = sound.clone();
            SplittableRandom random = new SplittableRandom(seed);
            for (int i = 0; i < 1 + seed % 8; i++) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            }
            Reading<ProjectSpec> reading = READER.file(damaged);
            assertThat(reading instanceof Read || !((Faulty<ProjectSpec>) reading).faults().isEmpty()).isTrue();
        }
    }

    private static void assertUnreadable(byte[] file, String words) {
        assertThat(faulty(file).faults()).singleElement().satisfies(f -> {
            assertThat(f.pointer()).isEmpty();
            assertThat(f.detail()).contains(words).doesNotContain("com.fasterxml", "Exception", "StreamReadFeature");
        });
    }

    private static ProjectSpec read(String file) {
        Reading<ProjectSpec> reading = READER.file(bytes(file));
        assertThat(reading).as(reading.toString()).isInstanceOf(Read.class);
        return ((Read<ProjectSpec>) reading).sheet();
    }

    private static List<Fault> faults(String file) {
        return faulty(bytes(file)).faults();
    }

    private static Faulty<ProjectSpec> faulty(byte[] file) {
        Reading<ProjectSpec> reading = READER.file(file);
        assertThat(reading).isInstanceOf(Faulty.class);
        return (Faulty<ProjectSpec>) reading;
    }

    private static byte[] bytes(String file) {
        return file.getBytes(StandardCharsets.UTF_8);
    }
}
