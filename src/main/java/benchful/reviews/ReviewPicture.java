package benchful.reviews;

import benchful.core.learning.StepReview;
import java.time.Duration;
import java.util.List;
import java.util.Locale;

/** Planned against actual as bars, one pair for a step: outlined as planned, filled as it was, hatched where it ran over. */
final class ReviewPicture {
    private static final int ROW = 40;
    private static final int LEFT = 250;
    private static final int WIDTH = 900;
    private static final int LONGEST = 30;

    private ReviewPicture() {}

    static String of(List<StepReview> steps) {
        long longest = steps.stream().mapToLong(s -> Math.max(s.planned().toSeconds(), s.actual().toSeconds())).max().orElse(1);
        double scale = (WIDTH - LEFT - 170.0) / Math.max(1, longest);
        StringBuilder svg = new StringBuilder(head(steps));
        for (int i = 0; i < steps.size(); i++) {
            svg.append(row(steps.get(i), i * ROW + 6, scale));
        }
        return svg.append("</svg>").toString();
    }

    private static String head(List<StepReview> steps) {
        return """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d" role="img" aria-label="Planned and actual minutes of %d steps; the table says the same">
                <defs><pattern id="ranover" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">\
                <rect width="6" height="6" fill="#fbeee2"/><path d="M0 0v6" stroke="#8a3b12" stroke-width="3"/></pattern></defs>
                """.formatted(WIDTH, Math.max(1, steps.size()) * ROW + 8, steps.size());
    }

    private static String row(StepReview s, int y, double scale) {
        String label = shortened(s);
        return String.format(Locale.ROOT, """
                <text x="%d" y="%d" text-anchor="end" font-size="14" fill="#22282b">%s</text>
                <rect x="%d" y="%d" width="%.1f" height="11" fill="none" stroke="#22282b" stroke-width="1.5"/>
                <rect x="%d" y="%d" width="%.1f" height="13" fill="%s" stroke="#22282b" stroke-width="0.5"/>
                <text x="%.1f" y="%d" font-size="14" fill="#22282b">%s</text>
                """,
                LEFT - 10, y + 17, escaped(label), LEFT, y, width(s.planned(), scale), LEFT, y + 13, width(s.actual(), scale),
                s.ranOver() ? "url(#ranover)" : "#1f4e5f",
                LEFT + Math.max(width(s.planned(), scale), width(s.actual(), scale)) + 8, y + 18, minutes(s));
    }

    /** What is too long loses the end of its title, never its group. */
    private static String shortened(StepReview s) {
        int room = LONGEST - (s.name().length() - s.title().length());
        return s.title().length() > room ? s.title().substring(0, room - 1) + "…" + s.name().substring(s.title().length()) : s.name();
    }

    private static String minutes(StepReview s) {
        return "%d min, planned %d".formatted(Math.round(s.actual().toSeconds() / 60.0), Math.round(s.planned().toSeconds() / 60.0));
    }

    private static double width(Duration time, double scale) {
        return Math.max(1, time.toSeconds() * scale);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
