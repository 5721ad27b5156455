package benchful.reviews;

import benchful.core.learning.StepReview;
import benchful.plans.pictures.Palette;
import benchful.plans.pictures.Svg;
import java.time.Duration;
import java.util.List;

/** Planned against actual as bars, one pair for a step: outlined as planned, filled as it was, hatched where it ran over. */
final class ReviewPicture {
    private static final int ROW = 40;
    private static final int LEFT = 250;
    private static final int WIDTH = 900;
    private static final int LETTERS = 14;

    private ReviewPicture() {}

    static String of(List<StepReview> steps) {
        long longest = steps.stream().mapToLong(s -> Math.max(s.planned().toSeconds(), s.actual().toSeconds())).max().orElse(1);
        double scale = (WIDTH - LEFT - 170.0) / Math.max(1, longest);
        Svg svg = new Svg();
        for (int i = 0; i < steps.size(); i++) {
            draw(svg, steps.get(i), i * ROW + 6, scale);
        }
        return svg.document(WIDTH, Math.max(1, steps.size()) * ROW + 8, "px", "review",
                "Planned and actual minutes of %d steps".formatted(steps.size()), "The table says the same.");
    }

    private static void draw(Svg svg, StepReview s, int y, double scale) {
        double planned = width(s.planned(), scale);
        double actual = width(s.actual(), scale);
        svg.text(LEFT - 10, y + 17, LETTERS, shortened(s), "text-anchor=\"end\"");
        svg.rect(LEFT, y, planned, 11, "fill=\"none\" stroke=\"%s\" stroke-width=\"1.5\"".formatted(Palette.INK));
        svg.rect(LEFT, y + 13, actual, 13, "fill=\"%s\"".formatted(s.ranOver() ? Palette.OVERRUN_GROUND : Palette.ACCENT));
        if (s.ranOver()) {
            svg.hatch(LEFT, y + 13, actual, 13, 8, "stroke=\"%s\" stroke-width=\"3\"".formatted(Palette.OVERRUN));
        }
        svg.rect(LEFT, y + 13, actual, 13, "fill=\"none\" stroke=\"%s\" stroke-width=\"0.5\"".formatted(Palette.INK));
        svg.text(LEFT + Math.max(planned, actual) + 8, y + 18, LETTERS, minutes(s), "");
    }

    /** What is too long loses the end of its title, never its group. */
    private static String shortened(StepReview s) {
        String group = s.name().substring(s.title().length());
        return Svg.cut(s.title(), LEFT - 10 - Svg.widthOf(group, LETTERS), LETTERS) + group;
    }

    private static String minutes(StepReview s) {
        return "%d min, planned %d".formatted(Math.round(s.actual().toSeconds() / 60.0), Math.round(s.planned().toSeconds() / 60.0));
    }

    private static double width(Duration time, double scale) {
        return Math.max(1, time.toSeconds() * scale);
    }
}
