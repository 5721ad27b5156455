package benchful.documents.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPage;

/** The pages of a print-out as somebody sees them who leafs through it: how far down each is filled, its last line, and where tables go on. */
public final class PageLook {
    private static final double MM = 25.4 / 72;
    /** Letters of one line stand no further apart [mm]. */
    private static final double LINE = 2;
    private static final double TOP = 12;

    private final PdfReading pdf;
    private final List<PdfReading.Glyph> letters;
    private final List<TagTree.Table> tables;
    private final Map<Integer, Double> feet = new HashMap<>();
    private final Map<Integer, List<Rectangle2D>> drawn = new HashMap<>();

    private PageLook(PdfReading pdf) throws IOException {
        this.pdf = pdf;
        this.letters = pdf.glyphs().stream().filter(glyph -> !glyph.letters().isBlank()).toList();
        this.tables = pdf.pages() == 1 ? List.of() : TagTree.of(pdf.document()).tables();
    }

    public static PageLook of(PdfReading pdf) throws IOException {
        return new PageLook(pdf);
    }

    public int pages() {
        return pdf.pages();
    }

    /** How far down what lies between margin and footer reaches, letters or drawings: 0 to 1. */
    public double fill(int page) {
        double foot = foot(page);
        double words = body(page).stream().mapToDouble(PdfReading.Glyph::y).max().orElse(TOP);
        double lines = lines(page).stream().mapToDouble(Rectangle2D::getMaxY).filter(y -> y < foot - 1).max().orElse(TOP);
        return (Math.max(words, lines) - TOP) / (foot - TOP);
    }

    /** The last line above the footer, without its blanks. */
    public String lastLine(int page) {
        List<PdfReading.Glyph> body = body(page);
        double last = body.stream().mapToDouble(PdfReading.Glyph::y).max().orElse(0);
        StringBuilder line = new StringBuilder();
        body.stream().filter(glyph -> glyph.y() > last - LINE).forEach(glyph -> line.append(glyph.letters()));
        return plain(line.toString());
    }

    /** All letters above the footers, without their blanks, page after page as they are drawn. */
    public String words() {
        StringBuilder words = new StringBuilder();
        for (int page = 1; page <= pages(); page++) {
            body(page).forEach(glyph -> words.append(glyph.letters()));
        }
        return plain(words.toString());
    }

    /** Letters that lie over the footer, the margins or the edge. */
    public List<String> outside(double margin) {
        List<String> outside = new ArrayList<>();
        for (PdfReading.Glyph glyph : letters) {
            double wide = sheet(glyph.page()).getMediaBox().getWidth() * MM;
            if (glyph.x() < margin || glyph.right() > wide - margin || glyph.y() > high(glyph.page()) - 6) {
                outside.add("%s on page %d at %.0f, %.0f mm".formatted(glyph.letters(), glyph.page(), glyph.x(), glyph.y()));
            }
        }
        return outside;
    }

    /** Tables of which a single row of several stands alone at the foot of a page or at the head of the next, by that row's first words. */
    public List<String> loneRows() {
        List<String> lone = new ArrayList<>();
        for (TagTree.Table table : tables) {
            Map<Integer, List<TagTree.Row>> byPage = new HashMap<>();
            table.rows().forEach(row -> byPage.computeIfAbsent(row.page(), any -> new ArrayList<>()).add(row));
            int first = table.rows().stream().mapToInt(TagTree.Row::page).min().orElse(0);
            int last = table.rows().stream().mapToInt(TagTree.Row::page).max().orElse(0);
            if (first != last && first > 0 && table.rows().size() > 2) {
                byPage.entrySet().stream().filter(e -> e.getValue().size() == 1 && (e.getKey() == first || e.getKey() == last) && !e.getValue().get(0).isTall())
                        .forEach(e -> lone.add("page %d: %s".formatted(e.getKey(), e.getValue().get(0).words())));
            }
        }
        return lone;
    }

    /** Rows that begin on one page and end on another, by their first words. */
    public List<String> tornRows() {
        return tables.stream().flatMap(table -> table.rows().stream()).filter(TagTree.Row::torn).map(row -> "page %d: %s".formatted(row.page(), row.words())).toList();
    }

    private List<PdfReading.Glyph> body(int page) {
        double foot = foot(page);
        return letters.stream().filter(glyph -> glyph.page() == page && glyph.y() < foot).toList();
    }

    /** Where the footer begins: at its line, the lowest that goes across the page [mm]. */
    private double foot(int page) {
        return feet.computeIfAbsent(page, this::footLine);
    }

    private double footLine(int page) {
        double wide = sheet(page).getMediaBox().getWidth() * MM;
        return lines(page).stream().filter(line -> line.getWidth() > wide - 40 && line.getHeight() < 0.6 && line.getMinY() > high(page) * 0.7)
                .mapToDouble(Rectangle2D::getMinY).max().orElseThrow(() -> new AssertionError("Page %d has no footer.".formatted(page)));
    }

    private List<Rectangle2D> lines(int page) {
        return drawn.computeIfAbsent(page, this::read);
    }

    private List<Rectangle2D> read(int page) {
        try {
            return OutlineReader.rectangles(sheet(page));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private double high(int page) {
        return sheet(page).getMediaBox().getHeight() * MM;
    }

    private PDPage sheet(int page) {
        return pdf.document().getPage(page - 1);
    }

    /** Without blanks, and with the ligatures that fonts draw taken apart. */
    public static String plain(String words) {
        return words.replaceAll("[\\s\u00a0\u200b]+", "").replace("ﬁ", "fi").replace("ﬂ", "fl").replace("ﬀ", "ff").replace("ﬃ", "ffi").replace("ﬄ", "ffl");
    }
}
