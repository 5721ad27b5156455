package benchful.projects;

import benchful.core.Fault;
import benchful.core.SkillLevel;
import benchful.core.formula.Formula;
import benchful.core.lesson.StepKind;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.projects.pictures.Picture;
import benchful.web.Blanks;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A project as its page and its card show it, with every size worked out.
 *
 * @param pieces by the size's name
 * @param hazards of the library: their names by the short names that sheets write
 */
@TemplateData
public record ProjectView(Project project, ProjectSpec sheet, Map<String, PieceWorking.Piece> pieces, Map<String, String> hazards) {
    /** From ten centimetres on a tutor speaks of centimetres. */
    private static final Quantity LONG = Quantity.of(100, Unit.MM);
    private static final String UNKNOWN = "–";

    static ProjectView of(Project project, PieceWorking working, Map<String, String> hazards) {
        ProjectSpec sheet = project.toSpec();
        Map<String, PieceWorking.Piece> pieces = new LinkedHashMap<>();
        sheet.sizes().forEach(size -> pieces.put(size.name(), working.work(sheet, size)));
        return new ProjectView(project, sheet, pieces, hazards);
    }

    /** How its materials stand in the catalogue. */
    public NamedMaterials named() {
        return NamedMaterials.of(this);
    }

    /** What can't be worked out, each said once though several sizes have it. */
    public List<String> faults() {
        return pieces.values().stream().flatMap(p -> p.faults().stream()).map(Fault::detail).distinct().toList();
    }

    /** What one piece of a size takes on a material line: "2 × 12 cm"; a dash where it can't be worked out. */
    public String amount(Size size, int line) {
        PieceWorking.Amount amount = pieces.get(size.name()).amounts().get(line);
        if (amount == null) {
            return UNKNOWN;
        }
        if (amount.rectangle() != null) {
            return "%d × %s".formatted(amount.pieces(), Formats.words(amount.rectangle()));
        }
        boolean inCentimetres = amount.each().unit() == Unit.MM && amount.each().compareTo(LONG) >= 0;
        String each = Formats.words(inCentimetres ? amount.each().in(Unit.CM) : amount.each());
        return amount.pieces() == null ? each : amount.pieces() + " × " + each;
    }

    /** A text with its blanks filled in: of sizes that differ, from the least to the most. */
    public String text(String written) {
        return Blanks.filled(written, this::inAnySize);
    }

    private Optional<String> inAnySize(String blank) {
        List<String> words = sheet.sizes().stream().flatMap(size -> inSize(blank, size).stream()).distinct().toList();
        return words.isEmpty() ? Optional.empty() : Optional.of(words.size() == 1 ? words.get(0) : "(by size: " + String.join(", ", words) + ")");
    }

    private Optional<String> inSize(String blank, Size size) {
        return sheet.valueNamed(blank).map(pieces.get(size.name()).values()::get).map(Formats::measured)
                .or(() -> sheet.linesNamed(blank).stream().map(line -> amount(size, line)).filter(words -> !words.equals(UNKNOWN)).reduce("%s and %s"::formatted));
    }

    /** How a material line is worked out, where it is more than an amount: "2 * length + 40 cm, 2 pieces". */
    public String formula(MaterialLine line) {
        Stream<String> formulas = Stream.of(line.amount(), line.width(), line.pieces()).filter(Objects::nonNull);
        boolean fixed = formulas.allMatch(f -> Formula.of(f).names().isEmpty());
        return fixed ? null : line.pieces() == null ? line.amount()
                : line.amount() + (line.width() == null ? "" : " × " + line.width()) + "; pieces: " + line.pieces();
    }

    /** What a working takes, as its kind lists it. */
    public Map<String, String> values(Sizing working) {
        Map<String, String> values = new LinkedHashMap<>();
        Stream.concat(working.kind().required().stream(), working.kind().optional().stream())
                .filter(working.values()::containsKey)
                .forEach(name -> values.put(SizingWords.label(name), working.values().get(name)));
        return values;
    }

    /** How long one student of the level whose times these are works at the bench on a piece of this size, at the usual pace. */
    public Duration bench(Size size) {
        Map<String, BigDecimal> repeats = pieces.get(size.name()).repeats();
        return sheet.steps().stream().filter(s -> s.kind().isOwnWork())
                .map(s -> times(s.student().usual(), repeats.getOrDefault(s.id(), BigDecimal.ONE)))
                .reduce(Duration.ZERO, Duration::plus);
    }

