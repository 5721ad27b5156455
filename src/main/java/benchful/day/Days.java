package benchful.day;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.classes.CraftClass;
import benchful.core.day.Course;
import benchful.core.day.HandsUp;
import benchful.core.day.Running;
import benchful.core.day.Tap;
import benchful.core.learning.Pause;
import benchful.core.learning.PlannedStep;
import benchful.core.lesson.StepKind;
import benchful.plans.stored.KeptPlan;
import benchful.plans.stored.PlanService;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A class as it goes on: what is stored of it, put to the fold that says how far it is. To be asked within a transaction. */
@ApplicationScoped
public class Days {
    /** More than any class is told in a day. */
    private static final int MOST_TAPS = 5_000;

    private final PlanService plans;
    private final Clock clock;

    Days(PlanService plans, Clock clock) {
        this.plans = plans;
        this.clock = clock;
    }

    /** What the class is run by, and what was told of it so far. */
    public record Log(Course course, List<Tap> taps) {}

    /** By the plan that it was begun with, or else by that of today; nothing where it can't be planned. */
    Optional<Log> log(CraftClass craftClass) {
        return ClassDay.of(craftClass).map(day -> new Log(course(day.plan().file(), day.plan().steps(), day.plan().breaks()), DayTap.of(day)))
                .or(() -> today(craftClass));
    }

    private Optional<Log> today(CraftClass craftClass) {
        ClassFile file = plans.file(craftClass);
        return plans.planned(file).map(today -> new Log(course(file, today.planned(), today.breaks()), List.of()));
    }

    /** The class as it was run, and by which plan; nothing where nobody told anything of it. */
    public Optional<KeptPlan> plan(CraftClass craftClass) {
        return ClassDay.of(craftClass).map(ClassDay::plan);
    }

    /** How the class went, as far as it was told; nothing where nobody told anything of it. */
    public Optional<Running> told(CraftClass craftClass) {
        return ClassDay.of(craftClass).flatMap(day -> log(craftClass)).map(log -> Running.of(log.course(), log.taps(), now()));
    }

    /** Who had finished when, as far as it was told and counts. */
    public List<Tap> counts(CraftClass craftClass) {
        return ClassDay.of(craftClass).map(day -> Running.counting(DayTap.of(day)).stream().filter(t -> t.kind() == Tap.Kind.COUNT).toList()).orElse(List.of());
    }

    /** How often hands went up at each step, by its key, as far as it was told and counts. */
    public Map<String, HandsUp.Asked> asked(CraftClass craftClass) {
        return told(craftClass).map(HandsUp::of).orElse(Map.of());
    }

    LocalDateTime now() {
        return LocalDateTime.now(clock).truncatedTo(ChronoUnit.MILLIS);
    }

    /**
     * Adds to the log what is not there yet, while the class is locked, so that each tap is written once however often it comes.
     *
     * @return false where the class can't be planned and so can't be run
     */
    boolean add(CraftClass craftClass, List<Tap> taps) {
        Optional<ClassDay> day = ClassDay.of(craftClass).or(() -> plans.keep(craftClass, plans.file(craftClass), "run").map(plan -> ClassDay.begun(craftClass, plan)));
        day.ifPresent(d -> add(d, taps));
        return day.isPresent();
    }

    private static void add(ClassDay day, List<Tap> taps) {
        Set<String> known = DayTap.of(day).stream().map(Tap::id).collect(Collectors.toSet());
        for (Tap tap : taps) {
            if (known.size() < MOST_TAPS && known.add(tap.id())) {
                DayTap.of(day, tap).persist();
            }
        }
    }

    private static Course course(ClassFile file, List<PlannedStep> steps, List<Pause> breaks) {
        Set<String> own = file.project().steps().stream().filter(s -> s.kind() == StepKind.MAKE).map(s -> s.id()).collect(Collectors.toSet());
        Map<String, LocalDateTime> asked = file.setup().timesAskedFor();
        List<Course.Item> items = steps.stream()
                .map(s -> new Course.Item(s.key(), s.name(), s.group(), s.handsOn(), own.contains(s.step()), s.start(), s.end(), s.length(), asked.get(s.step()))).toList();
        ClassSetup.Meeting last = file.setup().meetings().get(file.setup().meetings().size() - 1);
        return new Course(items, pauses(file.setup(), breaks), file.setup().headcount(), last.date().atTime(last.ends()));
    }

    /** The breaks of a plan, each under the key by which it is told of. */
    public static List<Course.Pause> breaks(KeptPlan plan) {
        return breaks(plan.file().setup(), plan.breaks());
    }

    /** The times between meetings are numbered first. */
    private static List<Course.Pause> breaks(ClassSetup setup, List<Pause> breaks) {
        int before = setup.meetings().size();
        return IntStream.range(0, breaks.size()).mapToObj(i -> Course.Pause.rest(before + i, breaks.get(i).start(), breaks.get(i).end())).toList();
    }

    private static List<Course.Pause> pauses(ClassSetup setup, List<Pause> breaks) {
        List<Course.Pause> pauses = new ArrayList<>();
        LocalDateTime ended = null;
        for (ClassSetup.Meeting m : setup.meetings()) {
            LocalDateTime starts = m.date().atTime(m.starts());
            if (ended != null) {
                pauses.add(new Course.Pause("pause-" + (pauses.size() + 1), ended, starts));
            }
            ended = m.date().atTime(m.ends());
        }
        pauses.addAll(breaks(setup, breaks));
        return pauses.stream().sorted(Comparator.comparing(Course.Pause::start)).toList();
    }
}
