package benchful.documents.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/** What a PDF says of itself, as XMP (ISO 16684-1). The PDF library's own reader of XMP refuses the entries of PDF/UA. */
final class PdfMetadata {
    private static final String DUBLIN_CORE = "http://purl.org/dc/elements/1.1/";
    private static final String RDF = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";

    private PdfMetadata() {}

    /** The same under another title. */
    static byte[] titled(byte[] xmp, String title) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            Document metadata = factory.newDocumentBuilder().parse(new ByteArrayInputStream(xmp));
            Element entry = (Element) metadata.getElementsByTagNameNS(DUBLIN_CORE, "title").item(0);
            entry.getElementsByTagNameNS(RDF, "li").item(0).setTextContent(title);
            Transformer writer = TransformerFactory.newInstance().newTransformer();
            writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            ByteArrayOutputStream written = new ByteArrayOutputStream();
            writer.transform(new DOMSource(metadata), new StreamResult(written));
            return written.toByteArray();
        } catch (ParserConfigurationException | SAXException | TransformerException e) {
            throw new IOException("The metadata of a print-out can't be read.", e);
        }
    }
}
