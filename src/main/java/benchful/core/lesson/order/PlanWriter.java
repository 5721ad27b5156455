package benchful.core.lesson.order;

import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.Meeting;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.Proof;
import benchful.core.lesson.Reason;
import benchful.core.lesson.Segment;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Model;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes start times out as a plan that a tutor can read. */
public final class PlanWriter {

    private final Model model;
    private final long[] starts;
    private final long[] latest;
    private final Proof.Method method;
    private final long bound;

    /** @param bound no plan can finish before this time [grains] */
    public PlanWriter(Model model, long[] starts, Proof.Method method, long bound) {
        this.model = model;
        this.starts = starts;
        this.latest = new Sequence(model, starts).latest();
        this.method = method;
        this.bound = bound;
    }

    public LessonPlan plan() {
        List<Block> blocks = model.activities().stream().map(this::block)
                .sorted(Comparator.comparing(Block::start).thenComparing(Block::end)).toList();
        LocalDateTime finish = time(model.finish(starts));
        Load load = new Load(model, starts);
        return new LessonPlan(blocks, model.request().start(), finish, model.request().bookedEnd(), meetings(blocks),
                load.tutor(), load.idle(), new Proof(method, time(bound), finish), model.preparation());
    }

    private LocalDateTime time(long grains) {
        return model.hours().toTime(grains);
    }

    private Block block(Activity activity) {
        long start = starts[activity.index()];
        long slack = activity.hands() ? model.hours().open(start, latest[activity.index()]) : latest[activity.index()] - start;
        List<Segment> segments = model.hours().segments(activity, start).stream()
                .map(part -> new Segment(time(part[0]), time(part[1]))).toList();
        Lane lane = lane(activity);
        return new Block(activity.step().id(), activity.step().title(), activity.step().kind(), lane, activity.group(),
                time(start), time(model.hours().end(activity, start)), segments, uses(activity), model.hours().toLength(slack),
                slack == 0 && lane != Lane.HOME, reasons(activity));
    }

    private Lane lane(Activity activity) {
        if (activity.hands()) {
            return Lane.CLASS;
        }
        boolean home = activity.atHome() && time(model.end(activity.index(), starts[activity.index()]))
                .isAfter(model.request().bookedEnd());
        return home ? Lane.HOME : activity.step().uses().isEmpty() ? Lane.WAIT : Lane.EQUIPMENT;
    }

    private List<ToolUse> uses(Activity activity) {
        List<ToolUse> uses = new ArrayList<>();
        for (int r = 0; r < model.firstSeat(); r++) {
            if (activity.uses()[r] > 0) {
                uses.add(new ToolUse(model.names().get(r), activity.uses()[r]));
            }
        }
        return uses;
    }

    private List<Reason> reasons(Activity activity) {
        List<Reason> reasons = new ArrayList<>(activity.reasons());
        reasons.add(new StartReason(model, starts).of(activity));
        return reasons;
    }

    private List<MeetingPlan> meetings(List<Block> blocks) {
        List<Meeting> meetings = model.request().meetings();
        List<MeetingPlan> plans = new ArrayList<>();
        for (int i = 0; i < meetings.size(); i++) {
            LocalDateTime until = i + 1 < meetings.size() ? meetings.get(i + 1).start() : LocalDateTime.MAX;
            plans.add(meeting(i + 1, meetings.get(i), until, blocks));
        }
        return plans;
    }

    private static MeetingPlan meeting(int number, Meeting meeting, LocalDateTime until, List<Block> blocks) {
        List<Block> inside = blocks.stream().filter(block -> block.segments().stream()
                .anyMatch(part -> !part.start().isBefore(meeting.start()) && part.start().isBefore(until))).toList();
        LocalDateTime finish = inside.stream().filter(block -> block.lane() == Lane.CLASS)
                .flatMap(block -> block.segments().stream()).filter(part -> part.start().isBefore(until)).map(Segment::end)
                .max(Comparator.naturalOrder()).orElse(meeting.start());
        return new MeetingPlan(number, meeting.start(), meeting.end(), finish, inside.stream().map(Block::step).distinct().toList());
    }
}
