package benchful.packing;

import benchful.catalogue.Material;
import benchful.catalogue.StoredAmount;
import benchful.core.quantity.Quantity;
import benchful.web.StoredEntity;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/** One material ticked in one kit of a class: it exists while the tick stands. */
@Entity
public class PackedContent extends StoredEntity {
    long classId;
    String kit;

    @Column(name = "material")
    String material;

    /** Null where the material is not in the catalogue, or comes back: nothing is moved then. */
    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "material_id")
    Material stocked;

    StoredAmount amount;

    /** How much of the class's reservation was used up for it [held unit]. */
    BigDecimal released = BigDecimal.ZERO;

    Instant packedAt;

    /** For the database only. */
    protected PackedContent() {}

    PackedContent(long classId, String kit, String material, Quantity amount, Instant now) {
        this.classId = classId;
        this.kit = kit;
        this.material = material;
        this.amount = StoredAmount.of(amount);
        this.packedAt = now.truncatedTo(ChronoUnit.MICROS);
    }

    /** @throws benchful.web.Unusable where what is stored can't be read */
    Quantity amount() {
        return StoredAmount.read(amount, "what was packed of “%s” for this class".formatted(material), null);
    }

    static List<PackedContent> of(long classId) {
        return list("classId = ?1 order by kit, material", classId);
    }

    static Optional<PackedContent> of(long classId, String kit, String material) {
        return find("classId = ?1 and kit = ?2 and material = ?3", classId, kit, material).firstResultOptional();
    }
}
