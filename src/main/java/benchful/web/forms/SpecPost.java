package benchful.web.forms;

import benchful.core.Fault;
import benchful.web.Pages;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.function.Function;

/**
 * What a sheet's form leads to when it is sent: its lists rearranged, its faults shown, both versions where somebody else
 * saved meanwhile, or the sheet saved.
 *
 * @param <T> the record of the sheet
 */
public final class SpecPost<T> {
    private final SpecReader<T> reader;
    private final Function<SpecForm, TemplateInstance> page;

    /** @param page shows the form */
    public SpecPost(SpecReader<T> reader, Function<SpecForm, TemplateInstance> page) {
        this.reader = reader;
        this.page = page;
    }

    /** Where the sheet is stored, or will be. */
    public interface Target<T> {
        /** Of the stored sheet; 0 where none is stored yet. */
        long version();

        /** What is stored; null where nothing is yet. */
        T stored();

        /** What does not agree with everything else that is stored, such as a name that is taken. */
        List<Fault> faults(T sheet);

        /** Stores the sheet and answers the path that shows it. */
        String save(T sheet);
    }

    public Response answer(MultivaluedMap<String, String> form, Target<T> target) {
        FormTree trees = new FormTree(reader.schema());
        ObjectNode tree = trees.of(form);
        ListButtons buttons = ListButtons.of(form, tree, trees);
        SpecPost<T> post = new SpecPost<>(reader, shown -> page.apply(shown.withRemoved(buttons.removed())));
        return buttons.pressed() ? Pages.again(post.page.apply(SpecForm.of(tree, Pages.version(form)))) : post.answer(reader.tree(tree), Pages.version(form), target);
    }

    /** For a sheet that takes more than its form to read. */
    public Response answer(SpecReader.Reading<T> reading, long version, Target<T> target) {
        if (reading instanceof SpecReader.Faulty<T> faulty) {
            return faulty(faulty.faults(), faulty.tree(), version);
        }
        return saved((SpecReader.Read<T>) reading, version, target);
    }

    /** For a form that shows only some fields of the sheet: all others stay as they are stored. */
    public Response changed(MultivaluedMap<String, String> form, Target<T> target) {
        return answer(reader.tree(new FormTree(reader.schema()).over(reader.written(target.stored()), form)), Pages.version(form), target);
    }

    /**
     * Saves a sheet as it was before, by the same checks as one that is typed.
     *
     * @param fresh false where somebody saved meanwhile: both versions are shown then
     */
    public Response putBack(JsonNode sheet, boolean fresh, Target<T> target) {
        return putBack(reader.tree(sheet), fresh, target);
    }

    /** The same for a sheet that takes more to read. */
    public Response putBack(SpecReader.Reading<T> reading, boolean fresh, Target<T> target) {
        return answer(reading, fresh ? target.version() : -1, target);
    }

    private Response saved(SpecReader.Read<T> read, long version, Target<T> target) {
        T stored = version == target.version() ? null : target.stored();
        if (stored != null) {
            JsonNode theirs = reader.written(stored);
            return Pages.stale(page.apply(SpecForm.stale(read.tree(), theirs, target.version())));
        }
        List<Fault> faults = target.faults(read.sheet());
        return faults.isEmpty() ? Pages.seeOther(target.save(read.sheet())) : faulty(faults, read.tree(), version);
    }

    private Response faulty(List<Fault> faults, JsonNode tree, long version) {
        return Pages.faulty(page.apply(SpecForm.faulty(tree, faults, version)));
    }
}
