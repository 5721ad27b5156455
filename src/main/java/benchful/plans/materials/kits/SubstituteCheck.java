package benchful.plans.materials.kits;

import benchful.catalogue.MaterialSpec;
import benchful.core.Fault;
import benchful.core.quantity.Dimension;
import benchful.plans.materials.sizes.SizedPiece;
import benchful.projects.MaterialLine;
import benchful.projects.ProjectSpec;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whether what is taken in place of a line's own material is counted as the line says. What measures something else is a
 * fault, and the line's own is taken. What is not in the catalogue is counted as on the first line that takes it.
 */
public final class SubstituteCheck {
    private final ProjectSpec project;
    private final Collection<SizedPiece> pieces;
    private final List<Fault> faults;
    private final Map<String, Dimension> counted = new HashMap<>();

    public SubstituteCheck(ProjectSpec project, Collection<SizedPiece> pieces, Map<String, MaterialSpec> catalogue, List<Fault> faults) {
        this.project = project;
        this.pieces = pieces;
        this.faults = faults;
        catalogue.forEach((name, sheet) -> counted.put(name, sheet.unit().dimension()));
        pieces.stream().flatMap(p -> p.lines().stream()).forEach(line -> counted.putIfAbsent(line.material(), line.each().dimension()));
    }

    /** @param picks by line */
    public List<Seat.Pick> picks(List<Seat.Pick> picks) {
        return IntStream.range(0, picks.size()).mapToObj(i -> fits(i, picks.get(i).material()) ? picks.get(i) : own(i, picks.get(i))).toList();
    }

    private boolean fits(int i, String material) {
        return material.equals(project.materials().get(i).material())
                || dimension(i).map(wanted -> counted.computeIfAbsent(material, m -> wanted).equals(wanted)).orElse(true);
    }

    private Optional<Dimension> dimension(int i) {
        return pieces.stream().flatMap(p -> p.lines().stream()).filter(l -> l.line() == i).map(l -> l.each().dimension()).findFirst();
    }

    private Seat.Pick own(int i, Seat.Pick pick) {
        MaterialLine line = project.materials().get(i);
        String at = line.alternatives().contains(pick.material()) ? "/project/materials/" + i + "/alternatives" : "/class/instead";
        Fault fault = new Fault(at, "“%s” is counted by %s, but %s is asked of it here. It can't be taken for “%s”.".formatted(pick.material(),
                counted.get(pick.material()).words().replaceFirst("^an? ", ""), dimension(i).orElseThrow().words(), line.material()));
        if (!faults.contains(fault)) {
            faults.add(fault);
        }
        return new Seat.Pick(line.material(), line.material(), null);
    }
}
