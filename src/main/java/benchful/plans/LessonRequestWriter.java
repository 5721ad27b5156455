package benchful.plans;

import benchful.classes.ClassFile;
import benchful.classes.ClassSetup;
import benchful.core.SkillLevel;
import benchful.core.lesson.Break;
import benchful.core.lesson.Help;
import benchful.core.lesson.LessonRequest;
import benchful.core.lesson.LessonRequest.Turn;
import benchful.core.lesson.Link;
import benchful.core.lesson.Pacing;
import benchful.core.lesson.Step;
import benchful.core.lesson.StudentTime;
import benchful.core.lesson.ToolUse;
import benchful.core.lesson.order.AtHome;
import benchful.core.lesson.order.BreakPlacer;
import benchful.plans.materials.kits.Seating;
import benchful.plans.materials.sizes.PieceSizer;
import benchful.plans.materials.sizes.SizedPiece;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Puts a class file to the lesson engine, with the times and calls of a project made those of the class's level. */
final class LessonRequestWriter {
    private static final BigDecimal MOST_REPEATS = BigDecimal.valueOf(10_000);

    private final ProjectSpec project;
    private final ClassSetup setup;
    private final Map<String, Integer> room;
    private final List<SizedPiece> pieces;

    LessonRequestWriter(ClassFile file) {
        this.project = file.project();
        this.setup = file.setup();
        this.room = stocked(file);
        Map<String, SizedPiece> sized = project.sizes().stream()
                .collect(Collectors.toMap(Size::name, size -> PieceSizer.size(project, size), (one, same) -> one));
        this.pieces = new Seating(project, setup).students().stream().map(seat -> sized.get(seat.size())).filter(Objects::nonNull).toList();
    }

    /** What stands in the room: the venue's tools and the tutor's own, and enough of those of which nobody wrote down how many. */
    private static Map<String, Integer> stocked(ClassFile file) {
        Map<String, Integer> room = file.tools();
        file.project().steps().stream().flatMap(s -> s.tools().stream()).forEach(t -> room.computeIfAbsent(t.tool(), file::atOnce));
        return room;
    }

    LessonRequest request() {
        LessonRequest.Builder request = LessonRequest.builder()
                .headcount(setup.headcount())
                .helpers(setup.helpers())
                .groups(setup.groups())
                .pacing(setup.ownPace() ? Pacing.OWN_PACE : Pacing.TOGETHER)
                .preparedAhead(Set.copyOf(setup.preparedAhead()))
                .promise(setup.promise().share());
        for (int i = 0; i < project.steps().size(); i++) {
            request.step(step(project.steps().get(i)));
            links(i).forEach(request::link);
        }
        room.forEach(request::tool);
        setup.meetings().forEach(m -> meeting(m, request));
        setup.breaks().stream().filter(b -> isTooLong(b, setup)).forEach(b -> tooLong(b, request));
        request.searchFrom(setup.foundOrder() == null ? List.of() : Turn.read(setup.foundOrder()));
        LessonRequest asked = AtHome.of(request.notBefore(setup.timesAskedFor()).build(), setup.homework());
        LessonRequest.Builder ordered = asked.toBuilder();
        ownOrder(asked).forEach(ordered::link);
        return BreakPlacer.placed(ordered.build(), setup.meetings().stream().flatMap(this::movable).toList());
    }

    /** What the tutor asks for beyond the project, of the steps that the class still does. */
    private List<Link> ownOrder(LessonRequest asked) {
        List<String> order = setup.ownOrder().stream().filter(id -> asked.steps().stream().anyMatch(s -> s.id().equals(id) && s.kind().needsClass() && !asked.isAhead(s))).toList();
        return IntStream.range(1, order.size()).mapToObj(i -> new Link(order.get(i - 1), order.get(i))).toList();
    }

    /** A break that no meeting is long enough for is no break to leave out but a mistake, which the engine names. */
    static boolean isTooLong(ClassSetup.Break b, ClassSetup setup) {
        return setup.meetings().stream().allMatch(m -> Duration.between(m.starts(), m.ends()).compareTo(b.lasts()) < 0);
    }

    private void tooLong(ClassSetup.Break b, LessonRequest.Builder request) {
        LocalDateTime start = setup.meetings().get(0).date().atTime(b.at());
        request.pause("Break", start, start.plus(b.lasts()));
    }

