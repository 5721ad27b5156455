package benchful.projects.pictures;

import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.parser.AWTPathProducer;
import org.apache.batik.parser.ParseException;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * How much work a drawing makes for whoever draws it. A kilobyte can ask for millions of shapes: parts that are used by parts
 * that are used again, markers at each corner, dashes of no length. Each shape counts one, what it refers to counts where it is
 * referred to, long texts and dashes count besides; the whole has a bound that ordinary drawings keep by far.
 */
final class DrawingLoad {
    private static final double MOST = 30_000;
    private static final int DEEPEST = 120;
    private static final double FARTHEST = 1e7;
    private static final double SMALLEST_BOX = 0.01;
    private static final int LETTERS_OF_A_SHAPE = 200;
    private static final double DASHES_OF_A_SHAPE = 50;
    private static final double RULES_OF_A_SHAPE = 500;
    private static final int MOST_PARTS_OF_A_SELECTOR = 4;
    private static final String WITHOUT_IT = " Save it as a simpler SVG file, or as a PNG picture.";

    private static final Set<String> MEASURED = Set.of("d", "points", "transform", "gradientTransform", "patternTransform", "x", "y", "x1", "y1", "x2", "y2",
            "cx", "cy", "r", "rx", "ry", "fx", "fy", "width", "height", "viewBox", "dx", "dy", "stroke-width", "stroke-dasharray", "stroke-dashoffset",
            "font-size", "markerWidth", "markerHeight", "refX", "refY", "startOffset", "textLength", "letter-spacing", "word-spacing", "stroke-miterlimit");
    private static final Pattern NUMBER = Pattern.compile("[-+]?+(?:\\d++(?:\\.\\d*+)?+|\\.\\d++)(?:[eE][-+]?+\\d++)?+");
    private static final Pattern REFERENCE = Pattern.compile("url\\s*+\\(\\s*+[\"']?+\\s*+#([^\"')\\s]++)");

    /**
     * What a part asks for with all that it uses.
     *
     * @param work [shapes]
     * @param height of the tree below it, with what is referred to [levels]
     */
    private record Load(double work, int height) {}

    private final Map<String, Element> byId = new HashMap<>();
    private final Map<Element, Load> known = new HashMap<>();
    private final Set<Element> open = new HashSet<>();
    private final StringBuilder sheets = new StringBuilder();
    private double rules;
    private double finestDash = Double.POSITIVE_INFINITY;
    private double largestLetter = 16;
    private List<Element> everywhere = List.of();

    private DrawingLoad() {}

    /** @throws DrawingFile.Refused with a sentence that says what is too much */
    static void check(Element root) throws DrawingFile.Refused {
        DrawingLoad load = new DrawingLoad();
        load.gather(root);
        load.checkSelectors();
        List<Element> inSheets = load.referred(load.sheets);
        for (Element target : inSheets) {
            load.of(target, 0);
        }
        load.known.clear();
        load.everywhere = inSheets;
        load.of(root, 0);
    }

