package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.MaterialSpec;
import benchful.classes.ClassFile;
import benchful.classes.SetupRules;
import benchful.core.buying.SupplierOrder;
import benchful.core.lesson.StepKind;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.MaterialsPlanner;
import benchful.plans.materials.sizes.PieceSizer;
import benchful.projects.ProjectSpec;
import benchful.samples.SampleFiles;
import benchful.samples.SampleFiles.SampleClass;
import benchful.web.forms.SpecFormat;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sample classes are what a new tutor sees first: each can be planned, cut, packed and bought as it stands. */
@Tag("long")
class SampleClassesTest {
    private static final SampleFiles SAMPLES = SampleFiles.in(Path.of("sample-classes"));
    private static final LocalDate TODAY = LocalDate.of(2027, 2, 1);

    static List<Named<ClassFile>> coming() {
        return SAMPLES.classes().stream()
                .filter(c -> c.setup().meetings().get(0).date().isAfter(TODAY))
                .map(c -> Named.of(c.project() + c.setup().meetings(), file(c)))
                .toList();
    }

    static List<Named<ProjectSpec>> projects() {
        return SAMPLES.projects().stream().map(p -> Named.of(p.name(), p)).toList();
    }

    @ParameterizedTest
    @MethodSource("coming")
    void plansEachClassWithinItsHours(ClassFile sample) {
        ClassPlan plan = ComputedPlans.of(sample);

        assertThat(SetupRules.check(sample.setup(), sample.project())).isEmpty();
        assertThat(plan.conflicts()).isEmpty();
        assertThat(plan.advice()).isEmpty();
        assertThat(plan.lesson().meetings()).allSatisfy(m -> assertThat(m.margin()).isPositive());
    }

    @ParameterizedTest
    @MethodSource("coming")
    void packsAndBuysEachClassInTime(ClassFile sample) {
        MaterialsPlan plan = MaterialsPlanner.plan(sample, TODAY);

        assertThat(plan.faults()).isEmpty();
        assertThat(plan.materials()).allSatisfy(m -> assertThat(m.bought().unmet().signum()).describedAs(m.name()).isZero());
        assertThat(plan.orders()).noneMatch(SupplierOrder::late);
    }

    @ParameterizedTest
    @MethodSource("projects")
    void worksOutEverySizeOfEachProject(ProjectSpec project) {
        Map<String, MaterialSpec> catalogue =
                SAMPLES.catalogue().materials().stream().collect(Collectors.toMap(MaterialSpec::name, Function.identity()));

        assertThat(project.materials()).allSatisfy(line -> assertThat(catalogue).containsKey(line.material()));
        assertThat(project.sizes()).allSatisfy(size -> assertThat(PieceSizer.size(project, size, catalogue).faults()).isEmpty());
    }

    /** Things of the bench that texts of work speak of: each must be a tool or a material of the project, by this word. */
    private static final List<String> THINGS = List.of("awl", "apron", "bead board", "beeswax", "beveller", "bone folder", "board cutter", "book cloth", "bulldog", "canvas board", "cement", "chisel",
            "cloth", "clip", "comb", "cradle", "cup", "cutters", "divider", "drill", "file", "former", "glass plate", "gloves", "glue", "gum", "hammer", "knife", "lamp", "lid", "magnifier", "mallet", "mandrel",
            "mica", "needle", "paper towel", "paper pattern", "pen", "pencil", "pliers", "polish", "pony", "potter's needle", "pricking board", "punch", "reamer", "rib", "rolling guide", "rolling pin", "rougher", "ruler",
            "sagging bowl", "scissors", "scriber", "shear", "silk", "slicker", "snips", "spatula", "sponge", "stick", "tape measure", "tape", "template", "timer", "tin", "towel", "tumbler", "tweezers", "wax", "weight bag");

    @ParameterizedTest
    @MethodSource("projects")
    void namesInItsStepsOnlyWhatIsOnItsLists(ProjectSpec project) {
        String lists = Stream.concat(project.tools().stream().flatMap(t -> Stream.of(t.name(), String.valueOf(t.note()))),
                        project.materials().stream().flatMap(m -> Stream.of(m.material(), String.valueOf(m.note()))))
                .collect(Collectors.joining(" | ")).toLowerCase(Locale.ROOT);
        project.steps().stream().filter(step -> step.kind() != StepKind.TOGETHER).forEach(step -> {
            String text = (step.text() + " " + step.leftHanded()).toLowerCase(Locale.ROOT);
            assertThat(THINGS).filteredOn(thing -> text.matches("(?s).*\\b" + thing + "s?\\b.*")).as("%s: %s", step.title(), step.text()).allSatisfy(thing -> assertThat(lists).contains(thing));
        });
    }

    /** What a step uses is a tool of the project (a rule of files), and the room or the class brings enough for one student at least. */
    @ParameterizedTest
    @MethodSource("coming")
    void bringsEveryToolThatAStepUses(ClassFile sample) {
        Map<String, Integer> room = sample.tools();
        sample.project().steps().forEach(step -> step.tools().forEach(use ->
                assertThat(room.getOrDefault(use.tool(), 0)).as("%s for %s", use.tool(), step.title()).isGreaterThanOrEqualTo(use.each())));
    }

    @ParameterizedTest
    @MethodSource("projects")
    void drawsEachPictureItself(ProjectSpec project) {
        assertThat(project.pictures()).anyMatch(p -> p.name().equals("cover")).allSatisfy(p ->
                assertThat(new String(p.content(), StandardCharsets.UTF_8)).startsWith("<svg ").contains("<title>")
                        .doesNotContain("href", "<script", "<style", "<image"));
    }

    @ParameterizedTest
    @MethodSource("projects")
    void namesOnlyHazardsOfTheLibrary(ProjectSpec project) throws IOException {
        String library = Files.readString(Path.of("src/main/resources/hazards/library.yaml"));

        assertThat(named(project)).isNotEmpty().isSubsetOf(SpecFormat.yaml().readTree(library).findValuesAsText("id"));
    }

    private static List<String> named(ProjectSpec project) {
        return Stream.of(project.hazards().stream(), project.steps().stream().flatMap(s -> s.hazards().stream()),
                        project.tools().stream().flatMap(t -> t.hazards().stream()),
                        SAMPLES.catalogue().materials().stream().flatMap(m -> m.hazards().stream()))
                .flatMap(Function.identity())
                .toList();
    }

    private static ClassFile file(SampleClass sample) {
        return new ClassFile(
                SAMPLES.projects().stream().filter(p -> p.name().equals(sample.project())).findFirst().orElseThrow(),
                sample.setup(),
                SAMPLES.venues().stream().filter(v -> v.name().equals(sample.venue())).findFirst().orElseThrow(),
                SAMPLES.catalogue().materials(), SAMPLES.catalogue().suppliers());
    }
}
