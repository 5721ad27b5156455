package benchful.documents;

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

    public Manuscript {
        xhtml = printable(xhtml);
        pictures = Map.copyOf(pictures);
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
