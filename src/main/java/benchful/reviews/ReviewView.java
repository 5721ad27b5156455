package benchful.reviews;

import benchful.classes.ClassFile;
import benchful.core.learning.PlannedStep;
import benchful.core.learning.StepReview;
import benchful.day.Days;
import benchful.projects.Tool;
import benchful.web.Formats;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the page of a review shows. */
@TemplateData
public record ReviewView(Review review, SpecForm form, List<Row> rows, List<String> materials, List<Leftovers.Line> leftovers, List<String> reasons, List<PhotoLine> photos) {
    private static final String WAITED = "/waited";

    /** A planned step with what happened. */
    @TemplateData
    public record Row(PlannedStep planned, StepReview result) {}

    /**
     * A tool that students may have had to wait for.
     *
     * @param at where it is told
     */
    @TemplateData
    public record ToolTick(String tool, String at, boolean ticked) {}

    /** Those of the project of which there were not as many as can be in use, as far as that was written down, and any that was ticked before. */
    public List<ToolTick> tools() {
        ClassFile file = review.plan().file();
        List<String> ticked = form.rows(WAITED).stream().map(form::value).filter(tool -> !tool.isEmpty()).toList();
        List<String> tools = Stream.concat(file.project().tools().stream().filter(t -> !t.personal()).map(Tool::name)
                .filter(tool -> file.tools().getOrDefault(tool, 0) < file.atOnce(tool)), ticked.stream()).distinct().toList();
        return IntStream.range(0, tools.size()).mapToObj(i -> new ToolTick(tools.get(i), WAITED + "/" + i, ticked.contains(tools.get(i)))).toList();
    }

    /** A planned break. */
    @TemplateData
    public record BreakRow(String key, String name, Duration planned) {}

    public List<BreakRow> breaks() {
        boolean days = review.plan().file().setup().meetings().size() > 1;
        return Days.breaks(review.plan()).stream().map(b -> new BreakRow(b.key(), "%sBreak %s to %s".formatted(days ? Formats.words(b.start().toLocalDate()) + ", " : "",
                Formats.clock(b.start()), Formats.clock(b.end())), b.length())).toList();
    }

    /**
     * @param materials what the class took, by name, as it was packed
     * @param reasons   own words of why that were used before
     */
    static ReviewView of(Review review, SpecForm form, Collection<String> materials, List<Leftovers.Line> leftovers, List<String> reasons) {
        List<StepReview> results = review.steps();
        List<PlannedStep> planned = review.plan().steps();
        return new ReviewView(review, form,
                IntStream.range(0, planned.size()).mapToObj(i -> new Row(planned.get(i), results.get(i))).toList(),
                Stream.concat(materials.stream(), review.sheet().materials().keySet().stream()).distinct().toList(), leftovers, reasons,
                ClassPhoto.photos(review.craftClass()));
    }

    public List<StepReview> ranOver() {
        return rows.stream().map(Row::result).filter(StepReview::ranOver).toList();
    }

    /** Whether something stands there already though nobody typed it. */
    public boolean fromTheDay() {
        return review.version() == 0 && !review.sheet().equals(ReviewSpec.EMPTY);
    }

    /** Whether the shelf does not hold yet what was left. */
    public boolean leftoversOpen() {
        return leftovers.stream().anyMatch(Leftovers.Line::open);
    }

    public boolean anyTyped() {
        return rows.stream().anyMatch(r -> r.result().actual() != null);
    }

    /** Actual less planned over the hands-on steps that were typed. */
    public Duration difference() {
        return rows.stream().filter(r -> r.planned().handsOn()).map(r -> r.result().difference()).reduce(Duration.ZERO, Duration::plus);
    }

    public String picture() {
        return ReviewPicture.of(rows.stream().map(Row::result).filter(r -> r.actual() != null).toList());
    }
}
