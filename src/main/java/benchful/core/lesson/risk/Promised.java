package benchful.core.lesson.risk;

import benchful.core.lesson.Block;
import benchful.core.lesson.ClosedTime;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.StepsById;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.Segment;
import benchful.core.lesson.Step;
import benchful.core.lesson.risk.Risk.BlockRisk;
import benchful.core.lesson.time.ClassLoad;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An order of steps with the times to write on the board: those that the promised share of simulated classes keep, to the minute. So
 * the plan ends by its booked end just where that share of the classes does. What is said of the order (slack, what sets the finish,
 * the proof) stays as the planner found it for expected lengths.
 *
 * @param plan the order with promised times
 * @param risk what the simulated classes came to
 */
public record Promised(LessonPlan plan, Risk risk) {

    /**
     * @param order       an order with the times that a planner expects
     * @param stillWanted run now and then; it throws where the work is to be given up
     */
    public static Promised of(LessonRequest request, LessonPlan order, Runnable stillWanted) {
        Risk risk = ClassSimulation.of(request, order, stillWanted);
        StepsById steps = request.stepsById();
        List<Block> blocks = IntStream.range(0, order.blocks().size())
                .mapToObj(i -> block(request, order.blocks().get(i), steps.get(order.blocks().get(i).step()), risk.blocks().get(i)))
                .sorted(Comparator.comparing(Block::start).thenComparing(Block::end)).toList();
        ClassLoad load = new ClassLoad(request, blocks);
        LessonPlan plan = new LessonPlan(blocks, order.start(), risk.promised(), order.bookedEnd(),
                MeetingPlan.all(request.meetings(), blocks), load.tutor(), load.idle(), order.proof(), order.preparation());
        return new Promised(plan, risk);
    }

    public static Promised of(LessonRequest request, LessonPlan order) {
        return of(request, order, () -> { });
    }

    /** A wait without equipment, which each piece begins when it is ready, is shown for the last of them. */
    private static Block block(LessonRequest request, Block block, Step step, BlockRisk risk) {
        LocalDateTime start = risk.promisedStart();
        LocalDateTime end = risk.promisedEnd();
        Lane lane = Lane.of(step, end, request.bookedEnd());
        return switch (lane) {
            case CLASS -> block.at(worked(request, start, end), lane);
            case EQUIPMENT -> block.at(List.of(new Segment(start, end)), lane);
            case OUTSIDE -> block.at(List.of(new Segment(start, start.plus(block.length()))), lane);
            case WAIT, HOME -> block.at(List.of(new Segment(end.minus(block.length()), end)), lane);
        };
    }

    /** Between two times, breaks and the days between meetings left out. */
    private static List<Segment> worked(LessonRequest request, LocalDateTime start, LocalDateTime end) {
        List<Segment> parts = new ArrayList<>();
        LocalDateTime from = start;
        for (ClosedTime closed : ClosedTime.of(request)) {
            LocalDateTime stop = request.start().plusSeconds(closed.from());
            LocalDateTime on = request.start().plusSeconds(closed.to());
            if (from.isBefore(on) && stop.isBefore(end)) {
                addUnlessEmpty(parts, from, stop);
                from = on;
            }
        }
        addUnlessEmpty(parts, from, end);
        return parts.isEmpty() ? List.of(new Segment(start, end)) : parts;
    }

    private static void addUnlessEmpty(List<Segment> parts, LocalDateTime from, LocalDateTime to) {
        if (from.isBefore(to)) {
            parts.add(new Segment(from, to));
        }
    }
}
