package benchful.documents;

import benchful.batches.KitBatch;
import benchful.documents.paper.LabelStock;
import benchful.documents.paper.PrintOptions;
import benchful.documents.parts.PrintSource;
import benchful.studio.Studio;
import benchful.studio.StudioSpec;
import benchful.web.Pages;
import benchful.web.StoredEntity;
import benchful.web.door.Costly;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;

/** Labels for kits that are sold: what is in them, in which size, and the cautions that go with it. */
@Path("/batches/{id: \\d+}/labels")
class BatchLabelsPages {
    private final DocumentService documents;
    private final WithoutClass loose;

    BatchLabelsPages(DocumentService documents, WithoutClass loose) {
        this.documents = documents;
        this.loose = loose;
    }

    @CheckedTemplate(basePath = "documents")
    static class Templates {
        static native TemplateInstance batchlabels(long id, String title, PrintForm form, List<LabelStock> sheets);

        private Templates() {}
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    @Transactional
    public TemplateInstance index(@PathParam("id") long id, UriInfo uri) {
        return page(existing(id), PrintForm.of(uri.getQueryParameters(), "", studio()));
    }

    @GET
    @Costly
    @Path("labels.pdf")
    @Produces({"application/pdf", MediaType.TEXT_HTML})
    public Response show(@PathParam("id") long id, UriInfo uri) {
        KitBatch batch = existing(id);
        PrintForm form = PrintForm.of(uri.getQueryParameters(), "", studio());
        OptionsReader reader = new OptionsReader(form, studio());
        PrintOptions options = reader.read("");
        if (!reader.faults().isEmpty()) {
            return Pages.faulty(page(batch, form.with(reader.faults())));
        }
        PrintSource source = loose.of(batch);
        return Response.ok((StreamingOutput) out -> documents.write(PrintOut.LABELS, source, options, out), "application/pdf")
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"kits-%d-labels.pdf\"".formatted(id))
                .build();
    }

    private static TemplateInstance page(KitBatch batch, PrintForm form) {
        return Templates.batchlabels(batch.id(), batch.title(), form, LabelStock.COMMON);
    }

    private static StudioSpec studio() {
        return QuarkusTransaction.joiningExisting().call(Studio::current);
    }

    private static KitBatch existing(long id) {
        return QuarkusTransaction.joiningExisting().call(() -> StoredEntity.byId(KitBatch.class, id)).orElseThrow(NotFoundException::new);
    }
}
