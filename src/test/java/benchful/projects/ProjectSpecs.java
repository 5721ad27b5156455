package benchful.projects;

import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.projects.pictures.Picture;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Sheets for tests: a small one known by heart, and sound ones of any shape from a seed. */
public final class ProjectSpecs {
    /** Texts that files and pages have to carry whole. */
    private static final List<String> TEXTS = List.of(
            "plain", "with: colon", "- dash", "# hash", "yes", "null", "12", "1e3", "~", "\"quoted\" and 'single'", "<b>tag</b> & more",
            "two\nlines", "trailing space inside  here", "tab\there", "{braces} [brackets]", "%percent", "éèß漢字 – “quotes”", "emoji 🧵",
            "*not an alias", "a line long enough to be folded ".repeat(6).strip(), "&not an anchor", "| pipe\n  indented\n\nparagraph", "0x1F", "2027-03-06", "!tag", "@at", "back\\slash");

    private final SplittableRandom random;

    private ProjectSpecs(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** A bead ring: one measure, two sizes, three steps, one tool, no pictures. */
    public static ProjectSpec beadRing(String name) {
        Duration minute = Duration.ofMinutes(1);
        Step show = Step.of("show", "Watch", StepKind.SHOW).withLasts(minute.multipliedBy(5)).withAfter(List.of()).withText("Watch the tutor.");
        Step thread = Step.of("thread", "Thread the beads", StepKind.MAKE)
                .withStudent(new Step.StudentTime(minute.multipliedBy(4), minute.multipliedBy(6), minute.multipliedBy(12)))
                .withTools(List.of(new Step.ToolUse("needle", 1))).withHelp(new Step.Help(new BigDecimal("1.5"), minute))
                .withHazards(List.of("sharp-tools")).withText("Thread *all* beads.");
        Step tidy = Step.of("tidy", "Tidy up", StepKind.TOGETHER).withLasts(minute.multipliedBy(10));
        return ProjectSpecBuilder.builder().name(name).craft("bead stringing").level(SkillLevel.BEGINNER)
                .summary("A ring of beads.").care("Keep it dry.").minimumAge(8).source("Invented for tests.")
                .measures(List.of(new Measure("finger", "Finger", Unit.MM)))
                .sizes(List.of(size("Small", "50 mm"), size("Large", "60 mm")))
                .materials(List.of(MaterialLine.of("seed bead 2 mm", "ceil(finger / (2 mm))").withChoice("colour").withAlternatives(List.of("seed bead 2 mm, red")),
                        MaterialLine.of("elastic 0.5 mm", "finger + 10 cm").withPieces("1")))
                .tools(List.of(new Tool("needle", true, null, List.of()))).steps(List.of(show, thread, tidy)).hazards(List.of("small-parts")).build();
    }

    private static Size size(String name, String finger) {
        return new Size(name, Map.of("finger", Quantity.parse(finger)));
    }

    /** A sound sheet; the same seed gives the same one. */
    public static ProjectSpec generated(long seed) {
        return new ProjectSpecs(seed).sheet();
    }

    private ProjectSpec sheet() {
        List<Measure> measures = list(0, 4, i -> new Measure("measure" + i, oneLine(), pick(List.of(Unit.CM, Unit.PIECE, Unit.INCH, Unit.ML))));
        List<Tool> tools = list(0, 4, i -> new Tool("tool " + i + " " + oneLine(), random.nextBoolean(), maybe(random.nextInt(0, 40)), maybe(oneLine()), hazards()));
        List<Picture> pictures = list(0, 3, i -> new Picture("p" + i, "image/png", maybe(oneLine()), bytes()));
        List<Sizing> sizing = list(0, 2, this::strand);
        return ProjectSpecBuilder.builder().name("Sheet " + oneLine()).craft(oneLine()).level(pick(List.of(SkillLevel.values())))
                .summary(maybe(text())).care(maybe(text())).minimumAge(maybe(random.nextInt(3, 99))).source(maybe(oneLine()))
                .measures(measures).sizes(list(1, 4, i -> size(i, measures))).sizing(sizing)
                .materials(list(0, 5, i -> material(measures, sizing))).tools(tools).steps(steps(tools, pictures))
                .hazards(hazards()).pictures(pictures).build();
    }

    private Size size(int i, List<Measure> measures) {
        Map<String, Quantity> values = new LinkedHashMap<>();
        measures.forEach(m -> values.put(m.name(), new Quantity(decimal(), m.unit())));
        return new Size("size " + i + " " + oneLine(), values);
    }

    private Sizing strand(int i) {
        List<Sizing.Bead> beads = list(1, 3, b -> new Sizing.Bead("bead " + b, "6 mm", maybe(random.nextInt(1, 9))));
        return new Sizing("strand" + i, SizingKind.STRAND, Map.of("target", "42 cm"), beads);
    }

    private MaterialLine material(List<Measure> measures, List<Sizing> sizing) {
        boolean cut = random.nextBoolean();
        String amount = measures.stream().filter(m -> m.unit().dimension().equals(Dimension.LENGTH)).findFirst()
                .map(m -> "2 * " + m.name() + " + 40 cm").orElse("12.5 cm");
        String answer = sizing.isEmpty() ? "3" : sizing.get(0).name() + "_beads";
        return MaterialLine.of("material " + oneLine(), cut ? amount : answer).withPieces(cut ? "2" : null)
                .withShared(random.nextBoolean()).withInKit(maybe(false)).withWaste(maybe(decimal().min(BigDecimal.valueOf(95))))
                .withChoice(maybe(oneLine())).withNote(maybe(oneLine()));
    }

    private List<Step> steps(List<Tool> tools, List<Picture> pictures) {
        List<Step> steps = new ArrayList<>();
        int count = random.nextInt(1, 8);
        for (int i = 0; i < count; i++) {
            steps.add(step(i, steps, tools, pictures));
        }
        return steps;
    }

    private Step step(int i, List<Step> earlier, List<Tool> tools, List<Picture> pictures) {
        StepKind kind = pick(List.of(StepKind.SHOW, StepKind.MAKE, StepKind.WAIT, StepKind.TOGETHER, StepKind.BETWEEN, StepKind.HOMEWORK));
        boolean make = kind.isOwnWork();
        boolean wait = kind.isUnattended();
        Duration time = time();
        List<Step.After> after = earlier.isEmpty() ? List.of()
                : List.of(new Step.After(pick(earlier).id(), maybe(Duration.ofMinutes(5)), maybe(Duration.ofHours(30))));
        return Step.of("s" + i, oneLine(), kind).withLasts(make ? null : time)
                .withAtMost(wait ? maybe(time.multipliedBy(2)) : null)
                .withStudent(make ? new Step.StudentTime(time, time.plusSeconds(30), time.multipliedBy(3)) : null)
                .withRepeats(make ? maybe("3") : null).withShare(make ? maybe(new BigDecimal("0.75")) : null)
                .withAtHome(wait && random.nextBoolean()).withAfter(pick(Arrays.asList(null, List.of(), after)))
                .withTools(tools.isEmpty() ? List.of() : List.of(new Step.ToolUse(pick(tools).name(), random.nextInt(1, 4), make ? maybe(2) : null)))
                .withBeside(make && random.nextBoolean()).withMayRunOver(kind.isGathering() ? maybe(Duration.ofMinutes(7)) : null)
                .withHelp(make ? maybe(new Step.Help(new BigDecimal("2.5"), Duration.ofSeconds(90))) : null)
                .withHazards(hazards()).withText(maybe(text())).withLeftHanded(maybe(text()))
                .withPictures(pictures.stream().map(Picture::name).filter(name -> random.nextBoolean()).limit(12).toList())
                .withLink(maybe("https://films.example/" + i));
    }

    private Duration time() {
        return Duration.ofSeconds(random.nextLong(30, 100_000));
    }

    private BigDecimal decimal() {
        return BigDecimal.valueOf(random.nextLong(1, 9999), random.nextInt(0, 3));
    }

    private byte[] bytes() {
        byte[] bytes = new byte[random.nextInt(1, 200)];
        random.nextBytes(bytes);
        return bytes;
    }

    private List<String> hazards() {
        return list(0, 3, List.of("sharp-tools", "nickel", "epoxy", "hot-wax")::get);
    }

    private String text() {
        return pick(TEXTS);
    }

    private String oneLine() {
        String line = text().replace('\n', ' ');
        return line.substring(0, Math.min(30, line.length()));
    }

    private <T> T maybe(T value) {
        return random.nextBoolean() ? value : null;
    }

    private <T> T pick(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private <T> List<T> list(int least, int most, IntFunction<T> row) {
        return IntStream.range(0, random.nextInt(least, most + 1)).mapToObj(row).toList();
    }
}
