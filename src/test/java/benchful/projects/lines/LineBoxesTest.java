package benchful.projects.lines;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.projects.ProjectFiles;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecs;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A project as lines and back: nothing is lost, whatever is changed. */
class LineBoxesTest {
    private static final Map<String, String> HAZARDS = Map.of("sharp-tools", "Sharp hand tools", "hot-wax", "Hot wax", "hammering", "Hammering", "nickel", "Nickel",
            "epoxy", "Epoxy resin", "cyanoacrylate", "Instant glue", "magnets", "Magnets", "lifting", "Lifting", "electricity", "Electricity");

    private static ObjectNode tree(ProjectSpec sheet) {
        return (ObjectNode) ProjectFiles.READER.written(sheet);
    }

    private static LineBoxes boxes(ObjectNode tree) {
        return new LineBoxes(tree, HAZARDS);
    }

    @Test
    void givesBackAnyProjectThatWasWrittenAsLines() throws Exception {
        for (ObjectNode whole : all()) {
            ObjectNode tree = whole.deepCopy();
            for (String list : LineBoxes.LISTS) {
                String lines = boxes(tree).written(list);
                Understanding understanding = boxes(tree).read(list, lines, lines);
                assertThat(understanding.taken()).isEmpty();
            }
            assertThat(pruned(tree)).isEqualTo(pruned(whole));
        }
    }

    @Test
    void readsFromALineAloneAllThatItSays() throws Exception {
        List<String> lost = new ArrayList<>();
        int lines = 0;
        for (ObjectNode whole : all()) {
            Vocabulary known = new Vocabulary(whole, HAZARDS);
            for (LineKind kind : List.of(new SizeLines(), new MaterialLines(), new ToolLines(), new StepLines())) {
                for (JsonNode row : whole.at(kind.list())) {
                    lines++;
                    String line = kind.written((ObjectNode) row, known);
                    if (!kind.readsAs((ObjectNode) row, line, known)) {
                        lost.add(line + " <- " + row + " -> " + kind.entries(line).stream().map(e -> kind.read(e, known).row).toList());
                    }
                }
            }
        }
        assertThat(lines).isGreaterThan(1000);
        assertThat(lost).isEmpty();
    }

    private static List<ObjectNode> all() throws Exception {
        Stream<ObjectNode> generated = LongStream.rangeClosed(1, 400).mapToObj(seed -> tree(ProjectSpecs.generated(seed)));
        List<ObjectNode> samples = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("sample-classes/projects"))) {
            for (Path file : files.toList()) {
                samples.add(tree(((SpecReader.Read<ProjectSpec>) ProjectFiles.READER.file(Files.readAllBytes(file))).sheet()));
            }
        }
        return Stream.concat(samples.stream(), generated).toList();
    }

    /** Lists that hold nothing are as good as none. */
    private static JsonNode pruned(ObjectNode tree) {
        ObjectNode pruned = tree.deepCopy();
        LineBoxes.LISTS.stream().map(l -> l.substring(1)).filter(l -> pruned.path(l).isEmpty()).forEach(pruned::remove);
        return pruned;
    }
}