    /** Bench time of a level. */
    @TemplateData
    public record LevelTime(SkillLevel level, String words) {}

    /** The shortest and the longest size's bench time, as one text. */
    public String benchTime() {
        return benchTime(1);
    }

    /** The same for each level. */
    public List<LevelTime> benchTimes() {
        return Arrays.stream(SkillLevel.values()).map(level -> new LevelTime(level, benchTime(sheet.pace(level)))).toList();
    }

    private String benchTime(double pace) {
        List<String> times = sheet.sizes().stream().map(this::bench).sorted().map(time -> Formats.words(Duration.ofSeconds(Math.round(time.toSeconds() * pace)))).toList();
        String least = times.get(0);
        String most = times.get(times.size() - 1);
        return least.equals(most) ? least : least + " to " + most;
    }

    /** Time in which the whole class watches or does something together. */
    public Duration together() {
        return sum(s -> s.kind().isGathering());
    }

    /** Time in which something dries, cures or hangs. */
    public Duration waiting() {
        return sum(s -> s.kind().isUnattended());
    }

    private Duration sum(Predicate<Step> which) {
        return sheet.steps().stream().filter(which).map(Step::lasts).reduce(Duration.ZERO, Duration::plus);
    }

    public String sizeNames() {
        return sheet.sizes().stream().map(Size::name).collect(Collectors.joining("; "));
    }

    /** The titles of what a step follows, with gaps; null where it follows the step before it as usual. */
    public String follows(Step step) {
        if (step.after() == null) {
            return null;
        }
        return step.after().isEmpty() ? "Can start at any time"
                : "After " + step.after().stream().map(this::link).collect(Collectors.joining("; "));
    }

    private String link(Step.After after) {
        String title = "“" + sheet.step(after.step()).map(Step::title).orElse(after.step()) + "”";
        String least = after.least() == null || after.least().isZero() ? "" : ", " + gap("at least ", "as early as ", after.least());
        String most = after.most() == null ? "" : ", " + gap("at most ", "at the latest ", after.most());
        return title + least + most;
    }

    /** "at least 5 min later", "as early as 5 min before it ends". */
    private static String gap(String later, String before, Duration gap) {
        return gap.isNegative() ? before + Formats.words(gap.negated()) + " before it ends" : later + Formats.words(gap) + " later";
    }

    /** "3 min (2 to 5 min)", "20 min". */
    public String time(Step step) {
        if (step.kind() == StepKind.COLLECT) {
            return "after the last meeting";
        }
        if (step.student() == null) {
            return Formats.words(step.lasts()) + (step.atMost() == null ? "" : ", at most " + Formats.words(step.atMost()));
        }
        return "%s (%s to %s)%s".formatted(Formats.words(step.student().usual()), Formats.words(step.student().quick()),
                Formats.words(step.student().slow()), step.repeats() == null ? "" : " each time");
    }

    public String uses(Step step) {
        return step.tools().stream().map(t -> (t.each() == 1 ? t.tool() : t.each() + " × " + t.tool()) + (t.together() == 1 ? "" : " for " + t.together() + " students")).collect(Collectors.joining(", "));
    }

    /** How often a step is done in one piece: "66 times in Medium". */
    public String repeats(Step step) {
        return sheet.sizes().stream()
                .map(s -> Optional.ofNullable(pieces.get(s.name()).repeats().get(step.id())).map(n -> n.setScale(0, RoundingMode.HALF_UP) + " in " + s.name()))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }

    /** The picture of the piece itself: the one called cover, else the first; null where there is none. */
    public Picture cover() {
        return sheet.pictures().stream().filter(p -> p.name().equals("cover")).findFirst()
                .orElse(sheet.pictures().isEmpty() ? null : sheet.pictures().get(0));
    }

    public Picture picture(String name) {
        return sheet.pictures().stream().filter(p -> p.name().equals(name)).findFirst().orElse(null);
    }

    /** Pictures that no step shows. */
    public List<Picture> otherPictures() {
        return sheet.pictures().stream()
                .filter(p -> !p.equals(cover()) && sheet.steps().stream().noneMatch(s -> s.pictures().contains(p.name())))
                .toList();
    }

    public String src(Picture picture) {
        return "/projects/%d/pictures/%s".formatted(project.id(), picture.name());
    }

    private static Duration times(Duration time, BigDecimal repeats) {
        return Duration.ofSeconds(BigDecimal.valueOf(time.toSeconds()).multiply(repeats).setScale(0, RoundingMode.HALF_UP).longValue());
    }
}
