package benchful.projects.pictures;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * SVG files: only shapes, texts and their looks, nothing that acts, moves, or fetches from elsewhere, and no more work than
 * {@link DrawingLoad} allows. What drawing programs note for themselves, in name spaces of their own, is left out, and so are
 * filters (blurs and shadows), which print as dots without bound; a drawing without either is kept byte for byte.
 */
final class DrawingFile {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final String XLINK = "http://www.w3.org/1999/xlink";
    private static final int LARGEST = 1024 * 1024;
    private static final String DEEPEST = "100";

    private static final Set<String> ELEMENTS = Set.of("svg", "g", "defs", "symbol", "use", "title", "desc", "path", "rect", "circle",
            "ellipse", "line", "polyline", "polygon", "text", "tspan", "textPath", "style", "linearGradient", "radialGradient", "stop",
            "pattern", "clipPath", "mask", "marker", "image", "switch");
    private static final Set<String> LEFT_OUT = Set.of("metadata", "filter");
    private static final Pattern OUTSIDE = Pattern.compile("url\\s*+\\(\\s*+(?![\"']?+\\s*+#)|(image-set|image|src)\\s*+\\(|@import|expression\\s*+\\(|javascript:|\\\\");
    private static final Pattern EMBEDDED = Pattern.compile("data:image/(?:png|jpeg);base64,[A-Za-z0-9+/=\\s]*+");
    private static final Pattern FILTER = Pattern.compile("(?<![\\w-])filter\\s*+:[^;}]*+;?+", Pattern.CASE_INSENSITIVE);

    private final List<Runnable> changes = new ArrayList<>();

    private DrawingFile() {}

    /** The drawing holds something it must not; the message says what. */
    static final class Refused extends Exception {
        Refused(String sentence) {
            super(sentence);
        }
    }

    static PictureFile of(byte[] bytes) {
        if (bytes.length > LARGEST) {
            return new PictureFile.Unfit("This drawing has more than 1 MB. Simplify it, or save it as a PNG picture.");
        }
        try {
            return new DrawingFile().fit(bytes);
        } catch (Refused e) {
            return new PictureFile.Unfit(e.getMessage());
        } catch (SAXException | IOException | IllegalArgumentException e) {
            return new PictureFile.Unfit("This drawing can't be read as SVG. Save it as a plain SVG file, without a document type or entities.");
        }
    }

    private PictureFile fit(byte[] bytes) throws Refused, SAXException, IOException {
        Document drawing = builder().parse(new ByteArrayInputStream(bytes));
        Element root = drawing.getDocumentElement();
        if (!SVG.equals(root.getNamespaceURI()) || !"svg".equals(root.getLocalName())) {
            throw new Refused("This file is no SVG drawing: its first tag should be “svg” with xmlns=\"%s\".".formatted(SVG));
        }
        for (Node node = drawing.getFirstChild(); node != null; node = node.getNextSibling()) {
            check(node);
        }
        byte[] fit = bytes;
        if (!changes.isEmpty()) {
            changes.forEach(Runnable::run);
            fit = written(drawing);
        }
        DrawingLoad.check(root);
        return new PictureFile.Fit("image/svg+xml", fit);
    }

    private void check(Node node) throws Refused {
        if (node.getNodeType() == Node.PROCESSING_INSTRUCTION_NODE) {
            throw new Refused("This drawing refers to a style sheet outside it (“%s”). Save it as a plain SVG file.".formatted(node.getNodeName()));
        }
        if (node instanceof Element element) {
            if (SVG.equals(element.getNamespaceURI()) && !LEFT_OUT.contains(element.getLocalName())) {
                drawn(element);
            } else {
                changes.add(() -> element.getParentNode().removeChild(element));
            }
        }
    }

