package benchful.batches;

import benchful.bin.EarlierVersions;
import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.core.SkillLevel;
import benchful.plans.Remembered;
import benchful.projects.Project;
import benchful.projects.ProjectLine;
import benchful.projects.ProjectSpec;
import benchful.studio.Studio;
import benchful.web.Paged;
import benchful.web.Pages;
import benchful.web.Sought;
import benchful.web.StoredEntity;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Kits made for sale: what one holds, what all take, what to buy, and what a packed one weighs. */
@Path("/batches")
@Produces(MediaType.TEXT_HTML)
class BatchesPages {
    private static final int MOST_KITS = 1000;
    private static final String OVERTAKEN = "Somebody changed these kits meanwhile, so your button was not followed. Look at them as they are now, and press again if you still want to.";

    private final BatchService batches;
    private final Remembered remembered;
    private final Removals removals;
    private final EarlierVersions earlier;
    private final Clock clock;

    BatchesPages(BatchService batches, Remembered remembered, Removals removals, EarlierVersions earlier, Clock clock) {
        this.remembered = remembered;
        this.batches = batches;
        this.removals = removals;
        this.earlier = earlier;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "batches")
    static class Templates {
        static native TemplateInstance index(Paged<BatchLine> batches);

        static native TemplateInstance choice(List<ProjectLine> projects);

        static native TemplateInstance form(BatchForm page);

        static native TemplateInstance show(BatchView page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index(UriInfo uri) {
        return Templates.index(KitBatch.page(Sought.of(uri.getQueryParameters())).shown(BatchLine::of));
    }

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance fresh(@QueryParam("project") String project) {
        if (project == null) {
            return Templates.choice(Project.offered());
        }
        Project found = found(project);
        BatchSpec sheet = new BatchSpec(null, 10, SkillLevel.BEGINNER, Map.of(), null, null, Studio.current().coin(), null);
        return Templates.form(BatchForm.of(SpecForm.of(reader(found.toSpec()).written(sheet), 0), KitBatch.of(found)));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response create(MultivaluedMap<String, String> form) {
        return save(KitBatch.of(found(form.getFirst("project"))), form);
    }

    @GET
    @Path("{id: \\d+}")
    public TemplateInstance show(@PathParam("id") long id) {
        QuarkusTransaction.requiringNew().call(() -> StoredEntity.byId(KitBatch.class, id).map(batches::openFile)).ifPresent(file -> remembered.materials(file, LocalDate.now(clock)));
        return QuarkusTransaction.requiringNew().call(() -> shown(id));
    }

    private TemplateInstance shown(long id) {
        return page(Pages.existing(KitBatch.class, id), null);
    }

    /** Packs kits of a size, or takes them apart. */
    @POST
    @Path("{id: \\d+}/packing")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response pack(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        KitBatch batch = Pages.toChange(KitBatch.class, id);
        if (Pages.version(form) != batch.version()) {
            return Pages.stale(page(batch, OVERTAKEN));
        }
        int kits = Pages.number(form.getFirst("kits")).filter(n -> n <= MOST_KITS).map(Long::intValue).orElse(0);
        String size = form.getFirst("size") == null ? "" : form.getFirst("size");
        Optional<String> fault = batches.pack(batch, size, form.containsKey("apart") ? -kits : kits);
        return fault.isPresent() ? Pages.faulty(page(batch, fault.get())) : Pages.seeOther("/batches/" + id);
    }

    private TemplateInstance page(KitBatch batch, String notice) {
        return Templates.show(BatchView.of(batch, batches.file(batch), remembered.materials(batches.openFile(batch), LocalDate.now(clock)), notice));
    }

    @GET
    @Path("{id: \\d+}/edit")
    @Transactional
    public TemplateInstance edit(@PathParam("id") long id) {
        KitBatch batch = Pages.existing(KitBatch.class, id);
        SpecForm form = reader(batch.project.toSpec()).form(batch.stored(), batch.version());
        return Templates.form(BatchForm.of(form, batch));
    }

    @POST
    @Path("{id: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        return save(Pages.toChange(KitBatch.class, id), form);
    }

    @POST
    @Path("{id: \\d+}/earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@PathParam("id") long id, @PathParam("version") long version, MultivaluedMap<String, String> form) {
        EarlierVersions.Wanted wanted = earlier.wanted("kit_batch", id, version, form);
        KitBatch batch = Pages.toChange(KitBatch.class, id);
        return post(batch).putBack(wanted.version().sheet(), wanted.fresh(), new BatchTarget(batch));
    }

    @POST
    @Path("{id: \\d+}/removal")
    @Transactional
    public Response delete(@PathParam("id") long id) {
        KitBatch batch = Pages.toChange(KitBatch.class, id);
        return removals.remove(new Thing("kits for sale", batch.title(), "/batches/" + id), "/batches", batch::delete);
    }

    private static Response save(KitBatch batch, MultivaluedMap<String, String> form) {
        return post(batch).answer(form, new BatchTarget(batch));
    }

    private static SpecPost<BatchSpec> post(KitBatch batch) {
        return new SpecPost<>(reader(batch.project.toSpec()), f -> Templates.form(BatchForm.of(f, batch)));
    }

    private static SpecReader<BatchSpec> reader(ProjectSpec project) {
        return new SpecReader<>(BatchSpec.class, sheet -> BatchRules.faults(sheet, project));
    }

    private static Project found(String id) {
        return Pages.named(Project.class, id);
    }
}
