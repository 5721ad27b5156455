package benchful.documents.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.documents.DocumentService;
import benchful.documents.PrintOut;
import benchful.documents.PrintSamples;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PrintSource;
import benchful.studio.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Handouts bound into one file, beside the same handouts each in a file of its own. */
class PdfBinderTest {
    private static List<DocumentService.Part> parts;
    private static List<PdfReading> alone;
    private static PdfReading bound;

    @BeforeAll
    static void bind() throws IOException {
        DocumentService service = new DocumentService(PrintSamples.templates());
        PrintSource source = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
        PrintOptions options = new PrintOptions(Paper.A4, Version.NORMAL, true, null, "http://192.168.1.20:8080/classes/7/documents");
        parts = service.parts(PrintOut.HANDOUT, source, options).subList(0, 3);
        PdfRenderer renderer = new PdfRenderer();
        alone = new ArrayList<>();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfBinder binder = new PdfBinder(renderer, "Handouts: Knotted strand")) {
            for (DocumentService.Part part : parts) {
                ByteArrayOutputStream single = new ByteArrayOutputStream();
                renderer.write(part.manuscript().get(), single);
                alone.add(PdfReading.of(single.toByteArray()));
                binder.add(part.name(), part.manuscript().get());
            }
            binder.write(out);
        }
        bound = PdfReading.of(out.toByteArray());
    }

    @AfterAll
    static void close() throws IOException {
        bound.close();
        for (PdfReading single : alone) {
            single.close();
        }
    }

    @Test
    void keepsEveryPageAsItWas() throws IOException {
        List<String> pages = new ArrayList<>();
        for (PdfReading single : alone) {
            for (int page = 1; page <= single.pages(); page++) {
                pages.add(single.text(page));
            }
        }
        assertThat(bound.pages()).isEqualTo(pages.size());
        for (int page = 1; page <= bound.pages(); page++) {
            assertThat(bound.text(page)).isEqualTo(pages.get(page - 1));
        }
        assertThat(bound.fonts()).isNotEmpty().allSatisfy(font -> assertThat(font.isEmbedded()).as(font.getName()).isTrue());
    }

    @Test
    void readsOneHandoutAfterTheOther() throws IOException {
        List<String> read = new ArrayList<>();
        for (PdfReading single : alone) {
            TagTree.of(single.document()).pieces().forEach(piece -> read.add(piece.text()));
        }
        TagTree tree = TagTree.of(bound.document());
        assertThat(tree.pieces()).extracting(TagTree.Piece::text).containsExactlyElementsOf(read);
        assertThat(tree.elements()).filteredOn(element -> element.getStructureType().equals("Part")).hasSize(parts.size());
        assertThat(tree.elements().get(0).getStructureType()).isEqualTo("Document");
    }

    /** ISO 32000-1:2008, 14.7.4.4: from a marked content back to its tag. */
    @Test
    void findsTheTagOfEveryMarkedContent() throws IOException {
        Map<Integer, COSBase> tags = tags(bound.document());
        List<Integer> keys = StreamSupport.stream(bound.document().getPages().spliterator(), false).map(PDPage::getStructParents).toList();
        assertThat(keys).doesNotHaveDuplicates().allSatisfy(key -> assertThat(tags).containsKey(key));
        for (PDPage page : bound.document().getPages()) {
            COSArray elements = (COSArray) tags.get(page.getStructParents());
            assertThat(elements.size()).isPositive();
            for (int i = 0; i < elements.size(); i++) {
                assertThat(holds((COSDictionary) elements.getObject(i), page, i)).as("content %d", i).isTrue();
            }
        }
    }

    @Test
    void hasABookmarkForEachHandoutAndItsOwnWithin() throws IOException {
        List<PDOutlineItem> items = children(bound.document().getDocumentCatalog().getDocumentOutline().children());
        assertThat(items).extracting(PDOutlineItem::getTitle).containsExactlyElementsOf(parts.stream().map(DocumentService.Part::name).toList())
                .first().isEqualTo("Zofia Błażejewska, seat 1, size 42 cm");
        assertThat(items).allMatch(item -> !item.isNodeOpen());
        int first = 0;
        for (int i = 0; i < items.size(); i++) {
            PDDocument document = bound.document();
            assertThat(document.getPages().indexOf(items.get(i).findDestinationPage(document))).isEqualTo(first);
            List<PDOutlineItem> within = children(items.get(i).children());
            PDDocument single = alone.get(i).document();
            List<PDOutlineItem> own = children(single.getDocumentCatalog().getDocumentOutline().children());
            assertThat(within).extracting(PDOutlineItem::getTitle).isEqualTo(own.stream().map(PDOutlineItem::getTitle).toList());
            for (int j = 0; j < own.size(); j++) {
                assertThat(document.getPages().indexOf(within.get(j).findDestinationPage(document)))
                        .isEqualTo(first + single.getPages().indexOf(own.get(j).findDestinationPage(single)));
            }
            first += alone.get(i).pages();
        }
    }

    @Test
    void saysWhatTheWholeIs() throws IOException {
        assertThat(bound.document().getDocumentInformation().getTitle()).isEqualTo("Handouts: Knotted strand");
        assertThat(new String(bound.document().getDocumentCatalog().getMetadata().toByteArray(), StandardCharsets.UTF_8))
                .contains("Handouts: Knotted strand", "pdfuaid:part>1<").doesNotContain("Zofia");
        assertThat(bound.barriers()).isEmpty();
        assertThat(bound.document().getDocumentCatalog().getLanguage()).isEqualTo("en");
        assertThat(bound.document().getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
        assertThat(bound.document().getDocumentCatalog().getViewerPreferences().displayDocTitle()).isTrue();
    }

    private static Map<Integer, COSBase> tags(PDDocument document) throws IOException {
        PDNumberTreeNode root = document.getDocumentCatalog().getStructureTreeRoot().getParentTree();
        Map<Integer, COSBase> all = new HashMap<>();
        for (PDNumberTreeNode node : root.getKids()) {
            node.getNumbers().forEach((key, value) -> all.put(key, ((PDParentTreeValue) value).getCOSObject()));
        }
        return all;
    }

    private static boolean holds(COSDictionary element, PDPage page, int content) {
        COSBase kids = element.getDictionaryObject(COSName.K);
        List<COSBase> all = kids instanceof COSArray array ? IntStream.range(0, array.size()).mapToObj(array::getObject).toList() : List.of(kids);
        return all.stream().anyMatch(kid -> kid instanceof COSNumber number && number.intValue() == content
                || kid instanceof COSDictionary reference && reference.getInt(COSName.MCID) == content && reference.getCOSDictionary(COSName.PG) == page.getCOSObject());
    }

    private static List<PDOutlineItem> children(Iterable<PDOutlineItem> items) {
        return StreamSupport.stream(items.spliterator(), false).toList();
    }
}
