package benchful.web;

import io.quarkus.hibernate.orm.panache.Panache;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.MappedSuperclass;
import java.util.Optional;

/** What is stored as a row of its own, known by the number that the database gives it. */
@MappedSuperclass
public abstract class StoredEntity extends PanacheEntityBase {
    /** Null while it is not stored. */
    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    protected Long id;

    public static <E extends StoredEntity> Optional<E> byId(Class<E> type, long id) {
        return Optional.ofNullable(Panache.getEntityManager(type).find(type, id));
    }

    /** The same, kept from everybody else until the transaction ends. */
    public static <E extends StoredEntity> Optional<E> toChange(Class<E> type, long id) {
        return Optional.ofNullable(Panache.getEntityManager(type).find(type, id, LockModeType.PESSIMISTIC_WRITE));
    }

    public long id() {
        return id;
    }

    public boolean isStored() {
        return id != null;
    }
}
