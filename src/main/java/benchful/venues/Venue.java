package benchful.venues;

import benchful.bin.EarlierVersion;
import benchful.web.EditedEntity;
import benchful.web.Paged;
import benchful.web.Sought;
import benchful.web.forms.Stored;
import jakarta.persistence.Entity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/**
 * A stored room: written down once, chosen for classes, changed as a whole sheet. Its name is unlike every other's,
 * whatever the case of its letters.
 */
@Entity
public class Venue extends EditedEntity {
    String name;
    boolean sample;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<VenueSpec> sheet;

    /** For the database only; see {@link #stored}. */
    protected Venue() {}

    /** @param sample true for one that came with the program and leaves with the samples */
    public static Venue stored(VenueSpec sheet, boolean sample) {
        Venue venue = new Venue();
        venue.sample = sample;
        venue.replace(sheet);
        venue.persist();
        return venue;
    }

    void replace(VenueSpec newSheet) {
        EarlierVersion.keep("venue", id, Stored.kept(sheet), newSheet);
        name = newSheet.name().strip();
        sheet = Stored.of(newSheet);
    }

    /** @throws benchful.web.Unusable where what is stored can't be read */
    public VenueSpec toSpec() {
        return sheet.read("the venue “%s”".formatted(name), "/venues/" + id + "/edit");
    }

    /** As it is stored, read or not, to be mended in its form. */
    Stored<VenueSpec> stored() {
        return sheet;
    }

    /** Whatever the case of its letters and the blanks around them. */
    public static Optional<Venue> byName(String name) {
        return find("lower(name) = ?1", name.strip().toLowerCase(Locale.ROOT)).firstResultOptional();
    }

    /** All, by name. */
    public static List<Venue> all() {
        return list("order by lower(name)");
    }

    /** A page of them, by name. */
    static Paged<Venue> page(Sought sought) {
        return Paged.of(find("lower(name) like ?1 escape '!' order by lower(name)", sought.pattern()), sought);
    }

    public String name() {
        return name;
    }

    public boolean sample() {
        return sample;
    }
}
