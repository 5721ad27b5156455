package benchful.documents;

import benchful.core.Progress;
import benchful.documents.checklist.Checklists;
import benchful.documents.handout.Handouts;
import benchful.documents.handout.Readers;
import benchful.documents.labels.Labels;
import benchful.documents.lists.CuttingContent;
import benchful.documents.lists.EmergencyContent;
import benchful.documents.lists.IncidentContent;
import benchful.documents.lists.OrderLetter;
import benchful.documents.lists.PackingContent;
import benchful.documents.lists.PlanContent;
import benchful.documents.lists.RegisterContent;
import benchful.documents.lists.ReviewContent;
import benchful.documents.lists.RiskContent;
import benchful.documents.lists.ShoppingContent;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PictureBag;
import benchful.documents.parts.PrintSource;
import benchful.documents.pdf.Manuscript;
import benchful.documents.pdf.PdfBinder;
import benchful.documents.pdf.PdfRenderer;
import benchful.studio.StudioSpec;
import benchful.venues.VenueSpec;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** Fills and typesets print-outs. It knows nothing of where a class is stored. */
@ApplicationScoped
public class DocumentService {
    private final PrintTemplates templates;
    private final PdfRenderer renderer = new PdfRenderer();

    public DocumentService(PrintTemplates templates) {
        this.templates = templates;
    }

    /** @param out is written to but not closed; nothing is written before the document is typeset */
    public void write(PrintOut what, PrintSource source, PrintOptions options, OutputStream out) throws IOException {
        write(Wanted.of(what), source, options, out, Progress.NONE);
    }

    /** @param progress told after each part, asked before each; a print-out that is given up is not written */
    public void write(Wanted what, PrintSource source, PrintOptions options, OutputStream out, Progress progress) throws IOException {
        String title = what.isAll() ? what.title() : title(what.printOuts().get(0), options);
        bind(title + ": " + source.title(), parts(what, source, options), progress, out);
    }

    /** @param kit number of the kit whose student the handout is for */
    public void writeHandout(PrintSource source, PrintOptions options, int kit, OutputStream out) throws IOException {
        Handouts.Reader reader = source.needs().kits().stream().filter(k -> k.number() == kit).findFirst()
                .map(k -> Readers.of(source, k, options.version()))
                .orElseThrow(() -> new IllegalArgumentException("This class has no kit %d.".formatted(kit)));
        writeHandout(source, options, reader, out);
    }

    /** @param reader of what {@link Readers} answers of the source */
    void writeHandout(PrintSource source, PrintOptions options, Handouts.Reader reader, OutputStream out) throws IOException {
        renderer.write(handout(source, options, reader), out);
    }

    /** One for each reader. */
    void writeHandouts(PrintSource source, PrintOptions options, List<Handouts.Reader> readers, OutputStream out, Progress progress) throws IOException {
        bind("Handouts: " + source.title(), handouts(source, options, readers), progress, out);
    }

    /** @param out is written to but not closed; nothing is written before the card is typeset */
    void writeEmergencyCard(VenueSpec venue, StudioSpec studio, PrintOptions options, OutputStream out) throws IOException {
        PictureBag bag = new PictureBag(options.version());
        renderer.write(templates.fill(PrintOut.EMERGENCY.slug(), EmergencyContent.of(venue, studio, options, bag), bag.all()), out);
    }

    /** @param out is written to but not closed; nothing is written before the order is typeset */
    public void write(OrderLetter letter, PictureBag bag, OutputStream out) throws IOException {
        renderer.write(templates.fill("order", letter, bag.all()), out);
    }

    /**
     * What is typeset on its own: a handout, a bundle of label sheets, or the whole.
     *
     * @param name       of its bookmark
     * @param manuscript filled only when its turn comes
     */
    public record Part(String name, Supplier<Manuscript> manuscript) {
        Part under(String printOut) {
            return name.equals(printOut) ? this : new Part("%s: %s".formatted(printOut, name), manuscript);
        }
    }

    /** Of the lot, those that have something to say, each under its print-out's name. */
    List<Part> parts(Wanted what, PrintSource source, PrintOptions options) {
        if (!what.isAll()) {
            return parts(what.printOuts().get(0), source, options);
        }
        return what.printOuts().stream().filter(out -> out != PrintOut.CUTTING || CuttingContent.isCut(source))
                .flatMap(out -> parts(out, source, options).stream().map(part -> part.under(title(out, options)))).toList();
    }

    public List<Part> parts(PrintOut what, PrintSource source, PrintOptions options) {
        return switch (what) {
            case HANDOUT -> handouts(source, options, options.eachStudent() ? Readers.eachKit(source, options.version()) : Readers.eachSize(source, options.version()));
            case LABELS -> labels(new Labels(source, options), options.version());
            default -> List.of(new Part(what.title(), () -> manuscript(what, source, options)));
        };
    }

    private static String title(PrintOut what, PrintOptions options) {
        return what == PrintOut.LABELS ? options.labels().kind().title() : what.title();
    }

    private void bind(String title, List<Part> parts, Progress progress, OutputStream out) throws IOException {
        if (parts.size() == 1) {
            renderer.write(parts.get(0).manuscript().get(), out);
            return;
        }
        try (PdfBinder binder = new PdfBinder(renderer, title)) {
            for (int i = 0; i < parts.size() && !progress.isGivenUp(); i++) {
                progress.tell(i, parts.size());
                binder.add(parts.get(i).name(), parts.get(i).manuscript().get());
            }
            if (!progress.isGivenUp()) {
                binder.write(out);
            }
        }
    }

    private List<Part> handouts(PrintSource source, PrintOptions options, List<Handouts.Reader> readers) {
        return readers.stream().map(reader -> new Part(reader.title(), () -> handout(source, options, reader))).toList();
    }

    private Manuscript handout(PrintSource source, PrintOptions options, Handouts.Reader reader) {
        PictureBag bag = new PictureBag(reader.version());
        return templates.fill("handout", new Handouts(source, options).sheet(reader, bag), bag.all());
    }

    private List<Part> labels(Labels labels, Version version) {
        return IntStream.range(0, labels.bundles()).mapToObj(bundle -> new Part(labels.name(bundle), () -> {
            PictureBag bag = new PictureBag(version);
            return templates.fill("labels", labels.bundle(bundle, bag), bag.all());
        })).toList();
    }

    private Manuscript manuscript(PrintOut what, PrintSource source, PrintOptions options) {
        PictureBag bag = new PictureBag(options.version());
        Object sheet = switch (what) {
            case HANDOUT, LABELS -> throw new IllegalArgumentException("%s are made of parts.".formatted(what.title()));
            case CHECKLIST -> Checklists.sheet(source, options, bag);
            case ASSESSMENT -> RiskContent.of(source, options, bag);
            case EMERGENCY -> EmergencyContent.of(source, options, bag);
            case INCIDENT -> IncidentContent.of(source, options);
            case REGISTER -> RegisterContent.of(source, options);
            case PLAN -> PlanContent.of(source, options, bag);
            case PACKING -> PackingContent.of(source, options);
            case SHOPPING -> ShoppingContent.of(source, options);
            case CUTTING -> CuttingContent.of(source, options, bag);
            case REVIEW -> ReviewContent.of(source, options);
        };
        return templates.fill(what.slug(), sheet, bag.all());
    }
}
