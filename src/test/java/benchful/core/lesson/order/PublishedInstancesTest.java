package benchful.core.lesson.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import benchful.core.lesson.Contradiction;
import benchful.core.lesson.LessonOutcome;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Planned;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Compares finishes with the published optima of the folder {@code benchful.published}; skipped where there is none. */
class PublishedInstancesTest {

    private record Known(Path file, String optimum) {
        boolean isImpossible() {
            return optimum.equals("unsat");
        }

        boolean isProven() {
            return optimum.matches("\\d+");
        }

        /** The best finish known is no less than this. */
        long least() {
            String bound = optimum.replaceFirst("\\.\\..*", "");
            return bound.isEmpty() ? 0 : Long.parseLong(bound);
        }
    }

    private static List<Known> known(String list, String folder) throws IOException {
        String home = System.getProperty("benchful.published");
        assumeTrue(home != null && Files.isDirectory(Path.of(home, "scheduling")),
                "Skipped: -Dbenchful.published names no folder with published scheduling instances");
        Path scheduling = Path.of(home, "scheduling");
        List<Known> known = new ArrayList<>();
        for (String line : Files.readAllLines(scheduling.resolve(list))) {
            String[] cells = line.split(",");
            if (cells[0].equals("problem")) {
                continue;
            }
            known.add(new Known(scheduling.resolve(folder).resolve(cells[0]), cells[1]));
        }
        return known;
    }

    private void compare(String list, String folder, int seconds) throws IOException {
        int matched = 0;
        int proven = 0;
        for (Known known : known(list, folder)) {
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
        compare("j30-optimum.csv", "j30", 20);
    }

    @Test
    void beatsNoBoundOfSixtyJobs() throws IOException {
        compare("j60-best.csv", "j60", 8);
    }

    @Test
    void matchesOrRefusesTenJobsWithGreatestLags() throws IOException {
        compare("max-j10-optimum.csv", "max-j10", 20);
        compare("max-ubo10-optimum.csv", "max-ubo10", 20);
    }

    @Test
    void matchesTwentyJobsWithGreatestLags() throws IOException {
        compare("max-ubo20-optimum.csv", "max-ubo20", 20);
    }
}
