package benchful.plans;

import benchful.catalogue.MaterialSheet;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Packs the kits: each gets what its size takes of every packed line, with what its student chose. */
final class KitPacker {
    private final ProjectSheet project;
    private final Map<String, SizedPiece> pieces;
    private final Map<String, MaterialSheet> catalogue;

    KitPacker(ProjectSheet project, Map<String, SizedPiece> pieces, Map<String, MaterialSheet> catalogue) {
        this.project = project;
        this.pieces = pieces;
        this.catalogue = catalogue;
    }

    List<Kit> pack(List<Seat> seats) {
        List<Kit> kits = new ArrayList<>();
        for (Seat seat : seats) {
            List<Kit.Content> contents = pieces.get(seat.size()).lines().stream()
                    .filter(line -> project.materials().get(line.line()).packed() && line.amount().signum() > 0)
                    .map(line -> content(line, seat))
                    .toList();
            kits.add(new Kit(kits.size() + 1, seat.taker(), seat.title(), seat.name(), seat.seat(), seat.size(), contents, mass(contents)));
        }
        return kits;
    }

    /** What is laid out for all: shared amounts once, unpacked ones for all who take them. */
    List<Kit.Content> bench(List<Seat> seats) {
        List<Kit.Content> bench = new ArrayList<>();
        for (int i = 0; i < project.materials().size(); i++) {
            if (!project.materials().get(i).packed()) {
                laid(i, seats).ifPresent(bench::add);
            }
        }
        return bench;
    }

    private Optional<Kit.Content> laid(int i, List<Seat> seats) {
        MaterialLine line = project.materials().get(i);
        List<SizedPiece.Line> taken = seats.stream().flatMap(seat -> pieces.get(seat.size()).lines().stream().filter(l -> l.line() == i)).toList();
        Optional<Quantity> amount = line.shared()
                ? taken.stream().map(SizedPiece.Line::amount).max(Quantity::compareTo)
                : taken.stream().map(SizedPiece.Line::amount).reduce(Quantity::plus);
        return amount.filter(q -> q.signum() > 0).map(q -> new Kit.Content(line.material(), q, null, null, null, null, line.note()));
    }

    private Kit.Content content(SizedPiece.Line line, Seat seat) {
        MaterialLine sheet = project.materials().get(line.line());
        String chosen = sheet.choice() == null ? null : seat.choices().get(line.material());
        return new Kit.Content(line.material(), line.amount(), line.pieces(), line.pieces() == null ? null : line.each(),
                sheet.choice(), chosen, sheet.note());
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
        MaterialSheet material = catalogue.get(content.material());
        return Optional.ofNullable(material).map(MaterialSheet::unitMass)
                .map(each -> each.in(Unit.G).times(content.amount().in(material.unit()).amount()));
    }
}
