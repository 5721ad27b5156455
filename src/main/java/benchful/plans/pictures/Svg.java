package benchful.plans.pictures;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing under construction, in SVG 1.1 with presentation attributes only, so that browsers and the PDF engine show the
 * same. Patterns are drawn as lines: they survive black-and-white printers and engines without pattern fills.
 */
public final class Svg {
    private static final String FONT = "DejaVu Sans, Noto Sans, WenQuanYi Micro Hei, sans-serif";

    private final StringBuilder out = new StringBuilder(8192);

    public Svg rect(double x, double y, double width, double height, String attributes) {
        out.append("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" %s/>\n"
                .formatted(n(x), n(y), n(Math.max(0, width)), n(Math.max(0, height)), attributes));
        return this;
    }

    public Svg line(double x1, double y1, double x2, double y2, String attributes) {
        out.append("<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" %s/>\n".formatted(n(x1), n(y1), n(x2), n(y2), attributes));
        return this;
    }

    public Svg circle(double x, double y, double radius, String attributes) {
        out.append("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" %s/>\n".formatted(n(x), n(y), n(radius), attributes));
        return this;
    }

    public Svg ellipse(double x, double y, double wide, double tall, String attributes) {
        out.append("<ellipse cx=\"%s\" cy=\"%s\" rx=\"%s\" ry=\"%s\" %s/>\n".formatted(n(x), n(y), n(wide), n(tall), attributes));
        return this;
    }

    /** A line through points. */
    Svg curve(double[] x, double[] y, String attributes) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < x.length; i++) {
            points.append(n(x[i])).append(',').append(n(y[i])).append(' ');
        }
        out.append("<polyline points=\"%s\" %s/>\n".formatted(points.toString().strip(), attributes));
        return this;
    }

    /** Text whose baseline begins, or by {@code text-anchor} lies, at the point. */
    public Svg text(double x, double y, double size, String words, String attributes) {
        out.append("<text x=\"%s\" y=\"%s\" font-size=\"%s\" font-family=\"%s\" %s>%s</text>\n"
                .formatted(n(x), n(y), n(size), FONT, attributes.contains("fill=") ? attributes : attributes + " fill=\"" + Palette.INK + '"',
                        escaped(words)));
        return this;
    }

    /** Slanting lines {@code gap} apart, cut off at the edges of the rectangle. */
    public Svg hatch(double x, double y, double width, double height, double gap, String attributes) {
        for (double at = x - height + gap; at < x + width; at += gap) {
            double left = Math.max(at, x);
            double right = Math.min(at + height, x + width);
            line(left, y + height - (left - at), right, y + height - (right - at), attributes);
        }
        return this;
    }

    public Svg dots(double x, double y, double width, double height, double gap, String attributes) {
        for (double at = x + gap; at < x + width - gap / 3; at += gap) {
            circle(at, y + height / 2, height / 5, attributes);
        }
        return this;
    }

    /** The whole drawing, with its name and its description for those who can't see it; {@code unit} is "px" or "mm". */
    public String document(double width, double height, String unit, String id, String title, String description) {
        return """
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$s%3$s" height="%2$s%3$s" viewBox="0 0 %1$s %2$s" role="img" \
                aria-labelledby="%4$s-title %4$s-desc">
                <title id="%4$s-title">%5$s</title>
                <desc id="%4$s-desc">%6$s</desc>
                %7$s</svg>
                """.formatted(n(width), n(height), unit, id, escaped(title), escaped(description), out);
    }

    /** Broken into at most {@code most} lines no wider than {@code width}; what is left over ends in an ellipsis. */
    public static List<String> wrapped(String words, double width, double size, int most) {
        List<String> lines = new ArrayList<>();
        String rest = words.strip();
        while (!rest.isEmpty() && lines.size() < most) {
            boolean last = lines.size() == most - 1;
            int end = last ? rest.length() : breakBefore(rest, width, size);
            lines.add(last ? cut(rest, width, size) : rest.substring(0, end).strip());
            rest = rest.substring(end).strip();
        }
        lines.removeIf(String::isEmpty);
        return lines;
    }

    private static int breakBefore(String words, double width, double size) {
        if (widthOf(words, size) <= width) {
            return words.length();
        }
        int end = 0;
        for (int space = words.indexOf(' '); space > 0 && widthOf(words.substring(0, space), size) <= width;
                space = words.indexOf(' ', space + 1)) {
            end = space;
        }
        return end > 0 ? end : fitting(words, width, size);
    }

    /** Ends in an ellipsis where it is wider; nothing where not even that fits. */
    public static String cut(String words, double width, double size) {
        if (widthOf(words, size) <= width) {
            return words;
        }
        int end = fitting(words, width - widthOf("…", size), size);
        return end == 0 ? "" : words.substring(0, end).strip() + "…";
    }

    /** How many UTF-16 units from the start fit, never half a character. */
    private static int fitting(String words, double width, double size) {
        int end = 0;
        while (end < words.length()) {
            int next = words.offsetByCodePoints(end, 1);
            if (widthOf(words.substring(0, next), size) > width) {
                return end;
            }
            end = next;
        }
        return end;
    }

    /** Width of a text in a plain sans serif, from rounded widths of its kinds of letters; errs on the wide side. */
    public static double widthOf(String words, double size) {
        return size * words.codePoints().mapToDouble(Svg::ems).sum();
    }

    private static double ems(int c) {
        if (c >= 0x2E80) {
            return 1;
        }
        if (" ijl.,:;'|!()[]".indexOf(c) >= 0) {
            return 0.36;
        }
        return "mwMW@%…".indexOf(c) >= 0 ? 0.98 : Character.isUpperCase(c) ? 0.74 : 0.63;
    }

    /** At most two decimals, with a point. */
    public static String n(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
