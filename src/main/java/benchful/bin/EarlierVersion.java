package benchful.bin;

import benchful.web.StoredEntity;
import benchful.web.forms.Difference;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.JsonNode;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.Entity;
import jakarta.persistence.EntityListeners;
import jakarta.persistence.PrePersist;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** A sheet as it was before somebody saved over it. It is kept for thirty days, or until its thing is removed. */
@Entity
@EntityListeners(EarlierVersion.Stamp.class)
public class EarlierVersion extends StoredEntity {
    private static final int PLACES_TOLD = 3;
    private static final int MOST_SHOWN = 30;

    /** The table of the thing, and its key there. */
    String kind;

    String thing;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    JsonNode sheet;

    /** In words, the places that the save changed. */
    String changed;

    Instant replacedAt;

    /** For the database only; see {@link #keep}. */
    protected EarlierVersion() {}

    /** Entities know no clock. */
    @ApplicationScoped
    public static class Stamp {
        private final Clock clock;

        Stamp(Clock clock) {
            this.clock = clock;
        }

        @PrePersist
        void stamp(EarlierVersion version) {
            version.replacedAt = clock.instant().truncatedTo(ChronoUnit.MICROS);
        }
    }

    /** A sheet as it is kept. */
    public static JsonNode tree(Object sheet) {
        return SpecFormat.json().valueToTree(sheet);
    }

    /**
     * Keeps a sheet that is about to be saved over.
     *
     * @param kind the table of its thing
     * @param thing the thing's key there; null for one that is not stored yet
     * @return nothing where there is nothing to keep, as nothing is changed
     */
    public static Optional<EarlierVersion> keep(String kind, Object thing, Object before, Object after) {
        return thing == null ? Optional.empty() : keep(kind, thing, tree(before), Difference.between(tree(before), tree(after)));
    }

    /** The same where what differs is known. */
    public static Optional<EarlierVersion> keep(String kind, Object thing, JsonNode before, List<Difference> changes) {
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        EarlierVersion version = new EarlierVersion();
        version.kind = kind;
        version.thing = thing.toString();
        version.sheet = before;
        version.changed = places(changes);
        version.persist();
        return Optional.of(version);
    }

    private static String places(List<Difference> changes) {
        List<String> places = changes.stream().map(Difference::place).distinct().toList();
        String told = places.stream().limit(PLACES_TOLD).collect(Collectors.joining("; "));
        return places.size() > PLACES_TOLD ? "%s and %d more".formatted(told, places.size() - PLACES_TOLD) : told;
    }

    /** The latest first. */
    static List<EarlierVersion> of(String kind, Object thing) {
        return EarlierVersion.<EarlierVersion>find("kind = ?1 and thing = ?2 order by id desc", kind, thing.toString()).page(0, MOST_SHOWN).list();
    }

    public JsonNode sheet() {
        return sheet;
    }
}
