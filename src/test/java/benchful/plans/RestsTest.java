package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.SetupRules;
import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.lesson.Break;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.order.LessonChecker;
import benchful.core.lesson.order.ListPlanner;
import benchful.core.lesson.order.Rest;
import benchful.core.lesson.order.solver.SolverPlanner;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Breaks by a rule, from the class to its plan. */
class RestsTest {
    private static final LocalDateTime SIX = LocalDateTime.of(2027, 3, 6, 18, 0);

    private final ClassPlanner planner = ComputedPlans.planner(new ListPlanner());

    @Test
    void placesBreaksByTheRuleBesideThoseAtTheirTime() {
        ClassPlan sewn = planner.plan(SmallClass.of(3).level(SkillLevel.IMPROVER).makesIn("sew", 100).restsAfter(55, 10).file());
        assertThat(sewn.breaks()).containsExactly(pause(50, 60));
        assertThat(sewn.lesson().finish()).isEqualTo(SIX.plusMinutes(110));

        ClassPlan tea = planner.plan(SmallClass.of(3).level(SkillLevel.IMPROVER).makesIn("sew", 130).rests(LocalTime.of(18, 40), 15).restsAfter(55, 10).file());
        assertThat(tea.breaks()).containsExactly(pause(40, 55), pause(100, 110));
        assertThat(tea.lesson().finish()).isEqualTo(SIX.plusMinutes(155));
        assertThat(tea.advice()).extracting(Advice::about).doesNotContain("Rest");
    }

    /** Each evening is sewn for a hundred minutes; the rule is for the second. */
    @Test
    void placesBreaksInTheOneMeetingThatTheRuleIsFor() {
        ClassFile file = SmallClass.of(3).level(SkillLevel.IMPROVER).makesIn("cut", 100).makesIn("sew", 100).restsAfter(55, 10).meets(SIX.toLocalDate(), LocalTime.of(18, 0), LocalTime.of(19, 40))
                .meets(SIX.toLocalDate().plusDays(1), LocalTime.of(18, 0), LocalTime.of(20, 0)).file();
        assertThat(planner.plan(file).breaks()).as("ten minutes are left over for the second").containsExactly(pause(50, 60), pause(24 * 60 + 55, 24 * 60 + 65));
        ClassFile second = file.with(file.setup().withRest(new ClassSetup.Rest(Duration.ofMinutes(55), Duration.ofMinutes(10), 2)));
        assertThat(planner.plan(second).breaks()).containsExactly(pause(24 * 60 + 50, 24 * 60 + 60));
        assertThat(rest(second)).isEmpty();
        assertThat(rest(closely(second))).as("the first goes by what is usual").singleElement().asString().startsWith("From 2027-03-06 18:00 to 19:40 students work at the bench for 1 h 40 min without a rest; ");
    }

    @Test
    void saysWhereNoRestFitsInAnyMore() {
        ClassPlan tooShort = planner.plan(SmallClass.of(1).level(SkillLevel.IMPROVER).makesIn("sew", 100).restsAfter(55, 10).meets(SIX.toLocalDate(), LocalTime.of(18, 0), LocalTime.of(19, 0)).file());
        assertThat(tooShort.breaks()).containsExactly(pause(30, 40));
        assertThat(tooShort.advice()).filteredOn(advice -> advice.about().equals("Rest")).extracting(advice -> advice.sentence().toString()).containsExactly(
                "From 18:40 to 19:50 students work at the bench for 1 h 10 min without a rest, and no break of 10 min fits in before. "
                        + "Book more hours, move a break, or let them work for longer than 55 min.");
    }

