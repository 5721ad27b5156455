package benchful.documents.handout;

import benchful.core.lesson.StepKind;
import benchful.documents.parts.HazardNote;
import benchful.documents.parts.HazardUse;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.plans.BetweenMeetings;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.projects.pictures.Picture;
import benchful.web.Formats;
import benchful.web.Markdown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The steps of a handout in the order in which its reader comes to them. What is only watched or done all together, and teaches nothing that
 * is needed at home, takes a line. A step has its own pictures beside it; those that were only shown go to the step that does it,
 * unless one names them.
 */
final class HandoutSteps {
    private final PrintSource source;
    private final ProjectSpec project;
    private final Making making;
    private final OwnTime time;
    private final OwnFigures figures;
    private final PictureBag bag;
    private final ReaderCautions cautions;
    private final boolean leftHanded;
    private final Map<String, Integer> numbers;
    private List<String> shown = List.of();
    private int meeting;

    HandoutSteps(PrintSource source, OwnTime time, OwnFigures figures, PictureBag bag, ReaderCautions cautions, boolean leftHanded) {
        this.source = source;
        this.project = source.file().project();
        this.making = new Making(source);
        this.time = time;
        this.figures = figures;
        this.bag = bag;
        this.cautions = cautions;
        this.leftHanded = leftHanded;
        this.numbers = making.numbers();
    }

    List<HandoutContent.Step> all() {
        List<HandoutContent.Step> steps = new ArrayList<>();
        numbers.forEach((id, number) -> project.step(id).map(step -> step(step, number)).ifPresent(steps::add));
        return steps;
    }

    /** Of what was prepared, the steps that are a student's own where nobody prepares them. */
    List<HandoutContent.Prepared> prepared() {
        return making.prepared().stream().map(step -> new HandoutContent.Prepared(step.title(), leave(step), Markdown.markdown(text(step)))).toList();
    }

    /** What the tutor prepares for every class, by title. */
    List<String> ready() {
        return source.isClass() ? project.steps().stream().filter(step -> step.kind().isBeforeClass()).map(Step::title).toList() : List.of();
    }

    /** What goes on at home: "Step 12, The glue dries: until Sun 7 Mar 2027, 12:53 at the earliest." */
    List<String> atHome() {
        Stream<String> waits = project.steps().stream().flatMap(step -> making.readyAtHome(step)
                .map(ready -> "Step %d, %s: until %s at the earliest.".formatted(numbers.get(step.id()), step.title(), Formats.words(ready))).stream());
        Stream<String> own = making.outside().stream().filter(item -> item.kind() == StepKind.HOMEWORK || item.kind() == StepKind.COLLECT)
                .map(item -> "Step %d, %s: %s.".formatted(item.number(), item.title(), outside(item)));
        return Stream.concat(waits, own).toList();
    }

    /** "at home by Sat 22 Mar 2025, 10:00", "from Mon 21 Apr 2025, 11:17". */
    private static String outside(BetweenMeetings.Item item) {
        return item.kind() == StepKind.COLLECT ? "from " + Formats.words(item.from()) : item.by() == null ? "at home" : "at home " + item.latest();
    }

    private HandoutContent.Step step(Step step, int number) {
        List<HazardNote> hazards = isTutors(step) ? List.of() : new HazardUse(source.file()).ofStep(step).stream().map(source::hazard).flatMap(Optional::stream).toList();
        String link = step.link() == null ? "" : step.link();
        boolean brief = isBrief(step);
        return new HandoutContent.Step(number, step.title(), Formats.word(step.kind()), brief, time(step, brief), leave(step), meanwhile(step),
                Markdown.markdown(text(step)), cautions.first(hazards, number), cautions.again(hazards, number), pictures(step, brief), link,
                link.isEmpty() ? null : bag.code("link-" + number, link), meeting(step));
    }

    /** Which meeting begins with a step, but the first; empty for what goes on. */
    private String meeting(Step step) {
        int now = making.meeting(step);
        if (now <= meeting) {
            return "";
        }
        meeting = now;
        return "Meeting %d, %s".formatted(now + 1, source.meeting(now));
    }

    /** Where nobody shows it, the text is all there is; what names a hazard is said in full. */
    private boolean isBrief(Step step) {
        if (isTutors(step) || step.kind() == StepKind.COLLECT && (step.text() == null || step.text().isBlank())) {
            return true;
        }
        return step.kind().isGathering() && step.hazards().isEmpty() && step.link() == null && (source.isClass() || step.kind() == StepKind.TOGETHER);
    }

    /** Whether its reader has no hand in it. */
    private boolean isTutors(Step step) {
        return step.kind() == StepKind.BETWEEN && source.isClass();
    }

    private String time(Step step, boolean brief) {
        String words = time.words(step);
        if (making.isAtHome(step)) {
            return outside(step, time.range(step));
        }
        if (step.kind().isOutside()) {
            return outside(step, words);
        }
        return brief ? "%s, %s".formatted(step.kind() == StepKind.SHOW ? "watch" : "all together", words) : words;
    }

    /** "your tutor, between the meetings", "about 3 h, at home by Sat 22 Mar 2025, 10:00". */
    private String outside(Step step, String words) {
        String when = making.outside().stream().filter(item -> item.step().equals(step.id())).map(HandoutSteps::outside).findFirst().orElse("");
        return switch (step.kind()) {
            case BETWEEN -> isTutors(step) ? "your tutor, outside the class" : words;
            case HOMEWORK, MAKE -> when.isEmpty() ? words : words + ", " + when;
            default -> when;
        };
    }

    private String text(Step step) {
        return figures.in(leftHanded && step.leftHanded() != null && !step.leftHanded().isBlank() ? step.leftHanded() : step.text());
    }

    private static String leave(Step step) {
        if (!step.kind().isUnattended()) {
            return "";
        }
        String least = step.lasts() == null ? "Leave it." : "Leave it for %s.".formatted(Formats.words(step.lasts()));
        return step.atMost() == null ? least : "%s No longer than %s.".formatted(least, Formats.words(step.atMost()));
    }

    private String meanwhile(Step step) {
        List<Integer> others = step.kind().isUnattended() ? making.during(step) : List.of();
        return switch (others.size()) {
            case 0 -> "";
            case 1 -> "Meanwhile do step %d.".formatted(others.get(0));
            default -> "Meanwhile do steps %s and %d.".formatted(
                    others.stream().limit(others.size() - 1L).map(String::valueOf).collect(Collectors.joining(", ")), others.get(others.size() - 1));
        };
    }

    /** "cover" is on the first page already. */
    private List<HandoutContent.Figure> pictures(Step step, boolean brief) {
        List<String> own = step.pictures().stream().filter(name -> !name.equals("cover")).distinct().toList();
        if (brief) {
            shown = own.isEmpty() ? shown : own.stream().filter(name -> !isUsed(name)).toList();
            return List.of();
        }
        List<String> names = step.kind().isOwnWork() && step.pictures().isEmpty() ? shown : own;
        shown = step.kind().isOwnWork() ? List.of() : shown;
        return names.stream().map(source.pictures()::get).filter(Objects::nonNull).map(picture -> figure(step, picture)).toList();
    }

    /** Whether a step that the reader does names this picture itself. */
    private boolean isUsed(String picture) {
        return project.steps().stream().anyMatch(step -> step.kind().isOwnWork() && step.pictures().contains(picture));
    }

    private HandoutContent.Figure figure(Step step, Picture picture) {
        return new HandoutContent.Figure(bag.picture(figures.in(picture)), picture.alt() == null ? step.title() : figures.in(picture.alt()));
    }
}
