package benchful.packing;

import benchful.classes.CraftClass;
import benchful.plans.stored.PlanService;
import benchful.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** What lies on the shelf for a class, reserving it and letting it go. */
@Path("/classes/{id: \\d+}/reservation")
@Produces(MediaType.TEXT_HTML)
class ReservationPages {
    private final Reservation reservation;
    private final PlanService plans;

    ReservationPages(Reservation reservation, PlanService plans) {
        this.plans = plans;
        this.reservation = reservation;
    }

    @CheckedTemplate(basePath = "packing")
    static class Templates {
        static native TemplateInstance reservation(long id, String title, List<ReservationRow> rows, boolean reserved);

        private Templates() {}
    }

    @GET
    public TemplateInstance show(@PathParam("id") long id) {
        return plans.before(id, plans::materials, () -> page(id));
    }

    private TemplateInstance page(long id) {
        CraftClass craftClass = Pages.existing(CraftClass.class, id);
        List<ReservationRow> rows = reservation.rows(craftClass);
        return Templates.reservation(id, craftClass.title(), rows, rows.stream().anyMatch(r -> r.reserved().signum() > 0));
    }

    @POST
    public Response create(@PathParam("id") long id) {
        return plans.before(id, plans::materials, () -> {
            reservation.reserve(Pages.toChange(CraftClass.class, id));
            return shown(id);
        });
    }

    @POST
    @Path("removal")
    @Transactional
    public Response delete(@PathParam("id") long id) {
        reservation.release(Pages.toChange(CraftClass.class, id));
        return shown(id);
    }

    /** Kept from packers until the transaction ends, so that what they pack is not reserved as well. */
    private static Response shown(long id) {
        return Pages.seeOther("/classes/" + id + "/reservation");
    }
}