    private void gather(Element element) throws DrawingFile.Refused {
        byId.putIfAbsent(element.getAttribute("id"), element);
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.item(i).getNodeName();
            String value = attributes.item(i).getNodeValue();
            if (MEASURED.contains(name)) {
                measure(name, value);
            } else if (name.equals("style")) {
                looks(value);
            }
        }
        if ("style".equals(element.getLocalName())) {
            sheets.append(element.getTextContent()).append('\n');
            looks(element.getTextContent());
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element e) {
                gather(e);
            }
        }
    }

    private void measure(String name, String value) throws DrawingFile.Refused {
        double sum = 0;
        int count = 0;
        for (Matcher m = NUMBER.matcher(value); m.find(); count++) {
            double number = Math.abs(Double.parseDouble(m.group()));
            sum += number;
            if (number > FARTHEST) {
                throw new DrawingFile.Refused("In this drawing “%s” holds %s, larger than any paper.".formatted(name, shortened(m.group())) + WITHOUT_IT);
            }
            if (name.equals("viewBox") && count > 1 && number < SMALLEST_BOX) {
                throw new DrawingFile.Refused("The frame of this drawing (viewBox) is smaller than 0.01." + WITHOUT_IT);
            }
        }
        dash(name, sum);
        largestLetter = name.equals("font-size") ? Math.max(largestLetter, sum) : largestLetter;
    }

    private void dash(String name, double sum) {
        if (name.equals("stroke-dasharray") && sum > 0) {
            finestDash = Math.min(finestDash, sum);
        }
    }

    /** What style sheets and style attributes say of dashes and letters. */
    private void looks(String css) throws DrawingFile.Refused {
        for (String declaration : css.split("[;{}]")) {
            int colon = declaration.indexOf(':');
            String name = colon < 0 ? "" : declaration.substring(0, colon).strip();
            if (MEASURED.contains(name)) {
                measure(name, declaration.substring(colon + 1));
            }
        }
    }

    /** A rule that picks by many names at once makes a reader try all ways through the parts of a drawing. */
    private void checkSelectors() throws DrawingFile.Refused {
        rules = sheets.chars().filter(c -> c == '{').count();
        for (String rule : sheets.toString().split("}")) {
            for (String selector : rule.substring(0, Math.max(0, rule.indexOf('{'))).split(",")) {
                if (selector.strip().split("[\\s>+~]++").length > MOST_PARTS_OF_A_SELECTOR && !selector.contains("/*")) {
                    throw new DrawingFile.Refused("The style sheet of this drawing picks its parts by more than four names (“%s”).".formatted(shortened(selector.strip())) + WITHOUT_IT);
                }
            }
        }
    }

    private Load of(Element element, int depth) throws DrawingFile.Refused {
        Load found = known.get(element);
        if (found != null) {
            return found;
        }
        if (!open.add(element)) {
            throw new DrawingFile.Refused("A part of this drawing uses itself (“%s”).".formatted(shortened(element.getAttribute("id"))) + WITHOUT_IT);
        }
        Load load = bounded(element, sum(element, depth), depth);
        open.remove(element);
        known.put(element, load);
        return load;
    }

    private Load sum(Element element, int depth) throws DrawingFile.Refused {
        double work = own(element);
        int height = 0;
        for (Element part : parts(element)) {
            Load load = of(part, depth + 1);
            boolean marker = "marker".equals(part.getLocalName()) && part.getParentNode() != element;
            work += load.work() * (marker ? corners(element) : 1);
            height = Math.max(height, load.height());
        }
        return new Load(work, height + 1);
    }

    private static Load bounded(Element element, Load load, int depth) throws DrawingFile.Refused {
        if (load.work() > MOST) {
            throw new DrawingFile.Refused("This drawing asks for too much: what its parts use (“%s”) adds up to more than 30,000 shapes, dashes or letters.".formatted(element.getLocalName()) + WITHOUT_IT);
        }
        if (load.height() > DEEPEST || depth > DEEPEST) {
            throw new DrawingFile.Refused("The parts of this drawing use each other more than 120 deep." + WITHOUT_IT);
        }
        return load;
    }

    /** Its children, and what it refers to. */
    private List<Element> parts(Element element) {
        List<Element> parts = new ArrayList<>();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element e) {
                parts.add(e);
            }
        }
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            String value = attributes.item(i).getNodeValue();
            if ("href".equals(attributes.item(i).getLocalName()) && value.strip().startsWith("#")) {
                add(parts, value.strip().substring(1));
            } else {
                parts.addAll(referred(value));
            }
        }
        everywhere.stream().filter(target -> !open.contains(target)).forEach(parts::add);
        return parts;
    }

    private List<Element> referred(CharSequence value) {
        List<Element> parts = new ArrayList<>();
        for (Matcher m = REFERENCE.matcher(value); m.find();) {
            add(parts, m.group(1));
        }
        return parts;
    }

    private void add(List<Element> parts, String id) {
        if (!id.isEmpty() && byId.containsKey(id)) {
            parts.add(byId.get(id));
        }
    }

    private double own(Element element) {
        int letters = "image".equals(element.getLocalName()) ? 0 : words(element).length();
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            letters += attributes.item(i).getNodeName().endsWith("href") ? 0 : attributes.item(i).getNodeValue().length();
        }
        return 1 + (double) letters / LETTERS_OF_A_SHAPE + rules / RULES_OF_A_SHAPE + (Double.isInfinite(finestDash) ? 0 : length(element) / finestDash / DASHES_OF_A_SHAPE);
    }

    private static String words(Element element) {
        StringBuilder words = new StringBuilder();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            words.append(child.getNodeType() == Node.TEXT_NODE ? child.getNodeValue() : "");
        }
        return words.toString();
    }

    private static int corners(Element element) {
        return Math.max(1, (int) NUMBER.matcher(element.getAttribute("d") + " " + element.getAttribute("points")).results().count());
    }

    /** How far a pen goes along the outline, at most [units of the drawing]. */
    private double length(Element element) {
        return switch (element.getLocalName()) {
            case "path" -> pathLength(element.getAttribute("d"));
            case "polyline", "polygon" -> pathLength("M" + element.getAttribute("points") + "z");
            case "rect", "circle", "ellipse", "line" -> 2 * Math.PI * List.of("x1", "y1", "x2", "y2", "width", "height", "r", "rx", "ry").stream()
                    .mapToDouble(name -> first(element.getAttribute(name))).sum();
            case "text", "tspan", "textPath" -> 10 * largestLetter * words(element).length();
            default -> 0;
        };
    }

    private static double first(String value) {
        Matcher m = NUMBER.matcher(value);
        return m.find() ? Math.abs(Double.parseDouble(m.group())) : 0;
    }

    private static double pathLength(String path) {
        double length = 0;
        double[] to = new double[6];
        double[] at = new double[2];
        double[] start = new double[2];
        try {
            PathIterator pen = AWTPathProducer.createShape(new StringReader(path), PathIterator.WIND_NON_ZERO).getPathIterator(null, 1);
            for (; !pen.isDone(); pen.next()) {
                int kind = pen.currentSegment(to);
                double[] end = kind == PathIterator.SEG_CLOSE ? start : to;
                length += kind == PathIterator.SEG_MOVETO ? 0 : Math.hypot(end[0] - at[0], end[1] - at[1]);
                at = new double[] {end[0], end[1]};
                start = kind == PathIterator.SEG_MOVETO ? at : start;
            }
        } catch (IOException | ParseException e) {
            return length;
        }
        return length;
    }

    private static String shortened(String text) {
        return text.substring(0, Math.min(30, text.length()));
    }
}
