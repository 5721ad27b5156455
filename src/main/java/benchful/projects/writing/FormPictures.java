package benchful.projects.writing;

import benchful.core.Fault;
import benchful.projects.pictures.HeldPicture;
import benchful.projects.pictures.PictureEdit;
import benchful.projects.pictures.PictureFile;
import benchful.projects.pictures.ProjectPicture;
import benchful.web.forms.FaultCollector;
import benchful.web.forms.SpecForm;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.narayana.jta.QuarkusTransaction;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The pictures of a form that is not saved yet. The form names each by its digest ({@code held:3f…}) where a sheet has its bytes, and says
 * how it is turned and cut; the picture itself stays whole until the project is saved.
 */
final class FormPictures {
    private static final String HELD = "held:";
    private static final Set<String> TURNS = Set.of("0", "90", "180", "270");
    static final List<String> SIDES = List.of("left", "top", "right", "bottom");

    private FormPictures() {}

    /** The form with its pictures held; one that can't be stays in it as it is. */
    static SpecForm held(SpecForm form, Instant now) {
        return form.tree() instanceof ObjectNode tree ? form.with(held(tree, now)) : form;
    }

    static ObjectNode held(ObjectNode tree, Instant now) {
        ObjectNode held = tree.deepCopy();
        for (JsonNode picture : held.path("pictures")) {
            decoded(picture.path("content").asText()).map(PictureFile::of).filter(PictureFile.Fit.class::isInstance).map(PictureFile.Fit.class::cast)
                    .ifPresent(fit -> ((ObjectNode) picture).put("media_type", fit.mediaType())
                            .put("content", HELD + QuarkusTransaction.joiningExisting().call(() -> HeldPicture.hold(fit, now))));
        }
        return held;
    }

    private static Optional<byte[]> decoded(String content) {
        try {
            return content.isBlank() || content.startsWith(HELD) ? Optional.empty() : Optional.of(Base64.getDecoder().decode(content));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** A copy of the sheet with the words of its pictures only. */
    static ObjectNode bare(ObjectNode tree) {
        ObjectNode bare = tree.deepCopy();
        bare.path("pictures").forEach(picture -> strip((ObjectNode) picture));
        return bare;
    }

    private static void strip(ObjectNode picture) {
        picture.remove(List.of("content", "turned", "cut"));
    }

    /**
     * A copy of the sheet with the bytes of its pictures, turned and cut; those that are stored and stay as they are have none.
     *
     * @param project that the form changes; null for a new one
     * @param stored by its name in the form, the name under which a picture is stored
     * @param faults is told what can't be cut
     */
    static ObjectNode whole(ObjectNode tree, Long project, Map<String, String> stored, FaultCollector faults) {
        ObjectNode whole = tree.deepCopy();
        for (int i = 0; i < whole.path("pictures").size(); i++) {
            if (whole.at("/pictures/" + i) instanceof ObjectNode picture) {
                PictureEdit edit = edit(picture, "/pictures/" + i, faults);
                fill(picture, edit, project, stored.get(picture.path("name").asText().strip()));
            }
        }
        return whole;
    }

    private static void fill(ObjectNode picture, PictureEdit edit, Long project, String stored) {
        String content = picture.path("content").asText();
        strip(picture);
        if (content.startsWith(HELD)) {
            QuarkusTransaction.joiningExisting().call(() -> HeldPicture.named(content.substring(HELD.length())))
                    .ifPresent(held -> put(picture, edit.on(held.content(), held.mediaType()), held.mediaType()));
        } else if (!content.isBlank()) {
            picture.put("content", content);
        } else if (!edit.isNone() && project != null && stored != null) {
            QuarkusTransaction.joiningExisting().call(() -> ProjectPicture.byName(project, stored))
                    .ifPresent(there -> put(picture, edit.on(there.content(), there.mediaType()), there.mediaType()));
        }
    }

    private static void put(ObjectNode picture, byte[] content, String mediaType) {
        picture.put("content", Base64.getEncoder().encodeToString(content)).put("media_type", mediaType);
    }

    private static PictureEdit edit(ObjectNode picture, String at, FaultCollector faults) {
        String turned = picture.path("turned").asText("0");
        boolean turns = faults.require(TURNS.contains(turned), at + "/turned", "Turn the picture by 90, 180 or 270 degrees.");
        boolean numbers = true;
        for (String side : SIDES) {
            numbers &= faults.require(percent(picture, side).isPresent(), at + "/cut/" + side, "Give how much to cut off in percent, such as 10.");
        }
        if (!turns || !numbers) {
            return PictureEdit.NONE;
        }
        List<Double> cut = SIDES.stream().map(side -> percent(picture, side).orElseThrow()).toList();
        boolean across = faults.require(PictureEdit.fits(cut.get(0), cut.get(2)), at + "/cut/left", "Left and right together can be 90 %% at most. Cut off less.");
        boolean down = faults.require(PictureEdit.fits(cut.get(1), cut.get(3)), at + "/cut/top", "Top and bottom together can be 90 %% at most. Cut off less.");
        return across && down ? new PictureEdit(Integer.parseInt(turned) / 90, cut.get(0), cut.get(1), cut.get(2), cut.get(3)) : PictureEdit.NONE;
    }

    /** 0 where nothing is written. */
    private static Optional<Double> percent(ObjectNode picture, String side) {
        String written = picture.path("cut").path(side).asText("").replaceFirst("\\s*%$", "").replace(',', '.').strip();
        return written.isEmpty() ? Optional.of(0.0) : PictureEdit.percent(written);
    }

    /**
     * Where a picture of the form can be seen as it will be; null where there is none.
     *
     * @param storedAt where it is stored; null where it is not
     */
    static String address(JsonNode picture, String storedAt) {
        String content = picture.path("content").asText();
        if (!content.isBlank() && !content.startsWith(HELD)) {
            return "data:%s;base64,%s".formatted(picture.path("media_type").asText(), content);
        }
        String at = content.startsWith(HELD) ? "/projects/pictures/" + content.substring(HELD.length()) : storedAt;
        return at == null ? null : at + query(picture);
    }

    private static String query(JsonNode picture) {
        StringBuilder query = new StringBuilder();
        if (picture.path("turned").asText().matches("90|180|270")) {
            query.append("&turned=").append(picture.path("turned").asText());
        }
        for (String side : SIDES) {
            percent((ObjectNode) picture, side).filter(percent -> percent > 0).ifPresent(percent -> query.append('&').append(side).append('=').append(percent));
        }
        return query.isEmpty() ? "" : "?" + query.substring(1);
    }

    /** What of the turning and cutting of a picture was written wrong, for a form that is shown again. */
    static List<Fault> faults(ObjectNode tree) {
        FaultCollector faults = new FaultCollector();
        for (int i = 0; i < tree.path("pictures").size(); i++) {
            if (tree.at("/pictures/" + i) instanceof ObjectNode picture) {
                edit(picture, "/pictures/" + i, faults);
            }
        }
        return faults.list();
    }
}
