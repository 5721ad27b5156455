package benchful.core.lesson.order;

import static benchful.core.lesson.order.Lessons.TEN;
import static benchful.core.lesson.order.Lessons.plan;
import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Step;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Networks from a textbook, written as waits of so many minutes that nobody's hands are needed for. */
class CriticalPathTest {

    private record Arc(int problem, String from, String to, long weeks, long start, long slack) {
        static Arc read(String line) {
            String[] cells = line.split(",");
            return new Arc(Integer.parseInt(cells[0]), cells[1], cells[2], Long.parseLong(cells[3]), Long.parseLong(cells[4]),
                    Long.parseLong(cells[5]));
        }

        String id() {
            return from + "-" + to;
        }
    }

    @ParameterizedTest
    @CsvSource({"5, 20, 1-3 3-4 4-5 5-6", "6, 38, 1-3 3-5 5-7 7-8 8-9"})
    void reproducesTaylorsProblems(int problem, long weeks, String path) throws IOException {
        List<Arc> arcs = arcs(problem);
        LessonRequest.Builder network = LessonRequest.builder().meeting(TEN, TEN.plusHours(1));
        arcs.forEach(arc -> network.step(new Step.Wait(arc.id(), arc.id(), Duration.ofMinutes(arc.weeks()))));
        arcs.forEach(first -> arcs.stream().filter(next -> next.from().equals(first.to()))
                .forEach(next -> network.link(first.id(), next.id())));
        LessonPlan plan = plan(new ListPlanner().plan(network.build()));
        assertThat(plan.length()).isEqualTo(Duration.ofMinutes(weeks));
        assertThat(plan.proof().isShortest()).isTrue();
        assertThat(plan.criticalChain()).extracting(Block::step).containsExactly(path.split(" "));
        assertThat(arcs).allSatisfy(arc -> {
            Block block = plan.blocksOf(arc.id()).get(0);
            assertThat(block.start()).isEqualTo(TEN.plusMinutes(arc.start()));
            assertThat(block.slack()).isEqualTo(Duration.ofMinutes(arc.slack()));
        });
    }

    private static List<Arc> arcs(int problem) throws IOException {
        try (InputStream file = CriticalPathTest.class.getResourceAsStream("/published/lesson-critical-path.csv")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8).lines()
                    .filter(line -> Character.isDigit(line.charAt(0))).map(Arc::read).filter(arc -> arc.problem() == problem).toList();
        }
    }
}
