package benchful.documents;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;

/** Fills and typesets print-outs. It knows nothing of where a class is stored. */
@ApplicationScoped
public class DocumentService {
    private final SheetTemplates templates;
    private final PdfRenderer renderer = new PdfRenderer();

    DocumentService(SheetTemplates templates) {
        this.templates = templates;
    }

    /** @param out is written to but not closed; nothing is written before the document is typeset */
    public void write(PrintOut what, PrintSource source, PrintOptions options, OutputStream out) throws IOException {
        if (what == PrintOut.HANDOUT) {
            List<Handouts.Reader> readers = options.eachStudent() ? Readers.eachKit(source, options.version()) : Readers.eachSize(source, options.version());
            handouts(source, options, readers, out);
        } else {
            renderer.write(manuscript(what, source, options), out);
        }
    }

    /** @param out is written to but not closed; nothing is written before the order is typeset */
    public void write(OrderLetter letter, OutputStream out) throws IOException {
        renderer.write(templates.fill("order", letter, Map.of()), out);
    }

    /** @param kit number of the kit whose student the handout is for */
    public void writeHandout(PrintSource source, PrintOptions options, int kit, OutputStream out) throws IOException {
        List<Handouts.Reader> reader = source.materials().kits().stream().filter(k -> k.number() == kit)
                .map(k -> Readers.of(source, k, options.version())).toList();
        if (reader.isEmpty()) {
            throw new IllegalArgumentException("This class has no kit %d.".formatted(kit));
        }
        handouts(source, options, reader, out);
    }

    private void handouts(PrintSource source, PrintOptions options, List<Handouts.Reader> readers, OutputStream out) throws IOException {
        Handouts handouts = new Handouts(source, options);
        PdfBinder binder = new PdfBinder(renderer);
        for (Handouts.Reader reader : readers) {
            PictureBag bag = new PictureBag(reader.version());
            binder.add(templates.fill("handout", handouts.sheet(reader, bag), bag.all()));
        }
        binder.write(out);
    }

    Manuscript manuscript(PrintOut what, PrintSource source, PrintOptions options) {
        PictureBag bag = new PictureBag(options.version());
        Object sheet = switch (what) {
            case HANDOUT -> new Handouts(source, options).sheet(Readers.eachSize(source, options.version()).get(0), bag);
            case LABELS -> new Labels(source, options).sheet(bag);
            case CHECKLIST -> Checklists.sheet(source, options, bag);
            case ASSESSMENT -> RiskSheet.of(source, options, bag);
            case REGISTER -> RegisterSheet.of(source, options);
            case PLAN -> PlanSheet.of(source, options, bag);
            case PACKING -> PackingSheet.of(source, options);
            case SHOPPING -> ShoppingSheet.of(source, options);
            case CUTTING -> CuttingSheet.of(source, options, bag);
            case REVIEW -> ReviewSheet.of(source, options);
        };
        return templates.fill(what.slug(), sheet, bag.all());
    }
}
