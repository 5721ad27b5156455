package benchful.core.lesson.risk;

import benchful.core.lesson.Block;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.Link;
import benchful.core.lesson.Step;
import benchful.core.lesson.risk.Script.Need;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Which blocks a plan begins later than they could, because something behind them must follow in time: glue is not spread before the
 * press is free. A tutor keeps to that even if the class is quick.
 */
final class HeldBack {

    private final LessonRequest request;
    private final LessonPlan plan;
    private final Clock clock;
    private final StepsById steps;

    HeldBack(LessonRequest request, LessonPlan plan, Clock clock) {
        this.request = request;
        this.plan = plan;
        this.clock = clock;
        this.steps = request.stepsById();
    }

    /** @param needs what the block needs to be over before it */
    boolean isHeldBack(int index, List<Need> needs) {
        Block block = plan.blocks().get(index);
        return isPressed(block) && clock.seconds(block.start()) > couldBegin(block, needs);
    }

    /** Whether a greatest gap from it is used up. */
    private boolean isPressed(Block block) {
        boolean ages = greatestWait(block.step()).filter(greatest -> request.after(block.step()).stream()
                .anyMatch(link -> isUsedUp(block.start(), greatest, link.to(), block))).isPresent();
        return ages || request.after(block.step()).stream().anyMatch(link -> isPressed(block, link));
    }

    private boolean isPressed(Block block, Link link) {
        return link.greatest().filter(greatest -> isUsedUp(block.end(), greatest, link.to(), block)).isPresent()
                || greatestWait(link.to()).filter(greatest -> request.after(link.to()).stream().anyMatch(next ->
                        isUsedUp(block.end(), link.least().plus(greatest), next.to(), block))).isPresent();
    }

    private boolean isUsedUp(LocalDateTime from, Duration greatest, String step, Block before) {
        return plan.blocksOf(step).stream().filter(before::sharesStudents)
                .anyMatch(to -> !to.start().isBefore(from.plus(greatest)));
    }

    private Optional<Duration> greatestWait(String step) {
        return steps.get(step) instanceof Step.Wait wait ? wait.greatest() : Optional.empty();
    }

    /** The first time at which its needs are over, its group is free, and no break is in the way [s]. */
    private double couldBegin(Block block, List<Need> needs) {
        double free = clock.meetingOf(clock.seconds(block.start()));
        for (Need need : needs) {
            free = Math.max(free, need.delay() + (need.part() < 0 ? 0 : clock.seconds(plan.blocks().get(need.part()).end())));
        }
        Step step = steps.get(block.step());
        if (!step.kind().needsClass()) {
            return free;
        }
        free = Math.max(free, busyUntil(block));
        boolean pauses = step instanceof Step.Make make && make.mayPause();
        return pauses ? clock.toClockOnward(clock.toWorking(free)) : clock.wholeFrom(free, (double) block.length().toSeconds());
    }

    /** With what its students do, or its tutor. */
    private double busyUntil(Block block) {
        return plan.blocks().stream().filter(other -> other != block && other.kind().needsClass())
                .filter(other -> block.sharesStudents(other) || block.kind().isGathering() && other.kind().isGathering())
                .filter(other -> !other.end().isAfter(block.start())).mapToDouble(other -> clock.seconds(other.end())).max().orElse(0);
    }
}
