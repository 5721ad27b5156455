package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.core.Fault;
import benchful.samples.SampleFiles;
import benchful.venues.VenueSpec;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What fits its field but no class: each value is refused at its place, and one that is stored already is still read. */
@Tag("long")
class FieldBoundsTest {
    private final ClassFileReader files = BroughtHazards.reader();

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            /project/steps/9/help             | {"calls": 2, "lasts": "25 h"}  | /project/steps/9/help/lasts   | One call for help can't take longer than 24 h.
            /materials/0/unit_mass            | "3 ml"                         | /materials/0/unit_mass        | “3 ml” is a volume. Give a mass, such as 3 g.
            /materials/0/on_hand              | "1000000000 pcs"               | /materials/0/on_hand          | That is more than anything is planned with here. Give at most 1000000 pcs.
            /materials/0/cut_loss             | "1000000 m"                    | /materials/0/cut_loss         | Give at most 100000 m.
            /materials/0/pieces               | [{"length": "40 m", "width": "1 m"}] | /materials/0/pieces/0/length | A sheet is at most 30 m long and wide.
            /class/meetings/0/date            | "2027-02-30"                   | /class/meetings/0/date        | “2027-02-30” is no day of the calendar. Give the date as year-month-day, such as 2027-03-06.
            /class/meetings/0/date            | "0000-01-01"                   | /class/meetings/0/date        | Give a year from 1900 to 2999.
            /class/title                      | {"a": 1}                       | /class/title                  | Write one text here.
            /class/tools                      | [1]                            | /class/tools                  | Write names with their values here.
            """)
    void refusesAtItsPlaceWhatNoClassCanBePlannedWith(String at, String json, String place, String words) throws Exception {
        ObjectNode file = sample();
        int slash = at.lastIndexOf('/');
        put(file.at(at.substring(0, slash)), at.substring(slash + 1), SpecFormat.json().readTree(json));

        SpecReader.Faulty<ClassFile> faulty = (SpecReader.Faulty<ClassFile>) files.read(SpecFormat.json().writeValueAsBytes(file));

        assertThat(faulty.faults()).anySatisfy(fault -> {
            assertThat(fault.pointer()).isEqualTo(place);
            assertThat(fault.detail()).contains(words);
        });
        assertThat(faulty.line(place)).hasValue(1);
    }

    private static void put(JsonNode parent, String key, JsonNode value) {
        ((ObjectNode) parent).set(key, value);
    }

    @Test
    void refusesAToolWhoseNameFillsABookAndReadsOneThatIsStored() throws Exception {
        String name = "A".repeat(200_001);
        ObjectNode venue = SpecFormat.json().createObjectNode().put("name", "Hall");
        venue.putObject("tools").put(name, 1);
        SpecReader<VenueSpec> reader = new SpecReader<>(VenueSpec.class, sheet -> List.of());

        List<Fault> faults = ((SpecReader.Faulty<VenueSpec>) reader.tree(venue)).faults();
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0).pointer()).isEqualTo("/tools");
        assertThat(faults.get(0).detail()).hasSizeLessThan(200).endsWith("can't be a name here. Name a tool in at most 80 letters.");
        assertThat(SpecFormat.json().readValue(SpecFormat.json().writeValueAsBytes(venue), VenueSpec.class).tools()).isEqualTo(Map.of(name, 1));
        for (String map : List.of("/class/tools", "/class/sizes", "/class/choices")) {
            ObjectNode file = sample();
            put(file.get("class"), map.substring(7), SpecFormat.json().createObjectNode().put(name, "1"));
            assertThat(((SpecReader.Faulty<ClassFile>) files.read(SpecFormat.json().writeValueAsBytes(file))).faults())
                    .anySatisfy(fault -> assertThat(fault.pointer()).isEqualTo(map));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            a: 1\\n  b: 2                    | 2
            a: 1\\nb: [1, 2\\nc: 3           | 3
            {"a": 1,\\n"b": }                | 2
            a: &x 1\\nb: *x                  | 2
            {"a": 1,\\n"a": 2}               | 2
            """)
    void namesTheLineWhereAFileBreaksOff(String written, int line) {
        SpecReader.Faulty<ClassFile> faulty = (SpecReader.Faulty<ClassFile>) files.read(written.replace("\\n", "\n").getBytes(StandardCharsets.UTF_8));
        assertThat(faulty.faults()).hasSize(1);
        assertThat(faulty.faults().get(0).detail()).contains("line ").doesNotContain("yaml", "Exception", "<", "token");
        assertThat(faulty.line("")).hasValue(line);
    }

    @Test
    void namesTheLineWhereAFileIsNoText() {
        byte[] latin = "a: 1\nb: caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1);
        SpecReader.Faulty<ClassFile> faulty = (SpecReader.Faulty<ClassFile>) files.read(latin);
        assertThat(faulty.faults().get(0).detail()).isEqualTo("The file is not in UTF-8 at line 2. Save it again with the encoding UTF-8.");
        String deep = "a: 1\nb: " + "[".repeat(100) + "]".repeat(100);
        assertThat(((SpecReader.Faulty<ClassFile>) files.read(deep.getBytes(StandardCharsets.UTF_8))).line("")).hasValue(2);
    }

    private static ObjectNode sample() {
        SampleFiles samples = SampleFiles.read();
        SampleFiles.SampleClass c = samples.classes().get(0);
        return SpecFormat.json().valueToTree(new ClassFile(samples.projects().stream().filter(p -> p.name().equals(c.project())).findFirst().orElseThrow(),
                c.setup(), null, samples.catalogue().materials(), samples.catalogue().suppliers()));
    }
}
