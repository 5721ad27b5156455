package benchful.projects;

import benchful.core.SkillLevel;
import benchful.projects.pictures.Picture;
import java.util.List;
import java.util.Optional;

/**
 * A piece that can be taught, whole: what is stored, edited, imported and exported. Its JSON Schema is
 * {@code /schema/project-1.json}; beyond it, {@link ProjectRules} says what must agree within a sheet.
 *
 * @param summary what the piece is, for choosing it (Markdown)
 * @param care how the wearer looks after the piece, printed on the handout (Markdown)
 * @param minimumAge youngest student it suits, in years; null where there is none
 * @param level the least practised group it suits
 * @param source who wrote it or where it comes from; invented samples say so here
 */
public record ProjectSpec(
        String name,
        String craft,
        SkillLevel level,
        String summary,
        String care,
        Integer minimumAge,
        String source,
        List<Measure> measures,
        List<Size> sizes,
        List<Sizing> sizing,
        List<MaterialLine> materials,
        List<Tool> tools,
        List<Step> steps,
        List<String> hazards,
        List<Picture> pictures) {

    public ProjectSpec {
        measures = copy(measures);
        sizes = copy(sizes);
        sizing = copy(sizing);
        materials = copy(materials);
        tools = copy(tools);
        steps = copy(steps);
        hazards = copy(hazards);
        pictures = copy(pictures);
    }

    public Optional<Size> size(String name) {
        return sizes.stream().filter(s -> s.name().equals(name)).findFirst();
    }

    public Optional<Step> step(String id) {
        return steps.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /**
     * What must have ended before a step starts. A step that names nothing follows the one before it in the sheet, steps done
     * ahead of the class left out.
     *
     * @param index of the step in the sheet, from 0
     */
    public List<Step.After> predecessors(int index) {
        Step step = steps.get(index);
        if (step.after() != null || step.kind().isBeforeClass()) {
            return ProjectSpec.copy(step.after());
        }
        for (int i = index - 1; i >= 0; i--) {
            if (!steps.get(i).kind().isBeforeClass()) {
                return List.of(new Step.After(steps.get(i).id(), null, null));
            }
        }
        return List.of();
    }

    public ProjectSpec withName(String newName) {
        return new ProjectSpec(newName, craft, level, summary, care, minimumAge, source, measures, sizes, sizing, materials,
                tools, steps, hazards, pictures);
    }

    public ProjectSpec withPictures(List<Picture> newPictures) {
        return new ProjectSpec(name, craft, level, summary, care, minimumAge, source, measures, sizes, sizing, materials,
                tools, steps, hazards, newPictures);
    }

    public ProjectSpec withMaterials(List<MaterialLine> newMaterials) {
        return new ProjectSpec(name, craft, level, summary, care, minimumAge, source, measures, sizes, sizing, newMaterials,
                tools, steps, hazards, pictures);
    }

    static <T> List<T> copy(List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }
}
