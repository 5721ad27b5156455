package benchful.documents.paper;

import benchful.studio.Paper;
import io.quarkus.qute.RawString;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheet of print-outs, with the page's size set before it. */
public final class Stylesheet {
    private static final String COMMON = read();

    private Stylesheet() {}

    /** Upright, with margins and a footer. */
    public static RawString of(Paper paper, Version version) {
        return page(paper.width(), paper.height(), version == Version.LARGE ? "14mm 15mm 43mm 15mm" : "12mm 15mm 22mm 15mm");
    }

    /** For tables: upright, and on its side in large print, which needs the width. */
    public static RawString tables(Paper paper, Version version) {
        return version == Version.LARGE ? landscape(paper, version) : of(paper, version);
    }

    /** On its side, for wide pictures and tables. */
    public static RawString landscape(Paper paper, Version version) {
        return page(paper.height(), paper.width(), version == Version.LARGE ? "12mm 14mm 38mm 14mm" : "12mm 14mm 22mm 14mm");
    }

    /** Without margins or footer, for sheets of labels. */
    public static RawString bare(Paper paper) {
        return page(paper.width(), paper.height(), "0");
    }

    private static RawString page(double width, double height, String margin) {
        return new RawString("@page { size: %smm %smm; margin: %s; }\n".formatted(Millimetres.words(width), Millimetres.words(height), margin) + COMMON);
    }

    private static String read() {
        try (InputStream in = Stylesheet.class.getClassLoader().getResourceAsStream("documents/print.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("The style sheet of print-outs can't be read.", e);
        }
    }
}
