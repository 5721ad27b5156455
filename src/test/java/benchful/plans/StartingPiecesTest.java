package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.projects.ProjectFiles;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.projects.writing.StartingPieces;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pieces that a project can start from are whole, name hazards of the library, and make a class. */
@Tag("long")
class StartingPiecesTest {
    static List<String> files() {
        return StartingPieces.FILES;
    }

    @Test
    void coverAtLeastTwelveCrafts() {
        assertThat(files().stream().map(StartingPieces::sheet).map(ProjectSpec::craft).distinct()).hasSizeGreaterThanOrEqualTo(12);
    }

    @ParameterizedTest
    @MethodSource("files")
    void areSoundAndSayNothingThatTheProgramDoesNotKnow(String file) throws Exception {
        try (InputStream in = StartingPieces.class.getResourceAsStream("/starting-pieces/" + file + ".yaml")) {
            SpecReader.Reading<ProjectSpec> reading = ProjectFiles.READER.file(in.readAllBytes());
            assertThat(reading).isInstanceOf(SpecReader.Read.class);
            ProjectSpec sheet = reading instanceof SpecReader.Read<ProjectSpec> read ? read.sheet() : null;
            assertThat(sheet.materials()).isNotEmpty();
            assertThat(sheet.tools()).isNotEmpty();
            assertThat(sheet.hazards()).isNotEmpty();
            assertThat(sheet.steps()).hasSizeGreaterThanOrEqualTo(6).extracting(Step::kind).doesNotContainNull();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void planAClassOfEightBeginnersThoughNobodyCountedTheTools(String file) throws Exception {
        ObjectNode whole = SpecFormat.json().createObjectNode();
        whole.set("project", ProjectFiles.READER.written(StartingPieces.sheet(file)));
        whole.putObject("class").put("headcount", 8).put("level", "beginner").putArray("meetings").addObject()
                .put("date", "2027-03-06").put("starts", "10:00").put("ends", "17:00");
        SpecReader.Reading<ClassFile> reading = BroughtHazards.reader().read(SpecFormat.json().writeValueAsBytes(whole));
        assertThat(reading).isInstanceOf(SpecReader.Read.class);
        ClassPlan plan = ComputedPlans.planner(new SolverPlanner()).plan(((SpecReader.Read<ClassFile>) reading).sheet());
        assertThat(plan.conflicts()).isEmpty();
        assertThat(plan.lesson().fits()).isTrue();
    }
}
