package benchful.documents.labels;

import benchful.documents.paper.LabelStock;
import benchful.documents.pdf.Glyphs;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Fits the texts of a kit or a seat into a label by rule: each text shrinks in quarter points to its smallest size; then the name and the
 * piece are cut off with an ellipsis, and of contents and cautions as many as fit are kept and the rest counted ("+3 more:
 * see packing list"). Nothing ever stands over the edge. Sizes are in points, places in millimetres.
 */
final class LabelFitter {
    /** Points in a millimetre. */
    private static final double POINTS = 72 / 25.4;
    private static final double LEADING = 1.18;
    private static final double STEP = 0.25;
    private static final double LARGEST_SEAT = 26;
    private static final double LARGEST_CODE = 20;
    private static final double SMALLEST_CODE = 12;
    private static final double SIGN_GAP = 0.8;

    private final double width;
    private final double height;
    private final double edge;
    private final double code;
    private final double sign;
    private final int signs;

    /**
     * @param sheet its labels' size is what is fitted into
     * @param signs how many the contents of any kit call for, at most; those that find no room are left to the words
     */
    LabelFitter(LabelStock sheet, boolean codes, int signs) {
        this.width = sheet.width();
        this.height = sheet.height();
        this.edge = sheet.height() < 30 ? 1.8 : 2.5;
        this.sign = sheet.height() < 30 ? 5 : 6;
        double room = Math.min(LARGEST_CODE, Math.min(height - 2 * edge, width * 0.32));
        double below = Math.min(room, height - 2 * edge - sign - SIGN_GAP);
        boolean coded = codes && room >= SMALLEST_CODE;
        this.signs = Math.min(signs, !coded ? fitting(height - 2 * edge) : below >= SMALLEST_CODE ? fitting(below) : 0);
        this.code = !coded ? 0 : this.signs > 0 ? below : room;
    }

    /** How many signs stand in a row of this length [mm]. */
    private int fitting(double length) {
        return (int) ((length + SIGN_GAP) / (sign + SIGN_GAP));
    }

    /** Where texts begin, from the label's edges [mm]. */
    double edge() {
        return edge;
    }

    /** Side of the square code [mm]; 0 where there is none. */
    double code() {
        return code;
    }

    /** Where a sign stands: in a row below the code, or one below the other where there is none; from the label's edges [mm]. */
    Place sign(int number) {
        double step = number * (sign + SIGN_GAP);
        return code > 0 ? new Place(width - edge - code + step, edge + code + SIGN_GAP, sign) : new Place(width - edge - sign, edge + step, sign);
    }

    /** @param size of its sides [mm] */
    record Place(double left, double top, double size) {}

    /** How many signs there is room for. */
    int signs() {
        return signs;
    }

    /** Texts from top to bottom: to be read from where the students come in. */
    List<Text> fit(SeatLabel label) {
        double line = down() / 3 / LEADING;
        return Stream.of(oneLine(Glyphs.BOLD, true, label.seat(), across(), Math.min(LARGEST_SEAT, line), 6),
                oneLine(Glyphs.BOLD, true, label.name(), across(), Math.min(LARGEST_SEAT, line), 6),
                oneLine(Glyphs.PLAIN, false, label.piece(), across(), Math.min(8, line), 5.5)).filter(text -> !text.lines().get(0).isEmpty()).toList();
    }

    /** Room for texts beside the code or the signs [pt]. */
    private double across() {
        double beside = code > 0 ? code : signs > 0 ? sign : 0;
        return (width - 2 * edge - (beside == 0 ? 0 : beside + 1.5)) * POINTS;
    }

    private double down() {
        return (height - 2 * edge) * POINTS;
    }

    /** Texts from top to bottom. */
    List<Text> fit(KitLabel label) {
        double across = across();
        double left = down();
        List<Text> texts = new ArrayList<>();
        texts.add(oneLine(Glyphs.BOLD, true, label.name(), across, 12, 8));
        texts.add(oneLine(Glyphs.PLAIN, false, label.piece(), across, 8, 6));
        left -= texts.stream().mapToDouble(Text::height).sum();
        Text cautions = cautions(label, across, left * 0.3);
        Text contents = list(Glyphs.PLAIN, false, "", label.contents(), " · ", "see packing list", across, left - cautions.height(), 8, 5.5);
        Text from = oneLine(Glyphs.PLAIN, false, label.from(), across, 6, 5.5);
        texts.add(contents);
        texts.add(cautions);
        if (!label.from().isEmpty() && contents.height() + cautions.height() + from.height() <= left) {
            texts.add(from);
        }
        return texts.stream().filter(text -> !text.lines().isEmpty()).toList();
    }

    /**
     * A text as it stands on the label.
     *
     * @param size of its letters [pt]
     * @param leading from line to line [pt]
     */
    public record Text(boolean bold, double size, double leading, List<String> lines) {
        double height() {
            return lines.size() * leading;
        }

        static Text of(boolean bold, double size, List<String> lines) {
            return new Text(bold, size, size * LEADING, lines);
        }
    }

    private Text cautions(KitLabel label, double across, double room) {
        return label.cautions().isEmpty() ? Text.of(true, 1, List.of())
                : list(Glyphs.BOLD, true, "Caution: ", label.cautions(), "; ", "see handout", across, room, 6.5, 5.5);
    }

    private static Text oneLine(Glyphs glyphs, boolean bold, String words, double across, double largest, double smallest) {
        double size = largest;
        while (size > smallest && glyphs.width(words, size) > across) {
            size -= STEP;
        }
        return Text.of(bold, size, List.of(glyphs.cut(words, across, size)));
    }

    private static Text list(Glyphs glyphs, boolean bold, String before, List<String> items, String between, String where, double across,
            double room, double largest, double smallest) {
        for (double size = largest; size >= smallest; size -= STEP) {
            List<String> lines = glyphs.lines(before + String.join(between, items), across, size);
            if (lines.size() * size * LEADING <= room) {
                return Text.of(bold, size, lines);
            }
        }
        return IntStream.iterate(items.size() - 1, kept -> kept >= 0, kept -> kept - 1)
                .mapToObj(kept -> glyphs.lines(before + cut(items, kept, between, where), across, smallest))
                .filter(lines -> lines.size() * smallest * LEADING <= room).findFirst()
                .map(lines -> Text.of(bold, smallest, lines)).orElse(Text.of(bold, smallest, List.of()));
    }

    private static String cut(List<String> items, int kept, String between, String where) {
        String more = "+%d more: %s".formatted(items.size() - kept, where);
        return kept == 0 ? where : String.join(between, items.subList(0, kept)) + between + more;
    }
}
