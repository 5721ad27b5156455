package benchful.plans.materials.kits;

import benchful.catalogue.MaterialSpec;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.plans.materials.sizes.SizedPiece;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Packs the kits: each gets what its size takes of every packed line, with what its student chose. */
public final class KitFiller {
    private final ProjectSpec project;
    private final Map<String, SizedPiece> pieces;
    private final Map<String, MaterialSpec> catalogue;

    public KitFiller(ProjectSpec project, Map<String, SizedPiece> pieces, Map<String, MaterialSpec> catalogue) {
        this.project = project;
        this.pieces = pieces;
        this.catalogue = catalogue;
    }

    public List<Kit> pack(List<Seat> seats) {
        List<Kit> kits = new ArrayList<>();
        for (Seat seat : seats) {
            List<Kit.Content> contents = contents(seat, MaterialLine::packed);
            List<Kit.Content> bench = contents(seat, line -> !line.packed() && !line.shared());
            kits.add(new Kit(kits.size() + 1, seat.taker(), seat.title(), seat.name(), seat.seat(), seat.size(), contents, bench, mass(contents)));
        }
        return kits;
    }

    private List<Kit.Content> contents(Seat seat, Predicate<MaterialLine> which) {
        return pieces.get(seat.size()).lines().stream()
                .filter(line -> which.test(project.materials().get(line.line())) && line.amount().signum() > 0)
                .map(line -> content(line, seat))
                .toList();
    }

    /**
     * What is laid out for all: shared amounts once, unpacked ones for all who take them.
     *
     * @param common what is taken of what serves all
     */
    public List<Kit.Content> bench(List<Seat> seats, List<Seat.Pick> common) {
        List<Kit.Content> bench = new ArrayList<>();
        for (int i = 0; i < project.materials().size(); i++) {
            MaterialLine line = project.materials().get(i);
            if (line.shared()) {
                laid(line, common.get(i), amounts(i, seats).max(Quantity::compareTo).map(q -> q.times(line.servings(Seat.makers(seats))))).ifPresent(bench::add);
            } else if (!line.packed()) {
                unpacked(i, line, seats).forEach(bench::add);
            }
        }
        return bench;
    }

    /** By the material that is taken. */
    private Stream<Kit.Content> unpacked(int i, MaterialLine line, List<Seat> seats) {
        Map<String, List<Seat>> takers = seats.stream().collect(Collectors.groupingBy(s -> s.material(i), LinkedHashMap::new, Collectors.toList()));
        return takers.values().stream()
                .flatMap(group -> laid(line, group.get(0).picks().get(i), amounts(i, group).reduce(Quantity::plus)).stream());
    }

    private Stream<Quantity> amounts(int i, List<Seat> seats) {
        return seats.stream().flatMap(seat -> pieces.get(seat.size()).lines().stream().filter(l -> l.line() == i)).map(SizedPiece.Line::amount);
    }

    private Optional<Kit.Content> laid(MaterialLine line, Seat.Pick pick, Optional<Quantity> amount) {
        return amount.filter(q -> q.signum() > 0)
                .map(q -> new Kit.Content(pick.material(), counted(pick.material(), q), null, null, null, null, null, pick.insteadOf(), line.note()));
    }

    private Kit.Content content(SizedPiece.Line line, Seat seat) {
        MaterialLine sheet = project.materials().get(line.line());
        Seat.Pick pick = seat.picks().get(line.line());
        return new Kit.Content(pick.material(), counted(pick.material(), line.amount()), line.pieces(), line.pieces() == null ? null : line.each().measurable(), line.rectangle(),
                sheet.choice(), pick.chosen(), pick.insteadOf(), sheet.note());
    }

    private Quantity counted(String material, Quantity amount) {
        MaterialSpec sheet = catalogue.get(material);
        return (sheet == null || !sheet.unit().dimension().equals(amount.dimension()) ? amount : amount.in(sheet.unit())).measurable();
    }

    private Quantity mass(List<Kit.Content> contents) {
        Quantity mass = Quantity.zero(Unit.G);
        for (Kit.Content content : contents) {
            Optional<Quantity> part = mass(content);
            if (part.isEmpty()) {
                return null;
            }
            mass = mass.plus(part.get());
        }
        return mass;
    }

    private Optional<Quantity> mass(Kit.Content content) {
        if (content.amount().dimension().equals(Dimension.MASS)) {
            return Optional.of(content.amount().in(Unit.G));
        }
        MaterialSpec material = catalogue.get(content.material());
        return Optional.ofNullable(material).map(MaterialSpec::unitMass).filter(each -> each.dimension().equals(Dimension.MASS))
                .map(each -> each.in(Unit.G).times(content.amount().in(material.unit()).amount()));
    }
}
