package benchful.classes;

import benchful.core.SkillLevel;
import benchful.core.lesson.StepKind;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import benchful.venues.Venue;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What the form of a class shows.
 *
 * @param catalogue names of all materials
 * @param variants by material, what distinguishes its variants
 */
@TemplateData
public record ClassForm(SpecForm form, CraftClass target, ProjectSpec project, List<Venue> venues, Venue venue, List<String> catalogue,
        Map<String, List<String>> variants) {

    public boolean isNew() {
        return !target.isStored();
    }

    public String action() {
        return isNew() ? "/classes" : "/classes/" + target.id() + "/setup";
    }

    public List<String> promises() {
        return Promise.names();
    }

    public List<String> levels() {
        return SkillLevel.names();
    }

    public List<String> sizeNames() {
        return project.sizes().stream().map(s -> s.name()).toList();
    }

    /**
     * A material of the project that gives a choice.
     *
     * @param options the materials offered, or what distinguishes the variants; none where there is no variant yet
     */
    @TemplateData
    public record Choosable(String material, String choice, List<String> options) {
        public String label() {
            return "%s: %s".formatted(material, choice);
        }
    }

    /** Each material once, however many lines it has. */
    public Collection<Choosable> choosable() {
        Map<String, Choosable> choosable = new LinkedHashMap<>();
        project.materials().stream().filter(l -> l.choice() != null).forEach(l -> choosable.putIfAbsent(
                l.material(), new Choosable(l.material(), l.choice(), l.alternatives().isEmpty() ? variants.getOrDefault(l.material(), List.of()) : l.offered())));
        return choosable.values();
    }

    /** All materials of the project that something could stand in for. */
    public List<String> materials() {
        return project.materials().stream().flatMap(l -> l.offered().stream()).distinct().toList();
    }

    /** Steps that the tutor could do before the class instead. */
    public List<Step> movable() {
        return project.steps().stream().filter(s -> s.kind().mayBePrepared()).toList();
    }

    /** Steps that students could do at home instead. */
    public List<Step> makes() {
        return project.steps().stream().filter(s -> s.kind().isOwnWork()).toList();
    }

    /** Steps that have a place in an order of her own. */
    public List<Step> orderable() {
        return project.steps().stream().filter(s -> s.kind().needsClass()).toList();
    }

    /** What the place in an order of her own is called. */
    public String placed(int place) {
        return place == 1 ? "First" : "Then (%d)".formatted(place);
    }

    /** "Step (2)", of those with a time of their own. */
    public String timed(int number) {
        return number == 1 ? "Step" : "Step (%d)".formatted(number);
    }

    /** "step 3 of your order". */
    public String inOrder(int place) {
        return "step %d of your order".formatted(place);
    }

    public boolean preparedAhead(String step) {
        return isIn("prepared_ahead", step);
    }

    /** What could be shown to a group at a time. */
    public List<Step> demonstrations() {
        return project.steps().stream().filter(s -> s.kind() == StepKind.SHOW).toList();
    }

    public boolean shownToGroups(String step) {
        return isIn("shown_to_groups", step);
    }

    public boolean homework(String step) {
        return isIn("homework", step);
    }

    private boolean isIn(String list, String step) {
        return IntStream.range(0, form.tree().path(list).size()).anyMatch(i -> form.tree().path(list).path(i).asText().equals(step));
    }
}
