package benchful.plans.materials.kits;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.ClassSetup.Student;
import benchful.classes.ClassSetupBuilder;
import benchful.core.SkillLevel;
import benchful.plans.ClassPlanner;
import benchful.plans.whatif.SmallerSizes;
import benchful.plans.whatif.WhatIf;
import benchful.projects.ProjectSpec;
import benchful.samples.SampleFiles;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One rule of who makes which size, for the kits, the lesson and the advice. */
class SeatingTest {
    private static final ProjectSpec STRAND = SampleFiles.in(Path.of("sample-classes")).projects().stream()
            .filter(p -> p.name().startsWith("Knotted strand")).findFirst().orElseThrow();
    private static final String FIRST = STRAND.sizes().get(0).name();
    private static final String QUICK = STRAND.sizes().get(STRAND.sizes().size() - 1).name();

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 5, 6})
    void itDoesNotMatterWhichStudentsOfTheSameSizeAreNamed(int named) {
        ClassSetup setup = setup(6, Collections.nCopies(named, QUICK), Map.of(QUICK, 6 - named));
        assertThat(sizes(setup)).containsExactlyElementsOf(Collections.nCopies(6, QUICK));
        assertThat(ClassPlanner.request(file(setup)).steps()).isEqualTo(ClassPlanner.request(file(setup(6, List.of(), Map.of(QUICK, 6)))).steps())
                .isNotEqualTo(ClassPlanner.request(file(setup(6, List.of(), Map.of(FIRST, 6)))).steps());
    }

    @Test
    void whoSaysNothingTakesTheFirstSize() {
        ClassSetup setup = setup(6, Collections.singletonList(null), Map.of(QUICK, 3));
        assertThat(sizes(setup)).containsExactly(FIRST, QUICK, QUICK, QUICK, FIRST, FIRST);
    }

    @Test
    void aMixOfMoreThanAreUnnamedIsToldAndCutShort() {
        ClassSetup setup = setup(3, List.of(QUICK, QUICK), Map.of(FIRST, 1, QUICK, 2));
        assertThat(sizes(setup)).containsExactly(QUICK, QUICK, FIRST);
        assertThat(new Seating(STRAND, setup).warnings()).singleElement()
                .hasToString("The sizes are given for 3 students, but only 1 are not known by name; the last are left out.");
    }

    @Test
    void smallerSizesAreOfferedToWhoMakesALargerOneHoweverTheyAreGiven() {
        for (int named = 0; named <= 4; named++) {
            ClassSetup setup = setup(6, Collections.nCopies(named, FIRST), Map.of(FIRST, 4 - named, QUICK, 2));
            WhatIf smallest = SmallerSizes.of(file(setup)).get("Make “" + QUICK + "” the largest size");
            assertThat(smallest.fields().values()).as("%d named", named).hasSize(named < 4 ? named + 2 : named);
            if (named < 4) {
                assertThat(smallest.fields()).containsEntry("/sizes/" + QUICK, String.valueOf(6 - named)).containsEntry("/sizes/" + FIRST, "");
            }
        }
    }

    @Test
    void noSmallerSizeIsOfferedWhereNobodyMakesALargerOne() {
        assertThat(SmallerSizes.of(file(setup(6, List.of(QUICK, QUICK, QUICK), Map.of(QUICK, 3))))).isEmpty();
    }

    private static List<String> sizes(ClassSetup setup) {
        return new Seating(STRAND, setup).students().stream().map(Seat::size).toList();
    }

    private static ClassFile file(ClassSetup setup) {
        return new ClassFile(STRAND, setup, null, null, null);
    }

    private static ClassSetup setup(int headcount, List<String> named, Map<String, Integer> mix) {
        List<ClassSetup.Meeting> meetings = List.of(new ClassSetup.Meeting(LocalDate.of(2026, 10, 3), LocalTime.of(12, 30), LocalTime.of(18, 0)));
        List<Student> students = new ArrayList<>();
        IntStream.range(0, named.size()).forEach(i -> students.add(Student.named("Student " + i).withSize(named.get(i))));
        ClassSetup plain = ClassSetup.plain("Strand", meetings, headcount, SkillLevel.IMPROVER, mix, "GBP");
        return ClassSetupBuilder.builder().title(plain.title()).meetings(meetings).headcount(headcount).level(plain.level())
                .sizes(mix).students(students).currency("GBP").build();
    }
}
