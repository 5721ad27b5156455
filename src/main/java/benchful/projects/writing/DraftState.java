package benchful.projects.writing;

import benchful.core.Fault;
import benchful.projects.ProjectSpec;
import benchful.web.forms.SpecReader;
import benchful.web.forms.SpecReader.Faulty;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.TemplateData;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * How far an unfinished project is: what can be done with it already, and what is missing for more.
 *
 * @param keptAt when it was last kept
 */
@TemplateData
public record DraftState(long id, LocalDateTime keptAt, List<Can> can) {

    /**
     * Something that a project is written for.
     *
     * @param path where it is done; null where that takes a saved project
     * @param missing what is needed first; empty where it can be done
     * @param note what is left out
     */
    @TemplateData
    public record Can(String what, String path, List<Fault> missing, String note) {
        public boolean done() {
            return missing.isEmpty();
        }

        /** The first few, as many as anybody reads. */
        public List<Fault> first() {
            return missing.stream().limit(4).toList();
        }

        public int more() {
            return Math.max(0, missing.size() - 4);
        }
    }

    static DraftState of(ProjectDraft draft, SpecReader<ProjectSpec> reader, ZoneId zone) {
        ObjectNode sheet = FormPictures.bare(draft.sheet());
        List<Fault> faults = reader.tree(sheet) instanceof Faulty<ProjectSpec> faulty ? faulty.faults() : List.of();
        Printable printable = Printable.of(sheet, reader);
        Predicate<Fault> ofTheKit = f -> Stream.of("/materials", "/sizes", "/measures", "/sizing").anyMatch(f.pointer()::startsWith);
        String without = printable.leftOut().isEmpty() ? "" : "without " + String.join(", ", printable.leftOut());
        return new DraftState(draft.id(), LocalDateTime.ofInstant(draft.updatedAt(), zone), List.of(
                new Can("Print a handout", "/projects/drafts/" + draft.id() + "/handouts/handout.pdf",
                        printable.sheet() != null ? List.of() : faults.stream().filter(ofTheKit.negate()).toList(), without),
                new Can("Count a kit", null, faults.stream().filter(ofTheKit).toList(), ""),
                new Can("Plan a class", null, faults, "")));
    }
}
