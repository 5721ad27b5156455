package benchful.plans.pictures;

import benchful.core.learning.NormalInverseGamma;
import benchful.web.Times;
import java.time.Duration;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What is known of a step's minutes, on a line of minutes that grows by multiples: as believed when only the typed minutes were known
 * (a broken line), what each class showed (dots), and as believed now (a full line).
 */
public final class PacePicture {
    private static final double WIDTH = 420;
    private static final double HEIGHT = 112;
    private static final double LEFT = 12;
    private static final double RIGHT = 408;
    private static final double FLOOR = 78;
    private static final double TOP = 10;
    private static final double TEXT = 12;
    private static final int POINTS = 160;
    private static final double REACH = Math.log(2.5);

    private final double from;
    private final double to;

    private PacePicture(NormalInverseGamma after, List<Double> seen) {
        double[] logs = seen.stream().mapToDouble(Math::log).toArray();
        from = Math.min(-REACH, DoubleStream.concat(DoubleStream.of(logs), DoubleStream.of(after.quantile(0.01))).min().orElseThrow() - 0.1);
        to = Math.max(REACH, DoubleStream.concat(DoubleStream.of(logs), DoubleStream.of(after.quantile(0.99))).max().orElseThrow() + 0.1);
    }

    /**
     * @param id tells the picture from others on its page
     * @param typed the minutes that a multiple of 1 stands for
     * @param seen the multiples that classes showed
     */
    public static String of(String id, String title, Duration typed, NormalInverseGamma before, NormalInverseGamma after, List<Double> seen) {
        return new PacePicture(after, seen).drawn(id, title, typed, before, after, seen);
    }

    private String drawn(String id, String title, Duration typed, NormalInverseGamma before, NormalInverseGamma after, List<Double> seen) {
        Svg svg = new Svg();
        double highest = Math.max(after.density(after.mean()), before.density(before.mean()));
        curve(svg, before, highest, "fill=\"none\" stroke=\"%s\" stroke-width=\"1.5\" stroke-dasharray=\"5 4\"".formatted(Palette.QUIET));
        curve(svg, after, highest, "fill=\"none\" stroke=\"%s\" stroke-width=\"2.5\"".formatted(Palette.INK));
        svg.line(LEFT, FLOOR, RIGHT, FLOOR, "stroke=\"%s\" stroke-width=\"1\"".formatted(Palette.INK));
        seen.forEach(multiple -> svg.circle(x(Math.log(multiple)), FLOOR, 4.5, "fill=\"#ffffff\" stroke=\"%s\" stroke-width=\"2\"".formatted(Palette.INK)));
        mark(svg, 0, typed, FLOOR + 18, "typed ");
        mark(svg, after.mean(), times(typed, after.mean()), FLOOR + 32, "now ");
        return svg.document(WIDTH, HEIGHT, "px", "pace-" + id, "What is known of " + title, description(typed, after, seen));
    }

    private void curve(Svg svg, NormalInverseGamma belief, double highest, String attributes) {
        double[] x = new double[POINTS + 1];
        double[] y = new double[POINTS + 1];
        for (int i = 0; i <= POINTS; i++) {
            double at = from + (to - from) * i / POINTS;
            x[i] = x(at);
            y[i] = FLOOR - (FLOOR - TOP) * belief.density(at) / highest;
        }
        svg.curve(x, y, attributes);
    }

    private void mark(Svg svg, double at, Duration minutes, double y, String word) {
        String words = word + Times.words(minutes);
        double half = Svg.widthOf(words, TEXT) / 2;
        svg.line(x(at), FLOOR - 5, x(at), FLOOR + 7, "stroke=\"%s\" stroke-width=\"2\"".formatted(Palette.INK));
        svg.text(Math.max(LEFT + half, Math.min(RIGHT - half, x(at))), y, TEXT, words, "text-anchor=\"middle\"");
    }

    private double x(double log) {
        return LEFT + (RIGHT - LEFT) * (log - from) / (to - from);
    }

    private static Duration times(Duration typed, double log) {
        return Duration.ofSeconds(Math.round(typed.toSeconds() * Math.exp(log)));
    }

    private static String description(Duration typed, NormalInverseGamma after, List<Double> seen) {
        return "Typed %s; classes showed %s; now believed %s, with nine chances in ten from %s to %s.".formatted(Times.words(typed),
                String.join(", ", seen.stream().map(m -> Times.words(times(typed, Math.log(m)))).toList()), Times.words(times(typed, after.mean())),
                Times.words(times(typed, after.quantile(0.05))), Times.words(times(typed, after.quantile(0.95))));
    }
}
