package benchful.reviews;

import benchful.classes.CraftClass;
import benchful.projects.pictures.PictureFile;
import benchful.web.StoredEntity;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.util.List;
import java.util.Optional;

/** A photograph of the pieces that a class finished. It is kept as it is, or removed. */
@Entity
public class ClassPhoto extends StoredEntity {
    private static final String LINES = "select new benchful.reviews.PhotoLine(p.id, c.id, c.startsAt, p.caption) from ClassPhoto p join p.craftClass c where ";

    @ManyToOne(optional = false, fetch = FetchType.LAZY)
    @JoinColumn(name = "class_id")
    CraftClass craftClass;

    String caption;

    String mediaType;

    byte[] content;

    /** For the database only. */
    protected ClassPhoto() {}

    static ClassPhoto of(CraftClass craftClass, String caption, PictureFile.Fit photograph) {
        ClassPhoto photo = new ClassPhoto();
        photo.craftClass = craftClass;
        photo.caption = caption;
        photo.mediaType = photograph.mediaType();
        photo.content = photograph.content();
        return photo;
    }

    /** Those of a class with what they show, as they were added. */
    static List<ClassPhoto> of(CraftClass craftClass) {
        return list("craftClass = ?1 order by id", craftClass);
    }

    static Optional<ClassPhoto> of(long craftClass, long photo) {
        return find("id = ?1 and craftClass.id = ?2", photo, craftClass).firstResultOptional();
    }

    /** Those of a class, as they were added. */
    static List<PhotoLine> photos(CraftClass craftClass) {
        return getEntityManager().createQuery(LINES + "c = ?1 order by p.id", PhotoLine.class).setParameter(1, craftClass).getResultList();
    }

    /** Those of the latest classes of a project, the latest first. */
    static List<PhotoLine> photos(long project, int most) {
        return getEntityManager().createQuery(LINES + "c.project.id = ?1 order by c.startsAt desc, c.id desc, p.id", PhotoLine.class)
                .setParameter(1, project).setMaxResults(most).getResultList();
    }

    String mediaType() {
        return mediaType;
    }

    byte[] content() {
        return content.clone();
    }
}
