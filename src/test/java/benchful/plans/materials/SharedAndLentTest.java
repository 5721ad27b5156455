package benchful.plans.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.MaterialSpec;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.SkillLevel;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import benchful.plans.materials.kits.Kit;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is there for a pair, a table or the class, and what comes back after it. */
class SharedAndLentTest {
    private static final LocalDate MARCH = LocalDate.of(2027, 3, 6);
    private static final MaterialLine WAX = MaterialLine.of("Wax block", "1").withShared(true).withLent(true);

    @ParameterizedTest
    @CsvSource({"1, 1, 2, 1", "3, 1, 2, 2", "4, 1, 2, 3", "8, 0, 2, 4", "9, 0, 2, 5", "12, 1, 6, 3", "5, 0, 200, 1"})
    void mixesOneBatchForEachPairOrTableTheDemonstrationIncluded(int students, int demonstrations, int serves, int batches) {
        MaterialsPlan plan = plan(students, demonstrations, 2, MaterialLine.of("Resin", "12 ml").withShared(true).withServes(serves));

        Quantity all = Quantity.parse("12 ml").times(batches);
        assertThat(plan.materials()).extracting(m -> m.need().total()).containsExactly(all);
        assertThat(plan.bench()).extracting(Kit.Content::material, Kit.Content::amount).containsExactly(tuple("Resin", all));
        assertThat(plan.materials().get(0).need().reasons()).extracting(Sentence::toString).containsExactly(batches == 1 ? "12 ml serve the whole class."
                : "12 ml is there %d times, once for some students each: %s in all.".formatted(batches, all));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 7})
    void neverTakesLessForMoreStudents(int serves) {
        Quantity before = Quantity.zero(Unit.ML);
        for (int students = 1; students <= 30; students++) {
            Quantity now = plan(students, 0, 0, MaterialLine.of("Resin", "12 ml").withShared(true).withServes(serves)).materials().get(0).need().total();
            assertThat(now).isGreaterThanOrEqualTo(before);
            assertThat(now.base().multiply(BigDecimal.valueOf(serves))).isGreaterThanOrEqualTo(Quantity.parse("12 ml").times(students).base());
            before = now;
        }
    }

    @Test
    void putsNothingLentIntoAKit() {
        MaterialsPlan plan = plan(3, 0, 0, MaterialLine.of("Practice card", "1").withLent(true), MaterialLine.of("Bead", "5"));

        assertThat(plan.kits()).allSatisfy(kit -> assertThat(kit.contents()).extracting(Kit.Content::material).containsExactly("Bead"));
        assertThat(plan.bench()).extracting(Kit.Content::material, Kit.Content::amount).containsExactly(tuple("Practice card", Quantity.parse("3")));
        assertThat(plan.materials().get(0).need()).extracting(Need::lent, Need::total, Need::waste).containsExactly(true, Quantity.parse("3"), Quantity.parse("0"));
    }

    @Test
    void buysOnceWhatGoesFromClassToClass() {
        assertThat(together(null, part("Saturday", 3, WAX), part("Sunday", 5, WAX))).isEqualTo(Quantity.parse("1"));
        MaterialLine card = MaterialLine.of("Wax block", "1").withLent(true);
        assertThat(together(null, part("Saturday", 3, card), part("Sunday", 5, card))).isEqualTo(Quantity.parse("5"));
    }

    @Test
    void addsWhatAnotherClassUsesUp() {
        MaterialLine used = MaterialLine.of("Wax block", "2").withShared(true);
        assertThat(together(null, part("Saturday", 3, WAX), part("Sunday", 5, used))).isEqualTo(Quantity.parse("3"));
    }

    @Test
    void buysNothingLentThatLiesOnTheShelf() {
        assertThat(together("1", part("Saturday", 3, WAX), part("Sunday", 5, WAX))).isEqualTo(Quantity.parse("0"));
    }

    /** How much is missing. */
    private static Quantity together(String onHand, TermRequest.Part... parts) {
        MaterialSpec wax = MaterialSpec.of("Wax block", Unit.PIECE).withOnHand(onHand == null ? null : Quantity.parse(onHand));
        return TermPlanner.plan(new TermRequest(Arrays.asList(parts), new CatalogueSpec(List.of(wax), List.of())), null).materials().get(0).bought().unmet();
    }

    private static TermRequest.Part part(String title, int students, MaterialLine line) {
        return new TermRequest.Part(title, file(title, students, 0, 0, List.of(line)));
    }

    private static MaterialsPlan plan(int students, int demonstrations, int spares, MaterialLine... lines) {
        MaterialsPlan plan = MaterialsPlanner.plan(file("Class", students, demonstrations, spares, Stream.of(lines).toList()));
        assertThat(plan.faults()).isEmpty();
        return plan;
    }

    private static ClassFile file(String title, int students, int demonstrations, int spares, List<MaterialLine> lines) {
        ProjectSpec project = ProjectSpecBuilder.builder().name(title).craft("craft").level(SkillLevel.BEGINNER)
                .sizes(List.of(new Size("one size", Map.of()))).materials(lines).build();
        ClassSetup setup = ClassSetup.plain(title, List.of(new ClassSetup.Meeting(MARCH, LocalTime.of(18, 0), LocalTime.of(21, 0))),
                students, SkillLevel.BEGINNER, null, "GBP").withDemonstration(demonstrations == 0 ? null : "one size").withSpares(spares);
        return new ClassFile(project, setup, null, null, null);
    }
}
