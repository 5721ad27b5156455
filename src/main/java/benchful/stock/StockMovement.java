package benchful.stock;

import benchful.catalogue.Material;
import benchful.web.Paged;
import benchful.web.Sought;
import benchful.web.StoredEntity;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.ManyToOne;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.hibernate.annotations.Immutable;

/** One line of the stock ledger: what moved, when and why. It is written once and never changed; a mistake is met by a count. */
@Entity
@Immutable
public class StockMovement extends StoredEntity {
    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    Material material;

    @Enumerated(EnumType.STRING)
    MovementKind kind;

    BigDecimal amount;
    Instant happenedAt;
    String note;
    Long classId;
    Long orderId;

    /** For the database only. */
    protected StockMovement() {}

    /**
     * @param amount signed, in the held unit of the material; not 0
     * @param cause the class or order behind it, and a note
     */
    StockMovement(Material material, MovementKind kind, BigDecimal amount, Cause cause, Instant now) {
        if (amount.signum() == 0 || kind.sign() * amount.signum() < 0) {
            throw new IllegalArgumentException("A movement of kind %s can't have the amount %s.".formatted(kind, amount));
        }
        this.material = material;
        this.kind = kind;
        this.amount = amount;
        this.happenedAt = now.truncatedTo(ChronoUnit.MICROS);
        this.note = cause.note();
        this.classId = cause.classId();
        this.orderId = cause.orderId();
    }

    /** A page of those of one material, the newest first. */
    static Paged<StockMovement> latest(Material material, Sought sought) {
        return Paged.of(find("material = ?1 order by id desc", material), sought);
    }

    /** By how much the shelf has changed since this one was written [held unit]. */
    BigDecimal changedSince() {
        return getEntityManager().createQuery("select coalesce(sum(amount), 0) from StockMovement where material = :material and kind <> RESERVED and id > :id", BigDecimal.class)
                .setParameter("material", material).setParameter("id", id).getSingleResult();
    }
}
