package benchful.reviews;

import benchful.core.learning.PlannedStep;
import benchful.core.learning.StepReview;
import benchful.projects.MaterialLine;
import benchful.web.forms.SpecForm;
import io.quarkus.qute.TemplateData;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;

/** What the page of a review shows. */
@TemplateData
public record ReviewPage(Review review, SpecForm form, List<Row> rows, List<String> materials) {

    /** A planned step with what happened. */
    @TemplateData
    public record Row(PlannedStep planned, StepReview result) {}

    static ReviewPage of(Review review, SpecForm form) {
        List<StepReview> results = review.steps();
        List<PlannedStep> planned = review.plan().steps();
        return new ReviewPage(review, form,
                IntStream.range(0, planned.size()).mapToObj(i -> new Row(planned.get(i), results.get(i))).toList(),
                review.plan().file().project().materials().stream().map(MaterialLine::material).distinct().toList());
    }

    public List<StepReview> ranOver() {
        return rows.stream().map(Row::result).filter(StepReview::ranOver).toList();
    }

    /** Whether something stands there already though nobody typed it. */
    public boolean fromTheDay() {
        return review.version() == 0 && !review.sheet().equals(ReviewSpec.EMPTY);
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
