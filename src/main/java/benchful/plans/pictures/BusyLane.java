package benchful.plans.pictures;

import benchful.core.lesson.TutorLoad;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** How busy somebody is, as bars as high as the share of time taken. */
record BusyLane(PlanScale scale, List<TutorLoad.Span> spans, ToDoubleFunction<TutorLoad.Span> share) {

    boolean isEmpty() {
        return spans.stream().noneMatch(span -> share.applyAsDouble(span) > 0);
    }

    void draw(Svg svg, double top, double height) {
        double text = scale.text();
        for (TutorLoad.Span span : spans) {
            double tall = Math.min(1, share.applyAsDouble(span)) * (height - 0.6 * text);
            if (tall > 0 && scale.shows(span.start(), span.end())) {
                double x = scale.x(span.start());
                svg.rect(x, top + height - 0.3 * text - tall, scale.x(span.end()) - x, tall,
                        "fill=\"%s\" stroke=\"%s\" stroke-width=\"0.7\"".formatted(Palette.WORK_BAND, Palette.INK));
            }
        }
    }
}
