package benchful.samples;

import benchful.bin.Bin;
import benchful.bin.BinEntry;
import benchful.bin.Thing;
import benchful.bin.Undo;
import benchful.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;

/** Loading the sample classes and removing them. */
@Path("/samples")
@Produces(MediaType.TEXT_HTML)
class SamplesPages {
    private final Samples samples;
    private final Bin bin;

    SamplesPages(Samples samples, Bin bin) {
        this.samples = samples;
        this.bin = bin;
    }

    @CheckedTemplate(basePath = "samples")
    static class Templates {
        static native TemplateInstance kept(List<String> names);

        private Templates() {}
    }

    @POST
    public Response create() {
        samples.load();
        return Pages.seeOther("/");
    }

    @POST
    @Path("removal")
    @Transactional
    public Response delete() {
        Optional<BinEntry> entry = bin.keep(new Thing("samples", "The sample classes", "/"), samples::remove);
        return Pages.seeOther(Undo.offeredAt(samples.kept().isEmpty() ? "/" : "/samples/kept", entry));
    }

    /** What had to stay. */
    @GET
    @Path("kept")
    public TemplateInstance kept() {
        return Templates.kept(samples.kept());
    }
}
