package benchful.documents;

import benchful.documents.paper.LabelSetting;
import benchful.documents.paper.LabelStock;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.Manuscript;
import benchful.studio.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** What the benchmark of print-outs measures: a handout, labels, and the same page printed by a browser. */
public final class PrintBench {
    private static final String ADDRESS = "http://192.168.1.20:8080/classes/%d/documents";

    private final PrintSource source = PrintSamples.source(PrintSamples.strand(), "knotted-strand");
    private final DocumentService service = new DocumentService(PrintSamples.templates());

    private int printed;

    /** @param millis from the sheet to the finished PDF */
    public record Printed(int pages, double millis) {
        public double pagesPerSecond() {
            return pages / millis * 1000;
        }
    }

    public Printed handout() throws IOException {
        return timed(out -> service.writeHandout(source, options(false), 1, out));
    }

    /** One file with a handout for each student. */
    public Printed handouts(int students) throws IOException {
        PrintSource many = PrintSamples.many(source, students);
        return timed(out -> service.write(PrintOut.HANDOUT, many, options(true), out));
    }

    public Printed labels(int kits) throws IOException {
        PrintSource many = PrintSamples.many(source, kits);
        return timed(out -> service.write(PrintOut.LABELS, many, options(false), out));
    }

    /** The same page as {@link #handout()}, pictures inlined, from the start of the browser to its end. */
    public Printed browser(String chromium) throws IOException, InterruptedException {
        Manuscript manuscript = service.parts(PrintOut.HANDOUT, source, options(false)).get(0).manuscript().get();
        Path folder = Files.createTempDirectory("benchful-bench");
        Path page = Files.writeString(folder.resolve("handout.html"), inlined(manuscript));
        Path pdf = folder.resolve("handout.pdf");
        long start = System.nanoTime();
        Process process = new ProcessBuilder(chromium, "--headless", "--no-sandbox", "--disable-gpu", "--print-to-pdf=" + pdf, page.toUri().toString())
                .redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        if (!process.waitFor(2, TimeUnit.MINUTES)) {
            process.destroy();
        }
        double millis = (System.nanoTime() - start) / 1e6;
        return new Printed(pages(Files.readAllBytes(pdf)), millis);
    }

    private static String inlined(Manuscript manuscript) {
        String xhtml = manuscript.xhtml();
        for (Map.Entry<String, byte[]> picture : manuscript.pictures().entrySet()) {
            String type = picture.getKey().endsWith(".svg") ? "image/svg+xml" : picture.getKey().endsWith(".png") ? "image/png" : "image/jpeg";
            xhtml = xhtml.replace("picture:" + picture.getKey(), "data:%s;base64,%s".formatted(type, Base64.getEncoder().encodeToString(picture.getValue())));
        }
        return xhtml;
    }

    /** No two alike, as what is alike is typeset once. */
    private PrintOptions options(boolean eachStudent) {
        return new PrintOptions(Paper.A4, Version.NORMAL, eachStudent, LabelSetting.of(LabelStock.COMMON.get(0)), ADDRESS.formatted(++printed));
    }

    private interface Job {
        void print(ByteArrayOutputStream out) throws IOException;
    }

    private static Printed timed(Job job) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        long start = System.nanoTime();
        job.print(out);
        double millis = (System.nanoTime() - start) / 1e6;
        return new Printed(pages(out.toByteArray()), millis);
    }

    private static int pages(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        }
    }
}
