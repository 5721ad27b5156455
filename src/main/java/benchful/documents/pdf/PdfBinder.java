package benchful.documents.pdf;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Binds print-outs into one tagged file, each with its own page numbers and under a bookmark of its own. Each goes to the disk
 * as soon as it is typeset; only a few numbers of it are held, so that a file of sixty takes no more memory than one of two.
 */
public final class PdfBinder implements AutoCloseable {
    private static final COSName PARENT_TREE_NEXT_KEY = COSName.getPDFName("ParentTreeNextKey");

    private static final int PAGES = 1;
    private static final int TAGS = 2;
    /** The tag of the whole, which holds a tag for each part. */
    private static final int WHOLE = 3;
    private static final int BOOKMARKS = 4;
    private static final int CATALOGUE = 5;
    private static final int ABOUT = 6;
    private static final int METADATA = 7;
    private static final int ROOTS = 7;

    private final PdfRenderer renderer;
    private final String title;
    private final Path file;
    private final OutputStream out;
    private final PdfObjects objects;
    private final List<Bound> parts = new ArrayList<>();
    private int pages;
    private int tagKeys;
    private COSDictionary catalogue;
    private COSDictionary about;
    private COSArray id;
    private COSBase roles;
    private byte[] metadata;

    /** @param title of the whole */
    public PdfBinder(PdfRenderer renderer, String title) throws IOException {
        this.renderer = renderer;
        this.title = title;
        this.file = Files.createTempFile("benchful-print", ".pdf");
        this.out = new BufferedOutputStream(Files.newOutputStream(file));
        this.objects = new PdfObjects(out);
        objects.reserve(ROOTS);
    }

    /**
     * What is held of a part, by numbers of objects.
     *
     * @param tags          its outermost
     * @param contents      node of the tree that finds the tags of its contents
     * @param firstBookmark 0 where it has none
     */
    private record Bound(String name, int pages, int firstPage, List<Integer> tags, int contents, int bookmark, int firstBookmark, int lastBookmark,
            int bookmarks) {}

    /** @param name of its bookmark */
    public void add(String name, Manuscript manuscript) throws IOException {
        ByteArrayOutputStream typeset = new ByteArrayOutputStream();
        renderer.write(manuscript, typeset);
        try (PdfPart part = new PdfPart(typeset.toByteArray())) {
            Map<Integer, COSBase> tagsOfContents = part.tagsOfContents();
            int before = objects.reserve(part.numbers());
            int contents = objects.reserve(2) + 1;
            int bookmark = contents + 1;
            part.follow(before, tagKeys);
            part.hang(PdfObjects.reference(PAGES), PdfObjects.reference(WHOLE), PdfObjects.reference(bookmark));
            if (catalogue == null) {
                begin(part);
            }
            for (COSObject object : part.kept()) {
                objects.write(PdfObjects.number(object), object.getObject());
            }
            int lastKey = tagKeys + tagsOfContents.keySet().stream().mapToInt(key -> key).max().orElse(0);
            objects.write(contents, node(tagsOfContents, tagKeys, lastKey));
            COSDictionary outline = part.outline();
            parts.add(new Bound(name, PdfObjects.number(part.pages()), PdfObjects.number(part.firstPage()), part.tags().stream().map(PdfObjects::number).toList(), contents,
                    bookmark, number(outline, COSName.FIRST), number(outline, COSName.LAST), outline == null ? 0 : Math.abs(outline.getInt(COSName.COUNT, 0))));
            pages += part.pageCount();
            tagKeys = lastKey + 1;
        }
    }

    /** Finishes the file and copies it. */
    public void write(OutputStream to) throws IOException {
        objects.write(PAGES, pages());
        objects.write(TAGS, tags());
        objects.write(WHOLE, whole());
        bookmarks();
        catalogue.setItem(COSName.PAGES, PdfObjects.reference(PAGES));
        catalogue.setItem(COSName.STRUCT_TREE_ROOT, PdfObjects.reference(TAGS));
        catalogue.setItem(COSName.OUTLINES, PdfObjects.reference(BOOKMARKS));
        catalogue.setItem(COSName.METADATA, PdfObjects.reference(METADATA));
        objects.write(CATALOGUE, catalogue);
        objects.write(ABOUT, about);
        metadata();
        COSDictionary trailer = new COSDictionary();
        trailer.setItem(COSName.ROOT, PdfObjects.reference(CATALOGUE));
        trailer.setItem(COSName.INFO, PdfObjects.reference(ABOUT));
        trailer.setItem(COSName.ID, id);
        objects.finish(trailer);
        out.close();
        Files.copy(file, to);
    }

    /** Removes the file. */
    @Override
    public void close() throws IOException {
        out.close();
        Files.deleteIfExists(file);
    }

