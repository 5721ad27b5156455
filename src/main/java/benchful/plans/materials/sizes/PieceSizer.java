package benchful.plans.materials.sizes;

import benchful.catalogue.MaterialSpec;
import benchful.core.Fault;
import benchful.core.formula.Formula;
import benchful.core.formula.FormulaException;
import benchful.core.quantity.Container;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Extent;
import benchful.core.quantity.MeasuringRange;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import benchful.core.sizing.Strand;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import benchful.projects.Sizing;
import benchful.projects.SizingKind;
import benchful.projects.Step;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Works out one piece of a project in one size: its workings in their order, then its material lines and the repeats of its
 * steps, each a formula of the size's measures and of what was worked out before.
 *
 * <p>What fails is said once, where it fails; formulas that ask for an answer of a failed working stay silent.
 */
public final class PieceSizer {
    private static final BigDecimal MOST_PIECES = BigDecimal.valueOf(10_000);

    private final ProjectSpec project;
    private final Map<String, MaterialSpec> catalogue;
    private final Map<String, Quantity> values;
    private final Map<String, List<Sentence>> reasons = new LinkedHashMap<>();
    private final Map<String, Strand> strands = new LinkedHashMap<>();
    private final List<Fault> faults = new ArrayList<>();
    private final Set<String> failed = new LinkedHashSet<>();

    private PieceSizer(ProjectSpec project, Size size, Map<String, MaterialSpec> catalogue) {
        this.project = project;
        this.catalogue = catalogue;
        this.values = new LinkedHashMap<>(size.measures());
    }

    /** Without a catalogue: any kind of amount will do on a material line. */
    public static SizedPiece size(ProjectSpec project, Size size) {
        return size(project, size, Map.of());
    }

    /** @param catalogue materials by name; a line's amount must be of the kind its material is counted in */
    public static SizedPiece size(ProjectSpec project, Size size, Map<String, MaterialSpec> catalogue) {
        PieceSizer sizer = new PieceSizer(project, size, catalogue);
        sizer.work();
        List<SizedPiece.Line> lines = sizer.lines(size);
        Map<String, BigDecimal> repeats = sizer.repeats();
        return new SizedPiece(size.name(), sizer.values, sizer.reasons, sizer.strands, lines, repeats, sizer.faults);
    }

    private void work() {
        for (int i = 0; i < project.sizing().size(); i++) {
            Sizing sizing = project.sizing().get(i);
            String at = "/sizing/" + i;
            int before = faults.size();
            SizingInputs inputs = inputs(sizing, at);
            boolean whole = faults.size() == before && !failed.contains(sizing.name());
            if (whole) {
                answer(sizing, inputs, at);
            }
        }
    }

    private void answer(Sizing sizing, SizingInputs inputs, String at) {
        try {
            SizingAnswers answers = SizingWork.of(sizing.kind(), inputs);
            answers.values().forEach((name, value) -> values.put(sizing.name() + "_" + name, value));
            reasons.put(sizing.name(), answers.reasons());
            answers.strand().ifPresent(strand -> strands.put(sizing.name(), strand));
        } catch (IllegalArgumentException e) {
            failed.add(sizing.name());
            faults.add(new Fault(at, e.getMessage()));
        }
    }

    private SizingInputs inputs(Sizing sizing, String at) {
        Map<String, Quantity> given = new LinkedHashMap<>();
        sizing.values().forEach((name, formula) -> value(sizing, at, name, formula).ifPresent(v -> given.put(name, v)));
        sizing.kind().required().stream().filter(name -> !sizing.values().containsKey(name)).forEach(name ->
                fail(sizing, at + "/values/" + name, "The %s needs a value for “%s”.".formatted(word(sizing), name)));
        List<SizingInputs.Bead> beads = new ArrayList<>();
        for (int j = 0; j < sizing.beads().size(); j++) {
            Sizing.Bead bead = sizing.beads().get(j);
            formula(at + "/beads/" + j + "/size", bead.size(), Dimension.LENGTH, sizing).ifPresent(size ->
                    beads.add(new SizingInputs.Bead(bead.bead(), size, bead.count() == null ? 1 : bead.count())));
        }
        return new SizingInputs(given, beads);
    }

