package benchful.mutation;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * One change of the program.
 *
 * @param type the changed class
 * @param mutator the kind of change, such as {@code MathMutator}
 * @param noticed whether a test failed, or did not end, with it
 */
record Mutant(String type, String method, int line, String mutator, String words, boolean noticed) {

    /** Those of one report of the tool, a file {@code mutations.xml}. */
    static List<Mutant> read(Path report) throws IOException {
        try {
            NodeList all = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(report.toFile()).getElementsByTagName("mutation");
            return IntStream.range(0, all.getLength()).mapToObj(i -> of((Element) all.item(i))).toList();
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException("No report of changes: " + report, e);
        }
    }

    private static Mutant of(Element e) {
        String mutator = text(e, "mutator");
        return new Mutant(text(e, "mutatedClass"), text(e, "mutatedMethod"), Integer.parseInt(text(e, "lineNumber")),
                mutator.substring(mutator.lastIndexOf('.') + 1), text(e, "description"), Boolean.parseBoolean(e.getAttribute("detected")));
    }

    private static String text(Element e, String name) {
        return e.getElementsByTagName(name).item(0).getTextContent();
    }

    String inPackage() {
        return type.substring(0, type.lastIndexOf('.'));
    }

    @Override
    public String toString() {
        return "%s.%s:%d %s: %s".formatted(type.substring(type.lastIndexOf('.') + 1), method, line, mutator, words);
    }
}
