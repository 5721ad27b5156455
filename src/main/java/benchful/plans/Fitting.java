package benchful.plans;

import benchful.catalogue.MaterialSheet;
import benchful.core.Fault;
import benchful.core.quantity.Dimension;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSheet;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whether what is taken in place of a line's own material is counted as the line says. What measures something else is a
 * fault, and the line's own is taken.
 */
final class Fitting {
    private final ProjectSheet project;
    private final Collection<SizedPiece> pieces;
    private final Map<String, MaterialSheet> catalogue;
    private final List<Fault> faults;

    Fitting(ProjectSheet project, Collection<SizedPiece> pieces, Map<String, MaterialSheet> catalogue, List<Fault> faults) {
        this.project = project;
        this.pieces = pieces;
        this.catalogue = catalogue;
        this.faults = faults;
    }

    /** @param picks by line */
    List<Seat.Pick> picks(List<Seat.Pick> picks) {
        return IntStream.range(0, picks.size()).mapToObj(i -> fits(i, picks.get(i).material()) ? picks.get(i) : own(i, picks.get(i))).toList();
    }

    private boolean fits(int i, String material) {
        MaterialSheet sheet = catalogue.get(material);
        return sheet == null || material.equals(project.materials().get(i).material()) || dimension(i).map(sheet.unit().dimension()::equals).orElse(true);
    }

    private Optional<Dimension> dimension(int i) {
        return pieces.stream().flatMap(p -> p.lines().stream()).filter(l -> l.line() == i).map(l -> l.each().dimension()).findFirst();
    }

    private Seat.Pick own(int i, Seat.Pick pick) {
        MaterialLine line = project.materials().get(i);
        String at = line.alternatives().contains(pick.material()) ? "/project/materials/" + i + "/alternatives" : "/class/instead";
        Fault fault = new Fault(at, "“%s” is counted by %s, but %s is asked of it here. It can't be taken for “%s”.".formatted(pick.material(),
                catalogue.get(pick.material()).unit().dimension().words().replaceFirst("^an? ", ""), dimension(i).orElseThrow().words(), line.material()));
        if (!faults.contains(fault)) {
            faults.add(fault);
        }
        return new Seat.Pick(line.material(), line.material(), null);
    }
}