    /** What the first part says of itself holds for the whole, but for the title. */
    private void begin(PdfPart part) throws IOException {
        PDDocument document = part.document();
        catalogue = part.lasting();
        roles = part.roles();
        about = new COSDictionary(document.getDocumentInformation().getCOSObject());
        about.setString(COSName.TITLE, title);
        id = document.getDocument().getDocumentID();
        metadata = PdfMetadata.titled(document.getDocumentCatalog().getMetadata().toByteArray(), title);
    }

    private static COSDictionary node(Map<Integer, COSBase> tagsOfContents, int firstKey, int lastKey) {
        COSArray numbers = new COSArray();
        tagsOfContents.forEach((key, tags) -> {
            numbers.add(COSInteger.get(key + (long) firstKey));
            numbers.add(tags);
        });
        COSDictionary node = new COSDictionary();
        node.setItem(COSName.LIMITS, COSArray.ofCOSIntegers(List.of(firstKey, lastKey)));
        node.setItem(COSName.NUMS, numbers);
        return node;
    }

    private COSDictionary pages() {
        COSDictionary node = typed(COSName.PAGES);
        node.setItem(COSName.KIDS, references(parts.stream().map(Bound::pages).toList()));
        node.setInt(COSName.COUNT, pages);
        return node;
    }

    private COSDictionary tags() {
        COSDictionary contents = new COSDictionary();
        contents.setItem(COSName.KIDS, references(parts.stream().map(Bound::contents).toList()));
        contents.setDirect(true);
        COSDictionary root = typed(COSName.STRUCT_TREE_ROOT);
        root.setItem(COSName.ROLE_MAP, roles);
        root.setItem(COSName.K, PdfObjects.reference(WHOLE));
        root.setItem(PdfPart.PARENT_TREE, contents);
        root.setInt(PARENT_TREE_NEXT_KEY, tagKeys);
        return root;
    }

    private COSDictionary whole() {
        COSDictionary element = typed(COSName.getPDFName("StructElem"));
        element.setName(COSName.S, "Document");
        element.setItem(COSName.P, PdfObjects.reference(TAGS));
        element.setItem(COSName.K, references(parts.stream().flatMap(part -> part.tags().stream()).toList()));
        return element;
    }

    /** A closed bookmark for each part, its own within. */
    private void bookmarks() throws IOException {
        COSDictionary root = typed(COSName.OUTLINES);
        root.setItem(COSName.FIRST, PdfObjects.reference(parts.get(0).bookmark()));
        root.setItem(COSName.LAST, PdfObjects.reference(parts.get(parts.size() - 1).bookmark()));
        root.setInt(COSName.COUNT, parts.size());
        objects.write(BOOKMARKS, root);
        for (int i = 0; i < parts.size(); i++) {
            Bound part = parts.get(i);
            COSDictionary item = new COSDictionary();
            item.setString(COSName.TITLE, part.name());
            item.setItem(COSName.PARENT, PdfObjects.reference(BOOKMARKS));
            COSArray destination = references(List.of(part.firstPage()));
            destination.add(COSName.getPDFName("Fit"));
            item.setItem(COSName.DEST, destination);
            if (i > 0) {
                item.setItem(COSName.PREV, PdfObjects.reference(parts.get(i - 1).bookmark()));
            }
            if (i + 1 < parts.size()) {
                item.setItem(COSName.NEXT, PdfObjects.reference(parts.get(i + 1).bookmark()));
            }
            if (part.firstBookmark() > 0) {
                item.setItem(COSName.FIRST, PdfObjects.reference(part.firstBookmark()));
                item.setItem(COSName.LAST, PdfObjects.reference(part.lastBookmark()));
                item.setInt(COSName.COUNT, -part.bookmarks());
            }
            objects.write(part.bookmark(), item);
        }
    }

    private void metadata() throws IOException {
        try (COSStream stream = new COSStream()) {
            stream.setItem(COSName.TYPE, COSName.METADATA);
            stream.setName(COSName.SUBTYPE, "XML");
            try (OutputStream content = stream.createOutputStream()) {
                content.write(metadata);
            }
            objects.write(METADATA, stream);
        }
    }

    private static COSDictionary typed(COSName type) {
        COSDictionary dictionary = new COSDictionary();
        dictionary.setItem(COSName.TYPE, type);
        return dictionary;
    }

    private static COSArray references(List<Integer> numbers) {
        COSArray array = new COSArray();
        numbers.forEach(number -> array.add(PdfObjects.reference(number)));
        return array;
    }

    private static int number(COSDictionary dictionary, COSName key) {
        return dictionary != null && dictionary.getItem(key) instanceof COSObject object ? PdfObjects.number(object) : 0;
    }
}
