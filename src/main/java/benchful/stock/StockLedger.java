package benchful.stock;

import benchful.catalogue.Material;
import benchful.core.quantity.Quantity;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Writes the stock ledger. A material is locked while one of its movements is written, so that a count meets the sum it
 * was compared with, however many people pack and receive at the same time.
 */
@ApplicationScoped
public class StockLedger {
    /** Six beyond what can be measured, so that a hundred kits counted in feet add up to what was reserved for them in feet. */
    private static final int PLACES = 9;
    private static final String SUM = "select coalesce(sum(amount), 0) from StockMovement where material = :material";

    private final EntityManager database;
    private final Clock clock;

    StockLedger(EntityManager database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /**
     * Writes down what was received, packed, used, spoilt or returned.
     *
     * @param amount above 0, in any unit of the material's kind; the sign follows from the kind of movement
     * @return what there is afterwards; below zero is for the caller to warn about
     * @throws IllegalArgumentException if the amount measures something else, or the kind has no sign of its own
     */
    @Transactional
    public Balance move(long materialId, MovementKind kind, Quantity amount, Cause cause) {
        Material material = locked(materialId);
        write(material, kind, held(material, amount).multiply(BigDecimal.valueOf(kind.sign())), cause);
        return balance(material);
    }

    /** Writes down what was found on the shelf: a movement of the difference, and none where there is no difference. */
    @Transactional
    public Balance count(long materialId, Quantity found, Cause cause) {
        Material material = locked(materialId);
        BigDecimal difference = held(material, found).subtract(sum(material, " and kind <> RESERVED"));
        if (difference.signum() != 0) {
            write(material, MovementKind.COUNTED, difference, cause);
        }
        return balance(material);
    }

    /**
     * Makes what is reserved for a class exactly what is wanted: more is reserved, less is released, and what is no longer
     * named is released wholly.
     *
     * @param wanted by material, how much the class is promised; names that are not in the catalogue are passed over
     */
    @Transactional
    public void reserve(long classId, Map<String, Quantity> wanted, String note) {
        Map<Long, BigDecimal> target = new TreeMap<>();
        wanted.forEach((name, amount) -> Material.byName(name).ifPresent(m -> target.merge(m.id(), held(m, amount), BigDecimal::add)));
        Set<Long> concerned = new TreeSet<>(target.keySet());
        concerned.addAll(reserved(classId).keySet());
        concerned.forEach(this::locked);
        Map<Long, BigDecimal> now = reserved(classId);
        for (long id : concerned) {
            BigDecimal more = target.getOrDefault(id, BigDecimal.ZERO).subtract(now.getOrDefault(id, BigDecimal.ZERO));
            if (more.signum() != 0) {
                write(Material.<Material>findById(id), MovementKind.RESERVED, more.negate(), Cause.ofClass(classId, note));
            }
        }
    }

    /** By material, what is reserved for a class and not released, in the held unit [> 0]. */
    @Transactional
    public Map<Long, BigDecimal> reserved(long classId) {
        return gone(Set.of(classId), Set.of(MovementKind.RESERVED));
    }

    /** The classes for which anything is reserved. */
    @Transactional
    public Set<Long> reservingClasses() {
        return Set.copyOf(database.createQuery(
                        "select classId from StockMovement where classId is not null and kind = RESERVED group by classId having sum(amount) <> 0", Long.class)
                .getResultList());
    }

    /** By material, what is kept for classes: reserved for them, or packed for them and not put back; in the held unit. */
    @Transactional
    public Map<Long, BigDecimal> kept(Collection<Long> classIds) {
        return positive(gone(classIds, Set.of(MovementKind.RESERVED, MovementKind.PACKED, MovementKind.RETURNED, MovementKind.LEFT_OVER)));
    }

    /** By material, what was packed for a class and not unpacked, whatever was left of it; in the held unit. */
    @Transactional
    public Map<Long, BigDecimal> packed(long classId) {
        return positive(gone(Set.of(classId), Set.of(MovementKind.PACKED, MovementKind.RETURNED)));
    }

    /** By material, what was left of a class and is back on the shelf; in the held unit. */
    @Transactional
    public Map<Long, BigDecimal> leftOver(long classId) {
        Map<Long, BigDecimal> back = gone(Set.of(classId), Set.of(MovementKind.LEFT_OVER));
        back.replaceAll((material, amount) -> amount.negate());
        return back;
    }

    /**
     * Makes what is back on the shelf of a class as much as was left of it; where more was said to be left before, the rest is taken off again.
     *
     * @param left 0 or more, in any unit of the material's kind
     */
    @Transactional
    public void leave(long materialId, long classId, Quantity left, String note) {
        Material material = locked(materialId);
        BigDecimal more = held(material, left).subtract(leftOver(classId).getOrDefault(materialId, BigDecimal.ZERO));
        if (more.signum() != 0) {
            write(material, MovementKind.LEFT_OVER, more, Cause.ofClass(classId, note));
        }
    }

    private Map<Long, BigDecimal> gone(Collection<Long> classIds, Set<MovementKind> kinds) {
        return classIds.isEmpty() ? new HashMap<>() : database.createQuery(
                        "select material.id, -sum(amount) from StockMovement where classId in :c and kind in :kinds group by material.id having sum(amount) <> 0",
                        Object[].class)
                .setParameter("c", classIds).setParameter("kinds", kinds)
                .getResultStream()
                .collect(Collectors.toMap(row -> (Long) row[0], row -> (BigDecimal) row[1], (one, same) -> one, HashMap::new));
    }

    private static Map<Long, BigDecimal> positive(Map<Long, BigDecimal> amounts) {
        amounts.values().removeIf(amount -> amount.signum() < 0);
        return amounts;
    }

    /**
     * Writes down what is packed for a class; as much of it as was reserved for the class is no longer reserved.
     *
     * @return how much of the reservation it used up [held unit]
     */
    @Transactional
    public BigDecimal pack(long materialId, long classId, Quantity amount, String note) {
        Material material = locked(materialId);
        BigDecimal held = held(material, amount);
        BigDecimal released = reserved(classId).getOrDefault(materialId, BigDecimal.ZERO).min(held).max(BigDecimal.ZERO);
        write(material, MovementKind.PACKED, held.negate(), Cause.ofClass(classId, note));
        if (released.signum() > 0) {
            write(material, MovementKind.RESERVED, released, Cause.ofClass(classId, note));
        }
        return released;
    }

    /**
     * Writes down that what was packed for a class is put back, and reserves again what packing had used up.
     *
     * @param released as {@link #pack} answered [held unit]
     */
    @Transactional
    public void unpack(long materialId, long classId, Quantity amount, BigDecimal released, String note) {
        Material material = locked(materialId);
        write(material, MovementKind.RETURNED, held(material, amount), Cause.ofClass(classId, note));
        if (released.signum() > 0) {
            write(material, MovementKind.RESERVED, released.negate(), Cause.ofClass(classId, note));
        }
    }

    /** By material, what was cut off for classes beyond their pieces and what is kept of that; in the held unit. */
    @Transactional
    public Map<Long, BigDecimal> cutOff(Collection<Long> classIds) {
        return gone(classIds, Set.of(MovementKind.CUT, MovementKind.OFFCUT));
    }

    /**
     * Makes what is reserved or packed for a class as much as it must have: the rest is reserved, or what is reserved beyond it released.
     *
     * @return how much was reserved; less than nothing where it was released
     */
    Quantity keep(Material material, long classId, Quantity amount, Cause cause) {
        BigDecimal more = held(material, amount).subtract(kept(List.of(classId)).getOrDefault(material.id(), BigDecimal.ZERO));
        BigDecimal written = more.max(reserved(classId).getOrDefault(material.id(), BigDecimal.ZERO).negate());
        if (written.signum() != 0) {
            write(material, MovementKind.RESERVED, written.negate(), cause);
        }
        return material.shown(written);
    }

    /** Releases as much of an amount as is still reserved for a class; less than nothing is reserved again. */
    void release(Material material, long classId, Quantity amount, Cause cause) {
        BigDecimal less = held(material, amount).min(reserved(classId).getOrDefault(material.id(), BigDecimal.ZERO));
        if (less.signum() != 0) {
            write(material, MovementKind.RESERVED, less, cause);
        }
    }

    /** @param amount that leaves the stock; less than nothing where it comes back */
    void cut(Material material, Quantity amount, Cause cause) {
        if (amount.signum() != 0) {
            write(material, MovementKind.CUT, held(material, amount).negate(), cause);
        }
    }

    /** @param amount that comes; less than nothing where it goes */
    void offcut(Material material, Quantity amount, Cause cause) {
        write(material, MovementKind.OFFCUT, held(material, amount), cause);
    }

    @Transactional
    public Balance balance(long materialId) {
        return balance(Material.<Material>findById(materialId));
    }

    private Balance balance(Material material) {
        return new Balance(material.shown(sum(material, " and kind <> RESERVED")), material.shown(sum(material, "")));
    }

    private BigDecimal sum(Material material, String which) {
        return database.createQuery(SUM + which, BigDecimal.class).setParameter("material", material).getSingleResult();
    }

    Material locked(long materialId) {
        return Material.findById(materialId, LockModeType.PESSIMISTIC_WRITE);
    }

    private static BigDecimal held(Material material, Quantity amount) {
        return amount.in(material.held()).amount().setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
    }

    private void write(Material material, MovementKind kind, BigDecimal amount, Cause cause) {
        new StockMovement(material, kind, amount, cause, Instant.now(clock)).persist();
    }
}
