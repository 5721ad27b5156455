package benchful.projects.pictures;

import benchful.web.StoredEntity;
import jakarta.persistence.Entity;
import java.util.Optional;

/** The bytes of a picture that a save took away or replaced; kept as long as the version of the project that they were a part of. */
@Entity
public class EarlierPicture extends StoredEntity {
    private static final String SINCE = """
            from EarlierPicture p where p.name = ?1 and p.versionId >= ?2
                and p.versionId in (select v.id from EarlierVersion v where v.kind = 'project' and v.thing = ?3)
            order by p.versionId""";

    long versionId;
    String name;
    String mediaType;
    byte[] content;

    /** For the database only. */
    protected EarlierPicture() {}

    /** @param versionId the version that a save made an earlier one, with this picture in it */
    EarlierPicture(long versionId, String name, String mediaType, byte[] content) {
        this.versionId = versionId;
        this.name = name;
        this.mediaType = mediaType;
        this.content = content.clone();
    }

    /** A picture's bytes as they were in a version: those that went first since; none where they are still stored. */
    public static Optional<byte[]> content(long projectId, String name, long versionId) {
        return EarlierPicture.<EarlierPicture>find(SINCE, name, versionId, String.valueOf(projectId)).firstResultOptional().map(p -> p.content);
    }
}
