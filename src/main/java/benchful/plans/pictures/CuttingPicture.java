package benchful.plans.pictures;

import benchful.core.cutting.CutLength;
import benchful.core.cutting.CuttingPlan;
import benchful.core.quantity.Quantity;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Which length is cut into which pieces, drawn to one scale: a bar for each length, equal ones once with their number,
 * pieces by their length, offcuts hatched.
 *
 * @param width of the drawing [px]
 * @param text  size of its letters [px]
 * @param words how a length is written
 */
public record CuttingPicture(CuttingPlan plan, int width, int text, Function<Quantity, String> words) {

    /** Equal lengths with equal cuts, and how many there are. */
    public record Group(CutLength length, int count) {}

    /** In the order in which to cut them. */
    public List<Group> groups() {
        Map<CutLength, Integer> groups = new LinkedHashMap<>();
        plan.lengths().forEach(length -> groups.merge(length, 1, Integer::sum));
        List<Group> list = new ArrayList<>();
        groups.forEach((length, count) -> list.add(new Group(length, count)));
        return list;
    }

    /** @param id begins the ids within the drawing */
    public String svg(String id, String title) {
        Svg svg = new Svg();
        double longest = plan.lengths().stream().mapToDouble(length -> mm(length.length())).max().orElse(1);
        double left = 3.2 * text;
        double y = 0;
        for (Group group : groups()) {
            svg.text(0, y + 1.9 * text, text, group.count() + " ×", "font-weight=\"bold\"");
            bar(svg, group.length(), left, y + 0.4 * text, (width - left - 2) / longest);
            y += 3.4 * text;
        }
        return svg.document(width, Math.max(y, text), "px", id, title, description());
    }

    private void bar(Svg svg, CutLength length, double left, double y, double scale) {
        double height = 2.4 * text;
        for (CutLength.Cut cut : length.cuts()) {
            double x = left + mm(cut.at()) * scale;
            double wide = mm(cut.length()) * scale;
            svg.rect(x, y, wide, height, "fill=\"%s\" stroke=\"%s\" stroke-width=\"1\"".formatted(Palette.WORK, Palette.INK));
            label(svg, words.apply(cut.length()), cut.label(), x, y, wide);
        }
        double offcut = mm(length.offcut()) * scale;
        double end = left + mm(length.length()) * scale;
        if (offcut > 0.5) {
            svg.rect(end - offcut, y, offcut, height, "fill=\"%s\" stroke=\"%s\" stroke-width=\"0.7\"".formatted(Palette.PAPER, Palette.INK));
            svg.hatch(end - offcut, y, offcut, 0.4 * text, 0.4 * text, "stroke=\"%s\" stroke-width=\"0.7\"".formatted(Palette.INK));
            label(svg, words.apply(length.offcut()), length.kept() ? "keep" : "bin", end - offcut, y, offcut);
        }
    }

    private void label(Svg svg, String first, String second, double x, double y, double wide) {
        double size = 0.9 * text;
        double room = wide - 0.4 * text;
        if (Svg.widthOf(first, size) <= room) {
            svg.text(x + wide / 2, y + 1.15 * text, size, first, "text-anchor=\"middle\"");
            if (second != null && Svg.widthOf(second, 0.8 * size) <= room) {
                svg.text(x + wide / 2, y + 2.1 * text, 0.8 * size, second, "text-anchor=\"middle\"");
            }
        }
    }

    private String description() {
        return groups().stream()
                .map(group -> "%d × %s cut into %s, offcut %s".formatted(group.count(), words.apply(group.length().length()),
                        group.length().cuts().stream().map(cut -> words.apply(cut.length())).collect(Collectors.joining(", ")),
                        words.apply(group.length().offcut())))
                .collect(Collectors.joining("; ", "", "."));
    }

    private static double mm(Quantity length) {
        return length.base().setScale(2, RoundingMode.HALF_UP).doubleValue();
    }
}
