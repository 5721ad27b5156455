package benchful.projects.pictures;

import benchful.bin.EarlierVersion;
import benchful.web.StoredEntity;
import jakarta.persistence.Entity;
import jakarta.persistence.PostLoad;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The bytes of one picture of a project; its words stand in the project's sheet under the same name. */
@Entity
public class ProjectPicture extends StoredEntity {
    long projectId;
    String name;
    String mediaType;
    byte[] content;

    /** For the database only. */
    protected ProjectPicture() {}

    private ProjectPicture(long projectId, String name) {
        this.projectId = projectId;
        this.name = name;
    }

    public static Optional<ProjectPicture> byName(long projectId, String name) {
        return find("projectId = ?1 and name = ?2", projectId, name).firstResultOptional();
    }

    /** By name, the bytes of each picture of a project. */
    public static Map<String, byte[]> contents(long projectId) {
        return all(projectId).stream().collect(Collectors.toMap(p -> p.name, ProjectPicture::content));
    }

    /** What was stored before photographs were freed of all notes is written anew when it is next read; the database follows. */
    @PostLoad
    void heal() {
        if (PictureFile.tells(mediaType, content) && PictureFile.of(content) instanceof PictureFile.Fit fit) {
            mediaType = fit.mediaType();
            content = fit.content();
        }
    }

    /**
     * Keeps exactly these pictures; one without content keeps what is stored under its name.
     *
     * @param earlier the version of the project that the others were a part of; none for a new project
     */
    public static void replace(long projectId, List<Picture> pictures, Optional<EarlierVersion> earlier) {
        Map<String, ProjectPicture> stored =
                all(projectId).stream().collect(Collectors.toMap(p -> p.name, Function.identity()));
        for (Picture picture : pictures) {
            ProjectPicture kept = stored.remove(picture.name());
            if (kept != null && picture.hasContent() && !Arrays.equals(kept.content, picture.content())) {
                kept.keep(earlier);
            }
            if (picture.hasContent()) {
                (kept == null ? new ProjectPicture(projectId, picture.name()) : kept).take(picture);
            }
        }
        stored.values().forEach(gone -> gone.keep(earlier));
        stored.values().forEach(ProjectPicture::delete);
    }

    private void keep(Optional<EarlierVersion> earlier) {
        earlier.ifPresent(version -> new EarlierPicture(version.id(), name, mediaType, content).persist());
    }

    private void take(Picture picture) {
        mediaType = picture.mediaType();
        content = picture.content();
        persist();
    }

    private static List<ProjectPicture> all(long projectId) {
        return list("projectId", projectId);
    }

    public String mediaType() {
        return mediaType;
    }

    public byte[] content() {
        return content.clone();
    }
}
