package benchful.projects.writing;

import benchful.projects.ProjectFiles;
import benchful.web.EditedEntity;
import benchful.web.StoredEntity;
import benchful.web.forms.ReadableText;
import benchful.web.forms.RemovedRow;
import benchful.web.forms.SpecFormat;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.persistence.Entity;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.annotations.Mutability;
import org.hibernate.type.SqlTypes;
import org.hibernate.type.descriptor.java.Immutability;

/**
 * A project that is being written, kept as far as it is there: a new one, or changes to one that is stored. It may lack anything.
 * It goes when the project is saved, or is thrown away into the bin.
 */
@Entity
public class ProjectDraft extends EditedEntity {
    private static final int LONGEST_NAME = 120;

    Long projectId;
    long base;
    String name;

    @JdbcTypeCode(SqlTypes.JSON)
    @Mutability(Immutability.class)
    JsonNode form;

    Instant updatedAt;

    /** For the database only. */
    protected ProjectDraft() {}

    /**
     * Keeps what a form holds, in place of what the same draft held before.
     *
     * @param id of the draft; nothing for one that is begun, and one that is gone meanwhile is begun anew
     * @param projectId of the project that is changed; null for a new one
     */
    static ProjectDraft keep(Optional<Long> id, Long projectId, ProjectFormFiller forms, Instant now) {
        ProjectDraft draft = id.flatMap(d -> StoredEntity.toChange(ProjectDraft.class, d)).orElseGet(ProjectDraft::new);
        ObjectNode form = SpecFormat.json().createObjectNode();
        form.set("sheet", FormPictures.held(forms.tree(), now));
        form.set("stored", SpecFormat.json().valueToTree(forms.stored()));
        forms.removed().forEach(row -> form.withArray("removed").add(row.json()));
        draft.form = ReadableText.marked(form);
        draft.projectId = projectId;
        draft.base = forms.version();
        String called = draft.sheet().path("name").asText().strip();
        draft.name = called.isEmpty() ? "A piece without a name" : ReadableText.cut(called, LONGEST_NAME);
        draft.updatedAt = now;
        draft.persistAndFlush();
        return draft;
    }

    /** Once its project is saved. */
    static void done(Optional<Long> id) {
        id.flatMap(d -> StoredEntity.byId(ProjectDraft.class, d)).ifPresent(ProjectDraft::delete);
    }

    /** All, the latest first. */
    public static List<ProjectDraft> latest() {
        return find("order by updatedAt desc").page(0, 20).list();
    }

    /** Of changes to a project, the latest first. */
    static List<ProjectDraft> of(long project) {
        return find("projectId = ?1 order by updatedAt desc", project).page(0, 5).list();
    }

    ObjectNode sheet() {
        return form.path("sheet") instanceof ObjectNode sheet ? (ObjectNode) ProjectFiles.READER.schema().renamed(sheet) : SpecFormat.json().createObjectNode();
    }

    /** Rows that can be put back into it. */
    List<RemovedRow> removed() {
        return ProjectFormFiller.removed(form.path("removed"));
    }

    /** By the picture's name in the form, the name under which it is stored. */
    Map<String, String> storedPictures() {
        Map<String, String> stored = new HashMap<>();
        form.path("stored").properties().forEach(p -> stored.put(p.getKey(), p.getValue().asText()));
        return stored;
    }

    public String name() {
        return name;
    }

    /** Of the project that is changed; null for a new one. */
    public Long projectId() {
        return projectId;
    }

    /** The version of the project that the changes started from. */
    long base() {
        return base;
    }

    Instant updatedAt() {
        return updatedAt;
    }

    /** When it was last kept, where the tutor is. */
    public LocalDateTime kept() {
        return LocalDateTime.ofInstant(updatedAt, ZoneId.systemDefault());
    }
}
