package benchful.plans;

import benchful.classes.ClassSetup;
import benchful.classes.CraftClass;
import benchful.classes.SetupRules;
import benchful.stock.StockLedger;
import benchful.web.FormTree;
import benchful.web.Pages;
import benchful.web.SheetForm;
import benchful.web.SheetReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
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

    PlanPages(PlanService plans, ClassFiles files, StockLedger ledger) {
        this.plans = plans;
        this.files = files;
        this.ledger = ledger;
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

    /** Changes only what stands in the small form on the page; all else of the setup stays. */
    @POST
    @Path("inputs")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response change(@PathParam("id") long id, MultivaluedMap<String, String> typed) {
        CraftClass craftClass = existing(id);
        SheetReader<ClassSetup> reader = reader(craftClass);
        ObjectNode tree = FormTree.over(reader.written(craftClass.setup()), typed);
        long version = Pages.version(typed);
        SheetReader.Reading<ClassSetup> reading = reader.tree(tree);
        if (reading instanceof SheetReader.Faulty<ClassSetup> f) {
            return Pages.faulty(page(craftClass, SheetForm.faulty(f.tree(), f.faults(), version)));
        }
        if (version != craftClass.version()) {
            return Pages.stale(page(craftClass, SheetForm.stale(reading.tree(), reader.written(craftClass.setup()), craftClass.version())));
        }
        craftClass.plan(((SheetReader.Read<ClassSetup>) reading).sheet(), craftClass.venue());
        craftClass.persistAndFlush();
        return Pages.seeOther("/classes/" + id);
    }

    @POST
    @Path("copies")
    @Transactional
    public Response copy(@PathParam("id") long id) {
        return Pages.seeOther("/classes/" + existing(id).copied().id() + "/setup");
    }

    @POST
    @Path("removal")
    @Transactional
    public Response delete(@PathParam("id") long id) {
        existing(id).delete();
        ledger.reserve(id, Map.of(), "The class was removed");
        return Pages.seeOther("/classes");
    }

    private TemplateInstance page(CraftClass craftClass, SheetForm form) {
        ClassFile file = plans.file(craftClass);
        return Templates.show(new PlanPage(craftClass, file, plans.withRisk(file, plans.plan(file)), form));
    }

    private static SheetReader<ClassSetup> reader(CraftClass craftClass) {
        return new SheetReader<>(ClassSetup.class, "setup-1", s -> SetupRules.check(s, craftClass.project().toSheet()));
    }

    private static CraftClass existing(long id) {
        return CraftClass.byId(id).orElseThrow(NotFoundException::new);
    }
}
