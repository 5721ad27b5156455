package benchful.projects.writing;

import benchful.core.Fault;
import benchful.projects.ProjectFiles;
import benchful.projects.ProjectSpec;
import benchful.projects.lines.ShortNames;
import benchful.projects.pictures.ProjectPicture;
import benchful.web.Pages;
import benchful.web.forms.FaultCollector;
import benchful.web.forms.FormTree;
import benchful.web.forms.ListButtons;
import benchful.web.forms.RemovedRow;
import benchful.web.forms.SentForm;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * A project's form on its way in: changed names are carried on, picked pictures are made fit and held in the form until it
 * is saved, list buttons change the tree, and what remains is read as a sheet.
 */
final class ProjectFormFiller {
    private static final FormTree TREES = new FormTree(ProjectFiles.READER.schema());

    private final MultivaluedMap<String, String> fields;
    private final PickedPictures picked;
    private final ObjectNode tree;
    private final ListButtons buttons;
    private final Boxes boxes;

    private ProjectFormFiller(SentForm sent, Map<String, String> hazards) {
        fields = Renames.carried(sent.fields());
        picked = new PickedPictures(fields);
        sent.files().forEach(picked::take);
        tree = TREES.of(fields);
        boxes = Boxes.read(fields, tree, hazards);
        buttons = ListButtons.of(fields, tree, TREES);
        ShortNames.fill(tree);
        BareNumbers.unite(tree);
        if ("/sizing".equals(fields.getFirst("add")) && tree.at("/sizing/" + (tree.at("/sizing").size() - 1)) instanceof ObjectNode added) {
            added.put("kind", fields.getFirst("new-kind"));
        }
        tree.path("pictures").forEach(ProjectFormFiller::typeToCome);
    }

    /** Until its file is picked a picture has no media type, which no field asks for; the missing file is told instead. */
    private static void typeToCome(JsonNode picture) {
        if (!picture.isEmpty() && !picture.has("media_type")) {
            ((ObjectNode) picture).put("media_type", "image/png");
        }
    }

    /** @param hazards of the library: their names by the short names that sheets write */
    static ProjectFormFiller of(SentForm sent, Map<String, String> hazards) {
        return new ProjectFormFiller(sent, hazards);
    }

    /** A new project is for beginners and has one size, until somebody says otherwise. */
    static SpecForm blank() {
        ObjectNode tree = SpecFormat.json().createObjectNode().put("level", "beginner");
        tree.putArray("sizes").addObject().put("name", "One size");
        return SpecForm.of(tree, 0);
    }

    /** What was read of the boxes of lines. */
    Boxes boxes() {
        return boxes;
    }

    /** True where a list button was pressed: nothing is to be saved. */
    boolean rearranged() {
        return buttons.pressed() || fields.containsKey("read");
    }

    /** Rows that can be put back into the form. */
    List<RemovedRow> removed() {
        return buttons.removed();
    }

    /** Those that were kept with a form. */
    static List<RemovedRow> removed(JsonNode kept) {
        return StreamSupport.stream(kept.spliterator(), false).flatMap(row -> RemovedRow.of(row.toString(), TREES).stream()).toList();
    }

    /** The form as it was typed, to be shown again. */
    SpecForm shown() {
        return SpecForm.faulty(tree, Stream.concat(picked.refusals(tree).stream(), FormPictures.faults(tree).stream()).toList(), version()).withRemoved(removed());
    }

    long version() {
        return Pages.version(fields);
    }

    /** What was typed. */
    ObjectNode tree() {
        return tree;
    }

    /** The draft that the form belongs to; nothing where it is kept nowhere yet. */
    Optional<Long> draft() {
        return Pages.number(fields.getFirst("draft"));
    }

    /** The size whose kit and handout are asked for; empty for any. */
    String previewed() {
        return Optional.ofNullable(fields.getFirst("preview-size")).orElse("");
    }

    /** True where the button was pressed that shows what the form would print. */
    boolean isToBePreviewed() {
        return "/preview".equals(fields.getFirst("read"));
    }

    /** The stored project that the form changes; nothing for a new one. */
    Optional<Long> project() {
        return Pages.number(fields.getFirst("project"));
    }

    /** By its name in the form, the name under which a picture is stored. */
    Map<String, String> stored() {
        Map<String, String> stored = new HashMap<>();
        fields.forEach((field, values) -> {
            String name = field.startsWith("stored:") ? fields.getFirst(field.substring("stored:".length()) + "/name") : null;
            if (name != null && !values.get(0).isBlank()) {
                stored.put(name.strip(), values.get(0));
            }
        });
        buttons.putBack().filter(row -> row.beside().containsKey("stored")).ifPresent(row -> stored.put(row.row().path("name").asText(), row.beside().get("stored")));
        return stored;
    }

    /** @param id of the stored project; null for a new one */
    SpecReader.Reading<ProjectSpec> read(SpecReader<ProjectSpec> reader, Long id) {
        FaultCollector cuts = new FaultCollector();
        SpecReader.Reading<ProjectSpec> reading = PictureIntake.fit(reader.tree(FormPictures.whole(tree, id, stored(), cuts)), stored().keySet())
                .with(sheet -> id == null ? sheet : withRenamedPictures(id, sheet));
        List<Fault> faults = new ArrayList<>(picked.refusals(tree));
        faults.addAll(cuts.list());
        if (reading instanceof SpecReader.Faulty<ProjectSpec> f) {
            f.faults().stream().filter(other -> faults.stream().noneMatch(r -> r.pointer().equals(other.pointer()))).forEach(faults::add);
        }
        return faults.isEmpty() ? reading : new SpecReader.Faulty<>(faults, tree, Map.of());
    }

    /** Fetches the content of pictures that are stored under another name than they have now. */
    private ProjectSpec withRenamedPictures(long id, ProjectSpec sheet) {
        Map<String, String> stored = stored();
        return sheet.withPictures(sheet.pictures().stream().map(p -> {
            String was = stored.getOrDefault(p.name(), p.name());
            boolean renamed = !p.hasContent() && !was.equals(p.name());
            return renamed ? ProjectPicture.byName(id, was).map(s -> p.withContent(s.content())).orElse(p) : p;
        }).toList());
    }
}
