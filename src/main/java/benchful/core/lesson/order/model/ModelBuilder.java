package benchful.core.lesson.order.model;

import static java.util.Objects.requireNonNull;

import benchful.core.lesson.ClosedTime;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.Link;
import benchful.core.lesson.Preparation;
import benchful.core.lesson.Reason;
import benchful.core.lesson.RoomTool;
import benchful.core.lesson.Step;
import benchful.core.lesson.StepKind;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.time.ClassTime;
import benchful.core.lesson.time.MeetingLinks;
import benchful.core.lesson.time.StepTime;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/** Turns a request in which {@code RequestCheck} found no conflict into a {@link Model}. */
public final class ModelBuilder {

    /** Who shows something to a group, and nothing else meanwhile. */
    private static final String TUTOR = "tutor";
    /** Who does these does one after the other. */
    private static final Set<StepKind> WITH_HANDS_OUTSIDE = Set.of(StepKind.BETWEEN, StepKind.HOMEWORK);

    private final LessonRequest request;
    private final ClassTime classTime;
    private final List<String> names = new ArrayList<>();
    private final List<Integer> capacity = new ArrayList<>();
    private final List<Activity> activities = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();
    private final Map<String, List<Integer>> ofStep = new LinkedHashMap<>();
    private final MeetingLinks meetingLinks;

    public ModelBuilder(LessonRequest request) {
        this.request = request;
        this.meetingLinks = new MeetingLinks(request);
        this.classTime = new ClassTime(request.room(), request.helpers(), request.groups());
    }

    public Model build() {
        addResources();
        InClass inClass = new InClass(request);
        inClass.steps().forEach(step -> addStep(step, inClass));
        inClass.links().forEach(this::addLink);
        inClass.links().forEach(first -> addWaitLimits(first, inClass));
        inClass.steps().forEach(step -> addOwnLimit(step, inClass));
        Preparation preparation = new PreparationTime(request).preparation();
        int[] units = capacity.stream().mapToInt(Integer::intValue).toArray();
        Hours hours = Hours.of(request);
        return Grain.coarsen(new Model(request, hours, List.copyOf(activities), List.copyOf(gaps), units, List.copyOf(names),
                preparation, horizon(hours)));
    }

    private void addResources() {
        Map<String, Integer> tools = new LinkedHashMap<>();
        request.room().forEach((RoomTool tool) -> tools.merge(tool.name(), tool.count(), Integer::sum));
        tools.forEach(this::addResource);
        if (request.steps().stream().anyMatch(request::isShownToGroups)) {
            addResource(TUTOR, 1);
        }
        request.steps().stream().map(Step::kind).filter(WITH_HANDS_OUTSIDE::contains).distinct().forEach(kind -> addResource(handsOf(kind), 1));
        for (int group = 1; group <= request.groups(); group++) {
            addResource(request.groups() == 1 ? "class" : "group " + group, 1);
        }
    }

    private void addResource(String name, int units) {
        names.add(name);
        capacity.add(units);
    }

    private void addStep(Step step, InClass inClass) {
        boolean grouped = inClass.isGrouped(step.id());
        List<Integer> mine = new ArrayList<>();
        for (int group = grouped ? 1 : 0; group <= (grouped ? request.groups() : 0); group++) {
            mine.add(activities.size());
            activities.add(activity(step, group, inClass).between(asked(step), Activity.ANY_TIME));
        }
        ofStep.put(step.id(), mine);
    }

    private long asked(Step step) {
        LocalDateTime time = request.notBefore().get(step.id());
        return time == null ? 0 : Math.max(0, Duration.between(request.start(), time).toSeconds());
    }

    private Activity activity(Step step, int group, InClass inClass) {
        int index = activities.size();
        int[] uses = new int[capacity.size()];
        if (step.kind().needsClass()) {
            takeSeats(uses, group);
        }
        if (step instanceof Step.Make make) {
            int students = request.members(group);
            int seat = request.firstSeat(group);
            StepTime time = classTime.of(make, seat, seat + students);
            takeTools(uses, make, students);
            Presence presence = make.mayPause() ? Presence.CLASS_WITH_BREAKS : Presence.CLASS;
            return new Activity(index, step, group, time.length().toSeconds(), presence, false, uses, make.beside() ? 1 : time.tutorShare(), time.reasons());
        }
        long length = request.length(step, request.members(group)).toSeconds();
        if (step instanceof Step.Wait wait) {
            takeTools(uses, step, wait.places() == 0 ? 1 : request.loadsAtOnce(wait));
            share(uses, wait.places() == 0 ? group : 0);
            Presence presence = inClass.beginsByItself(wait) ? Presence.NOBODY : Presence.BEGUN_IN_MEETING;
            return new Activity(index, step, group, length, presence, !meetingLinks.counts(step), uses, 0, List.of());
        }
        if (step.kind().isOutside()) {
            return outside(step, index, uses);
        }
        takeTools(uses, step, 1);
        if (group > 0) {
            takeTutor(uses);
        }
        return new Activity(index, step, group, length, Presence.CLASS, false, uses, 1, inTurns(step, group));
    }

