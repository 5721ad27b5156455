package benchful.plans.pictures;

import benchful.core.quantity.Quantity;
import benchful.core.sizing.PlacedBead;
import benchful.core.sizing.Strand;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A strand at its real size: every bead in its place above a ruler, to lay beads on. It is cut into rows as wide as the page;
 * the ruler runs on from row to row. Kinds of beads differ by shade and pattern.
 *
 * @param strand the beads in their places
 * @param width  of a row [mm]
 * @param inches whether the ruler counts inches and eighths instead of centimetres and millimetres
 */
public record StrandPicture(Strand strand, double width, boolean inches) {
    private static final double TALLEST = 16;
    private static final double INCH = 25.4;

    public StrandPicture {
        if (width < 40) {
            throw new IllegalArgumentException("A row of a strand is at least 40 mm wide, not " + width);
        }
    }

    /**
     * One row of the picture, and what it shows in words. A page must show it at just this size to be true.
     *
     * @param height of the row [mm]; its width is that of the picture
     */
    public record Row(String svg, double height, String words) {}

    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        int from = 0;
        while (from < strand.beads().size()) {
            int to = end(from);
            rows.add(row(from, to, rows.size() + 1));
            from = to;
        }
        return rows;
    }

    /** The beads' names in the order in which their patterns are given out. */
    public List<String> kinds() {
        return List.copyOf(strand.counts().keySet());
    }

    /** A single bead as it is drawn, for a legend. */
    public String sample(String kind) {
        Svg svg = new Svg();
        bead(svg, kinds().indexOf(kind), 3, 3, 5, 5);
        return svg.document(6, 6, "mm", "bead" + kinds().indexOf(kind), kind, kind);
    }

    private int end(int from) {
        double start = mm(strand.beads().get(from).at());
        int to = from + 1;
        while (to < strand.beads().size() && far(strand.beads().get(to)) - start <= width) {
            to++;
        }
        return to;
    }

    private Row row(int from, int to, int number) {
        Svg svg = new Svg();
        double start = mm(strand.beads().get(from).at());
        double length = far(strand.beads().get(to - 1)) - start;
        double tall = strand.beads().stream().mapToDouble(b -> Math.min(TALLEST, mm(b.size()))).max().orElse(1);
        double axis = 4.5 + tall / 2;
        boolean goesOn = to < strand.beads().size();
        svg.line(from == 0 ? -0.5 : 0, axis, goesOn ? width : length + 0.5, axis, "stroke=\"%s\" stroke-width=\"0.3\"".formatted(Palette.QUIET));
        for (int i = from; i < to; i++) {
            bead(svg, i, start, axis);
        }
        double ruler = axis + tall / 2 + 1.2;
        ruler(svg, start, length, ruler);
        String words = "Row %d, beads %d to %d".formatted(number, from + 1, to);
        double height = ruler + 6.5;
        String svgText = svg.document(width, height, "mm", "strand" + number, words, words + " at their real size, above a ruler.");
        return new Row(svgText, height, words);
    }

    private void bead(Svg svg, int i, double start, double axis) {
        PlacedBead bead = strand.beads().get(i);
        double size = mm(bead.size());
        double middle = mm(bead.at()) - start + size / 2;
        bead(svg, kinds().indexOf(bead.bead()), middle, axis, size, Math.min(TALLEST, size));
        if ((i + 1) % 10 == 0) {
            svg.text(middle, 3, 2.8, String.valueOf(i + 1), "text-anchor=\"middle\"");
        }
    }

    private static void bead(Svg svg, int kind, double x, double y, double wide, double tall) {
        String fill = Palette.BEADS.get(Math.floorMod(kind, Palette.BEADS.size()));
        svg.ellipse(x, y, wide / 2 - 0.1, tall / 2 - 0.1, "fill=\"%s\" stroke=\"%s\" stroke-width=\"0.2\"".formatted(fill, Palette.INK));
        switch (Math.floorMod(kind, Palette.BEADS.size())) {
            case 2 -> svg.ellipse(x, y, wide / 6, tall / 6, "fill=\"%s\"".formatted(Palette.INK));
            case 4 -> svg.ellipse(x, y, wide / 4, tall / 4, "fill=\"none\" stroke=\"%s\" stroke-width=\"0.2\"".formatted(Palette.INK));
            case 5 -> svg.line(x, y - tall / 2 + 0.1, x, y + tall / 2 - 0.1, "stroke=\"%s\" stroke-width=\"0.3\"".formatted(Palette.INK));
            default -> { }
        }
    }

    private void ruler(Svg svg, double start, double length, double y) {
        double step = inches ? INCH / 8 : 1;
        int whole = inches ? 8 : 10;
        svg.line(0, y, length, y, "stroke=\"%s\" stroke-width=\"0.2\"".formatted(Palette.INK));
        for (int i = (int) Math.ceil(start / step); i * step <= start + length + 1e-6; i++) {
            double x = i * step - start;
            double tick = i % whole == 0 ? 3 : i % (whole / 2) == 0 ? 2 : 1.2;
            svg.line(x, y, x, y + tick, "stroke=\"%s\" stroke-width=\"0.15\"".formatted(Palette.INK));
            if (i % whole == 0) {
                svg.text(x, y + 5.8, 2.8, i / whole + (i == 0 ? inches ? " in" : " cm" : ""), "text-anchor=\"%s\"".formatted(x < 2 ? "start" : "middle"));
            }
        }
    }

    private static double far(PlacedBead bead) {
        return mm(bead.at()) + mm(bead.size());
    }

    /** To a hundredth of a millimetre, which no printer shows. */
    private static double mm(Quantity length) {
        BigDecimal base = length.base();
        return base.setScale(2, RoundingMode.HALF_UP).doubleValue();
    }
}
