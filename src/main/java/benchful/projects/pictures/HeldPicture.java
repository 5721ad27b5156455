package benchful.projects.pictures;

import benchful.web.StoredEntity;
import jakarta.persistence.Entity;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;

/**
 * A picture that was picked for a project before the project is saved, fit to be stored. Forms and drafts name it by the digest of
 * its bytes; what no draft names any more goes after a while.
 */
@Entity
public class HeldPicture extends StoredEntity {
    private static final String HOLD = """
            insert into held_picture (digest, media_type, content, held_at) values (:digest, :type, :content, :now)
            on conflict (digest) do update set held_at = excluded.held_at""";
    private static final String SWEEP = """
            delete from held_picture h where held_at < :before
                and not exists (select 1 from project_draft d where cast(d.form as text) like '%' || h.digest || '%')
                and not exists (select 1 from bin_row b where b.table_name = 'project_draft' and cast(b.before as text) like '%' || h.digest || '%')""";

    String digest;
    String mediaType;
    byte[] content;
    Instant heldAt;

    /** For the database only. */
    protected HeldPicture() {}

    /** @return the name to ask for it by */
    public static String hold(PictureFile.Fit picture, Instant now) {
        String digest = digest(picture.content());
        getEntityManager().createNativeQuery(HOLD).setParameter("digest", digest).setParameter("type", picture.mediaType())
                .setParameter("content", picture.content()).setParameter("now", now).executeUpdate();
        return digest;
    }

    public static Optional<HeldPicture> named(String digest) {
        return find("digest", digest).firstResultOptional();
    }

    /** Forgets those held before a moment, but for what drafts, also removed ones, still name. */
    public static void sweep(Instant before) {
        getEntityManager().createNativeQuery(SWEEP).setParameter("before", before).executeUpdate();
    }

    private static String digest(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    public String mediaType() {
        return mediaType;
    }

    public byte[] content() {
        return content.clone();
    }
}
