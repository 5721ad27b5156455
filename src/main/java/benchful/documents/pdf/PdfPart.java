package benchful.documents.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A typeset print-out that becomes part of a longer file. */
final class PdfPart implements AutoCloseable {
    private static final COSName VIEWER_PREFERENCES = COSName.getPDFName("ViewerPreferences");
    static final COSName PARENT_TREE = COSName.getPDFName("ParentTree");
    /** All that the binder takes over; anything else would be lost without a word. */
    private static final Set<COSName> KNOWN = Set.of(COSName.TYPE, COSName.VERSION, COSName.PAGES, COSName.METADATA, COSName.MARK_INFO, COSName.LANG,
            VIEWER_PREFERENCES, COSName.STRUCT_TREE_ROOT, COSName.OUTLINES);
    private static final List<COSName> TAG_KEYS = List.of(COSName.STRUCT_PARENTS, COSName.STRUCT_PARENT);

    private final PDDocument document;
    private final COSDictionary catalogue;
    private final List<COSObject> objects;

    PdfPart(byte[] pdf) throws IOException {
        document = Loader.loadPDF(pdf);
        catalogue = document.getDocumentCatalog().getCOSObject();
        if (!KNOWN.containsAll(catalogue.keySet())) {
            throw new IllegalStateException("A print-out has parts that can't be bound: " + catalogue.keySet());
        }
        objects = objects(document.getDocument());
    }

    /** The highest number of its objects. */
    int numbers() {
        return objects.stream().mapToInt(PdfObjects::number).max().orElse(0);
    }

    int pageCount() {
        return document.getNumberOfPages();
    }

    PDDocument document() {
        return document;
    }

    COSObject pages() {
        return (COSObject) catalogue.getItem(COSName.PAGES);
    }

    COSObject firstPage() {
        return (COSObject) catalogue.getCOSDictionary(COSName.PAGES).getCOSArray(COSName.KIDS).get(0);
    }

    COSDictionary outline() {
        return catalogue.getCOSDictionary(COSName.OUTLINES);
    }

    /** Gives its objects the numbers, and its tagged contents the keys, that follow those before it in the file. */
    void follow(int numbersBefore, int tagKeysBefore) {
        for (COSObject object : objects) {
            object.setKey(new COSObjectKey(PdfObjects.number(object) + (long) numbersBefore, 0));
            if (object.getObject() instanceof COSDictionary dictionary) {
                TAG_KEYS.stream().filter(dictionary::containsKey).forEach(key -> dictionary.setInt(key, dictionary.getInt(key) + tagKeysBefore));
            }
        }
    }

    /** Hangs its pages, tags and bookmarks under those of the whole. */
    void hang(COSObject underPages, COSObject underTag, COSObject underBookmark) {
        catalogue.getCOSDictionary(COSName.PAGES).setItem(COSName.PARENT, underPages);
        for (COSObject tag : tags()) {
            COSDictionary element = (COSDictionary) tag.getObject();
            element.setItem(COSName.P, underTag);
            element.setName(COSName.S, "Part");
        }
        COSDictionary bookmark = outline() == null ? null : outline().getCOSDictionary(COSName.FIRST);
        while (bookmark != null) {
            bookmark.setItem(COSName.PARENT, underBookmark);
            bookmark = bookmark.getCOSDictionary(COSName.NEXT);
        }
    }

    /** The outermost tags. */
    List<COSObject> tags() {
        COSBase kids = root().getDictionaryObject(COSName.K);
        List<COSObject> tags = new ArrayList<>();
        if (kids instanceof COSArray array) {
            array.forEach(kid -> tags.add((COSObject) kid));
        } else {
            tags.add((COSObject) root().getItem(COSName.K));
        }
        return tags;
    }

    /** By key of tagged contents, from 0: the tags that hold them. */
    Map<Integer, COSBase> tagsOfContents() {
        Map<Integer, COSBase> all = new TreeMap<>();
        collect(root().getCOSDictionary(PARENT_TREE), all, new HashSet<>());
        return all;
    }

    /** What is written of it: all but the roots, which the whole has of its own. */
    List<COSObject> kept() {
        Set<COSBase> roots = new HashSet<>();
        roots.add(catalogue);
        roots.add(root());
        roots.add(outline());
        roots.add(catalogue.getDictionaryObject(COSName.METADATA));
        roots.add(document.getDocumentInformation().getCOSObject());
        collect(root().getCOSDictionary(PARENT_TREE), new TreeMap<>(), roots);
        return objects.stream().filter(object -> !roots.contains(object.getObject())).toList();
    }

    /** The entries of its catalogue that hold for the whole as well. */
    COSDictionary lasting() {
        COSDictionary lasting = new COSDictionary();
        List.of(COSName.TYPE, COSName.VERSION, COSName.MARK_INFO, COSName.LANG, VIEWER_PREFERENCES).forEach(key -> lasting.setItem(key, detached(catalogue.getItem(key))));
        return lasting;
    }

    /** What its own names for tags stand for; null where it has none. */
    COSBase roles() {
        return detached(root().getItem(COSName.ROLE_MAP));
    }

    @Override
    public void close() throws IOException {
        document.close();
    }

    private COSDictionary root() {
        return catalogue.getCOSDictionary(COSName.STRUCT_TREE_ROOT);
    }

    /** As a reference that does not hold the object itself. */
    private static COSBase detached(COSBase item) {
        return item instanceof COSObject object ? PdfObjects.reference(PdfObjects.number(object)) : item;
    }

    private static List<COSObject> objects(COSDocument document) {
        return document.getXrefTable().keySet().stream().sorted(Comparator.comparingLong(COSObjectKey::getNumber)).map(document::getObjectFromPool)
                .filter(object -> object.getObject() != null && !packing(object.getObject())).toList();
    }

    private static boolean packing(COSBase object) {
        return object instanceof COSDictionary dictionary
                && (COSName.OBJ_STM.equals(dictionary.getCOSName(COSName.TYPE)) || COSName.XREF.equals(dictionary.getCOSName(COSName.TYPE)));
    }

    private static void collect(COSDictionary node, Map<Integer, COSBase> found, Set<COSBase> nodes) {
        nodes.add(node);
        COSArray numbers = node.getCOSArray(COSName.NUMS);
        for (int i = 0; numbers != null && i + 1 < numbers.size(); i += 2) {
            found.put(((COSInteger) numbers.getObject(i)).intValue(), numbers.get(i + 1));
        }
        COSArray kids = node.getCOSArray(COSName.KIDS);
        for (int i = 0; kids != null && i < kids.size(); i++) {
            collect((COSDictionary) kids.getObject(i), found, nodes);
        }
    }
}
