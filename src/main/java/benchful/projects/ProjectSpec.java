package benchful.projects;

import benchful.catalogue.HazardName;
import benchful.core.SkillLevel;
import benchful.projects.pictures.Picture;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.LongText;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.ShortText;
import benchful.web.forms.fields.Spec;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A piece that can be taught, whole: what is stored, edited, imported and exported. Its JSON Schema is
 * {@code /schema/project-1.json}; beyond it, {@link ProjectRules} says what must agree within a sheet.
 *
 * @param summary what the piece is, for choosing it (Markdown)
 * @param care how the wearer looks after the piece, printed on the handout (Markdown)
 * @param minimumAge youngest student it suits, in years; null where there is none
 * @param level the least practised group it suits
 * @param timesOf of whom the steps' times and calls for help are; improvers unless said otherwise
 * @param paces how many times as long the other levels take; null for the usual
 * @param source who wrote it or where it comes from; invented samples say so here
 */
@Spec(name = "project-1", title = "A project: a piece that can be taught", file = "a project file")
@RecordBuilder
public record ProjectSpec(
        @Required @Filled(120) @Mend("Give the project a name of up to 120 characters.") String name,
        @Required @Filled(60) @Mend("Say which craft it is, such as “bead stringing”.") String craft,
        @Required SkillLevel level,
        SkillLevel timesOf,
        @JsonInclude(JsonInclude.Include.NON_NULL) Paces paces,
        @LongText String summary,
        @LongText String care,
        @Range(from = 3, to = 99) @Mend("Give the youngest age in whole years, from 3 to 99, or leave it empty.") Integer minimumAge,
        @ShortText String source,
        @Length(most = 40) List<Measure> measures,
        @Required @Length(least = 1, most = 30) @Mend("Give the project at least one size.") List<Size> sizes,
        @Length(most = 10) List<Sizing> sizing,
        @Length(most = 60) List<MaterialLine> materials,
        @Length(most = 60) List<Tool> tools,
        @Required @Length(least = 1, most = 150) @Mend("Give the project at least one step.") List<Step> steps,
        @Length(most = 30) List<@HazardName String> hazards,
        @Length(most = 60) List<Picture> pictures) implements ProjectSpecBuilder.With {

    public ProjectSpec {
        timesOf = timesOf == null ? SkillLevel.IMPROVER : timesOf;
        measures = copy(measures);
        sizes = copy(sizes);
        sizing = copy(sizing);
        materials = copy(materials);
        tools = copy(tools);
        steps = copy(steps);
        hazards = copy(hazards);
        pictures = copy(pictures);
    }

    /** How many times as long as the steps' times say students of a level take. */
    public double pace(SkillLevel level) {
        BigDecimal own = paces == null || level == timesOf ? null : paces.of(level);
        return own == null ? level.paceAgainst(timesOf) : own.doubleValue();
    }

    public ProjectSpec withPace(SkillLevel level, BigDecimal pace) {
        return withPaces((paces == null ? Paces.USUAL : paces).with(level, pace));
    }

    /** How many times as long as the steps' times say each level takes; each null for the usual, see {@link SkillLevel}. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Paces(
            @Range(above = 0, to = 5) @Mend("Say how many times as long they take, above 0 and up to 5, such as 1.5.") BigDecimal beginner,
            @Range(above = 0, to = 5) @Mend("Say how many times as long they take, above 0 and up to 5, such as 1.5.") BigDecimal improver,
            @Range(above = 0, to = 5) @Mend("Say how many times as long they take, above 0 and up to 5, such as 0.75.") BigDecimal experienced) {

        static final Paces USUAL = new Paces(null, null, null);

        /** Null for the usual. */
        BigDecimal of(SkillLevel level) {
            return switch (level) {
                case BEGINNER -> beginner;
                case IMPROVER -> improver;
                case EXPERIENCED -> experienced;
            };
        }

        Paces with(SkillLevel level, BigDecimal pace) {
            return switch (level) {
                case BEGINNER -> new Paces(pace, improver, experienced);
                case IMPROVER -> new Paces(beginner, pace, experienced);
                case EXPERIENCED -> new Paces(beginner, improver, pace);
            };
        }
    }

    public Optional<Size> size(String name) {
        return sizes.stream().filter(s -> s.name().equals(name)).findFirst();
    }

    public Optional<Step> step(String id) {
        return steps.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** The measure, by its name or its label, or the answer of a working that a blank in a text names. */
    public Optional<String> valueNamed(String blank) {
        return Stream.concat(measures.stream().filter(m -> m.name().equals(blank) || m.label().equalsIgnoreCase(blank)).map(Measure::name),
                sizing.stream().flatMap(working -> working.answers().stream()).filter(blank::equals)).findFirst();
    }

    /** The material lines whose material a blank in a text names, from 0. */
    public List<Integer> linesNamed(String blank) {
        return IntStream.range(0, materials.size()).filter(i -> materials.get(i).material().equalsIgnoreCase(blank)).boxed().toList();
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

    static <T> List<T> copy(List<T> list) {
        return list == null ? List.of() : List.copyOf(list);
    }
}
