package benchful.documents.paper;

import benchful.studio.Paper;
import java.util.List;

/**
 * A sheet of labels by its dimensions [mm].
 *
 * @param title "A4, 3 x 7, 63.5 x 38.1 mm"
 * @param columns labels across
 * @param rows labels down
 * @param width of one label
 * @param height of one label
 * @param left from the paper's edge to the first label
 * @param top from the paper's edge to the first label
 * @param pitchX from the left edge of one label to that of the next
 * @param pitchY from the top edge of one label to that of the next
 */
public record LabelStock(String title, Paper paper, int columns, int rows, double width, double height, double left, double top,
        double pitchX, double pitchY) {
    /** Sheets are sold with dimensions rounded to a tenth; a label may stand over the edge by this much [mm]. */
    private static final double ROUNDING = 0.3;
    private static final double LEAST = 15;

    /**
     * Six geometries found in copy shops. They close: two margins, the labels and their gaps make the page's width and height.
     * Common practice, no source; sources differ by up to 0.3 mm and printers by more, hence nudge and test sheet.
     */
    public static final List<LabelStock> COMMON = List.of(
            of(Paper.A4, 3, 7, 63.5, 38.1, 7.25, 15.15, 66, 38.1),
            of(Paper.A4, 2, 7, 99.1, 38.1, 4.65, 15.15, 101.6, 38.1),
            of(Paper.A4, 3, 8, 70, 37, 0, 0.5, 70, 37),
            of(Paper.A4, 3, 8, 63.5, 33.9, 7.25, 12.9, 66, 33.9),
            of(Paper.LETTER, 3, 10, 66.675, 25.4, 4.7625, 12.7, 69.85, 25.4),
            of(Paper.LETTER, 2, 5, 101.6, 50.8, 3.97, 12.7, 106.36, 50.8));

    public LabelStock {
        if (columns < 1 || rows < 1 || columns > 20 || rows > 40) {
            throw new IllegalArgumentException("A sheet has from 1 to 20 labels across and from 1 to 40 down, not %d and %d.".formatted(columns, rows));
        }
        if (!(width >= LEAST && height >= LEAST)) {
            throw new IllegalArgumentException("A label is at least 15 mm wide and high, not %s x %s mm.".formatted(width, height));
        }
        if (!(left >= 0 && top >= 0)) {
            throw new IllegalArgumentException("The margins must be 0 mm or more.");
        }
        if (columns > 1 && !(pitchX >= width - ROUNDING) || rows > 1 && !(pitchY >= height - ROUNDING)) {
            throw new IllegalArgumentException("The pitch is measured from edge to edge of neighbouring labels, so it can't be less than the label.");
        }
        if (!(left + (columns - 1) * pitchX + width <= paper.width() + ROUNDING)) {
            throw new IllegalArgumentException("%d labels across do not fit on %s.".formatted(columns, paper.title()));
        }
        if (!(top + (rows - 1) * pitchY + height <= paper.height() + ROUNDING)) {
            throw new IllegalArgumentException("%d labels down do not fit on %s.".formatted(rows, paper.title()));
        }
    }

    public static LabelStock of(Paper paper, int columns, int rows, double width, double height, double left, double top, double pitchX, double pitchY) {
        String title = "%s, %d x %d, %s x %s mm".formatted(paper.title(), columns, rows, Millimetres.words(width), Millimetres.words(height));
        return new LabelStock(title, paper, columns, rows, width, height, left, top, pitchX, pitchY);
    }

    public int perPage() {
        return columns * rows;
    }

    /** Left edge of the label at this position of the page, counted from 0 along the rows [mm]. */
    public double x(int position) {
        return left + position % columns * pitchX;
    }

    /** Top edge of the label at this position of the page [mm]. */
    public double y(int position) {
        return top + position / columns * pitchY;
    }
}
