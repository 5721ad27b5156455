package benchful.documents.pdf;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** The bounds of all that a page draws as paths: where outlines stand and how large shapes are. */
public final class OutlineReader extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;

    private final List<Rectangle2D> bounds = new ArrayList<>();
    private final double height;
    private Rectangle2D path;
    private Point2D at = new Point2D.Double();

    private OutlineReader(PDPage page) {
        super(page);
        height = page.getMediaBox().getHeight();
    }

    /** Of every painted path, from the top left of the page [mm]. */
    public static List<Rectangle2D> rectangles(PDPage page) throws IOException {
        OutlineReader reader = new OutlineReader(page);
        reader.processPage(page);
        return reader.bounds;
    }

    private void reach(double x, double y) {
        at = new Point2D.Double(x, y);
        if (path == null) {
            path = new Rectangle2D.Double(x, y, 0, 0);
        } else {
            path.add(x, y);
        }
    }

    private void painted() {
        if (path != null) {
            bounds.add(new Rectangle2D.Double(path.getMinX() * MM, (height - path.getMaxY()) * MM, path.getWidth() * MM, path.getHeight() * MM));
        }
        path = null;
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        List.of(p0, p1, p2, p3).forEach(p -> reach(p.getX(), p.getY()));
    }

    @Override
    public void drawImage(PDImage image) {
        // Pictures are no outlines.
    }

    @Override
    public void clip(int windingRule) {
        // What is cut off does not matter for where it begins.
    }

    @Override
    public void moveTo(float x, float y) {
        reach(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        reach(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        reach(x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return at;
    }

    @Override
    public void closePath() {
        // The corner is reached already.
    }

    @Override
    public void endPath() {
        path = null;
    }

    @Override
    public void strokePath() {
        painted();
    }

    @Override
    public void fillPath(int windingRule) {
        painted();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        painted();
    }

    @Override
    public void shadingFill(COSName shadingName) {
        // Print-outs have no shadings.
    }
}
