package benchful.stock;

import benchful.catalogue.Material;
import benchful.catalogue.StockPiece;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.web.Formats;
import benchful.web.Unusable;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Books that a class's material was cut: what was cut off leaves the stock, what is worth keeping comes back with its size,
 * and offcuts that were cut from are on the shelf no more. The pieces are reserved for the class and leave as they are packed.
 */
@ApplicationScoped
public class Offcuts {
    private final StockLedger ledger;
    private final Clock clock;

    Offcuts(StockLedger ledger, Clock clock) {
        this.ledger = ledger;
        this.clock = clock;
    }

    /**
     * Done twice it changes nothing.
     *
     * @param note what the class is called
     * @return false where it was booked before
     */
    @Transactional
    public boolean cut(long classId, long materialId, CutMaterial.Sizes sizes, String note) {
        Material material = ledger.locked(materialId);
        if (CutMaterial.of(classId, material).isPresent()) {
            return false;
        }
        Instant now = Instant.now(clock);
        take(material, classId, sizes.opened());
        ledger.cut(material, sum(material, sizes.opened()).minus(sizes.pieces()), Cause.ofClass(classId, "Cut: " + note));
        for (StockPiece kept : sizes.kept()) {
            ledger.offcut(material, kept.amount(), Cause.ofClass(classId, "Offcut of " + words(kept)));
            new Offcut(material, kept, classId, now).persist();
        }
        Quantity reserved = ledger.keep(material, classId, sizes.pieces(), Cause.ofClass(classId, "Its cut pieces"));
        new CutMaterial(classId, material, sizes.withReserved(reserved), now).persist();
        return true;
    }

    private static void take(Material material, long classId, List<StockPiece> opened) {
        List<Offcut> lying = new ArrayList<>(Offcut.lying(material));
        for (StockPiece piece : opened) {
            Optional<Offcut> used = lying.stream().filter(Offcut::readable).filter(o -> alike(o.piece(), piece)).findFirst();
            used.ifPresent(o -> o.usedBy = classId);
            used.ifPresent(lying::remove);
        }
    }

    /** To a hundredth of a millimetre: plans count in whole micrometres. */
    private static boolean alike(StockPiece a, StockPiece b) {
        return rounded(a.length()).equals(rounded(b.length()))
                && (a.width() == null ? b.width() == null : b.width() != null && rounded(a.width()).equals(rounded(b.width())));
    }

    private static Quantity rounded(Quantity length) {
        return length.in(Unit.MM).rounded(2, RoundingMode.HALF_UP);
    }

    /** What lies on the shelf of a material in pieces of known size. */
    @Transactional
    List<Offcut> lying(Material material) {
        return Offcut.lying(material);
    }

    /** Forgets an offcut that is not there any more; what there is in all, a count puts right. */
    @Transactional
    void forget(long materialId, long offcut) {
        Offcut.delete("id = ?1 and material.id = ?2 and usedBy is null", offcut, materialId);
    }

    /**
     * Takes a booked cut back, as if it had not been made.
     *
     * @return false where nothing is booked, or where something else was cut from one of its offcuts
     */
    @Transactional
    public boolean takeBack(long classId, long materialId) {
        Material material = ledger.locked(materialId);
        Optional<CutMaterial> done = CutMaterial.of(classId, material);
        List<Offcut> left = Offcut.leftBy(classId, material);
        if (done.isEmpty() || left.stream().anyMatch(o -> o.usedBy != null)) {
            return false;
        }
        CutMaterial.Sizes sizes = done.get().sizes();
        sizes.kept().forEach(kept -> ledger.offcut(material, kept.amount().times(-1), Cause.ofClass(classId, "Not cut after all: " + words(kept))));
        ledger.cut(material, sizes.pieces().minus(sum(material, sizes.opened())), Cause.ofClass(classId, "Not cut after all"));
        ledger.release(material, classId, sizes.reserved(), Cause.ofClass(classId, "Not cut after all"));
        Offcut.usedBy(classId, material).forEach(o -> o.usedBy = null);
        left.forEach(Offcut::delete);
        done.get().delete();
        return true;
    }

    /**
     * The pieces of known size that there are for some classes.
     *
     * @param opened by material, what was opened for them
     * @param known by material, the same and what else lies there
     * @param broken by class, why what was cut for it can't be counted with
     */
    public record Pieces(Map<Long, List<StockPiece>> opened, Map<Long, List<StockPiece>> known, Map<Long, Unusable> broken) {}

    @Transactional
    public Pieces pieces(Collection<Long> classIds) {
        Map<Long, List<StockPiece>> opened = new LinkedHashMap<>();
        Map<Long, List<StockPiece>> known = new LinkedHashMap<>();
        Map<Long, Unusable> broken = new HashMap<>();
        for (CutMaterial cut : CutMaterial.of(classIds)) {
            cut.broken().ifPresentOrElse(why -> broken.put(cut.classId, why), () -> {
                put(opened, cut.material, cut.sizes().opened());
                put(known, cut.material, cut.sizes().opened());
            });
        }
        Offcut.lying(classIds).stream().filter(Offcut::readable).forEach(o -> put(known, o.material, List.of(o.piece())));
        return new Pieces(opened, known, broken);
    }

    private static void put(Map<Long, List<StockPiece>> pieces, Material material, List<StockPiece> more) {
        pieces.computeIfAbsent(material.id(), m -> new ArrayList<>()).addAll(more);
    }

    private static Quantity sum(Material material, List<StockPiece> pieces) {
        return pieces.stream().map(StockPiece::amount).reduce(Quantity.zero(material.unit()), Quantity::plus);
    }

    private static String words(StockPiece piece) {
        return piece.width() == null ? Formats.measured(piece.length()) : Formats.words(piece.sheet());
    }
}
