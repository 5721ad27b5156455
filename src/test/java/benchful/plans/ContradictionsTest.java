package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.core.Fault;
import benchful.core.lesson.Conflict;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.web.forms.SpecReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a tutor reads where a class file contradicts itself, from the file to the sentence. */
class ContradictionsTest {

    /** Glue, let it tack, press; one press, an hour and a half. Invented times. */
    private static final String GLUED = """
            project:
              name: Glued box
              craft: bookbinding
              level: improver
              sizes: [{name: one}]
              tools: [{name: press}, {name: brush}]
              steps:
                - {id: show, title: Show the glue, kind: show, lasts: 10 min}
                - {id: glue, title: Spread the glue, kind: make, student: {quick: 5 min, usual: 6 min, slow: 7 min}, tools: [{tool: brush, each: 1}]}
                - {id: tack, title: Let it tack, kind: wait, lasts: 10 min, at_most: 20 min}
                - {id: press, title: Press the box, kind: wait, lasts: 15 min, tools: [{tool: press, each: 1}]}
            venue: {name: Room, tools: {press: 1, brush: 4}}
            class:
              headcount: 4
              level: improver
              meetings: [{date: 2027-03-06, starts: "10:00", ends: "11:30"}]
              breaks: [{at: "10:40", lasts: 10 min}]
            """;

    private static SpecReader.Reading<ClassFile> read(String... change) {
        String file = GLUED;
        for (int i = 0; i < change.length; i += 2) {
            assertThat(file).contains(change[i]);
            file = file.replace(change[i], change[i + 1]);
        }
        return BroughtHazards.reader().read(file.getBytes(StandardCharsets.UTF_8));
    }

    private static ClassPlan plan(String... change) {
        SpecReader.Reading<ClassFile> reading = read(change);
        assertThat(reading).isInstanceOf(SpecReader.Read.class);
        return ComputedPlans.planner(new SolverPlanner()).plan(((SpecReader.Read<ClassFile>) reading).sheet());
    }

    private static List<Conflict> conflicts(String... change) {
        ClassPlan plan = plan(change);
        assertThat(plan.lesson()).isNull();
        return plan.conflicts();
    }

    private static List<Fault> faults(String... change) {
        return ((SpecReader.Faulty<ClassFile>) read(change)).faults();
    }

    @Test
    void plansWhatIsSound() {
        ClassPlan plan = plan();
        assertThat(plan.conflicts()).isEmpty();
        assertThat(plan.lesson().fits()).isTrue();
        assertThat(plan.lesson().proof().isShortest()).isTrue();
    }

    @Test
    void namesTheStepsOfAGreatestGapBelowTheLeast() {
        assertThat(faults("lasts: 15 min,", "lasts: 15 min, after: [{step: tack, least: 20 min, most: 10 min}],")).containsExactly(
                new Fault("/project/steps/3/after/0/most",
                        "The greatest gap between “Let it tack” and “Press the box” can't be shorter than the least one, 20 min."));
    }

    @Test
    void namesTheStepsWhoseGapsCannotAllBeKept() {
        List<Conflict> conflicts = conflicts("lasts: 15 min,", "lasts: 15 min, after: [{step: tack}, {step: glue, most: 5 min}],");
        assertThat(conflicts).singleElement().satisfies(conflict -> {
            assertThat(conflict.steps()).containsExactlyInAnyOrder("glue", "tack", "press");
            assertThat(conflict.sentence()).contains("\"Spread the glue\"", "\"Let it tack\"", "\"Press the box\"")
                    .endsWith("have gaps that cannot all be kept, whatever the order. Lengthen a greatest gap, shorten a least gap, or shorten a step between them.");
        });
    }

    @Test
    void takesToolsThatNobodyCountedToBeEnoughAndSaysSo() {
        ClassPlan plan = plan("press: 1, brush: 4", "");
        assertThat(plan.conflicts()).isEmpty();
        assertThat(plan.advice()).extracting(advice -> advice.sentence().toString()).contains("Nobody wrote down how many there are of brush, press: enough for all are taken to be there. "
                + "If one is scarce, write its number in the class or in the project.");
    }

    @Test
    void namesTheStepWhoseToolIsNotInTheRoom() {
        assertThat(conflicts("tools: {press: 1, brush: 4}", "tools: {brush: 4}", "{name: press}", "{name: press, owned: 0}")).extracting(Conflict::sentence).containsExactly(
                "\"Press the box\" uses 1 × press, but the room has 0. Bring at least 1.");
        assertThat(conflicts("press: 1, brush", "press: 0, brush")).extracting(Conflict::sentence).containsExactly(
                "\"Press the box\" uses 1 × press, but the room has 0. Bring at least 1.");
    }

    @Test
    void namesTheStepThatNeedsMoreOfAToolThanThereIs() {
        assertThat(conflicts("{tool: brush, each: 1}", "{tool: brush, each: 5}")).extracting(Conflict::sentence).containsExactly(
                "\"Spread the glue\" uses 5 × brush for each student, but the room has 4. Bring at least 5.");
    }

    @Test
    void refusesABreakLongerThanTheClass() {
        assertThat(conflicts("lasts: 10 min}]", "lasts: 2 h}]")).extracting(Conflict::sentence).containsExactly(
                "The break at 10:40 takes 2 h but the class has only 1 h 30 min. Shorten the break, or book more hours.");
        assertThat(conflicts("at: \"10:40\", lasts: 10 min", "at: \"10:00\", lasts: 90 min")).extracting(Conflict::kind)
                .containsExactly(Conflict.Kind.BREAK_WRONG);
    }

    @Test
    void leavesOutABreakThatOnlyLiesOutsideAndSaysSo() {
        ClassPlan plan = plan("10:40", "11:25");
        assertThat(plan.lesson()).isNotNull();
        assertThat(plan.advice()).extracting(advice -> advice.sentence().toString())
                .contains("The break at 11:25 for 10 min does not fit into the hours and is left out. Move or shorten it if the class should have one.");
    }

    @Test
    void namesTheStepsThatNoOrderCanKeepTogether() {
        List<Conflict> conflicts = conflicts("lasts: 15 min,", "lasts: 15 min, after: [{step: glue, most: 0 min}],",
                "venue:", "    - {id: again, title: Press the lid, kind: wait, lasts: 15 min, tools: [{tool: press, each: 1}], after: [{step: glue, most: 0 min}]}\nvenue:");
        assertThat(conflicts).extracting(Conflict::kind).containsExactly(Conflict.Kind.NO_ORDER);
        assertThat(conflicts.get(0).sentence()).isEqualTo("No order keeps the greatest gaps between \"Spread the glue\", \"Press the box\", "
                + "\"Press the lid\" with the hours and tools there are. With more of this it can be done: press. Or lengthen one of the greatest gaps.");
    }
}