    private Optional<Quantity> value(Sizing sizing, String at, String name, String formula) {
        String pointer = at + "/values/" + name;
        if (!sizing.kind().required().contains(name) && !sizing.kind().optional().contains(name)) {
            fail(sizing, pointer, "A %s takes no “%s”. It takes %s; and if wanted %s.".formatted(word(sizing), name,
                    String.join(", ", sizing.kind().required()), String.join(", ", sizing.kind().optional())));
            return Optional.empty();
        }
        return formula(pointer, formula, SizingKind.dimension(name), sizing);
    }

    private Optional<Quantity> formula(String pointer, String formula, Dimension wanted, Sizing sizing) {
        Optional<Quantity> value = formula(pointer, formula, wanted);
        if (value.isEmpty()) {
            failed.add(sizing.name());
        }
        return value;
    }

    private static boolean runs(MaterialSpec material) {
        return material != null && material.unit().runs();
    }

    /** So long a piece of it, or an area. */
    private Optional<Quantity> offTheRoll(String pointer, String written, MaterialSpec material) {
        Optional<Quantity> amount = formula(pointer, written, null).map(q -> q.sized(material.unit()));
        amount.filter(q -> !q.dimension().equals(Dimension.AREA)).ifPresent(q -> faults.add(new Fault(pointer,
                "In “%s”: it gives %s, but a length off the roll is needed here.".formatted(written, q.dimension().words()))));
        return amount.filter(q -> q.dimension().equals(Dimension.AREA));
    }

    private Optional<Quantity> formula(String pointer, String written, Dimension wanted) {
        return formula(pointer, written, wanted, values);
    }

    /** Where a material is counted in sheets, “2 sheets” is an amount of it. */
    private Map<String, Quantity> counting(MaterialSpec material) {
        if (material == null || material.unit().counted() == null || runs(material)) {
            return values;
        }
        Map<String, Quantity> known = new LinkedHashMap<>();
        Container container = material.unit().counted().container();
        Stream.of(container.one(), container.many()).forEach(word -> known.put(word, Quantity.of(1, material.unit())));
        known.putAll(values);
        return known;
    }

    private Optional<Quantity> formula(String pointer, String written, Dimension wanted, Map<String, Quantity> known) {
        try {
            Formula formula = Formula.of(written);
            if (formula.names().stream().anyMatch(this::lost)) {
                return Optional.empty();
            }
            return Optional.of(MeasuringRange.bounded(wanted == null ? formula.evaluate(known) : formula.evaluate(known, wanted)));
        } catch (FormulaException | IllegalArgumentException e) {
            faults.add(new Fault(pointer, e.getMessage()));
            return Optional.empty();
        } catch (ArithmeticException e) {
            faults.add(new Fault(pointer, "In “%s”: this comes to more than can be reckoned with.".formatted(written)));
            return Optional.empty();
        }
    }

    private boolean lost(String name) {
        return !values.containsKey(name) && failed.stream().anyMatch(working -> name.startsWith(working + "_"));
    }

    /** What a size takes none of is left out. */
    private List<SizedPiece.Line> lines(Size size) {
        List<SizedPiece.Line> lines = new ArrayList<>();
        for (int i = 0; i < project.materials().size(); i++) {
            if (!size.without(project.materials().get(i).material())) {
                line(i, project.materials().get(i)).filter(line -> alike(line, lines)).ifPresent(lines::add);
            }
        }
        return lines;
    }

    /** Amounts of one material are added up, so its lines must be of one kind; the first says which. */
    private boolean alike(SizedPiece.Line line, List<SizedPiece.Line> before) {
        Optional<SizedPiece.Line> other = before.stream().filter(l -> l.material().equals(line.material()))
                .filter(l -> !l.each().dimension().equals(line.each().dimension())).findFirst();
        other.ifPresent(l -> faults.add(new Fault("/materials/" + line.line() + "/amount", "This is %s, but line %d takes “%s” as %s. Give both alike."
                .formatted(line.each().dimension().words(), l.line() + 1, line.material(), l.each().dimension().words()))));
        return other.isEmpty();
    }

