package benchful.plans;

import benchful.catalogue.MaterialSheet;
import benchful.core.SkillLevel;
import benchful.core.needs.Allowance;
import benchful.core.needs.Need;
import benchful.core.needs.NeedLine;
import benchful.core.needs.NeedRequest;
import benchful.core.needs.NeedsCalculator;
import benchful.core.needs.Take;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Asks what the class needs of each material. A material that is cut on any line is cut on all, of other classes too where
 * they are bought for together: an amount that is not said to be cut counts as one piece. Shared amounts carry no allowance unless their line says so.
 */
final class ClassNeeds {
    private final ProjectSheet project;
    private final SkillLevel level;
    private final Map<String, SizedPiece> pieces;
    private final Map<String, MaterialSheet> catalogue;
    private final Set<String> cut;

    /** @param cut the materials that are cut to length */
    ClassNeeds(ProjectSheet project, SkillLevel level, Map<String, SizedPiece> pieces, Map<String, MaterialSheet> catalogue, Set<String> cut) {
        this.cut = cut;
        this.project = project;
        this.level = level;
        this.pieces = pieces;
        this.catalogue = catalogue;
    }

    /** The materials that a project cuts to length. */
    static Set<String> cut(ProjectSheet project) {
        return project.materials().stream().filter(line -> line.pieces() != null).map(MaterialLine::material).collect(Collectors.toSet());
    }

    /** By material, in the order of the project's lines; a material whose lines all failed is left out. */
    Map<String, Need> needs(List<Seat> seats) {
        Map<String, Need> needs = new LinkedHashMap<>();
        project.materials().stream().map(MaterialLine::material).distinct()
                .forEach(name -> unit(name).ifPresent(unit -> needs.put(name, need(name, unit, seats))));
        return needs;
    }

    private Need need(String material, Unit unit, List<Seat> seats) {
        List<NeedLine> lines = lines(material).mapToObj(i -> line(i, cut.contains(material), seats)).toList();
        return NeedsCalculator.need(new NeedRequest(material, unit, lines));
    }

    private NeedLine line(int i, boolean inPieces, List<Seat> seats) {
        MaterialLine line = project.materials().get(i);
        List<Take> takes = takes(i, inPieces, line.shared() ? List.of() : seats);
        if (!line.shared()) {
            return new NeedLine(takes, null, allowance(line, inPieces));
        }
        Optional<SizedPiece.Line> greatest = seats.stream().flatMap(seat -> sized(seat, i).stream())
                .max((a, b) -> a.amount().compareTo(b.amount()));
        if (greatest.isEmpty()) {
            return new NeedLine(List.of(), null, Allowance.none());
        }
        return inPieces
                ? new NeedLine(List.of(new Take(Take.Taker.SHARED, null, 1, greatest.get().each(), pieces(greatest.get()))), null, sharedAllowance(line))
                : new NeedLine(List.of(), greatest.get().amount(), sharedAllowance(line));
    }

    private List<Take> takes(int i, boolean inPieces, List<Seat> seats) {
        Map<List<Object>, List<Seat>> groups = seats.stream().collect(
                Collectors.groupingBy(seat -> List.of(seat.taker(), seat.size()), LinkedHashMap::new, Collectors.toList()));
        List<Take> takes = new ArrayList<>();
        groups.values().forEach(group -> sized(group.get(0), i).ifPresent(sized -> takes.add(new Take(
                group.get(0).taker(), group.get(0).size(), group.size(), sized.each(), inPieces ? pieces(sized) : null))));
        return takes;
    }

    private static Integer pieces(SizedPiece.Line sized) {
        return sized.pieces() == null ? Integer.valueOf(sized.each().signum() > 0 ? 1 : 0) : sized.pieces();
    }

    private Optional<SizedPiece.Line> sized(Seat seat, int i) {
        return pieces.get(seat.size()).lines().stream().filter(line -> line.line() == i).findFirst();
    }

    private IntStream lines(String material) {
        return IntStream.range(0, project.materials().size()).filter(i -> project.materials().get(i).material().equals(material));
    }

    private Optional<Unit> unit(String material) {
        MaterialSheet sheet = catalogue.get(material);
        if (sheet != null) {
            return Optional.of(sheet.unit());
        }
        return pieces.values().stream().flatMap(piece -> piece.lines().stream()).filter(line -> line.material().equals(material))
                .map(line -> line.each().unit()).findFirst();
    }

    private Allowance sharedAllowance(MaterialLine line) {
        return line.waste() == null ? Allowance.none() : new Allowance.Percentage(line.waste());
    }

    private Allowance allowance(MaterialLine line, boolean inPieces) {
        MaterialSheet material = catalogue.get(line.material());
        BigDecimal waste = line.waste() != null ? line.waste() : material == null ? BigDecimal.ZERO : waste(material);
        boolean counted = material != null && (inPieces || material.unit().dimension().equals(Dimension.COUNT));
        return counted && material.confidence() != null
                ? new Allowance.Confidence(waste, material.confidence())
                : new Allowance.Percentage(waste);
    }

    /** A level that is not given takes the allowance of the next less practised. */
    private BigDecimal waste(MaterialSheet material) {
        for (int i = level.ordinal(); i >= 0; i--) {
            BigDecimal waste = material.waste().get(SkillLevel.values()[i]);
            if (waste != null) {
                return waste;
            }
        }
        return BigDecimal.ZERO;
    }

    /** Amounts by what students chose. */
    static Map<String, Quantity> chosen(String material, List<Kit> kits) {
        Map<String, Quantity> chosen = new LinkedHashMap<>();
        kits.stream().flatMap(kit -> kit.contents().stream())
                .filter(content -> content.material().equals(material) && content.chosen() != null)
                .forEach(content -> chosen.merge(content.chosen(), content.amount(), Quantity::plus));
        return chosen;
    }
}
