package benchful.documents.handout;

import benchful.core.lesson.StepKind;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.documents.paper.PrintOptions;
import benchful.documents.parts.Amounts;
import benchful.documents.parts.PrintSource;
import benchful.plans.materials.kits.Kit;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.projects.Tool;
import benchful.web.Formats;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a reader finds in the kit, and what is needed beside it. In a class the rest waits on the bench. Who works from a project alone
 * gets ready all of it, and who buys a kit the rest, with what serves a whole class.
 *
 * @param title   of both
 * @param packed  whether somebody packs the kit for the reader
 * @param kit     what a kit holds
 * @param bench   what it does not
 * @param tools   in the order of the project
 * @param toShare what no student has alone, such as the glue; none where all of it is in the lists
 */
public record Needed(String title, boolean packed, String kitTitle, List<HandoutContent.KitLine> kit, String benchTitle, List<HandoutContent.KitLine> bench, List<String> tools,
        List<String> toShare) {
    public Needed {
        kit = List.copyOf(kit);
        bench = List.copyOf(bench);
        tools = List.copyOf(tools);
        toShare = List.copyOf(toShare);
    }

    /** In two columns of about one length, the bench below what is left of the kit: what of the kit stands in the first. */
    public List<HandoutContent.KitLine> left() {
        return kit.subList(0, split());
    }

    /** What of the kit stands in the second column. */
    public List<HandoutContent.KitLine> right() {
        return kit.subList(split(), kit.size());
    }

    private int split() {
        int lines = kit.size() + (bench.isEmpty() ? 0 : bench.size() + 1);
        return Math.min(kit.size(), (lines + 1) / 2);
    }

    public static Needed of(PrintSource source, PrintOptions options, Handouts.Reader reader) {
        Amounts amounts = Amounts.on(options);
        ProjectSpec project = source.file().project();
        List<String> tools = project.tools().stream().filter(tool -> !source.isClass() || isForTheClass(project, tool)).map(tool -> tool(project, tool)).toList();
        if (source.isClass()) {
            return new Needed("What you have", true, "In your kit", lines(reader.kit().stream(), amounts, project), "For you on the bench", lines(reader.bench().stream().map(Needed::whole), amounts, project), tools,
                    project.materials().stream().filter(MaterialLine::shared).map(line -> Formats.unparted(line.material())).distinct().toList());
        }
        Stream<Kit.Content> rest = Stream.concat(reader.bench().stream(), shared(source)).map(Needed::whole);
        return source.batch() == null
                ? new Needed("You will need", false, "Materials", lines(reader.kit().stream(), amounts, project), "Supplies", lines(rest, amounts, project), tools, List.of())
                : new Needed("What you have and what you will need", true, "In this kit", lines(reader.kit().stream(), amounts, project), "You will need as well", lines(rest, amounts, project), tools, List.of());
    }

    /** What the tutor alone uses, in what is done before the class or between its meetings, is no matter of the students'. */
    private static boolean isForTheClass(ProjectSpec project, Tool tool) {
        List<Step> steps = project.steps().stream().filter(step -> names(step, tool.name())).toList();
        return steps.isEmpty() || steps.stream().anyMatch(step -> !step.kind().isBeforeClass() && step.kind() != StepKind.BETWEEN);
    }

    private static boolean names(Step step, String tool) {
        return step.tools().stream().anyMatch(use -> use.tool().equals(tool)) || step.text() != null && step.text().toLowerCase(Locale.ROOT).contains(tool.toLowerCase(Locale.ROOT));
    }

    /** "2 × bead tray" where one student uses so many at once. */
    private static String tool(ProjectSpec project, Tool tool) {
        int most = project.steps().stream().filter(step -> step.kind().isOwnWork()).flatMap(step -> step.tools().stream())
                .filter(use -> use.tool().equals(tool.name())).mapToInt(Step.ToolUse::each).max().orElse(1);
        return Formats.unparted(most > 1 ? "%d × %s".formatted(most, tool.name()) : tool.name());
    }

    /** What stands on a class's bench once: a whole bottle of glue. */
    private static Stream<Kit.Content> shared(PrintSource source) {
        Set<String> shared = source.file().project().materials().stream().filter(MaterialLine::shared).map(MaterialLine::material).collect(Collectors.toSet());
        return source.needs().bench().stream().filter(content -> shared.contains(content.material()));
    }

    private static List<HandoutContent.KitLine> lines(Stream<Kit.Content> contents, Amounts amounts, ProjectSpec project) {
        return contents.map(content -> line(content, amounts, project)).toList();
    }

    /** What is still to be chosen is in the kit already where the class was given one of its variants. */
    private static HandoutContent.KitLine line(Kit.Content content, Amounts amounts, ProjectSpec project) {
        boolean variant = project.materials().stream().noneMatch(line -> line.material().equals(content.material()));
        String chosen = content.detail() != null ? content.detail() : content.open() == null ? "" : (variant ? "unless you choose another " : "your choice of ") + content.open();
        return new HandoutContent.KitLine(Formats.unparted(amounts.words(content)), Formats.unparted(content.material()), chosen);
    }

    /** Who shares a thing on the bench has a part of it, but finds one. */
    public static Kit.Content whole(Kit.Content content) {
        boolean part = content.amount().unit() == Unit.PIECE && !content.amount().whole();
        return part ? new Kit.Content(content.material(), Quantity.of(content.amount().amount().setScale(0, RoundingMode.CEILING).longValueExact(), Unit.PIECE), content.pieces(), content.each(),
                content.rectangle(), content.choice(), content.chosen(), content.insteadOf(), content.note()) : content;
    }

    /** In one paragraph, to be sent to those who get ready: "8.9 g casting resin part a; 1 jump ring 6 mm. Tools: tweezers." */
    public String sentence() {
        String materials = Stream.concat(packed ? Stream.of() : kit.stream(), bench.stream()).map(line -> "%s %s%s".formatted(line.amount(), line.material(), line.note().isEmpty() ? "" : " (" + line.note() + ")"))
                .collect(Collectors.joining("; "));
        String words = tools.isEmpty() ? "" : "Tools: %s.".formatted(String.join(", ", tools));
        return (materials.isEmpty() ? words : "%s. %s".formatted(materials, words).strip()).replace('\u00a0', ' ');
    }
}
