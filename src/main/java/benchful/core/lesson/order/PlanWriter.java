package benchful.core.lesson.order;

import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.MeetingPlan;
import benchful.core.lesson.Proof;
import benchful.core.lesson.Reason;
import benchful.core.lesson.Segment;
import benchful.core.lesson.Step;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.model.Activity;
import benchful.core.lesson.order.model.Model;
import benchful.core.lesson.order.model.Presence;
import benchful.core.lesson.time.ClassLoad;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
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
        ClassLoad load = new ClassLoad(model.request(), blocks);
        return new LessonPlan(blocks, model.request().start(), finish, model.request().bookedEnd(), MeetingPlan.all(model.request().meetings(), blocks),
                load.tutor(), load.idle(), new Proof(method, model.request().pacing(), time(bound), finish), model.preparation());
    }

    private LocalDateTime time(long grains) {
        return model.hours().toTime(grains);
    }

    private Block block(Activity activity) {
        long start = starts[activity.index()];
        long grains = activity.hands() ? model.hours().open(start, latest[activity.index()]) : latest[activity.index()] - start;
        Duration slack = model.hours().toLength(grains).truncatedTo(ChronoUnit.MINUTES);
        List<Segment> segments = model.hours().segments(activity, start).stream()
                .map(part -> new Segment(time(part[0]), time(part[1]))).toList();
        LocalDateTime end = time(model.end(activity.index(), start));
        Lane lane = Lane.of(activity.step(), end, model.request().bookedEnd());
        boolean kept = isKept(activity);
        return new Block(activity.step().id(), activity.step().title(), activity.step().kind(), lane, activity.group(),
                time(start), end, segments, uses(activity), kept ? slack : Duration.ZERO,
                kept && slack.isZero() && lane != Lane.HOME, activity.tutorShare(), reasons(activity));
    }

    /** Whether something of the class could be late for it; nothing is for what goes on when all is made. */
    private static boolean isKept(Activity activity) {
        boolean mayEndAtHome = activity.step() instanceof Step.Wait wait && wait.endsAtHome();
        return !activity.atHome() || mayEndAtHome || activity.presence() == Presence.BEFORE_LAST_MEETING;
    }

    private List<ToolUse> uses(Activity activity) {
        List<ToolUse> uses = new ArrayList<>();
        for (int r = 0; r < model.tools(); r++) {
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
}
