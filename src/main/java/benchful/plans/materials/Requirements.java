package benchful.plans.materials;

import benchful.catalogue.MaterialSpec;
import benchful.classes.ClassFile;
import benchful.core.Fault;
import benchful.core.needs.Need;
import benchful.core.needs.Take;
import benchful.core.quantity.Sentence;
import benchful.plans.materials.cutting.ShoppingPlanner;
import benchful.plans.materials.kits.ClassNeeds;
import benchful.plans.materials.kits.Kit;
import benchful.plans.materials.kits.KitFiller;
import benchful.plans.materials.kits.Seat;
import benchful.plans.materials.kits.Seating;
import benchful.plans.materials.kits.SubstituteCheck;
import benchful.plans.materials.sizes.PieceSizer;
import benchful.plans.materials.sizes.SizedPiece;
import benchful.projects.ProjectSpec;
import benchful.projects.Size;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a class takes, before stock and suppliers are asked.
 *
 * @param sizes those somebody takes, in the project's order
 * @param needs by material, in the order of the project's lines
 * @param faults what could not be computed; pointers are into the class file
 */
public record Requirements(
        List<MaterialsPlan.SizeTaken> sizes, List<Kit> kits, List<Kit.Content> bench, Map<String, Need> needs, List<Fault> faults, List<Sentence> warnings) {

    public Requirements {
        sizes = List.copyOf(sizes);
        kits = List.copyOf(kits);
        bench = List.copyOf(bench);
        needs = Collections.unmodifiableMap(new LinkedHashMap<>(needs));
        faults = List.copyOf(faults);
        warnings = List.copyOf(warnings);
    }

    /** Whether a material comes back after the class. */
    public boolean lends(String material) {
        return needs.containsKey(material) && needs.get(material).lent();
    }

    /** The same, with other words on its kits. */
    public Requirements withKits(List<Kit> others) {
        return new Requirements(sizes, others, bench, needs, faults, warnings);
    }

    public static Requirements of(ClassFile file) {
        return of(file, ClassNeeds.cut(file));
    }

    /** @param cut the materials that are cut to length, here or for another class that is bought for together */
    public static Requirements of(ClassFile file, Set<String> cut) {
        Map<String, MaterialSpec> catalogue = ShoppingPlanner.byName(file.materials());
        Seating seating = new Seating(file.project(), file.setup(), file.materials());
        List<Fault> faults = new ArrayList<>(seating.faults());
        Map<String, SizedPiece> pieces = pieces(file.project(), seating.seats(), catalogue, faults);
        SubstituteCheck fitting = new SubstituteCheck(file.project(), pieces.values(), catalogue, faults);
        List<Seat> seats = seating.seats().stream().map(s -> s.of(fitting.picks(s.picks()))).toList();
        List<Seat.Pick> common = fitting.picks(seating.common());
        KitFiller packer = new KitFiller(file.project(), pieces, catalogue);
        ClassNeeds needs = new ClassNeeds(file.project(), file.setup().level(), pieces, catalogue, cut);
        return new Requirements(sizes(seats, pieces), packer.pack(seats), packer.bench(seats, common), needs(needs, seats, common, faults), faults, seating.warnings());
    }

    private static Map<String, SizedPiece> pieces(ProjectSpec project, List<Seat> seats, Map<String, MaterialSpec> catalogue, List<Fault> faults) {
        Map<String, SizedPiece> pieces = new LinkedHashMap<>();
        for (Size size : project.sizes()) {
            if (seats.stream().anyMatch(seat -> seat.size().equals(size.name()))) {
                SizedPiece piece = PieceSizer.size(project, size, catalogue);
                pieces.put(size.name(), piece);
                piece.faults().stream().map(f -> new Fault("/project" + f.pointer(), f.detail())).filter(f -> !faults.contains(f)).forEach(faults::add);
            }
        }
        return pieces;
    }

    private static Map<String, Need> needs(ClassNeeds needs, List<Seat> seats, List<Seat.Pick> common, List<Fault> faults) {
        try {
            return needs.needs(seats, common);
        } catch (IllegalArgumentException e) {
            faults.add(new Fault("/materials", e.getMessage()));
            return Map.of();
        } catch (ArithmeticException e) {
            faults.add(new Fault("/materials", "The amounts of the class are too large to reckon with. Check its material lines and the number of students."));
            return Map.of();
        }
    }

    private static List<MaterialsPlan.SizeTaken> sizes(List<Seat> seats, Map<String, SizedPiece> pieces) {
        return pieces.values().stream().map(piece -> new MaterialsPlan.SizeTaken(piece.size(), count(seats, piece, Take.Taker.STUDENT),
                count(seats, piece, Take.Taker.DEMONSTRATION), count(seats, piece, Take.Taker.SPARE), piece)).toList();
    }

    private static int count(List<Seat> seats, SizedPiece piece, Take.Taker taker) {
        return (int) seats.stream().filter(s -> s.size().equals(piece.size()) && s.taker() == taker).count();
    }
}
