package benchful.projects.pictures;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * A drawing turned and cut: it gets a frame that begins at 0, what is drawn is turned into it, and what lies outside is not shown. It
 * stays a drawing. One that states no frame has that of browsers, 300 by 150 (CSS 2.2, 10.3.2).
 */
final class DrawingEdit {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Pattern LENGTH = Pattern.compile("(\\d++(?:\\.\\d++)?+|\\.\\d++)(px|pt|pc|mm|cm|in)?+");
    /** Of CSS, [1/96 in]. */
    private static final Map<String, Double> UNITS = Map.of("px", 1.0, "pt", 96 / 72.0, "pc", 16.0, "mm", 96 / 25.4, "cm", 960 / 25.4, "in", 96.0);
    private static final Set<String> NOT_DRAWN = Set.of("title", "desc", "defs", "style");
    private static final int PLACES = 4;

    private final Element root;
    private final PictureEdit edit;

    private DrawingEdit(Element root, PictureEdit edit) {
        this.root = root;
        this.edit = edit;
    }

    /** @param drawing that is fit to be stored; one that would not be so afterwards stays as it is */
    static byte[] on(byte[] drawing, PictureEdit edit) {
        try {
            Document document = DrawingFile.builder().parse(new ByteArrayInputStream(drawing));
            new DrawingEdit(document.getDocumentElement(), edit).change();
            return PictureFile.of(DrawingFile.written(document)) instanceof PictureFile.Fit fit ? fit.content() : drawing;
        } catch (SAXException | IOException e) {
            return drawing;
        }
    }

    private void change() {
        double width = length("width");
        double height = length("height");
        Rectangle2D.Double frame = frame(width, height);
        double across = width > 0 ? width / frame.width : height > 0 ? height / frame.height : 0;
        double down = height > 0 ? height / frame.height : across;
        AffineTransform turn = turn(frame);
        Rectangle2D whole = turn.createTransformedShape(frame).getBounds2D();
        Rectangle2D.Double kept = new Rectangle2D.Double(whole.getWidth() * edit.left() / 100, whole.getHeight() * edit.top() / 100,
                whole.getWidth() * (100 - edit.left() - edit.right()) / 100, whole.getHeight() * (100 - edit.top() - edit.bottom()) / 100);
        draw(turn, kept);
        root.setAttribute("viewBox", "%s %s %s %s".formatted(text(kept.x), text(kept.y), text(kept.width), text(kept.height)));
        boolean lies = edit.quarters() % 2 == 1;
        size("width", kept.width * (lies ? down : across));
        size("height", kept.height * (lies ? across : down));
    }

    /** What is seen of the drawing: its frame, with the room that a browser leaves beside it where its size is of another shape. */
    private Rectangle2D.Double frame(double width, double height) {
        String[] box = root.getAttribute("viewBox").strip().split("[\\s,]+");
        List<Double> numbers = new ArrayList<>();
        for (String number : box) {
            numbers.add(number.matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,2})?") ? Double.parseDouble(number) : Double.NaN);
        }
        if (numbers.size() != 4 || numbers.contains(Double.NaN) || numbers.get(2) <= 0 || numbers.get(3) <= 0) {
            return new Rectangle2D.Double(0, 0, width > 0 ? width : 300, height > 0 ? height : 150);
        }
        Rectangle2D.Double frame = new Rectangle2D.Double(numbers.get(0), numbers.get(1), numbers.get(2), numbers.get(3));
        if (width <= 0 || height <= 0 || root.getAttribute("preserveAspectRatio").strip().startsWith("none")) {
            return frame;
        }
        double scale = Math.min(width / frame.width, height / frame.height);
        return new Rectangle2D.Double(frame.getCenterX() - width / scale / 2, frame.getCenterY() - height / scale / 2, width / scale, height / scale);
    }

    /** So that the turned frame begins at 0. */
    private AffineTransform turn(Rectangle2D frame) {
        AffineTransform turn = AffineTransform.getQuadrantRotateInstance(edit.quarters());
        Rectangle2D turned = turn.createTransformedShape(frame).getBounds2D();
        turn.preConcatenate(AffineTransform.getTranslateInstance(-turned.getX(), -turned.getY()));
        return turn;
    }

    private void draw(AffineTransform turn, Rectangle2D kept) {
        String name = freeName();
        Element edge = element("clipPath", "id", name);
        edge.appendChild(element("rect", "x", text(kept.getX()), "y", text(kept.getY()), "width", text(kept.getWidth()), "height", text(kept.getHeight())));
        Element shown = element("g", "clip-path", "url(#%s)".formatted(name));
        double[] m = new double[6];
        turn.getMatrix(m);
        Element drawn = element("g", "transform", "matrix(%s %s %s %s %s %s)".formatted(text(m[0]), text(m[1]), text(m[2]), text(m[3]), text(m[4]), text(m[5])));
        for (Node child : children()) {
            if (!(child instanceof Element e) || !NOT_DRAWN.contains(e.getLocalName())) {
                drawn.appendChild(child);
            }
        }
        shown.appendChild(drawn);
        root.appendChild(edge);
        root.appendChild(shown);
    }

    private List<Node> children() {
        List<Node> children = new ArrayList<>();
        for (Node child = root.getFirstChild(); child != null; child = child.getNextSibling()) {
            children.add(child);
        }
        return children;
    }

    /** An identifier that the drawing does not use yet. */
    private String freeName() {
        Set<String> taken = new HashSet<>();
        NodeList drawn = root.getElementsByTagName("*");
        for (int i = 0; i < drawn.getLength(); i++) {
            taken.add(((Element) drawn.item(i)).getAttribute("id"));
        }
        int number = 1;
        while (taken.contains("edge-" + number)) {
            number++;
        }
        return "edge-" + number;
    }

    private Element element(String name, String... attributes) {
        Element element = root.getOwnerDocument().createElementNS(SVG, root.getPrefix() == null ? name : root.getPrefix() + ":" + name);
        for (int i = 0; i < attributes.length; i += 2) {
            element.setAttribute(attributes[i], attributes[i + 1]);
        }
        return element;
    }

    private void size(String attribute, double size) {
        if (size > 0) {
            root.setAttribute(attribute, text(size));
        } else {
            root.removeAttribute(attribute);
        }
    }

    /** [px]; 0 where none is given, or a share of the page. */
    private double length(String attribute) {
        Matcher length = LENGTH.matcher(root.getAttribute(attribute).strip());
        return length.matches() ? Double.parseDouble(length.group(1)) * (length.group(2) == null ? 1 : UNITS.get(length.group(2))) : 0;
    }

    private static String text(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
