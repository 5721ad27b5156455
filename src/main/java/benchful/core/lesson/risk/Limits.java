package benchful.core.lesson.risk;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.Step;
import benchful.core.lesson.risk.Script.Limit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * How old a piece may grow between two blocks: by a link's greatest gap, or by that of a wait between them, whose clock runs from the
 * end of the step before it.
 */
final class Limits {

    private final List<Block> blocks;
    private final StepsById steps;
    private final List<Limit> all = new ArrayList<>();

    Limits(LessonRequest request, LessonPlan plan) {
        this.blocks = plan.blocks();
        this.steps = request.stepsById();
        request.links().forEach(link -> {
            link.greatest().ifPresent(greatest -> add(link.from(), link.to(), greatest));
            if (steps.get(link.to()) instanceof Step.Wait wait && wait.greatest().isPresent()) {
                request.after(wait.id()).forEach(next -> add(link.from(), next.to(), link.least().plus(wait.greatest().get())));
            }
        });
    }

    List<Limit> all() {
        return all;
    }

    /** Whether a block is the later end of a limit, or lies on the way to it: then each piece goes on by itself. */
    boolean isTied(int block) {
        return all.stream().anyMatch(limit -> limit.from() < block && block <= limit.to() && isOwnWork(limit.from()) && isOwnWork(limit.to()));
    }

    private boolean isOwnWork(int block) {
        return blocks.get(block).kind().isOwnWork();
    }

    private void add(String from, String to, Duration greatest) {
        for (int one = 0; one < blocks.size(); one++) {
            for (int other = one + 1; other < blocks.size(); other++) {
                if (blocks.get(one).step().equals(from) && blocks.get(other).step().equals(to) && blocks.get(one).sharesStudents(blocks.get(other))) {
                    all.add(new Limit(one, other, greatest.toSeconds()));
                }
            }
        }
    }
}
