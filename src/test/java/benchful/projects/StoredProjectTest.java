package benchful.projects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.core.quantity.Quantity;
import benchful.projects.pictures.Picture;
import benchful.projects.pictures.ProjectPicture;
import benchful.web.StoredEntity;
import io.quarkus.test.TestTransaction;
import io.quarkus.test.junit.QuarkusTest;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.hibernate.exception.ConstraintViolationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
@TestTransaction
class StoredProjectTest {
    private static final Instant NOW = Instant.parse("2027-03-06T09:00:00Z");

    @Test
    void comesBackWholeFromTheDatabase() {
        ProjectSpec sheet = ring("Stored ring", new byte[] {1, 2, 3});
        long id = Project.stored(sheet, false, NOW).id();
        Project.getEntityManager().clear();

        Project stored = StoredEntity.byId(Project.class, id).orElseThrow();
        assertThat(stored.toFullSheet()).isEqualTo(sheet);
        assertThat(stored.toSpec().pictures()).containsExactly(new Picture("cover", "image/png", "a ring", null));
        assertThat(stored.updatedAt()).isEqualTo(NOW);
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19})
    void losesNothingOfAnySheet(long seed) {
        ProjectSpec sheet = ProjectSpecs.generated(seed);
        long id = Project.stored(sheet, false, NOW).id();
        Project.getEntityManager().clear();
        assertThat(StoredEntity.byId(Project.class, id).orElseThrow().toFullSheet()).isEqualTo(sheet);
    }

    @Test
    void isTheTutorsOwnOnceASampleIsChanged() {
        Project stored = Project.stored(ring("Stored ring", new byte[] {1}), true, NOW);
        stored.replace(stored.toSpec(), NOW);
        assertThat(stored.sample()).isFalse();
    }

    @Test
    void isFoundByItsNameInAnyCase() {
        long id = Project.stored(ring("  Stored Ring ", new byte[] {1}), false, NOW).id();
        assertThat(Project.byName("stored rING  ").orElseThrow().id()).isEqualTo(id);
        assertThat(Project.offered()).extracting(ProjectLine::name).contains("Stored Ring");
    }

    @Test
    void refusesASecondProjectOfTheSameName() {
        Project.stored(ring("Stored ring", new byte[] {1}), false, NOW);
        assertThatThrownBy(() -> Project.stored(ring("STORED RING", new byte[] {1}), false, NOW))
                .isInstanceOf(ConstraintViolationException.class);
    }

    @Test
    void keepsAPictureThatAnEditLeavesEmptyAndDropsOneThatItLeavesOut() {
        ProjectSpec sheet = ring("Stored ring", new byte[] {1, 2, 3});
        Project stored = Project.stored(sheet, false, NOW);
        stored.replace(stored.toSpec(), NOW);
        assertThat(stored.toFullSheet()).isEqualTo(sheet);

        stored.replace(stored.toSpec().withPictures(List.of()), NOW);
        Project.flush();
        assertThat(ProjectPicture.byName(stored.id(), "cover")).isEmpty();
    }

    /** Stored before photographs were freed of what they tell: read once, it is gone from the database too. */
    @Test
    void freesAStoredPhotographOfWhatItTells() throws IOException {
        ByteArrayOutputStream photo = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(9, 9, BufferedImage.TYPE_INT_RGB), "jpeg", photo);
        photo.writeBytes("51.5N 0.1W".getBytes(StandardCharsets.US_ASCII));
        long id = Project.stored(ring("Stored ring", photo.toByteArray()).withPictures(List.of(new Picture("cover", "image/jpeg", "a ring", photo.toByteArray()))), false, NOW).id();
        Project.getEntityManager().clear();
        byte[] read = StoredEntity.byId(Project.class, id).orElseThrow().toFullSheet().pictures().get(0).content();
        assertThat(new String(read, StandardCharsets.ISO_8859_1)).doesNotContain("51.5N");
        Project.flush();
        byte[] stored = (byte[]) Project.getEntityManager().createNativeQuery("select content from project_picture where project_id = " + id).getSingleResult();
        assertThat(stored).isEqualTo(read);
    }

    @Test
    void isNotOfferedOnceArchived() {
        Project stored = Project.stored(ring("Stored ring", new byte[] {1}), false, NOW);
        stored.archive(true);
        assertThat(Project.offered()).extracting(ProjectLine::name).doesNotContain("Stored ring");
    }

    private static ProjectSpec ring(String name, byte[] cover) {
        Step solder = Step.of("solder", "Solder", StepKind.MAKE)
                .withStudent(new Step.StudentTime(Duration.ofMinutes(5), Duration.ofMinutes(8), Duration.ofMinutes(20)))
                .withShare(new BigDecimal("0.90")).withAfter(List.of()).withHazards(List.of("torch")).withText("Heat *slowly*.")
                .withPictures(List.of("cover"));
        return ProjectSpecBuilder.builder().name(name).craft("silver").level(SkillLevel.IMPROVER).summary("A ring").minimumAge(16)
                .sizes(List.of(new Size("M", Map.of("inner", Quantity.parse("17.20 mm"))))).steps(List.of(solder))
                .pictures(List.of(new Picture("cover", "image/png", "a ring", cover))).build();
    }
}