    private void drawn(Element element) throws Refused {
        if (!ELEMENTS.contains(element.getLocalName())) {
            throw new Refused("This drawing holds “%s”, which is not taken here: only shapes, texts and colours are. Save it as a plain SVG file without it."
                    .formatted(element.getLocalName()));
        }
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            check(element, (Attr) attributes.item(i));
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            check(child);
        }
        if ("style".equals(element.getLocalName())) {
            inside("style", element.getTextContent());
            unfilter(element);
        }
    }

    private void check(Element element, Attr attribute) throws Refused {
        String space = attribute.getNamespaceURI();
        String name = attribute.getLocalName();
        if (space != null && !Set.of(XLINK, XMLConstants.XML_NS_URI, XMLConstants.XMLNS_ATTRIBUTE_NS_URI).contains(space)) {
            changes.add(() -> element.removeAttributeNode(attribute));
        } else if (XMLConstants.XMLNS_ATTRIBUTE_NS_URI.equals(space)) {
            return;
        } else if (name.toLowerCase(Locale.ROOT).startsWith("on")) {
            throw new Refused("This drawing acts on events (“%s”). Save it as a plain SVG file without scripts.".formatted(name));
        } else if (name.equals("href") || name.equals("base")) {
            reference(element, attribute);
        } else {
            inside(name, attribute.getValue());
            unfilter(element, attribute);
        }
    }

    private void unfilter(Element element, Attr attribute) {
        if (attribute.getLocalName().equals("filter")) {
            changes.add(() -> element.removeAttributeNode(attribute));
        } else if (attribute.getLocalName().equals("style")) {
            unfilter(attribute);
        }
    }

    private void unfilter(Node css) {
        if (FILTER.matcher(css.getTextContent()).find()) {
            changes.add(() -> css.setTextContent(FILTER.matcher(css.getTextContent()).replaceAll("")));
        }
    }

    private void reference(Element element, Attr attribute) throws Refused {
        String target = attribute.getValue().strip();
        if ("image".equals(element.getLocalName()) && EMBEDDED.matcher(target).matches()) {
            embedded(attribute, Base64.getMimeDecoder().decode(target.substring(target.indexOf(',') + 1)));
        } else if (!target.startsWith("#")) {
            throw new Refused("This drawing fetches “%s” from elsewhere. Embed it as PNG or JPEG, or take it out."
                    .formatted(target.substring(0, Math.min(60, target.length()))));
        }
    }

    /** A photograph inside a drawing is made fit as any other. */
    private void embedded(Attr attribute, byte[] photo) throws Refused {
        PictureFile file = PictureFile.of(photo);
        if (!(file instanceof PictureFile.Fit fit) || fit.mediaType().equals("image/svg+xml")) {
            throw new Refused("A picture embedded in this drawing is damaged, too large or no PNG or JPEG picture. Take it out, or embed it anew.");
        }
        if (!Arrays.equals(fit.content(), photo)) {
            changes.add(() -> attribute.setValue("data:%s;base64,%s".formatted(fit.mediaType(), Base64.getEncoder().encodeToString(fit.content()))));
        }
    }

    private static void inside(String name, String value) throws Refused {
        if (OUTSIDE.matcher(value.toLowerCase(Locale.ROOT)).find()) {
            throw new Refused("In this drawing “%s” refers to something outside it. Take that out and save it as a plain SVG file.".formatted(name));
        }
    }

    /** The JDK's own reader, with every way out of the file closed. */
    static DocumentBuilder builder() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
            factory.setAttribute("http://www.oracle.com/xml/jaxp/properties/maxElementDepth", DEEPEST);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return builder;
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("The JDK's XML reader lacks a guard.", e);
        }
    }

    static byte[] written(Document drawing) {
        try {
            TransformerFactory factory = TransformerFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            Transformer writer = factory.newTransformer();
            writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            writer.transform(new DOMSource(drawing), new StreamResult(out));
            return out.toByteArray();
        } catch (TransformerException e) {
            throw new IllegalStateException("A drawing that was read can't be written.", e);
        }
    }
}
