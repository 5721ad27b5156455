package benchful.packing;

import benchful.classes.CraftClass;
import benchful.plans.stored.PlanService;
import benchful.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** Cutting the materials of a class, and putting usable offcuts on the shelf. */
@Path("/classes/{id: \\d+}/cutting")
@Produces(MediaType.TEXT_HTML)
class CuttingPages {
    private final CuttingWork work;
    private final PlanService plans;

    CuttingPages(CuttingWork work, PlanService plans) {
        this.plans = plans;
        this.work = work;
    }

    @CheckedTemplate(basePath = "packing")
    static class Templates {
        static native TemplateInstance cutting(long id, String title, List<CuttingRow> rows, String trouble);

        private Templates() {}
    }

    @GET
    public TemplateInstance show(@PathParam("id") long id) {
        return plans.before(id, plans::materials, () -> page(Pages.existing(CraftClass.class, id), null));
    }

    @POST
    @Path("{material: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response create(@PathParam("id") long id, @PathParam("material") long material, MultivaluedMap<String, String> form) {
        return plans.before(id, plans::materials, () -> created(id, material, form));
    }

    private Response created(long id, long material, MultivaluedMap<String, String> form) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        return work.cut(craftClass, material, form.getFirst("seen")) ? Pages.seeOther("/classes/" + id + "/cutting")
                : Pages.stale(page(craftClass, "The plan has changed since you looked, so nothing was written down. This is how it is cut now."));
    }

    @POST
    @Path("{material: \\d+}/removal")
    @Transactional
    public Response delete(@PathParam("id") long id, @PathParam("material") long material) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        return work.takeBack(craftClass, material) ? Pages.seeOther("/classes/" + id + "/cutting")
                : Pages.stale(page(craftClass, "One of its offcuts was cut for another class since. Take that back first."));
    }

    private TemplateInstance page(CraftClass craftClass, String trouble) {
        return Templates.cutting(craftClass.id(), craftClass.title(), work.rows(craftClass), trouble);
    }
}
