package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.MaterialSheet;
import benchful.core.buying.SupplierOrder;
import benchful.core.lesson.order.ListPlanner;
import benchful.projects.Picture;
import benchful.projects.ProjectSheet;
import benchful.web.SheetFormat;
import benchful.web.SheetReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sample classes are what a new tutor sees first: each can be read, planned, cut, packed and bought as it stands. */
class SampleClassesTest {
    private static final Path SAMPLES = Path.of("sample-classes");
    private static final LocalDate TODAY = LocalDate.of(2027, 2, 1);

    static List<Path> classes() throws IOException {
        return files("classes");
    }

    static List<Path> projects() throws IOException {
        return files("projects");
    }

    @ParameterizedTest
    @MethodSource("classes")
    void plansEachClassWithinItsHours(Path file) throws IOException {
        ClassPlan plan = new ClassPlanner(new ListPlanner()).plan(read(file));

        assertThat(plan.conflicts()).isEmpty();
        assertThat(plan.advice()).isEmpty();
        assertThat(plan.lesson().meetings()).allSatisfy(m -> assertThat(m.margin()).isPositive());
    }

    @ParameterizedTest
    @MethodSource("classes")
    void packsAndBuysEachClassInTime(Path file) throws IOException {
        MaterialsPlan plan = MaterialsPlanner.plan(read(file), TODAY);

        assertThat(plan.faults()).isEmpty();
        assertThat(plan.materials()).allSatisfy(m -> assertThat(m.bought().unmet().signum()).describedAs(m.name()).isZero());
        assertThat(plan.orders()).noneMatch(SupplierOrder::late);
    }

    @ParameterizedTest
    @MethodSource("projects")
    void worksOutEverySizeOfEachProject(Path file) throws IOException {
        ProjectSheet project = SheetFormat.json().treeToValue(tree(file), ProjectSheet.class);
        Map<String, MaterialSheet> catalogue = new HashMap<>();
        for (JsonNode material : tree(SAMPLES.resolve("catalogue.yaml")).get("materials")) {
            MaterialSheet sheet = SheetFormat.json().treeToValue(material, MaterialSheet.class);
            catalogue.put(sheet.name(), sheet);
        }

        assertThat(project.materials()).allSatisfy(line -> assertThat(catalogue).containsKey(line.material()));
        assertThat(project.sizes()).allSatisfy(size -> assertThat(PieceSizer.size(project, size, catalogue).faults()).isEmpty());
    }

    @ParameterizedTest
    @MethodSource("projects")
    void drawsEachPictureItself(Path file) throws IOException {
        Path folder = SAMPLES.resolve("pictures").resolve(file.getFileName().toString().replace(".yaml", ""));

        for (Picture picture : SheetFormat.json().treeToValue(tree(file), ProjectSheet.class).pictures()) {
            assertThat(folder.resolve(picture.name() + ".svg")).content().startsWith("<svg ").contains("<title>")
                    .doesNotContain("href", "<script", "<style", "<image");
        }
    }

    @ParameterizedTest
    @MethodSource("projects")
    void namesOnlyHazardsOfTheLibrary(Path file) throws IOException {
        List<String> library = tree(Path.of("src/main/resources/hazards/library.yaml")).findValuesAsText("id");

        for (JsonNode named : tree(file).findValues("hazards")) {
            assertThat(named).extracting(JsonNode::asText).isSubsetOf(library);
        }
        for (JsonNode named : tree(SAMPLES.resolve("catalogue.yaml")).findValues("hazards")) {
            assertThat(named).extracting(JsonNode::asText).isSubsetOf(library);
        }
    }

    private static ClassFile read(Path file) throws IOException {
        ObjectNode tree = tree(file);
        tree.set("project", named("projects", tree.get("project").asText()));
        tree.set("venue", named("venues", tree.get("venue").asText()));
        JsonNode catalogue = tree(SAMPLES.resolve("catalogue.yaml"));
        tree.set("materials", catalogue.get("materials"));
        tree.set("suppliers", catalogue.get("suppliers"));
        SheetReader.Reading<ClassFile> reading = new ClassFiles().read(SheetFormat.json().writeValueAsBytes(tree));
        assertThat(reading).describedAs("%s", reading).isInstanceOf(SheetReader.Read.class);
        return ((SheetReader.Read<ClassFile>) reading).sheet();
    }

    private static JsonNode named(String folder, String name) throws IOException {
        for (Path file : files(folder)) {
            ObjectNode tree = tree(file);
            if (tree.get("name").asText().equals(name)) {
                tree.remove("benchful");
                return tree;
            }
        }
        throw new AssertionError(name + " is in none of the files in " + folder);
    }

    private static ObjectNode tree(Path file) throws IOException {
        return (ObjectNode) SheetFormat.yaml().readTree(Files.readString(file));
    }

    private static List<Path> files(String folder) throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES.resolve(folder))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }
}
