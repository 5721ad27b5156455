package benchful.documents.pdf;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.extend.UserAgentCallback;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.FontFormatException;
import java.io.File;
import java.io.IOException;
import java.util.List;
import org.w3c.dom.Element;

/** Draws SVG and says which drawing it is at. Drawings bear their names in an attribute of their root. */
final class WatchedDrawer implements SVGDrawer {
    static final String NAME = "data-picture";

    private final SVGDrawer drawer;
    private final DrawingWatch watch;

    WatchedDrawer(SVGDrawer drawer, DrawingWatch watch) {
        this.drawer = drawer;
        this.watch = watch;
    }

    @Override
    public SVGImage buildSVGImage(Element svg, Box box, CssContext css, double width, double height, double dotsPerPixel) {
        String name = svg.getAttribute(NAME);
        watch.begin(name);
        SVGImage image = drawer.buildSVGImage(svg, box, css, width, height, dotsPerPixel);
        watch.end();
        return new Watched(name, image, watch);
    }

    private record Watched(String name, SVGImage image, DrawingWatch watch) implements SVGImage {
        @Override
        public int getIntrinsicWidth() {
            return image.getIntrinsicWidth();
        }

        @Override
        public int getIntrinsicHeight() {
            return image.getIntrinsicHeight();
        }

        /** Where it fails, the drawing stays under way, and so is named. */
        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            watch.begin(name);
            image.drawSVG(device, context, x, y);
            watch.end();
        }
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> rules, SharedContext context) {
        drawer.importFontFaceRules(rules, context);
    }

    @Override
    public void withUserAgent(UserAgentCallback agent) {
        drawer.withUserAgent(agent);
    }

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) throws IOException, FontFormatException {
        drawer.addFontFile(file, family, weight, style);
    }

    @Override
    public void close() throws IOException {
        drawer.close();
    }
}
