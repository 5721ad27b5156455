package benchful.documents.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Keeps the last two rows of a table on one page, three where there are no more, and its sums with the row before them, by a body
 * of their own that is not broken. Rows that avoid a break one by one would leave the heading blank on the page that they are moved to.
 */
final class LastRows {
    private static final String ROWS = "rows";
    private static final String SUMS = "sums";
    private static final String KEPT = "kept";

    private LastRows() {}

    /** @throws IOException if the pages are not well-formed */
    static Document kept(String xhtml) throws IOException {
        Document pages = parsed(xhtml);
        NodeList tables = pages.getElementsByTagName("table");
        IntStream.range(0, tables.getLength()).mapToObj(i -> (Element) tables.item(i)).forEach(LastRows::keep);
        return pages;
    }

    private static Document parsed(String xhtml) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return builder.parse(new InputSource(new StringReader(xhtml)));
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException("The pages of a print-out are not well-formed.", e);
        }
    }

    private static void keep(Element table) {
        List<Element> bodies = children(table, "tbody");
        for (int i = 0; i < bodies.size(); i++) {
            if (is(bodies.get(i), ROWS)) {
                boolean summed = i + 1 < bodies.size() && is(bodies.get(i + 1), SUMS);
                keep(bodies.get(i), summed ? bodies.get(i + 1) : apart(bodies.get(i)), summed ? 1 : 2);
            }
        }
    }

    /** A new body of the same look right after this one. */
    private static Element apart(Element body) {
        Element last = (Element) body.cloneNode(false);
        body.getParentNode().insertBefore(last, body.getNextSibling());
        return last;
    }

    private static void keep(Element body, Element last, int most) {
        last.setAttribute("class", last.getAttribute("class") + " " + KEPT);
        List<Element> rows = children(body, "tr");
        int kept = rows.size() <= most + 1 ? rows.size() : most;
        List<Element> moved = new ArrayList<>(rows.subList(rows.size() - kept, rows.size()));
        Node before = last.getFirstChild();
        moved.forEach(row -> last.insertBefore(row, before));
        if (children(body, "tr").isEmpty()) {
            body.getParentNode().removeChild(body);
        }
        if (is(last, SUMS)) {
            moved.forEach(row -> row.setAttribute("class", (row.getAttribute("class") + " " + ROWS).strip()));
        }
    }

    private static boolean is(Element element, String name) {
        return Arrays.asList(element.getAttribute("class").split(" ")).contains(name);
    }

    private static List<Element> children(Element parent, String name) {
        List<Element> children = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element && element.getTagName().equals(name)) {
                children.add(element);
            }
        }
        return children;
    }
}
