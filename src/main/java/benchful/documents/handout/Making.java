package benchful.documents.handout;

import benchful.core.lesson.Block;
import benchful.core.lesson.Lane;
import benchful.core.lesson.LessonPlan;
import benchful.core.lesson.Preparation;
import benchful.core.lesson.StepKind;
import benchful.documents.parts.PrintSource;
import benchful.plans.BetweenMeetings;
import benchful.plans.StepNumbers;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** In which order readers come to the steps: as their class is planned, or, where there is none, as the project says. */
final class Making {
    private final ProjectSpec project;
    private final LessonPlan lesson;
    private final Map<String, Integer> numbers;
    private final List<BetweenMeetings.Item> outside;

    Making(PrintSource source) {
        this.project = source.file().project();
        this.lesson = source.lesson();
        this.numbers = lesson == null ? alone(project) : StepNumbers.of(lesson);
        this.outside = BetweenMeetings.of(project, lesson);
    }

    /** Number by step id, in rising order. */
    Map<String, Integer> numbers() {
        return numbers;
    }

    /** Of what the tutor does before the class, the steps that are a student's own where nobody prepares them. */
    List<Step> prepared() {
        return lesson == null ? List.of() : lesson.preparation().items().stream().map(Preparation.Item::step).map(project::step).flatMap(Optional::stream)
                .filter(step -> step.kind().mayBePrepared()).toList();
    }

    /** In which meeting a step of the class begins, the first being 0. */
    int meeting(Step step) {
        return lesson == null ? 0 : lesson.blocksOf(step.id()).stream().filter(block -> block.lane() == Lane.CLASS).map(Block::start).min(Comparator.naturalOrder())
                .map(start -> (int) lesson.meetings().stream().skip(1).filter(meeting -> !meeting.start().isAfter(start)).count()).orElse(0);
    }

    /** What the class does while it waits: the numbers of the steps whose time overlaps and that need not wait for it. */
    List<Integer> during(Step wait) {
        List<Block> waits = lesson == null ? List.of() : lesson.blocksOf(wait.id()).stream().filter(block -> block.lane() != Lane.HOME).toList();
        Set<String> held = held(wait);
        return waits.isEmpty() ? List.of() : lesson.blocks().stream()
                .filter(other -> other.lane() == Lane.CLASS && waits.stream().anyMatch(block -> overlap(block, other)))
                .filter(other -> !held.contains(other.step())).map(other -> numbers.get(other.step())).distinct().sorted().toList();
    }

    /** When a wait is over that goes on after the class, at the earliest. */
    Optional<LocalDateTime> readyAtHome(Step wait) {
        return lesson == null ? Optional.empty()
                : lesson.blocksOf(wait.id()).stream().filter(block -> block.lane() == Lane.HOME).map(Block::end).max(Comparator.naturalOrder());
    }

    /** What goes on while no meeting is held; nothing where there is no class. */
    List<BetweenMeetings.Item> outside() {
        return outside;
    }

    /** Whether students of this class take home what is made in others. */
    boolean isAtHome(Step step) {
        return step.kind().isOwnWork() && outside.stream().anyMatch(item -> item.step().equals(step.id()));
    }

    /** The steps that can't begin before a wait is over, itself among them. */
    private Set<String> held(Step wait) {
        Set<String> held = new HashSet<>(Set.of(wait.id()));
        List<Integer> all = IntStream.range(0, project.steps().size()).boxed().toList();
        boolean grows = true;
        while (grows) {
            grows = held.addAll(all.stream().filter(i -> project.predecessors(i).stream().anyMatch(after -> held.contains(after.step())))
                    .map(i -> project.steps().get(i).id()).toList());
        }
        return held;
    }

    private static boolean overlap(Block wait, Block other) {
        return other.start().isBefore(wait.end()) && other.end().isAfter(wait.start());
    }

    /** The sheet's own order, but for a step that stands before what it follows; what may end at home comes as late as it can. */
    private static Map<String, Integer> alone(ProjectSpec project) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        List<Integer> open = new ArrayList<>(IntStream.range(0, project.steps().size()).filter(i -> isMade(project.steps().get(i))).boxed().toList());
        while (!open.isEmpty()) {
            List<Integer> free = open.stream().filter(i -> isFree(project, i, numbers)).toList();
            Integer next = free.stream().filter(i -> !project.steps().get(i).atHome()).findFirst()
                    .orElseGet(() -> free.isEmpty() ? open.get(0) : free.get(0));
            numbers.put(project.steps().get(next).id(), numbers.size() + 1);
            open.remove(next);
        }
        return numbers;
    }

    /** Whoever makes it alone has nothing to collect. */
    private static boolean isMade(Step step) {
        return !step.kind().isBeforeClass() && step.kind() != StepKind.COLLECT;
    }

    private static boolean isFree(ProjectSpec project, int index, Map<String, Integer> before) {
        return project.predecessors(index).stream().map(after -> project.step(after.step()))
                .allMatch(step -> step.isEmpty() || step.get().kind().isBeforeClass() || before.containsKey(step.get().id()));
    }
}
