package benchful.core.lesson.risk;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.risk.Script.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What each block needs to be over before it begins. A wait without equipment runs for each student's piece on its own, so a chain
 * through it becomes a longer delay; a wait that holds equipment is a batch that all pieces wait for and go into together.
 */
final class Needs {

    private final LessonRequest request;
    private final List<Block> blocks;
    private final Clock clock;
    private final Map<String, Step> steps;

    Needs(LessonRequest request, LessonPlan plan, Clock clock) {
        this.request = request;
        this.blocks = plan.blocks();
        this.clock = clock;
        this.steps = request.steps().stream().collect(Collectors.toMap(Step::id, Function.identity()));
    }

    boolean isBatch(int block) {
        return blocks.get(block).kind() == StepKind.WAIT && !steps.get(blocks.get(block).step()).uses().isEmpty();
    }

    List<Need> of(int block) {
        List<Need> needs = new ArrayList<>();
        for (int before : before(block)) {
            double gap = gap(before, block);
            needs.addAll(through(before, gap));
        }
        for (int other = 0; other < blocks.size(); other++) {
            if ((isBatch(block) || isBatch(other)) && frees(blocks.get(other), blocks.get(block))) {
                needs.add(new Need(other, 0, isBatch(other) ? other : -1));
            }
        }
        return needs;
    }

    private List<Integer> before(int block) {
        List<String> ids = request.links().stream().filter(link -> link.to().equals(blocks.get(block).step())).map(Link::from).toList();
        List<Integer> before = new ArrayList<>();
        for (int other = 0; other < blocks.size(); other++) {
            int one = blocks.get(other).group();
            int mine = blocks.get(block).group();
            if (ids.contains(blocks.get(other).step()) && (one == mine || one == 0 || mine == 0)) {
                before.add(other);
            }
        }
        return before;
    }

    private double gap(int before, int block) {
        return request.links().stream().filter(link -> link.from().equals(blocks.get(before).step())
                && link.to().equals(blocks.get(block).step())).mapToDouble(link -> link.least().toSeconds()).max().orElseThrow();
    }

    /** The wait itself if it is a batch, else what it follows, that much later. */
    private List<Need> through(int before, double gap) {
        Block block = blocks.get(before);
        if (block.kind() != StepKind.WAIT || isBatch(before)) {
            return List.of(new Need(before, gap, isBatch(before) ? before : -1));
        }
        double delay = gap + ((Step.Wait) steps.get(block.step())).least().toSeconds();
        List<Need> chain = of(before).stream().map(need -> new Need(need.part(), need.delay() + delay, before)).toList();
        double release = clock.meetingOf(clock.seconds(block.start()));
        return chain.isEmpty() ? List.of(new Need(-1, release + delay, before)) : chain;
    }

    private static boolean frees(Block first, Block second) {
        List<String> tools = first.uses().stream().map(ToolUse::tool).toList();
        return first != second && !first.end().isAfter(second.start()) && first.start().isBefore(second.start())
                && second.uses().stream().anyMatch(use -> tools.contains(use.tool()));
    }
}
