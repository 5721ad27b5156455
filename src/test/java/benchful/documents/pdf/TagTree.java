package benchful.documents.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** The tags of a print-out in the order in which a screen reader comes to them, with where each text stands. */
public final class TagTree {
    private static final double MM = 25.4 / 72;

    private final List<PDStructureElement> elements = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Table> tables = new ArrayList<>();
    private final Deque<List<Row>> open = new ArrayDeque<>();
    private final Map<COSDictionary, Map<Integer, PDMarkedContent>> contents = new HashMap<>();
    private final Map<COSDictionary, Integer> pages = new HashMap<>();

    private TagTree() {}

    /** A table's rows below its head, from top to bottom; those that nothing is printed in yet are on page 0. */
    public record Table(List<Row> rows) {
        public Table {
            rows = List.copyOf(rows);
        }
    }

    /** Where a row begins, whether it ends on another page, its first words, and how tall what stands on the first page is [mm]. */
    public record Row(int page, boolean torn, String words, double height) {
        private static final double TALL = 11;

        /** So tall that it is a block of its own. */
        public boolean isTall() {
            return height > TALL;
        }
    }

    /** A run of text as it is read; its place is from the top left of its page [mm]. */
    public record Piece(int page, Rectangle2D place, String text) {}

    public static TagTree of(PDDocument document) throws IOException {
        TagTree tree = new TagTree();
        for (PDPage page : document.getPages()) {
            tree.pages.put(page.getCOSObject(), tree.pages.size() + 1);
            tree.contents.put(page.getCOSObject(), marked(page));
        }
        tree.walk(document.getDocumentCatalog().getStructureTreeRoot(), null);
        return tree;
    }

    /** Every element, parents before children. */
    public List<PDStructureElement> elements() {
        return elements;
    }

    public List<Piece> pieces() {
        return pieces;
    }

    public List<Table> tables() {
        return tables;
    }

    private void walk(PDStructureNode node, COSDictionary page) {
        COSDictionary here = node instanceof PDStructureElement e && e.getPage() != null ? e.getPage().getCOSObject() : page;
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                elements.add(element);
                int from = pieces.size();
                boolean table = element.getStandardStructureType().equals("Table");
                if (table) {
                    open.push(new ArrayList<>());
                }
                walk(element, here);
                switch (element.getStandardStructureType()) {
                    case "TH" -> keepFirstPage(from);
                    case "Table" -> close();
                    case "TR" -> row(element, pieces.subList(from, pieces.size()));
                    default -> { }
                }
            } else if (kid instanceof PDMarkedContentReference reference) {
                piece(reference.getPage() == null ? here : reference.getPage().getCOSObject(), reference.getMCID());
            } else if (kid instanceof Integer id) {
                piece(here, id);
            }
        }
    }

    /** A table's head that is printed again on its next page is one head in the tags. */
    private void keepFirstPage(int from) {
        List<Piece> head = pieces.subList(from, pieces.size());
        int first = head.stream().mapToInt(Piece::page).min().orElse(0);
        head.removeIf(piece -> piece.page() != first);
    }

    /** A table within another's cell goes on with its cell. */
    private void close() {
        List<Row> rows = open.pop();
        if (open.isEmpty()) {
            tables.add(new Table(rows));
        }
    }

    private void row(PDStructureElement element, List<Piece> pieces) {
        boolean head = element.getKids().stream().allMatch(cell -> cell instanceof PDStructureElement e && e.getStandardStructureType().equals("TH"));
        if (head || open.isEmpty()) {
            return;
        }
        int page = pieces.stream().mapToInt(Piece::page).min().orElse(0);
        List<Piece> here = pieces.stream().filter(piece -> piece.page() == page).toList();
        double top = here.stream().mapToDouble(piece -> piece.place().getMinY()).min().orElse(0);
        double end = here.stream().mapToDouble(piece -> piece.place().getMaxY()).max().orElse(0);
        open.peek().add(new Row(page, here.size() < pieces.size(), here.stream().map(Piece::text).limit(6).collect(Collectors.joining(" ")), end - top));
    }

    private void piece(COSDictionary page, int id) {
        PDMarkedContent content = contents.getOrDefault(page, Map.of()).get(id);
        List<TextPosition> letters = content == null ? List.of()
                : content.getContents().stream().filter(TextPosition.class::isInstance).map(TextPosition.class::cast).filter(t -> !t.getUnicode().isBlank()).toList();
        if (letters.isEmpty()) {
            return;
        }
        Rectangle2D place = null;
        StringBuilder text = new StringBuilder();
        for (TextPosition letter : letters) {
            Rectangle2D box = new Rectangle2D.Double(letter.getXDirAdj() * MM, letter.getYDirAdj() * MM - letter.getHeightDir() * MM, letter.getWidthDirAdj() * MM,
                    letter.getHeightDir() * MM);
            place = place == null ? box : place.createUnion(box);
            text.append(letter.getUnicode());
        }
        pieces.add(new Piece(pages.get(page), place, text.toString()));
    }

    private static Map<Integer, PDMarkedContent> marked(PDPage page) throws IOException {
        PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor() {
            /** The content names its properties; the library only looks for those that stand there themselves. */
            @Override
            public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
                PDPropertyList named = properties == null ? getResources().getProperties(tag) : null;
                super.beginMarkedContentSequence(tag, named == null ? properties : named.getCOSObject());
            }
        };
        extractor.setSuppressDuplicateOverlappingText(false);
        extractor.processPage(page);
        Map<Integer, PDMarkedContent> marked = new HashMap<>();
        extractor.getMarkedContents().forEach(content -> gather(content, marked));
        return marked;
    }

    private static void gather(PDMarkedContent content, Map<Integer, PDMarkedContent> marked) {
        if (content.getProperties() != null && content.getProperties().containsKey(COSName.MCID)) {
            marked.put(content.getMCID(), content);
        }
        content.getContents().stream().filter(PDMarkedContent.class::isInstance).forEach(inner -> gather((PDMarkedContent) inner, marked));
    }
}
