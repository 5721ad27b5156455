package benchful.documents.parts;

import benchful.catalogue.MaterialSpec;
import benchful.classes.ClassFile;
import benchful.classes.Picks;
import benchful.projects.ProjectSpec;
import benchful.projects.Step;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which hazards a class meets, and where: in its materials, its tools and its steps. */
public final class HazardUse {
    private final ClassFile file;
    private final ProjectSpec project;

    public HazardUse(ClassFile file) {
        this.file = file;
        this.project = file.project();
    }

    /** Of the step itself and of the tools it uses, as ids. */
    public List<String> ofStep(Step step) {
        Set<String> tools = step.tools().stream().map(Step.ToolUse::tool).collect(Collectors.toSet());
        Stream<String> ofTools = project.tools().stream().filter(tool -> tools.contains(tool.name())).flatMap(tool -> tool.hazards().stream());
        return Stream.concat(step.hazards().stream(), ofTools).distinct().toList();
    }

    /** Of these materials, as ids: what a label warns of. */
    public List<String> ofMaterials(Collection<String> names) {
        return file.materials().stream().filter(material -> names.contains(material.name()))
                .map(MaterialSpec::hazards).flatMap(List::stream).distinct().toList();
    }

    /** Of what it is made of, and its own. */
    public List<String> ofThePiece() {
        return Stream.concat(ofMaterials(Picks.taken(project, file.setup())).stream(), project.hazards().stream()).distinct().toList();
    }

    /** All that the class meets: first those of the steps in their order, then tools, materials and the project's own. */
    public List<String> all() {
        Set<String> all = new LinkedHashSet<>();
        project.steps().forEach(step -> all.addAll(ofStep(step)));
        project.tools().forEach(tool -> all.addAll(tool.hazards()));
        all.addAll(ofMaterials(Picks.taken(project, file.setup())));
        all.addAll(project.hazards());
        return List.copyOf(all);
    }
}
