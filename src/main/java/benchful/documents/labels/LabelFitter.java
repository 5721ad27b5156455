package benchful.documents.labels;

import benchful.documents.paper.LabelStock;
import benchful.documents.pdf.Glyphs;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Fits the texts of a kit or a seat into a label by rule: each text shrinks in quarter points to its smallest size; then the name and the
 * piece are cut off with an ellipsis. Contents are a list to tick, a line each; where that finds no room they run on, and where not even that
 * does, as many as fit are kept and the rest counted ("+3 more: see packing list"). Nothing ever stands over the edge. Sizes are in points, places in millimetres.
 */
final class LabelFitter {
    /** Points in a millimetre. */
    private static final double POINTS = 72 / 25.4;
    private static final double LEADING = 1.18;
    private static final double STEP = 0.25;
    private static final double LARGEST_SEAT = 26;
    private static final double LARGEST_CODE = 17;
    private static final double SMALLEST_CODE = 12;
    private static final double SIGN_GAP = 0.8;

    private static final String BOX = "☐\u00a0";
    /** As wide as the box, at least. */
    private static final String INDENT = "\u00a0".repeat(4);

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
        this.sign = 5;
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

    /** Texts from top to bottom. Where the list to tick finds no room, the name is set smaller and cautions take a line. */
    List<Text> fit(KitLabel label) {
        List<Text> large = fit(label, 12, 0.3 * down());
        return isTicked(large, label) ? large : Stream.of(fit(label, 10, 6 * LEADING)).filter(small -> isTicked(small, label)).findFirst().orElse(large);
    }

    private static boolean isTicked(List<Text> texts, KitLabel label) {
        return label.contents().isEmpty() || texts.stream().anyMatch(text -> !text.lines().isEmpty() && text.lines().get(0).startsWith(BOX));
    }

    /**
     * @param name     size of the name, at most [pt]
     * @param cautions room for them, at most [pt]
     */
    private List<Text> fit(KitLabel label, double name, double cautions) {
        double across = across();
        List<Text> texts = new ArrayList<>();
        texts.add(oneLine(Glyphs.BOLD, true, label.name(), across, name, 8));
        texts.add(oneLine(Glyphs.BOLD, true, label.place(), across, 8, 6));
        texts.add(oneLine(Glyphs.PLAIN, false, label.piece(), across, 6.5, 5.5));
        double left = down() - texts.stream().mapToDouble(Text::height).sum();
        Text warned = cautions(label, across, Math.min(cautions, left * 0.4));
        Text contents = contents(label, across, left - warned.height());
        Text from = Text.of(false, 5.5, label.from().isEmpty() ? List.of() : Glyphs.PLAIN.lines(label.from(), across, 5.5));
        texts.add(contents);
        texts.add(warned);
        if (contents.height() + warned.height() + from.height() <= left) {
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

    /** A line for each with a box, as large as fits; words that are not parted are broken only where a line has no room for them. */
    private static Text contents(KitLabel label, double across, double room) {
        for (double size = 8; size >= 5; size -= STEP) {
            double letters = size;
            double indent = Glyphs.PLAIN.width(INDENT, letters);
            List<String> lines = label.contents().stream().flatMap(item -> ticked(Glyphs.PLAIN.lines(item, across - indent, letters))).toList();
            if (lines.size() * size * LEADING <= room) {
                return Text.of(false, size, lines);
            }
        }
        return list(Glyphs.PLAIN, false, "", label.contents(), " · ", "see packing list", across, room, 8, 5.5);
    }

    private static Stream<String> ticked(List<String> lines) {
        return IntStream.range(0, lines.size()).mapToObj(i -> i == 0 ? BOX + lines.get(i) : INDENT + lines.get(i));
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
