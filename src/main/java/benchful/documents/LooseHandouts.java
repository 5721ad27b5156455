package benchful.documents;

import benchful.core.Fault;
import benchful.core.Progress;
import benchful.documents.handout.Handouts;
import benchful.documents.handout.Needed;
import benchful.documents.handout.Readers;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.PrintSource;
import benchful.studio.Paper;
import benchful.studio.Studio;
import benchful.studio.StudioSpec;
import benchful.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.util.List;
import java.util.function.Supplier;

/** Handouts where nobody meets: of a project's sizes, or with kits that are sold. Their pages ask for paper, size and version. */
@ApplicationScoped
class LooseHandouts {
    private final DocumentService documents;

    LooseHandouts(DocumentService documents) {
        this.documents = documents;
    }

    @CheckedTemplate(basePath = "documents")
    static class Templates {
        static native TemplateInstance loose(LoosePage page);

        private Templates() {}
    }

    /**
     * What the page shows.
     *
     * @param back   address of what they are of; the page's own and the print-out's lie below
     * @param title  of what they are of
     * @param needed for each size what is needed to make it
     * @param faults what of a piece could not be worked out
     */
    @TemplateData
    public record LoosePage(String back, String title, boolean forSale, boolean makerKnown, List<SizeNeeds> needed, List<Fault> faults, PrintForm form) {
        public List<Paper> papers() {
            return List.of(Paper.values());
        }

        public List<Version> versions() {
            return List.of(Version.values());
        }
    }

    /** "You will need", as one paragraph. */
    @TemplateData
    public record SizeNeeds(String size, String words) {}

    TemplateInstance page(String back, String title, PrintSource source, MultivaluedMap<String, String> query) {
        return page(back, title, source, form(query));
    }

    /** What is typeset once the transaction is over. */
    Supplier<Response> printed(String back, String title, PrintSource source, MultivaluedMap<String, String> query) {
        PrintForm form = form(query);
        OptionsReader reader = new OptionsReader(form, source.studio());
        PrintOptions options = reader.read("");
        String size = form.value("size");
        List<Fault> faults = size.isEmpty() || source.file().project().size(size).isPresent() ? reader.faults() : List.of(new Fault("size", "Choose one of the sizes, or all."));
        if (!faults.isEmpty()) {
            TemplateInstance again = page(back, title, source, form.with(faults));
            return () -> Pages.faulty(again);
        }
        List<Handouts.Reader> readers = Readers.eachSize(source, options.version()).stream().filter(r -> size.isEmpty() || r.size().equals(size)).toList();
        StreamingOutput pages = out -> documents.writeHandouts(source, options, readers, out, Progress.NONE);
        return () -> Response.ok(pages, "application/pdf").header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"handout.pdf\"").build();
    }

    private static TemplateInstance page(String back, String title, PrintSource source, PrintForm form) {
        StudioSpec studio = source.studio();
        PrintOptions options = PrintOptions.usual(studio, Version.NORMAL);
        List<SizeNeeds> needed = Readers.eachSize(source, Version.NORMAL).stream()
                .map(reader -> new SizeNeeds(reader.size(), Needed.of(source, options, reader).sentence())).toList();
        boolean makerKnown = studio.name() != null && studio.address() != null && studio.mail() != null;
        return Templates.loose(new LoosePage(back, title, source.batch() != null, makerKnown, needed, source.needs().faults(), form));
    }

    @Transactional
    PrintForm form(MultivaluedMap<String, String> query) {
        return PrintForm.of(query, "", Studio.current());
    }
}
