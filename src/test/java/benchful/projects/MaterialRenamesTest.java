package benchful.projects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.web.Visitor;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

@QuarkusTest
class MaterialRenamesTest {
    @TestHTTPResource("/") URL start;

    @Test
    void letsProjectsFollowARenamedMaterialAndKeepsOneThatTheyUse() {
        Visitor tutor = new Visitor(start).open("/materials/new").type("/name", "Renamed cord").press("Save");
        String material = tutor.path();
        long project = QuarkusTransaction.requiringNew().call(() -> Project.stored(bracelet(), false, Instant.EPOCH).id());

        tutor.open(material + "/edit").type("/name", "Waxed cord of another name").press("Save");
        assertThat(tutor.page().select("main li").eachText()).contains("the project Renaming bracelet");
        assertThat(QuarkusTransaction.requiringNew().call(() -> Project.byId(project).orElseThrow().toSpec().materials()))
                .extracting(MaterialLine::material, MaterialLine::alternatives).containsExactly(tuple("Waxed cord of another name", List.of()),
                        tuple("bead", List.of("bead, other", "Waxed cord of another name")));

        tutor.press("Remove this material");
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.page().select("main li a").eachAttr("href")).containsExactly("/projects/" + project);
    }

    @Test
    void namesTheProjectsThatCarryAHazardOnAnyStep() {
        QuarkusTransaction.requiringNew().run(() -> Project.stored(bracelet().withName("Hazardous bracelet"), false, Instant.EPOCH));
        assertThat(new Visitor(start).open("/hazards/sharp-tools").page().select("main li").eachText()).contains("the project Hazardous bracelet");
    }

    private static ProjectSpec bracelet() {
        Step cut = new Step("cut", "Cut", StepKind.TOGETHER, Duration.ofMinutes(5), null, null, null, null, false, List.of(), List.of(), null,
                List.of("sharp-tools"), "Cut.", null, null, null);
        return new ProjectSpec("Renaming bracelet", "cord", SkillLevel.BEGINNER, null, null, null, null, null,
                List.of(new Size("M", null)), null, List.of(new MaterialLine("renamed CORD", "1 pcs", null, false, null, null, null, null), line("bead")), null, List.of(cut), null, null);
    }

    private static MaterialLine line(String material) {
        return new MaterialLine(material, "1 pcs", null, null, false, false, null, null, "colour", List.of(material + ", other", "Renamed cord"), null);
    }
}
