package benchful.documents.handout;

import benchful.documents.parts.HazardUse;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.documents.parts.PrintedSigns;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.projects.pictures.Picture;
import benchful.web.Formats;
import benchful.web.Markdown;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The steps of a handout in the order in which the class comes to them, with what fills each wait. */
final class HandoutSteps {
    private static final int CAUTIONS_BESIDE_A_STEP = 2;

    private final PrintSource source;
    private final ProjectSpec project;
    private final Making making;
    private final OwnTime time;
    private final PictureBag bag;
    private final PrintedSigns signs;
    private final boolean leftHanded;
    private final Map<String, Integer> numbers;
    private final Set<String> saidBefore = new HashSet<>();
    private final Map<String, Integer> drawnAt = new HashMap<>();

    HandoutSteps(PrintSource source, OwnTime time, PictureBag bag, PrintedSigns signs, boolean leftHanded) {
        this.source = source;
        this.project = source.file().project();
        this.making = new Making(source);
        this.time = time;
        this.bag = bag;
        this.signs = signs;
        this.leftHanded = leftHanded;
        this.numbers = making.numbers();
    }

    List<HandoutContent.Step> all() {
        List<HandoutContent.Step> steps = new ArrayList<>();
        numbers.forEach((id, number) -> project.step(id).map(step -> step(step, number)).ifPresent(steps::add));
        return steps;
    }

    List<HandoutContent.Prepared> prepared() {
        return making.prepared().stream().map(step -> new HandoutContent.Prepared(step.title(), leave(step), Markdown.markdown(text(step)))).toList();
    }

    /** What goes on at home: "Step 12, The glue dries: until Sun 7 Mar 2027, 12:53 at the earliest." */
    List<String> atHome() {
        return project.steps().stream().flatMap(step -> making.readyAtHome(step)
                .map(ready -> "Step %d, %s: until %s at the earliest.".formatted(numbers.get(step.id()), step.title(), Formats.words(ready))).stream()).toList();
    }

    private HandoutContent.Step step(Step step, int number) {
        String link = step.link() == null ? "" : step.link();
        return new HandoutContent.Step(number, step.title(), Formats.word(step.kind()), time.words(step), leave(step), meanwhile(step),
                Markdown.markdown(text(step)), cautions(step), picture(step, number), seen(step, number), link,
                link.isEmpty() ? null : bag.code("link-" + number, link));
    }

    private String text(Step step) {
        return leftHanded && step.leftHanded() != null && !step.leftHanded().isBlank() ? step.leftHanded() : step.text();
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

    /** What to do is said where a hazard is first met; after that its name is enough. */
    private List<HandoutContent.Caution> cautions(Step step) {
        return new HazardUse(source.file()).ofStep(step).stream().map(source::hazard).flatMap(Optional::stream)
                .map(hazard -> new HandoutContent.Caution(hazard.name(), saidBefore.add(hazard.id())
                        ? hazard.cautions().stream().limit(CAUTIONS_BESIDE_A_STEP).toList() : List.of(), signs.of(hazard)))
                .toList();
    }

    /** A picture is printed beside the first step that needs it; "cover" is on the first page already. */
    private HandoutContent.Figure picture(Step step, int number) {
        Picture picture = step.picture() == null || step.picture().equals("cover") ? null : source.pictures().get(step.picture());
        return picture == null || drawnAt.putIfAbsent(picture.name(), number) != null ? null
                : new HandoutContent.Figure(bag.picture(picture), picture.alt() == null ? step.title() : picture.alt());
    }

    private String seen(Step step, int number) {
        Integer first = step.picture() == null ? null : drawnAt.get(step.picture());
        return first == null || first == number ? "" : "Picture at step %d.".formatted(first);
    }
}
