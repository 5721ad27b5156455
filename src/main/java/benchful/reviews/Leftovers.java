package benchful.reviews;

import benchful.catalogue.Material;
import benchful.core.quantity.Quantity;
import benchful.stock.StockLedger;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Brings what a review says was left of a class back to the shelf, once, however often it is asked for. Only what was packed for the
 * class can come back: what was not packed on its list was never taken from the shelf.
 */
@ApplicationScoped
class Leftovers {
    private final StockLedger ledger;

    Leftovers(StockLedger ledger) {
        this.ledger = ledger;
    }

    /**
     * What was left of one material.
     *
     * @param left as the review says
     * @param due how much of it belongs back on the shelf; less than what was left where less was packed
     * @param back how much is back there already
     */
    @TemplateData
    public record Line(long material, String name, Quantity left, Quantity due, Quantity back) {
        /** Whether the shelf is to be changed. */
        public boolean open() {
            return due.compareTo(back) != 0;
        }

        /** Whether less was packed than is said to be left. */
        public boolean unpacked() {
            return due.compareTo(left) < 0;
        }

        public String words() {
            return Formats.withUnit(left) + " of " + name;
        }
    }

    /** Of all materials of the catalogue that something is said of, or is back of, by their names. */
    @Transactional
    List<Line> of(Review review) {
        long classId = review.craftClass().id();
        Map<Long, BigDecimal> packed = ledger.packed(classId);
        Map<Long, BigDecimal> back = ledger.leftOver(classId);
        Map<String, ReviewSpec.MaterialNote> notes = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        notes.putAll(review.sheet().materials());
        return Stream.concat(Material.named(notes.keySet()).stream(), Material.<Material>list("id in ?1", back.keySet()).stream()).distinct()
                .map(m -> line(m, left(m, notes.get(m.name())), packed.getOrDefault(m.id(), BigDecimal.ZERO), back.getOrDefault(m.id(), BigDecimal.ZERO)))
                .filter(line -> line.left().signum() > 0 || line.back().signum() > 0).toList();
    }

    private static Line line(Material m, Quantity left, BigDecimal packed, BigDecimal back) {
        Quantity most = m.shown(packed);
        return new Line(m.id(), m.name(), left, left.compareTo(most) > 0 ? most : left, m.shown(back));
    }

    /** In the unit in which the material is counted now; nothing where it measures something else by now. */
    private static Quantity left(Material m, ReviewSpec.MaterialNote note) {
        Quantity left = note == null || note.left() == null ? null : note.left().sized(m.unit());
        return left == null || !left.dimension().equals(m.unit().dimension()) ? Quantity.zero(m.unit()) : left.in(m.unit()).measurable();
    }

    @Transactional
    void putBack(Review review) {
        of(review).stream().filter(Line::open)
                .forEach(line -> ledger.leave(line.material(), review.craftClass().id(), line.due(), "Left over: " + review.craftClass().title()));
    }
}
