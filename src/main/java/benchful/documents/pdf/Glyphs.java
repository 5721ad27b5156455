package benchful.documents.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBufferedFile;

/** How wide a text is in the narrow font of print-outs, from the font's own widths: the rule by which label texts fit. */
public final class Glyphs {
    public static final Glyphs PLAIN = new Glyphs("DejaVuSansCondensed.ttf");
    public static final Glyphs BOLD = new Glyphs("DejaVuSansCondensed-Bold.ttf");

    private static final String FALLBACK = "WenQuanYiMicroHei.ttf";

    private final List<Face> faces;
    private final Map<Integer, Double> known = new ConcurrentHashMap<>();

    private Glyphs(String file) {
        faces = List.of(Face.of(file), Face.of(FALLBACK));
    }

    /** @return width of a text at this size, in the unit of the size */
    public double width(String text, double size) {
        double ems = 0;
        for (int at = 0; at < text.length(); at = text.offsetByCodePoints(at, 1)) {
            ems += ems(text.codePointAt(at));
        }
        return size * ems;
    }

    /** Broken into lines no wider than {@code width}, between words where there are some. */
    public List<String> lines(String text, double width, double size) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (width(line, size) > width && fitting(line, width, size) < line.length()) {
                int end = Math.max(line.offsetByCodePoints(0, 1), fitting(line, width, size));
                lines.add(line.substring(0, end));
                line = line.substring(end);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    /** Cut off with an ellipsis where it is wider. */
    public String cut(String text, double width, double size) {
        if (width(text, size) <= width) {
            return text;
        }
        return text.substring(0, fitting(text, width - width("…", size), size)).stripTrailing() + "…";
    }

    /** How many UTF-16 units from the start fit, never half a character. */
    private int fitting(String text, double width, double size) {
        double used = 0;
        int end = 0;
        while (end < text.length()) {
            used += size * ems(text.codePointAt(end));
            if (used > width) {
                return end;
            }
            end = text.offsetByCodePoints(end, 1);
        }
        return end;
    }

    private double ems(int c) {
        return known.computeIfAbsent(c, this::measured);
    }

    private double measured(int c) {
        return faces.stream().filter(face -> face.has(c)).findFirst().map(face -> face.ems(c)).orElse(1.0);
    }

    private record Face(TrueTypeFont font, CmapLookup letters) {
        static Face of(String file) {
            try {
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBufferedFile(PrintFonts.file(file).toFile()));
                return new Face(font, font.getUnicodeCmapLookup());
            } catch (IOException e) {
                throw new UncheckedIOException("The font %s can't be read.".formatted(file), e);
            }
        }

        boolean has(int c) {
            return letters.getGlyphId(c) != 0;
        }

        double ems(int c) {
            try {
                return (double) font.getAdvanceWidth(letters.getGlyphId(c)) / font.getUnitsPerEm();
            } catch (IOException e) {
                throw new UncheckedIOException("A font can't be read.", e);
            }
        }
    }
}
