package benchful.studio;

import benchful.bin.EarlierVersion;
import benchful.projects.pictures.Picture;
import benchful.projects.pictures.PictureFile;
import benchful.web.forms.Stored;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Version;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/** The one studio, stored from when something is first written down of it. */
@Entity
public class Studio extends PanacheEntityBase {
    static final long ONLY = 1;
    static final String LOGO = "studio-logo";

    @Id
    Long id;

    @Version
    long version;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    Stored<StudioSpec> sheet;

    String logoType;
    byte[] logo;

    /** For the database only. */
    protected Studio() {}

    /** What is written down of it; nothing where that can't be read, as orders and handouts do without. */
    public static StudioSpec current() {
        return only().flatMap(s -> s.sheet.readable()).orElse(StudioSpec.NONE);
    }

    /** Its sign, as it may be printed; null for none. */
    public static Picture sign() {
        return only().filter(Studio::hasLogo).map(s -> new Picture(LOGO, s.logoType, s.toSpec().name(), s.logo)).orElse(null);
    }

    /** Nothing while nothing is written down. */
    static Optional<Studio> only() {
        return findByIdOptional(ONLY);
    }

    /** Kept from everybody else until the transaction ends; begun by whoever is first. */
    static Studio toChange() {
        getEntityManager().createNativeQuery("insert into studio (id, version, sheet) values (1, 0, '{}') on conflict do nothing").executeUpdate();
        return findById(ONLY, LockModeType.PESSIMISTIC_WRITE);
    }

    void replace(StudioSpec newSheet) {
        EarlierVersion.keep("studio", id, Stored.kept(sheet), newSheet);
        sheet = Stored.of(newSheet);
    }

    /** @param picture null to have none */
    void show(PictureFile.Fit picture) {
        logoType = picture == null ? null : picture.mediaType();
        logo = picture == null ? null : picture.content();
    }

    StudioSpec toSpec() {
        return sheet.readable().orElse(StudioSpec.NONE);
    }

    boolean hasLogo() {
        return logo != null;
    }

    byte[] logo() {
        return logo.clone();
    }

    String logoType() {
        return logoType;
    }

    Stored<StudioSpec> stored() {
        return sheet;
    }

    long version() {
        return version;
    }
}
