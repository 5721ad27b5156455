package benchful.hazards;

import benchful.bin.EarlierVersion;
import benchful.web.forms.Stored;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Version;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/**
 * What the tutor wrote about a hazard: an entry of her own, or a text that stands in for the library's until she goes back
 * to that one. Entries of the library that nobody changed are not stored.
 */
@Entity
public class Hazard extends PanacheEntityBase {
    @Id
    String id;

    /** From 1, so that a form that began with the library's text, version 0, is told from one that began with this. */
    @Version
    long version = 1;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<HazardSpec> sheet;

    /** For the database only; see {@link #stored}. */
    protected Hazard() {}

    static Hazard stored(HazardSpec sheet) {
        Hazard hazard = new Hazard();
        hazard.id = sheet.id();
        hazard.sheet = Stored.of(sheet);
        hazard.persist();
        return hazard;
    }

    void replace(HazardSpec newSheet) {
        EarlierVersion.keep("hazard", id, Stored.kept(sheet), newSheet);
        sheet = Stored.of(newSheet);
    }

    static Optional<Hazard> byId(String id) {
        return findByIdOptional(id);
    }

    /** The same, kept from everybody else until the transaction ends. */
    static Optional<Hazard> toChange(String id) {
        return findByIdOptional(id, LockModeType.PESSIMISTIC_WRITE);
    }

    static List<Hazard> all() {
        return listAll();
    }

    static List<Hazard> withIds(Collection<String> ids) {
        return list("id in ?1", ids);
    }

    long version() {
        return version;
    }

    String id() {
        return id;
    }

    HazardSpec toSpec() {
        return sheet.read("the hazard “%s”".formatted(id), "/hazards/" + id + "/edit");
    }

    /** Nothing where it can't be read. */
    Optional<HazardSpec> readable() {
        return sheet.readable();
    }

    /** As it is stored, read or not, to be mended in its form. */
    Stored<HazardSpec> stored() {
        return sheet;
    }
}
