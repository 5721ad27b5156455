package benchful.plans.materials.sizes;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.projects.ProjectFiles;
import benchful.projects.ProjectSpec;
import benchful.projects.Sizing;
import benchful.web.forms.SpecReader;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SizingNamesTest {

    /** What the rules of a project take for known is what plans can really answer. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            strand   | {target: 42 cm}                 | [{bead: round 6 mm, size: 6 mm}]
            bracelet | {wrist: 17 cm}                  | [{bead: round 8 mm, size: 8 mm}]
            coil     | {mandrel: 3 mm, wire: 1 mm, density: 8.9 g_per_cm3} | []
            pour     | {volume: 5 ml, density: 1.1 g_per_cm3, density_a: 1.1 g_per_cm3, density_b: 1 g_per_cm3, weight_a: 2, weight_b: 1} | []
            sheet    | {width: 2 cm, height: 3 cm, sheet_width: 10 cm, sheet_height: 10 cm, thickness: 1 mm, density: 8.5 g_per_cm3} | []
            """)
    void promisesTheNamesThatAWorkingAnswers(String kind, String values, String beads) {
        ProjectSpec project = ((SpecReader.Read<ProjectSpec>) ProjectFiles.READER.file("""
                {name: Piece, craft: any, level: beginner, sizes: [{name: M}], sizing: [{name: work, kind: %s, values: %s, beads: %s}],
                steps: [{id: tidy, title: Tidy, kind: together, lasts: 5 min}]}""".formatted(kind, values, beads).getBytes(StandardCharsets.UTF_8))).sheet();
        SizedPiece piece = PieceSizer.size(project, project.sizes().get(0));
        Sizing work = project.sizing().get(0);
        assertThat(piece.faults()).isEmpty();
        assertThat(piece.values().keySet()).containsExactlyInAnyOrderElementsOf(work.answers());
    }
}