    private Optional<SizedPiece.Line> line(int i, MaterialLine line) {
        String at = "/materials/" + i;
        MaterialSpec material = catalogue.get(line.material());
        if (line.width() != null && line.pieces() != null) {
            return rectangle(i, line, material);
        }
        boolean cut = line.pieces() != null;
        Dimension wanted = material != null ? material.unit().dimension() : cut ? Dimension.LENGTH : null;
        Optional<Quantity> each = (runs(material) ? offTheRoll(at + "/amount", line.amount(), material) : formula(at + "/amount", line.amount(), wanted, counting(material)))
                .filter(q -> notNegative(at + "/amount", q));
        if (!cut) {
            return each.map(q -> new SizedPiece.Line(i, line.material(), in(material, q), null));
        }
        if (wanted != null && !wanted.equals(Dimension.LENGTH)) {
            faults.add(new Fault(at + "/pieces", "“%s” is counted by %s and can't be cut to length. Leave the pieces out."
                    .formatted(line.material(), wanted.words().replaceFirst("^an? ", ""))));
            return Optional.empty();
        }
        Optional<Integer> pieces = formula(at + "/pieces", line.pieces(), Dimension.COUNT).flatMap(q -> whole(at + "/pieces", q));
        return each.flatMap(q -> pieces.map(n -> new SizedPiece.Line(i, line.material(), in(material, q), n)));
    }

    private Optional<SizedPiece.Line> rectangle(int i, MaterialLine line, MaterialSpec material) {
        String at = "/materials/" + i;
        if (material != null && !material.unit().dimension().equals(Dimension.AREA)) {
            faults.add(new Fault(at + "/width", "“%s” is counted by %s; rectangles are cut from what is counted by area, such as sheets of a size."
                    .formatted(line.material(), material.unit().dimension().words().replaceFirst("^an? ", ""))));
            return Optional.empty();
        }
        Optional<Quantity> length = formula(at + "/amount", line.amount(), Dimension.LENGTH);
        Optional<Quantity> width = formula(at + "/width", line.width(), Dimension.LENGTH);
        Optional<Integer> pieces = formula(at + "/pieces", line.pieces(), Dimension.COUNT).flatMap(q -> whole(at + "/pieces", q));
        return length.flatMap(l -> width.flatMap(w -> extent(at + "/width", l, w)))
                .flatMap(e -> pieces.map(n -> new SizedPiece.Line(i, line.material(), material == null ? e.area().in(Unit.CM2) : in(material, e.area()), n, e)));
    }

    private Optional<Extent> extent(String at, Quantity length, Quantity width) {
        try {
            return Optional.of(new Extent(length, width));
        } catch (IllegalArgumentException e) {
            faults.add(new Fault(at, e.getMessage()));
            return Optional.empty();
        }
    }

    private boolean notNegative(String at, Quantity q) {
        if (q.signum() < 0) {
            faults.add(new Fault(at, Sentence.of("This comes to %s; an amount can't be negative.", q).toString()));
        }
        return q.signum() >= 0;
    }

    private Optional<Integer> whole(String at, Quantity q) {
        BigDecimal up = q.base().setScale(0, RoundingMode.CEILING);
        if (up.signum() < 0 || up.compareTo(MOST_PIECES) > 0) {
            faults.add(new Fault(at, "This comes to %s pieces; it must be from 0 to %s.".formatted(up, MOST_PIECES)));
            return Optional.empty();
        }
        return Optional.of(up.intValueExact());
    }

    private static Quantity in(MaterialSpec material, Quantity q) {
        return material == null ? q : q.in(material.unit());
    }

    private Map<String, BigDecimal> repeats() {
        Map<String, BigDecimal> repeats = new LinkedHashMap<>();
        for (int i = 0; i < project.steps().size(); i++) {
            Step step = project.steps().get(i);
            String at = "/steps/" + i + "/repeats";
            if (step.repeats() != null) {
                formula(at, step.repeats(), Dimension.COUNT).filter(q -> notNegative(at, q)).ifPresent(q -> repeats.put(step.id(), q.measurable().base()));
            }
        }
        return repeats;
    }

    private void fail(Sizing sizing, String pointer, String detail) {
        failed.add(sizing.name());
        faults.add(new Fault(pointer, detail));
    }

    private static String word(Sizing sizing) {
        return sizing.kind().name().toLowerCase(Locale.ROOT);
    }
}
