package benchful.documents.pdf;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A print-out before it is typeset.
 *
 * @param xhtml its pages, well-formed; CSS 2.1 only
 * @param pictures by the name it uses them under, {@code picture:NAME}; SVG names end in {@code .svg}
 */
public record Manuscript(String xhtml, Map<String, byte[]> pictures) {
    /** The scheme under which pictures are named; nothing else is ever fetched. */
    static final String SCHEME = "picture";

    /** How the names of a project's own pictures begin here; the others are drawn by the program. */
    public static final String OF_PROJECT = "project-";

    public Manuscript {
        xhtml = printable(xhtml);
        pictures = Map.copyOf(pictures);
    }

    /** The project's drawings, by the names they have here. */
    List<String> drawings() {
        return pictures.keySet().stream().filter(name -> name.startsWith(OF_PROJECT) && name.endsWith(".svg")).toList();
    }

    /** Where a picture stood, a sentence says that it is left out. */
    Manuscript without(String name) {
        String words = "<span class=\"quiet\">The picture \u201c%s\u201d is left out, since it can\u2019t be drawn safely. Put it into the project anew, as a simpler drawing or as a PNG picture.</span>"
                .formatted(name.replaceFirst("^" + OF_PROJECT, "").replaceFirst("\\.[a-z]+$", ""));
        StringBuilder page = new StringBuilder(xhtml);
        String source = "src=\"%s:%s\"".formatted(SCHEME, name);
        for (int at = page.indexOf(source); at >= 0; at = page.indexOf(source)) {
            page.replace(page.lastIndexOf("<img", at), page.indexOf("/>", at) + 2, words);
        }
        Map<String, byte[]> others = new HashMap<>(pictures);
        others.remove(name);
        return new Manuscript(page.toString(), others);
    }

    /** Without the few characters that XML has no room for (controls and lone surrogates), which a pasted text may carry. */
    private static String printable(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().filter(Manuscript::allowed).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private static boolean allowed(int c) {
        return c == '\n' || c == '\t' || c >= 0x20 && c < 0xD800 || c >= 0xE000 && c < 0xFFFE || c >= 0x10000;
    }
}
