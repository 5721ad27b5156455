package benchful.plans.materials.kits;

import benchful.catalogue.MaterialSpec;
import benchful.classes.ClassFile;
import benchful.classes.Picks;
import benchful.core.SkillLevel;
import benchful.core.needs.Allowance;
import benchful.core.needs.Need;
import benchful.core.needs.NeedLine;
import benchful.core.needs.NeedRequest;
import benchful.core.needs.NeedsCalculator;
import benchful.core.needs.Take;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Unit;
import benchful.plans.materials.sizes.SizedPiece;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Asks what the class needs of each material. A material that is cut on any line is cut on all, of other classes too where
 * they are bought for together: an amount that is not said to be cut counts as one piece. Shared amounts carry no allowance unless their line says so.
 */
public final class ClassNeeds {
    private final ProjectSpec project;
    private final SkillLevel level;
    private final Map<String, SizedPiece> pieces;
    private final Map<String, MaterialSpec> catalogue;
    private final Set<String> cut;

    /** @param cut the materials that are cut to length */
    public ClassNeeds(ProjectSpec project, SkillLevel level, Map<String, SizedPiece> pieces, Map<String, MaterialSpec> catalogue, Set<String> cut) {
        this.cut = cut;
        this.project = project;
        this.level = level;
        this.pieces = pieces;
        this.catalogue = catalogue;
    }

    /** The materials that a class cuts to length. */
    public static Set<String> cut(ClassFile file) {
        Picks picks = new Picks(file.setup(), file.materials());
        return file.project().materials().stream().filter(line -> line.pieces() != null && line.width() == null)
                .flatMap(line -> Stream.concat(picks.possible(line).stream(), bySize(file, line))).collect(Collectors.toSet());
    }

    private static Stream<String> bySize(ClassFile file, MaterialLine line) {
        return file.project().sizes().stream().flatMap(size -> size.taken(line.material()).stream()).map(Size.Taken::use).filter(Objects::nonNull);
    }

    /**
     * By material, in the order of the project's lines; a material whose lines all failed is left out.
     *
     * @param common what is taken of what serves all
     */
    public Map<String, Need> needs(List<Seat> seats, List<Seat.Pick> common) {
        Map<String, List<Integer>> lines = new LinkedHashMap<>();
        for (int i = 0; i < project.materials().size(); i++) {
            for (String material : project.materials().get(i).shared() ? List.of(common.get(i).material()) : taken(i, seats)) {
                lines.computeIfAbsent(material, m -> new ArrayList<>()).add(i);
            }
        }
        Map<String, Need> needs = new LinkedHashMap<>();
        lines.forEach((name, all) -> unit(name, all).ifPresent(unit -> needs.put(name, need(name, unit, all, seats))));
        return needs;
    }

    /** The line's own material first, then the others as they are offered or met. */
    private List<String> taken(int i, List<Seat> seats) {
        List<String> taken = seats.stream().filter(s -> !without(s, i)).map(s -> s.material(i)).distinct().toList();
        return Stream.concat(project.materials().get(i).offered().stream().filter(taken::contains), taken.stream()).distinct().toList();
    }

    private boolean without(Seat seat, int i) {
        return project.size(seat.size()).filter(size -> size.without(project.materials().get(i).material())).isPresent();
    }

    private Need need(String material, Unit unit, List<Integer> lines, List<Seat> seats) {
        List<NeedLine> all = lines.stream().map(i -> line(i, material, unit, seats)).toList();
        Need need = NeedsCalculator.need(new NeedRequest(material, unit, all));
        return lines.stream().allMatch(i -> project.materials().get(i).lent()) ? need.asLent() : need;
    }

    private NeedLine line(int i, String material, Unit unit, List<Seat> seats) {
        MaterialLine line = project.materials().get(i);
        boolean inPieces = line.width() != null || cut.contains(material) && unit.dimension().equals(Dimension.LENGTH);
        if (!line.shared()) {
            List<Seat> takers = seats.stream().filter(seat -> seat.material(i).equals(material)).toList();
            return new NeedLine(takes(i, inPieces, unit, takers), null, allowance(line, material));
        }
        Optional<SizedPiece.Line> greatest = seats.stream().flatMap(seat -> sized(seat, i).stream())
                .max((a, b) -> a.amount().compareTo(b.amount()));
        if (greatest.isEmpty()) {
            return new NeedLine(List.of(), null, Allowance.none());
        }
        int servings = line.servings(Seat.makers(seats));
        Take whole = new Take(Take.Taker.SHARED, null, servings, greatest.get().each().in(unit), pieces(greatest.get()), greatest.get().rectangle(), line.grain());
        return inPieces ? new NeedLine(List.of(whole), null, sharedAllowance(line))
                : new NeedLine(List.of(), greatest.get().amount().in(unit).measurable(), servings, sharedAllowance(line));
    }

    private List<Take> takes(int i, boolean inPieces, Unit unit, List<Seat> seats) {
        Map<List<Object>, List<Seat>> groups = seats.stream().collect(
                Collectors.groupingBy(seat -> List.of(seat.taker(), seat.size()), LinkedHashMap::new, Collectors.toList()));
        List<Take> takes = new ArrayList<>();
        groups.values().forEach(group -> sized(group.get(0), i).ifPresent(sized -> takes.add(new Take(
                group.get(0).taker(), group.get(0).size(), group.size(), sized.each().in(unit), inPieces ? pieces(sized) : null,
                sized.rectangle(), project.materials().get(i).grain()))));
        return takes;
    }

    private static Integer pieces(SizedPiece.Line sized) {
        return sized.pieces() == null ? Integer.valueOf(sized.each().signum() > 0 ? 1 : 0) : sized.pieces();
    }

    private Optional<SizedPiece.Line> sized(Seat seat, int i) {
        return pieces.get(seat.size()).lines().stream().filter(line -> line.line() == i).findFirst();
    }

    private Optional<Unit> unit(String material, List<Integer> lines) {
        return Optional.ofNullable(catalogue.get(material)).map(m -> pieces(m.unit())).or(() -> pieces.values().stream()
                .flatMap(piece -> piece.lines().stream()).filter(line -> lines.contains(line.line())).map(line -> line.each().unit()).findFirst());
    }

    /** Things of which a piece is no round part, such as a dozen, are reckoned with by the piece. */
    private static Unit pieces(Unit unit) {
        return unit.dimension().equals(Dimension.COUNT) && !unit.ends() ? Unit.PIECE : unit;
    }

    private Allowance sharedAllowance(MaterialLine line) {
        return line.waste() == null ? Allowance.none() : new Allowance.Percentage(line.waste());
    }

    private Allowance allowance(MaterialLine line, String name) {
        MaterialSpec material = catalogue.get(name);
        BigDecimal waste = line.lent() ? BigDecimal.ZERO : line.waste() != null ? line.waste() : material == null ? BigDecimal.ZERO : material.waste(level);
        return material != null && material.confidence() != null
                ? new Allowance.Confidence(waste, material.confidence())
                : new Allowance.Percentage(waste);
    }
}
