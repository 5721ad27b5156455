package benchful.stock;

import benchful.catalogue.Material;
import benchful.catalogue.StockPiece;
import benchful.core.quantity.Quantity;
import benchful.web.StoredEntity;
import benchful.web.Unusable;
import benchful.web.forms.Stored;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** A material that was cut for a class: from what, and what was left. It is written once, so that a cut is booked once. */
@Entity
public class CutMaterial extends StoredEntity {
    long classId;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    Material material;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<Sizes> sizes;

    Instant cutAt;

    /**
     * @param opened the lengths or sheets that were cut
     * @param kept the offcuts that were put on the shelf
     * @param pieces how much of what was opened went into the class's pieces
     * @param reserved how much of that was reserved for the class only then; null for nothing
     */
    public record Sizes(List<StockPiece> opened, List<StockPiece> kept, Quantity pieces, Quantity reserved) {
        public Sizes {
            opened = List.copyOf(opened);
            kept = List.copyOf(kept);
        }

        Sizes withReserved(Quantity amount) {
            return new Sizes(opened, kept, pieces, amount);
        }
    }

    /** For the database only. */
    protected CutMaterial() {}

    CutMaterial(long classId, Material material, Sizes sizes, Instant now) {
        this.classId = classId;
        this.material = material;
        this.sizes = Stored.of(sizes);
        this.cutAt = now.truncatedTo(ChronoUnit.MICROS);
    }

    public String material() {
        return material.name();
    }

    public long materialId() {
        return material.id();
    }

    public Sizes sizes() {
        return sizes.read("what was cut of “%s” for this class".formatted(material.name()), null);
    }

    /** Why it can't be read; nothing where it can. */
    Optional<Unusable> broken() {
        try {
            sizes();
            return Optional.empty();
        } catch (Unusable e) {
            return Optional.of(e);
        }
    }

    public Instant cutAt() {
        return cutAt;
    }

    public static List<CutMaterial> of(Collection<Long> classIds) {
        return classIds.isEmpty() ? List.of() : list("from CutMaterial c join fetch c.material where c.classId in ?1 order by c.id", classIds);
    }

    static Optional<CutMaterial> of(long classId, Material material) {
        return find("classId = ?1 and material = ?2", classId, material).firstResultOptional();
    }
}
