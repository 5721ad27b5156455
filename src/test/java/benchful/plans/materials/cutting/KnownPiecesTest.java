package benchful.plans.materials.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.StockPiece;
import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.SkillLevel;
import benchful.core.cutting.CutLength;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.plans.materials.MaterialsPlan;
import benchful.plans.materials.MaterialsPlanner;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectSpecBuilder;
import benchful.projects.Size;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Offcuts of known size are cut before anything whole is opened. */
class KnownPiecesTest {
    @Test
    void cutsOffcutsBeforeWholeLengths() {
        MaterialsPlan.MaterialPlan cord = cord(3, "60 cm", "10 m", "70 cm", "1.3 m");

        assertThat(cord.cutting().lengths()).extracting(CutLength::length).containsExactly(q("70 cm"), q("1.3 m"));
        assertThat(cord.bought().reasons().get(0)).hasToString("10 m are on hand, taken as 1 x 700 mm and 1 x 1.3 m and 1 x 8 m.");
        assertThat(cord.bought().leftover()).isEqualTo(q("8 m"));
    }

    @Test
    void leavesOutOffcutsThatAreNotThereAnyMore() {
        assertThat(KnownPieces.pieces(sheet("1 m", "70 cm", "60 cm"))).containsExactly(new StockPiece(q("60 cm"), null));
    }

    /** Whatever offcuts there are: each length that is cut is there, once, and a whole one is opened only where offcuts do not do. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void opensNothingWholeWhereOffcutsDo(long seed) {
        Random random = new Random(seed);
        String[] offcuts = IntStream.rangeClosed(0, random.nextInt(5)).mapToObj(i -> 20 + random.nextInt(120) + " cm").toArray(String[]::new);
        int students = 1 + random.nextInt(6);
        MaterialsPlan.MaterialPlan cord = cord(students, "35 cm", "30 m", offcuts);

        List<Quantity> there = new ArrayList<>(Stream.of(offcuts).map(KnownPiecesTest::q).toList());
        List<Quantity> whole = cord.cutting().lengths().stream().map(CutLength::length).filter(l -> !there.remove(l)).toList();
        int fromOffcuts = Stream.of(offcuts).map(KnownPiecesTest::q).mapToInt(l -> l.in(Unit.CM).amount().intValue() / 35).sum();
        assertThat(whole).hasSize(fromOffcuts >= students ? 0 : 1);
        assertThat(cord.cutting().lengths().stream().mapToInt(l -> l.cuts().size()).sum()).isEqualTo(students);
    }

    private static MaterialsPlan.MaterialPlan cord(int students, String each, String onHand, String... offcuts) {
        ProjectSpec project = ProjectSpecBuilder.builder().name("Band").craft("cord").level(SkillLevel.BEGINNER)
                .sizes(List.of(new Size("One", Map.of()))).materials(List.of(MaterialLine.of("Cord", each).withPieces("1")))
                .build();
        ClassSetup setup = ClassSetup.plain("Evening", List.of(new ClassSetup.Meeting(LocalDate.of(2027, 3, 6), LocalTime.of(18, 0), LocalTime.of(21, 0))), students,
                SkillLevel.BEGINNER, Map.of(), "GBP");
        return MaterialsPlanner.plan(new ClassFile(project, setup, null, List.of(sheet(onHand, offcuts)), List.of())).materials().get(0);
    }

    private static MaterialSpec sheet(String onHand, String... offcuts) {
        return MaterialSpec.of("Cord", Unit.M)
                .onHand(q(onHand), Stream.of(offcuts).map(o -> new StockPiece(q(o), null)).toList());
    }

    private static Quantity q(String written) {
        return Quantity.parse(written);
    }
}
