package benchful.plans.pictures;

import benchful.core.lesson.StepKind;

/** One block of the timed plan's picture: its frame tells whether it decides the finish, its band on top what kind it is. */
final class PlanBox {
    private PlanBox() {}

    static void draw(Svg svg, StepKind kind, boolean critical, double x, double y, double width, double height, double text) {
        svg.rect(x, y, width, height, "fill=\"%s\"".formatted(fill(kind)));
        band(svg, kind, x, y, width, 0.45 * text);
        String frame = "fill=\"none\" stroke=\"%s\" stroke-width=\"%s\"".formatted(Palette.INK, Svg.n(critical ? 0.2 * text : 0.07 * text));
        svg.rect(x, y, width, height, kind.isUnattended() && !critical ? frame + " stroke-dasharray=\"4 2\"" : frame);
    }

    private static void band(Svg svg, StepKind kind, double x, double y, double width, double height) {
        String stroke = "stroke=\"%s\" stroke-width=\"%s\"".formatted(Palette.INK, Svg.n(height / 7));
        String ink = "fill=\"" + Palette.INK + "\"";
        Runnable pattern = switch (kind) {
            case SHOW -> () -> svg.hatch(x, y, width, height, height * 0.7, stroke);
            case TOGETHER, AHEAD, BETWEEN, HOMEWORK, COLLECT -> () -> svg.rect(x, y, width, height, ink);
            case WAIT -> () -> svg.dots(x, y, width, height, height, ink);
            case MAKE -> () -> svg.rect(x, y, width, height, "fill=\"%s\"".formatted(Palette.WORK_BAND));
        };
        pattern.run();
    }

    private static String fill(StepKind kind) {
        return switch (kind) {
            case SHOW -> Palette.REST;
            case TOGETHER, AHEAD, BETWEEN, HOMEWORK, COLLECT -> Palette.TOGETHER;
            case WAIT -> Palette.PAPER;
            case MAKE -> Palette.WORK;
        };
    }
}
