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
        Step show = new Step("show", "Watch", StepKind.SHOW, minute.multipliedBy(5), null, null, null, null, false, List.of(), null,
                null, null, "Watch the tutor.", null, null, null);
        Step thread = new Step("thread", "Thread the beads", StepKind.MAKE, null, null,
                new Step.StudentTime(minute.multipliedBy(4), minute.multipliedBy(6), minute.multipliedBy(12)), null, null, false, null,
                List.of(new Step.ToolUse("needle", 1)), new Step.Help(new BigDecimal("1.5"), minute), List.of("sharp-tools"),
                "Thread *all* beads.", null, null, null);
        Step tidy = new Step("tidy", "Tidy up", StepKind.TOGETHER, minute.multipliedBy(10), null, null, null, null, false, null, null,
                null, null, null, null, null, null);
        return new ProjectSpec(name, "bead stringing", SkillLevel.BEGINNER, "A ring of beads.", "Keep it dry.", 8, "Invented for tests.",
                List.of(new Measure("finger", "Finger", Unit.MM)),
                List.of(size("Small", "50 mm"), size("Large", "60 mm")), List.of(),
                List.of(new MaterialLine("seed bead 2 mm", "ceil(finger / (2 mm))", null, null, false, false, null, null, "colour", List.of("seed bead 2 mm, red"), null),
                        new MaterialLine("elastic 0.5 mm", "finger + 10 cm", "1", false, null, null, null, null)),
                List.of(new Tool("needle", true, null, List.of())), List.of(show, thread, tidy), List.of("small-parts"), List.of());
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
        List<Tool> tools = list(0, 4, i -> new Tool("tool " + i + " " + oneLine(), random.nextBoolean(), maybe(oneLine()), hazards()));
        List<Picture> pictures = list(0, 3, i -> new Picture("p" + i, "image/png", maybe(oneLine()), bytes()));
        List<Sizing> sizing = list(0, 2, this::strand);
        return new ProjectSpec("Sheet " + oneLine(), oneLine(), pick(List.of(SkillLevel.values())), maybe(text()), maybe(text()),
                maybe(random.nextInt(3, 99)), maybe(oneLine()), measures, list(1, 4, i -> size(i, measures)), sizing,
                list(0, 5, i -> material(measures, sizing)), tools, steps(tools, pictures), hazards(), pictures);
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
        return new MaterialLine("material " + oneLine(), cut ? amount : answer, cut ? "2" : null, random.nextBoolean(),
                maybe(false), maybe(decimal().min(BigDecimal.valueOf(95))), maybe(oneLine()), maybe(oneLine()));
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
        StepKind kind = pick(List.of(StepKind.SHOW, StepKind.MAKE, StepKind.WAIT, StepKind.TOGETHER));
        boolean make = kind.isOwnWork();
        boolean wait = kind.isUnattended();
        Duration time = time();
        List<Step.After> after = earlier.isEmpty() ? List.of()
                : List.of(new Step.After(pick(earlier).id(), maybe(Duration.ofMinutes(5)), maybe(Duration.ofHours(30))));
        return new Step("s" + i, oneLine(), kind, make ? null : time, wait ? maybe(time.multipliedBy(2)) : null,
                make ? new Step.StudentTime(time, time.plusSeconds(30), time.multipliedBy(3)) : null,
                make ? maybe("3") : null, make ? maybe(new BigDecimal("0.75")) : null, wait && random.nextBoolean(),
                pick(Arrays.asList(null, List.of(), after)),
                tools.isEmpty() ? List.of() : List.of(new Step.ToolUse(pick(tools).name(), random.nextInt(1, 4))),
                make ? maybe(new Step.Help(new BigDecimal("2.5"), Duration.ofSeconds(90))) : null, hazards(), maybe(text()),
                maybe(text()), pictures.isEmpty() ? null : maybe(pick(pictures).name()), maybe("https://films.example/" + i));
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
        return list(0, 3, i -> "hazard-" + i);
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