    private List<Reason> inTurns(Step step, int group) {
        int showings = step.showings(request.members(group));
        if (!(step instanceof Step.Show show) || group == 0 && showings == 1) {
            return List.of();
        }
        String how = group == 0 ? "Shown %d times".formatted(showings) : "Shown to each group by itself" + (showings == 1 ? "" : ", %d times".formatted(showings));
        String why = show.isTooCloseFor(request.headcount()) ? ", so that at most %d watch at once.".formatted(show.watchers()) : ".";
        return List.of(new Reason(Reason.Subject.TURNS, how + why));
    }

    private Activity outside(Step step, int index, int[] uses) {
        if (WITH_HANDS_OUTSIDE.contains(step.kind())) {
            uses[names.indexOf(handsOf(step.kind()))] = 1;
        }
        Presence presence = step.kind() == StepKind.COLLECT ? Presence.AFTER_LAST_MEETING
                : meetingLinks.leadsToMeeting(step.id()) ? Presence.BEFORE_LAST_MEETING : Presence.OUTSIDE;
        return new Activity(index, step, 0, request.length(step, request.headcount()).toSeconds(), presence, true, uses, 0, List.of());
    }

    private static String handsOf(StepKind kind) {
        return kind == StepKind.HOMEWORK ? "student at home" : "tutor between the meetings";
    }

    private void takeSeats(int[] uses, int group) {
        int firstSeat = capacity.size() - request.groups();
        for (int seat = 1; seat <= request.groups(); seat++) {
            uses[firstSeat + seat - 1] = group == 0 || group == seat ? 1 : 0;
        }
    }

    /** Who shows a group something stays beside no student of another. */
    private void takeTutor(int[] uses) {
        uses[names.lastIndexOf(TUTOR)] = 1;
        int somebody = names.indexOf(Step.Make.SOMEBODY.tool());
        if (somebody >= 0) {
            uses[somebody] = 1;
        }
    }

    /** Where there are too few for all at once, students take turns at all there are. */
    private void takeTools(int[] uses, Step step, int users) {
        for (ToolUse use : step.uses()) {
            int tool = names.indexOf(use.tool());
            uses[tool] = Math.min(capacity.get(tool), uses[tool] + use.of(users));
        }
    }

    /** A group's pieces take their share of a rack, and all of a kiln. */
    private void share(int[] uses, int group) {
        for (int i = 0; group > 0 && i < uses.length; i++) {
            uses[i] = (uses[i] + request.groups() - 1) / request.groups();
        }
    }

    private void addLink(Link link) {
        long greatest = link.greatest().map(Duration::toSeconds).orElse(Gap.NO_GREATEST);
        forPairs(link.from(), link.to(), (from, to) -> gaps.add(new Gap(from, false, to, link.least().toSeconds(), greatest)));
    }

    /** From the end of the step before a wait with a greatest length, the steps behind the wait must begin in time. */
    private void addWaitLimits(Link before, InClass inClass) {
        if (inClass.step(before.to()) instanceof Step.Wait wait && wait.greatest().isPresent()) {
            long greatest = before.least().plus(wait.greatest().get()).toSeconds();
            inClass.after(wait.id()).forEach(link -> forPairs(before.from(), link.to(),
                    (from, to) -> gaps.add(new Gap(from, false, to, Gap.NO_LEAST, greatest))));
        }
    }

    private void addOwnLimit(Step step, InClass inClass) {
        if (step instanceof Step.Wait wait && wait.greatest().isPresent()) {
            long greatest = wait.greatest().get().toSeconds();
            inClass.after(wait.id()).forEach(link -> forPairs(wait.id(), link.to(),
                    (from, to) -> gaps.add(new Gap(from, true, to, Gap.NO_LEAST, greatest))));
        }
    }

    private void forPairs(String from, String to, BiConsumer<Integer, Integer> add) {
        for (int first : requireNonNull(ofStep.get(from))) {
            for (int second : requireNonNull(ofStep.get(to))) {
                int one = activities.get(first).group();
                int other = activities.get(second).group();
                if (one == other || one == 0 || other == 0) {
                    add.accept(first, second);
                }
            }
        }
    }

    private long horizon(Hours hours) {
        long sum = hours.closed().stream().mapToLong(ClosedTime::to).max().orElse(0);
        sum = activities.stream().anyMatch(activity -> activity.presence().isOutside()) ? Math.max(sum, hours.bookedEnd()) : sum;
        sum = Math.max(sum, activities.stream().mapToLong(Activity::notBefore).max().orElse(0));
        sum += activities.stream().mapToLong(Activity::work).sum();
        return sum + gaps.stream().mapToLong(gap -> Math.max(0, gap.least())).sum() + 1;
    }
}
