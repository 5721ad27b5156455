package benchful.stock;

import benchful.catalogue.Material;
import benchful.catalogue.StockPiece;
import benchful.catalogue.StoredAmount;
import benchful.core.quantity.Quantity;
import benchful.web.StoredEntity;
import benchful.web.Unusable;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;

/**
 * A piece of known size that was left of a class's cutting and lies on the shelf, until another class is cut from it or it is
 * gone. It says how a part of the balance lies; how much there is, the movements say.
 */
@Entity
public class Offcut extends StoredEntity {
    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    Material material;

    StoredAmount length;
    StoredAmount width;
    long fromClass;
    Long usedBy;
    Instant keptAt;

    /** For the database only. */
    protected Offcut() {}

    Offcut(Material material, StockPiece piece, long fromClass, Instant now) {
        this.material = material;
        this.length = StoredAmount.of(piece.length());
        this.width = StoredAmount.of(piece.width());
        this.fromClass = fromClass;
        this.keptAt = now.truncatedTo(ChronoUnit.MICROS);
    }

    StockPiece piece() {
        return new StockPiece(read(length), read(width));
    }

    boolean readable() {
        try {
            return piece() != null;
        } catch (Unusable e) {
            return false;
        }
    }

    private Quantity read(StoredAmount size) {
        return StoredAmount.read(size, "an offcut of “%s”".formatted(material.name()), "/materials/" + material.id());
    }

    /** What lies on the shelf of a material, the oldest first. */
    static List<Offcut> lying(Material material) {
        return list("material = ?1 and usedBy is null order by id", material);
    }

    /** What lies on the shelf of all materials, but for what these classes left. */
    static List<Offcut> lying(Collection<Long> without) {
        return without.isEmpty() ? list("usedBy is null order by id") : list("usedBy is null and fromClass not in ?1 order by id", without);
    }

    static List<Offcut> leftBy(long classId, Material material) {
        return list("fromClass = ?1 and material = ?2", classId, material);
    }

    static List<Offcut> usedBy(long classId, Material material) {
        return list("usedBy = ?1 and material = ?2", classId, material);
    }
}
