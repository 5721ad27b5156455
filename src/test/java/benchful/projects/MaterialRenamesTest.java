package benchful.projects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.web.StoredEntity;
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
        assertThat(QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(Project.class, project).orElseThrow().toSpec().materials()))
                .extracting(MaterialLine::material, MaterialLine::alternatives).containsExactly(tuple("Waxed cord of another name", List.of()),
                        tuple("bead", List.of("bead, other", "Waxed cord of another name")));

        assertThat(QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(Project.class, project).orElseThrow().toSpec().steps().get(0).text()))
                .isEqualTo("Cut <Waxed cord of another name>, then < renamed cord.");

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
        Step cut = Step.of("cut", "Cut", StepKind.TOGETHER).withLasts(Duration.ofMinutes(5)).withAfter(List.of())
                .withHazards(List.of("sharp-tools")).withText("Cut <renamed cord>, then < renamed cord.");
        return ProjectSpecBuilder.builder().name("Renaming bracelet").craft("cord").level(SkillLevel.BEGINNER)
                .sizes(List.of(new Size("M", null))).materials(List.of(MaterialLine.of("renamed CORD", "1 pcs"), line("bead")))
                .steps(List.of(cut)).build();
    }

    private static MaterialLine line(String material) {
        return MaterialLine.of(material, "1 pcs").withChoice("colour").withAlternatives(List.of(material + ", other", "Renamed cord"));
    }
}
