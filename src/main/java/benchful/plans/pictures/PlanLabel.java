package benchful.plans.pictures;

import java.util.Arrays;

/**
 * The words of a block of the timed plan: inside it where they fit, in a lane with room beside it where they do not, and only
 * its number in a block of a few minutes.
 *
 * @param text   size of letters [px]
 * @param inside true where there is no room beside the block
 */
record PlanLabel(Svg svg, double text, int number, String words, Place place, boolean inside) {

    private static final double SIZE = 0.95;
    private static final double NEARLY = 0.8;
    private static final double LEAST = 0.5;

    /** Where a block stands from {@code x} to {@code end}, and how far its label may reach on either side. */
    record Place(double before, double x, double end, double next) {
        double width() {
            return end - x;
        }

        double roomRight() {
            return next - end;
        }

        double roomLeft() {
            return x - before;
        }

        boolean holds(double needed) {
            return needed <= width() || width() >= Math.max(roomLeft(), roomRight());
        }
    }

    void draw(double y, double height) {
        double needed = Svg.widthOf(words, text);
        if (inside || place.holds(needed)) {
            drawInside(y, height);
        } else if (place.roomRight() >= Math.min(place.roomLeft(), needed)) {
            drawWords(place.end() + 0.35 * text, place.roomRight() - 0.6 * text, y, height, "");
        } else {
            drawWords(place.x() - 0.35 * text, place.roomLeft() - 0.6 * text, y, height, "text-anchor=\"end\"");
        }
    }

    private void drawInside(double y, double height) {
        double room = place.width() - 0.6 * text;
        if (room < Math.max(Svg.widthOf(String.valueOf(number), text) + 2.5 * text, longestWord())) {
            drawNumber(y, height);
        } else {
            drawWords(place.x() + 0.35 * text, room, y, height, "");
        }
    }

    /** No word is broken: where one finds no room, the number stands for all. */
    private double longestWord() {
        return Arrays.stream(words.split(" ")).mapToDouble(word -> Svg.widthOf(word, SIZE * text)).max().orElse(0);
    }

    private void drawWords(double x, double room, double y, double height, String attributes) {
        double size = SIZE * text;
        int most = (int) ((height - 0.9 * text) / (1.15 * text));
        double baseline = y + 1.5 * text;
        for (String line : Svg.wrapped(words, room, size, most)) {
            svg.text(x, baseline, size, whole(line), attributes);
            baseline += 1.15 * text;
        }
    }

    /** A line that is cut ends after a word. */
    private static String whole(String line) {
        return line.endsWith("…") && line.contains(" ") ? line.substring(0, line.lastIndexOf(' ')) + " …" : line;
    }

    /** Upright where it has room at nearly its full size, else lying along the block, which is higher than wide. */
    private void drawNumber(double y, double height) {
        String words = String.valueOf(number);
        double middle = (place.x() + place.end()) / 2;
        double upright = Math.min(text, place.width() / words.length() * 1.3);
        double lying = Math.min(text, place.width() * 1.2);
        if (upright >= NEARLY * text) {
            svg.text(middle, y + height / 2 + 0.5 * text, upright, words, "text-anchor=\"middle\"");
        } else if (lying >= LEAST * text) {
            double x = middle + 0.36 * lying;
            double at = y + height / 2 + 0.2 * text;
            svg.text(x, at, lying, words, "text-anchor=\"middle\" transform=\"rotate(-90 %s %s)\"".formatted(Svg.n(x), Svg.n(at)));
        }
    }
}