    /** The card of the hazard library says 50 to 60 minutes. */
    @Test
    void saysWhereCloseWorkGoesOnForLongerThanIsUsual() {
        assertThat(rest(closely(SmallClass.of(1).level(SkillLevel.IMPROVER).makesIn("sew", 61).file()))).containsExactly("From 18:00 to 19:01 students work at the bench for 1 h 1 min without a rest; "
                + "for close work the usual rule is 5 to 10 min after 50 to 60 (HSE, L26). Write it into the class under “Breaks by a rule”, or move a break.");
        assertThat(rest(closely(SmallClass.of(1).level(SkillLevel.IMPROVER).makesIn("sew", 60).file()))).isEmpty();
        assertThat(rest(closely(SmallClass.of(1).level(SkillLevel.IMPROVER).makesIn("sew", 61).restsAfter(90, 10).file()))).as("her own rule").isEmpty();
        assertThat(rest(SmallClass.of(1).level(SkillLevel.IMPROVER).makesIn("sew", 61).file())).as("no close work").isEmpty();
    }

    /** A break that stands badly is moved where that is enough, and else taken in halves; 170 minutes are three parts of 56 or 57. */
    @Test
    void saysWhereTheOneBreakWouldBeEnough() {
        assertThat(rest(closely(sews(100, 15, 20)))).singleElement().asString().endsWith("or take the break at 18:50.");
        assertThat(rest(closely(sews(170, 60, 30)))).singleElement().asString().endsWith("or split the break of 30 min: 15 min at 18:55 and 15 min at 20:05.");
        assertThat(rest(closely(sews(185, 60, 30)))).as("four parts").singleElement().asString().endsWith("or move a break.");
        assertThat(rest(closely(sews(170, 60, 8)))).as("no rest of four minutes").singleElement().asString().endsWith("or move a break.");
    }

    private static ClassFile sews(int minutes, int at, int lasts) {
        return SmallClass.of(1).level(SkillLevel.IMPROVER).makesIn("sew", minutes).rests(LocalTime.of(18, 0).plusMinutes(at), lasts)
                .meets(SIX.toLocalDate(), LocalTime.of(18, 0), LocalTime.of(22, 0)).file();
    }

    private static ClassFile closely(ClassFile file) {
        return file.with(file.project().withHazards(List.of("eye-strain")));
    }

    private List<String> rest(ClassFile file) {
        return planner.plan(file).advice().stream().filter(advice -> advice.about().equals("Rest")).map(advice -> advice.sentence().toString()).toList();
    }

    static List<Named<ClassFile>> resting() {
        return SampleClassesTest.coming().stream().filter(sample -> sample.getPayload().setup().rest() != null).toList();
    }

    /** As the program plans it, with times that nine in ten classes keep. */
    @ParameterizedTest
    @MethodSource("resting")
    void keepsTheRuleInThePlanThatIsShown(ClassFile sample) {
        ClassPlanner solver = ComputedPlans.planner(new SolverPlanner());
        LessonRequest request = solver.rested(sample);
        ClassSetup.Rest rule = sample.setup().rest();
        ClassPlan plan = solver.plan(sample);
        assertThat(plan.breaks()).isEqualTo(request.breaks()).hasSizeGreaterThan(sample.setup().breaks().size());
        assertThat(LessonChecker.faults(request, plan.lesson(), new Rest(rule.after(), rule.lasts()))).isEmpty();
        ClassPlan without = solver.plan(sample.with(sample.setup().withRest(null)));
        assertThat(LessonChecker.faults(request, without.lesson(), new Rest(rule.after(), rule.lasts()))).isNotEmpty();
    }

    @Test
    void asksForATimeToWorkAndATimeToRest() {
        assertThat(faults(14, 2)).containsExactly(new Fault("/rest/after", "Let them work for at least 15 min before a rest."),
                new Fault("/rest/lasts", "Give a rest of 3 min to 2 h."));
        assertThat(faults(15, 121)).extracting(Fault::pointer).containsExactly("/rest/lasts");
        assertThat(faults(15, 3)).isEmpty();
        assertThat(faults(55, 120)).isEmpty();
    }

    private static List<Fault> faults(int work, int minutes) {
        ClassFile file = SmallClass.of(1).level(SkillLevel.IMPROVER).makesIn("sew", 60).restsAfter(work, minutes).file();
        return SetupRules.check(file.setup(), file.project());
    }

    private static Break pause(int from, int to) {
        return new Break("Break", SIX.plusMinutes(from), SIX.plusMinutes(to));
    }
}