    private void meeting(ClassSetup.Meeting m, LessonRequest.Builder request) {
        LocalDateTime start = m.date().atTime(m.starts());
        LocalDateTime end = m.date().atTime(m.ends());
        request.meeting(start, end);
        setup.breaksOf(m).stream().filter(b -> !b.mayMove()).map(b -> pause(b, m)).forEach(b -> request.pause(b.title(), b.start(), b.end()));
    }

    private Stream<BreakPlacer.Movable> movable(ClassSetup.Meeting m) {
        return setup.breaksOf(m).stream().filter(ClassSetup.Break::mayMove).map(b -> new BreakPlacer.Movable(pause(b, m), m.date().atTime(b.latest())));
    }

    private static Break pause(ClassSetup.Break b, ClassSetup.Meeting m) {
        return new Break("Break", m.date().atTime(b.at()), m.date().atTime(b.at()).plus(b.lasts()));
    }

    private Step step(benchful.projects.Step s) {
        return switch (s.kind()) {
            case SHOW -> new Step.Show(s.id(), s.title(), s.lasts(), perStudent(s), over(s), uses(s), s.watchers() == null ? 0 : s.watchers(), setup.shownToGroups().contains(s.id()));
            case TOGETHER -> new Step.Together(s.id(), s.title(), s.lasts(), perStudent(s), over(s), uses(s));
            case AHEAD -> new Step.Ahead(s.id(), s.title(), s.lasts(), perStudent(s));
            case BETWEEN, HOMEWORK -> new Step.Outside(s.id(), s.title(), s.kind(), s.lasts(), perStudent(s));
            case COLLECT -> new Step.Outside(s.id(), s.title(), s.kind(), Duration.ZERO);
            case WAIT -> new Step.Wait(s.id(), s.title(), s.lasts(), Optional.ofNullable(s.atMost()), uses(s), s.places() == null ? 0 : s.places(), s.atHome());
            case MAKE -> new Step.Make(s.id(), s.title(), time(s), uses(s), help(s), share(s), true, s.beside());
        };
    }

    private static Duration perStudent(benchful.projects.Step s) {
        return s.perStudent() == null ? Duration.ZERO : s.perStudent();
    }

    private static Duration over(benchful.projects.Step s) {
        return s.mayRunOver() == null ? Duration.ZERO : s.mayRunOver();
    }

    private StudentTime time(benchful.projects.Step s) {
        List<StudentTime.Work> work = pieces.isEmpty() ? List.of(new StudentTime.Work(1, project.pace(setup.level())))
                : IntStream.range(0, pieces.size()).mapToObj(seat -> new StudentTime.Work(repeats(pieces.get(seat), s), project.pace(level(seat)))).toList();
        return new StudentTime(s.student().quick(), s.student().usual(), s.student().slow(), work);
    }

    /** Of a student known by name the own one, if it is said. */
    private SkillLevel level(int seat) {
        SkillLevel own = seat < setup.students().size() ? setup.students().get(seat).level() : null;
        return own == null ? setup.level() : own;
    }

    /** How often a step is done in a piece; part of a time counts as once more. */
    private static int repeats(SizedPiece piece, benchful.projects.Step s) {
        BigDecimal times = piece.repeats().getOrDefault(s.id(), BigDecimal.ONE);
        return Math.max(1, times.min(MOST_REPEATS).setScale(0, RoundingMode.CEILING).intValueExact());
    }

    private double share(benchful.projects.Step s) {
        BigDecimal own = s.share() == null ? setup.share() : s.share();
        return own == null ? 1 : own.doubleValue();
    }

    private Help help(benchful.projects.Step s) {
        return s.help() == null ? Help.NONE : new Help(s.help().calls().doubleValue() * setup.level().callsAgainst(project.timesOf()), s.help().lasts().toSeconds() / 60.0);
    }

    private static List<ToolUse> uses(benchful.projects.Step s) {
        return s.tools().stream().map(benchful.projects.Step.ToolUse::planned).toList();
    }

    private List<Link> links(int index) {
        String step = project.steps().get(index).id();
        return project.predecessors(index).stream()
                .map(a -> new Link(a.step(), step, a.least() == null ? Duration.ZERO : a.least(), Optional.ofNullable(a.most())))
                .toList();
    }
}
