package benchful.core.lesson.risk;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.risk.Script.Need;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What each block needs to be over before it begins. A wait without equipment runs for each student's piece on its own, so a chain
 * through it becomes a longer delay; a wait that holds equipment is a batch that all pieces wait for and go into together.
 * Only what the plan puts before a block can hold it up; a negative gap to something later is kept by the plan's order.
 */
final class Prerequisites {

    private final LessonRequest request;
    private final List<Block> blocks;
    private final Clock clock;
    private final StepsById steps;
    private final HeldBack heldBack;
    private final List<List<Need>> all = new ArrayList<>();

    Prerequisites(LessonRequest request, LessonPlan plan, Clock clock) {
        this.request = request;
        this.blocks = plan.blocks();
        this.clock = clock;
        this.steps = request.stepsById();
        this.heldBack = new HeldBack(request, plan, clock);
        for (int block = 0; block < blocks.size(); block++) {
            all.add(find(block));
        }
    }

    /** Whether all pieces go through it as one: a load of the kiln, or what the tutor does with them between the meetings. */
    boolean isBatch(int block) {
        Step step = steps.get(blocks.get(block).step());
        return step.kind().isOutside() || step instanceof Step.Wait wait && (wait.places() > 0 || !wait.uses().isEmpty());
    }

    List<Need> of(int block) {
        return all.get(block);
    }

    /** Not before its meeting begins, nor the time asked for; and not before its planned start where the plan holds it back for a greatest gap. */
    double release(int block) {
        if (blocks.get(block).kind() == StepKind.COLLECT) {
            return clock.seconds(request.bookedEnd());
        }
        double start = clock.seconds(blocks.get(block).start());
        double asked = Optional.ofNullable(request.notBefore().get(blocks.get(block).step())).map(clock::seconds).orElse(0.0);
        return heldBack.isHeldBack(block, all.get(block)) ? start : Math.max(asked, clock.meetingOf(start));
    }

    private List<Need> find(int block) {
        Map<Integer, Need> needs = new TreeMap<>();
        for (int before = 0; before < block; before++) {
            OptionalDouble gap = gap(before, block);
            if (gap.isPresent()) {
                through(before, gap.getAsDouble()).forEach(need -> add(need, needs));
            }
            if (isSameHands(blocks.get(before), blocks.get(block)) || (isBatch(block) || isBatch(before)) && frees(blocks.get(before), blocks.get(block))) {
                add(new Need(before, 0, isBatch(before) ? before : -1), needs);
            }
        }
        return List.copyOf(needs.values());
    }

    private static void add(Need need, Map<Integer, Need> needs) {
        needs.merge(need.part(), need, (one, other) -> other.delay() > one.delay() ? other : one);
    }

    /** The least gap between two blocks, the longest of them if there is more than one link. */
    private OptionalDouble gap(int before, int block) {
        return request.links().stream().filter(link -> blocks.get(before).sharesStudents(blocks.get(block)))
                .filter(link -> link.from().equals(blocks.get(before).step()) && link.to().equals(blocks.get(block).step()))
                .mapToDouble(link -> link.least().toSeconds()).max();
    }

    /** The wait itself if it is a batch, else what it follows, that much later. */
    private List<Need> through(int before, double gap) {
        Block block = blocks.get(before);
        if (!block.kind().isUnattended() || isBatch(before)) {
            return List.of(new Need(before, gap, isBatch(before) ? before : -1));
        }
        double delay = gap + steps.get(block.step()).length().toSeconds();
        List<Need> chain = new ArrayList<>(List.of(new Need(-1, release(before) + delay, before)));
        of(before).forEach(need -> chain.add(new Need(need.part(), need.delay() + delay, before)));
        return chain;
    }

    /** The tutor does one thing after the other outside the meetings too, in the planned order, and so does a student at home. */
    private static boolean isSameHands(Block first, Block second) {
        return first.kind() == second.kind() && first.kind().isOutside();
    }

    private static boolean frees(Block first, Block second) {
        List<String> tools = first.uses().stream().map(ToolUse::tool).toList();
        return !first.end().isAfter(second.start()) && first.start().isBefore(second.start())
                && second.uses().stream().anyMatch(use -> tools.contains(use.tool()));
    }
}
