package benchful.plans.pictures;

import benchful.core.cutting.CutSheet;
import benchful.core.cutting.SheetPlan;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How a sheet is cut, drawn to scale from above: its pieces with their sizes, offcuts hatched, and the cuts numbered at the
 * edge where each begins, in the order in which to make them.
 *
 * @param count how many sheets are cut so
 * @param scale of the drawing [px per mm], the same for all sheets of a plan
 * @param text size of its letters [px]
 * @param words how a size is written
 */
public record SheetPicture(CutSheet sheet, int count, double scale, int text, Function<Extent, String> words) {
    private static final double TALLEST = 235;

    /**
     * One for each way in which sheets of the plan are cut, in their order.
     *
     * @param width of the widest drawing [px]
     */
    public static List<SheetPicture> of(SheetPlan plan, int width, int text, Function<Extent, String> words) {
        double longest = plan.sheets().stream().mapToDouble(s -> mm(s.size().length())).max().orElse(1);
        double widest = plan.sheets().stream().mapToDouble(s -> mm(s.size().width())).max().orElse(1);
        double scale = Math.min((width - 5.6 * text) / longest, TALLEST / widest);
        Map<List<Object>, List<CutSheet>> alike = plan.sheets().stream().collect(
                Collectors.groupingBy(s -> List.of(s.size(), s.bought(), s.cuts(), s.pieces()), LinkedHashMap::new, Collectors.toList()));
        return alike.values().stream().map(group -> new SheetPicture(group.get(0), group.size(), scale, text, words)).toList();
    }

    /** @param id begins the ids within the drawing */
    public String svg(String id, String title) {
        Svg svg = new Svg();
        double left = 3.8 * text;
        double top = 1.6 * text;
        svg.text(0, top + 1.2 * text, text, count + " ×", "font-weight=\"bold\"");
        sheet.pieces().forEach(p -> piece(svg, p, left, top));
        sheet.offcuts().forEach(o -> offcut(svg, o, left, top));
        svg.rect(left, top, px(sheet.size().length()), px(sheet.size().width()), "fill=\"none\" stroke=\"%s\" stroke-width=\"1.5\"".formatted(Palette.INK));
        for (int i = 0; i < sheet.cuts().size(); i++) {
            cut(svg, sheet.cuts().get(i), i + 1, left, top);
        }
        return svg.document(left + px(sheet.size().length()) + 1.8 * text, top + px(sheet.size().width()) + 2, "px", id, title, description());
    }

    private void piece(Svg svg, CutSheet.Piece piece, double left, double top) {
        double x = left + px(piece.x());
        double y = top + px(piece.y());
        svg.rect(x, y, px(piece.size().length()), px(piece.size().width()), "fill=\"%s\" stroke=\"%s\" stroke-width=\"1\"".formatted(Palette.WORK, Palette.INK));
        label(svg, words.apply(piece.size()), piece.label(), x, y, piece.size());
    }

    private void offcut(Svg svg, CutSheet.Offcut offcut, double left, double top) {
        double x = left + px(offcut.x());
        double y = top + px(offcut.y());
        svg.rect(x, y, px(offcut.size().length()), px(offcut.size().width()), "fill=\"%s\" stroke=\"%s\" stroke-width=\"0.5\"".formatted(Palette.PAPER, Palette.INK));
        if (offcut.kept()) {
            label(svg, words.apply(offcut.size()), "keep", x, y, offcut.size());
        } else {
            svg.hatch(x, y, px(offcut.size().length()), px(offcut.size().width()), 0.6 * text, "stroke=\"%s\" stroke-width=\"0.5\"".formatted(Palette.QUIET));
        }
    }

    /** Along the longer edge, so that narrow pieces are told too. */
    private void label(Svg svg, String first, String second, double x, double y, Extent size) {
        boolean upright = px(size.width()) > 1.3 * px(size.length());
        double room = (upright ? px(size.width()) : px(size.length())) - 0.4 * text;
        double height = upright ? px(size.length()) : px(size.width());
        double letters = Math.min(0.9 * text, 0.9 * text * room / Svg.widthOf(first, 0.9 * text));
        if (letters >= 0.5 * text && height > letters * 1.3) {
            boolean both = height > 2.6 * letters && Svg.widthOf(second, 0.85 * letters) <= room;
            double middle = x + px(size.length()) / 2;
            double centre = y + px(size.width()) / 2;
            String turn = upright ? " transform=\"rotate(-90 %s %s)\"".formatted(Svg.n(middle), Svg.n(centre)) : "";
            svg.text(middle, centre + (both ? -0.1 : 0.35) * letters, letters, first, "text-anchor=\"middle\"" + turn);
            if (both) {
                svg.text(middle, centre + letters, 0.85 * letters, second, "text-anchor=\"middle\"" + turn);
            }
        }
    }

    /** The number stands where the cut begins, in a small ring on its line. */
    private void cut(Svg svg, CutSheet.Cut cut, int number, double left, double top) {
        double at = (cut.across() ? left : top) + px(cut.at());
        double from = (cut.across() ? top : left) + px(cut.from());
        double to = (cut.across() ? top : left) + px(cut.to());
        double x = cut.across() ? at : from;
        double y = cut.across() ? from : at;
        svg.line(x, y, cut.across() ? at : to, cut.across() ? to : at, "stroke=\"%s\" stroke-width=\"1.2\" stroke-dasharray=\"5 2\"".formatted(Palette.INK));
        double ring = 0.55 * text;
        svg.circle(x, y, ring, "fill=\"%s\" stroke=\"%s\" stroke-width=\"0.8\"".formatted(Palette.PAPER, Palette.INK));
        svg.text(x, y + 0.25 * text, 0.65 * text, String.valueOf(number), "text-anchor=\"middle\"");
    }

    private String description() {
        String pieces = sheet.pieces().stream().map(p -> "%s (%s)".formatted(words.apply(p.size()), p.label())).collect(Collectors.joining(", "));
        String kept = sheet.offcuts().stream().filter(CutSheet.Offcut::kept).map(o -> words.apply(o.size())).collect(Collectors.joining(", "));
        return "%d × %s, by %d cuts, into %s%s.".formatted(count, words.apply(sheet.size()), sheet.cuts().size(), pieces,
                kept.isEmpty() ? "" : "; offcuts to keep " + kept);
    }

    private double px(Quantity length) {
        return mm(length) * scale;
    }

    private static double mm(Quantity length) {
        return length.base().setScale(3, RoundingMode.HALF_UP).doubleValue();
    }
}
