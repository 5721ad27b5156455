package benchful.plans;

import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.classes.ClassSetup;
import benchful.classes.CraftClass;
import benchful.classes.SetupRules;
import benchful.classes.SetupTarget;
import benchful.stock.StockLedger;
import benchful.web.Formats;
import benchful.web.Pages;
import benchful.web.SheetForm;
import benchful.web.SheetPost;
import benchful.web.SheetReader;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Map;

/** The page of a class: will it fit, what to buy and pack, what to print; and the few inputs that are tried out most. */
@Path("/classes/{id: \\d+}")
@Produces(MediaType.TEXT_HTML)
class PlanPages {
    private final PlanService plans;
    private final ClassFiles files;
    private final StockLedger ledger;
    private final AdviceErrands advice;
    private final Removals removals;

    PlanPages(PlanService plans, ClassFiles files, StockLedger ledger, AdviceErrands advice, Removals removals) {
        this.plans = plans;
        this.files = files;
        this.ledger = ledger;
        this.advice = advice;
        this.removals = removals;
    }

    @CheckedTemplate(basePath = "plans")
    static class Templates {
        static native TemplateInstance show(PlanPage page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        CraftClass craftClass = existing(id);
        return page(craftClass, SheetForm.of(reader(craftClass).written(craftClass.setup()), craftClass.version()));
    }

    /** All that the plan is computed from, in one file that {@code POST /api/plan} takes; pictures are named in it, not carried. */
    @GET
    @Path("file")
    @Produces("application/yaml")
    @Transactional
    public Response file(@PathParam("id") long id) {
        return Response.ok(files.yaml(plans.file(existing(id))))
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"class-%d.yaml\"".formatted(id))
                .build();
    }

    /** Changes only what stands in the small form on the page, or what a suggestion or a what-if changes; all else stays. */
    @POST
    @Path("inputs")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response change(@PathParam("id") long id, MultivaluedMap<String, String> typed) {
        CraftClass craftClass = existing(id);
        return new SheetPost<>(reader(craftClass), form -> page(craftClass, form)).changed(typed, new SetupTarget(craftClass, craftClass.venue()));
    }

    @POST
    @Path("copies")
    @Transactional
    public Response copy(@PathParam("id") long id) {
        return Pages.seeOther("/classes/" + existing(id).copied().id() + "/setup");
    }

    /** What it had reserved is released while the ledger still knows for which class that was. */
    @POST
    @Path("removal")
    @Transactional
    public Response delete(@PathParam("id") long id) {
        CraftClass craftClass = CraftClass.toChange(id).orElseThrow(NotFoundException::new);
        Thing thing = new Thing("class", "%s, %s".formatted(craftClass.title(), Formats.words(craftClass.startsAt().toLocalDate())), "/classes/" + id);
        return removals.remove(thing, "/classes", () -> {
            ledger.reserve(id, Map.of(), "Released, as the class was removed");
            craftClass.delete();
        });
    }

    private TemplateInstance page(CraftClass craftClass, SheetForm form) {
        ClassFile file = plans.file(craftClass);
        advice.keepOnlyFor(craftClass, file);
        return Templates.show(new PlanPage(craftClass, file, plans.withRisk(file, plans.plan(file)), form));
    }

    private static SheetReader<ClassSetup> reader(CraftClass craftClass) {
        return SetupRules.reader(craftClass.project().toSheet());
    }

    private static CraftClass existing(long id) {
        return CraftClass.byId(id).orElseThrow(NotFoundException::new);
    }
}
