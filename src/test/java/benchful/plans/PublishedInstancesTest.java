package benchful.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import benchful.core.lesson.order.LessonChecker;
import benchful.core.lesson.order.solver.SolverPlanner;
import benchful.core.lesson.risk.ClassSimulation;
import java.io.IOException;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Compares finishes of published instances, written and read as class files, with the published optima of the folder {@code benchful.published}; skipped where there is none. */
class PublishedInstancesTest {

    private void compare(String set, int seconds) throws IOException {
        assumeTrue(PublishedOptima.folder().isPresent(), PublishedOptima.SKIPPED);
        int matched = 0;
        int proven = 0;
        for (PublishedOptima.Known known : PublishedOptima.of(PublishedOptima.folder().get(), set)) {
            LessonRequest request = PublishedInstance.read(known.file()).timeLimit(Duration.ofSeconds(seconds)).build();
            LessonOutcome outcome = new SolverPlanner().plan(request);
            if (known.isImpossible()) {
                assertThat(outcome).as(known.toString()).isInstanceOfSatisfying(Contradiction.class,
                        refused -> assertThat(refused.proven() && !refused.conflicts().get(0).steps().isEmpty()).isTrue());
                continue;
            }
            assertThat(outcome).as(known.toString()).isInstanceOf(Planned.class);
            LessonPlan plan = ((Planned) outcome).plan();
            assertThat(LessonChecker.faults(request, plan)).as(known.toString()).isEmpty();
            assertThat(plan.length().toMinutes()).as(known.toString()).isGreaterThanOrEqualTo(known.least());
            assertThat(ClassSimulation.of(request.toBuilder().replications(2).build(), plan).late()).as("%s, simulated", known).isEqualTo(plan.finish());
            proven += known.isProven() ? 1 : 0;
            matched += known.isProven() && plan.proof().isShortest() ? 1 : 0;
            if (known.isProven() && plan.proof().isShortest()) {
                assertThat(plan.length().toMinutes()).as(known.toString()).isEqualTo(known.least());
            }
        }
        assertThat(matched * 10).as("matched with proof: %d of %d", matched, proven).isGreaterThanOrEqualTo(proven * 9);
    }

    @Test
    void matchesTheOptimaOfThirtyJobs() throws IOException {
        compare("j30", 20);
    }

    @Test
    void beatsNoBoundOfSixtyJobs() throws IOException {
        compare("j60", 20);
    }

    @Test
    void matchesOrRefusesTenJobsWithGreatestLags() throws IOException {
        compare("max-j10", 20);
        compare("max-ubo10", 20);
    }

    @Test
    void matchesTwentyJobsWithGreatestLags() throws IOException {
        compare("max-ubo20", 20);
    }
}
