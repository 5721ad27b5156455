package benchful.documents.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The open fonts that print-outs embed: DejaVu Sans, narrow and wide, and behind it a fallback for Chinese, Japanese and Korean.
 * The engine draws text in SVG pictures only with fonts that are files, so they are unpacked once.
 */
final class PrintFonts {
    private static final String DEJAVU = "net/sf/jasperreports/fonts/dejavu/";
    private static final String FALLBACK = "fonts/WenQuanYiMicroHei.ttf";
    private static final Path FOLDER = unpacked();

    static final List<Face> FACES = List.of(
            new Face("DejaVu Sans Condensed", 400, FontStyle.NORMAL, file("DejaVuSansCondensed.ttf")),
            new Face("DejaVu Sans Condensed", 700, FontStyle.NORMAL, file("DejaVuSansCondensed-Bold.ttf")),
            new Face("DejaVu Sans Condensed", 400, FontStyle.ITALIC, file("DejaVuSansCondensed-Oblique.ttf")),
            new Face("DejaVu Sans", 400, FontStyle.NORMAL, file("DejaVuSans.ttf")),
            new Face("DejaVu Sans", 700, FontStyle.NORMAL, file("DejaVuSans-Bold.ttf")),
            new Face("WenQuanYi Micro Hei", 400, FontStyle.NORMAL, file("WenQuanYiMicroHei.ttf")));

    /** One font file with what style sheets call it. */
    record Face(String family, int weight, FontStyle style, Path file) {}

    private PrintFonts() {}

    static Path file(String name) {
        return FOLDER.resolve(name);
    }

    private static Path unpacked() {
        try {
            Path folder = Files.createTempDirectory("benchful-fonts");
            // The last to be named is the first to be deleted, and only an empty folder can be.
            folder.toFile().deleteOnExit();
            for (String name : List.of("DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf", "DejaVuSansCondensed-Oblique.ttf",
                    "DejaVuSans.ttf", "DejaVuSans-Bold.ttf")) {
                unpack(DEJAVU + name, folder);
            }
            unpack(FALLBACK, folder);
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException("The fonts for printing can't be unpacked to the temporary folder.", e);
        }
    }

    private static void unpack(String resource, Path folder) throws IOException {
        Path file = folder.resolve(resource.substring(resource.lastIndexOf('/') + 1));
        try (InputStream in = PrintFonts.class.getClassLoader().getResourceAsStream(resource)) {
            Files.copy(in, file);
        }
        file.toFile().deleteOnExit();
    }
}
