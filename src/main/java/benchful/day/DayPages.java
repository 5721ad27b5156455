package benchful.day;

import benchful.classes.CraftClass;
import benchful.core.day.Running;
import benchful.core.day.Tap;
import benchful.plans.stored.PlanService;
import benchful.web.Pages;
import benchful.web.phones.PhoneAddress;
import benchful.web.phones.SquareCode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** The page that a class is run by. Everything that is told of the class comes to one address, from forms and from scripts alike. */
@Path("/classes/{id: \\d+}/day")
@Produces(MediaType.TEXT_HTML)
class DayPages {
    private final Days days;
    private final PlanService plans;
    private final PhoneAddress phones;

    DayPages(Days days, PlanService plans, PhoneAddress phones) {
        this.days = days;
        this.plans = plans;
        this.phones = phones;
    }

    @CheckedTemplate(basePath = "day")
    static class Templates {
        static native TemplateInstance show(DayView page);

        static native TemplateInstance unplanned(CraftClass craftClass);

        private Templates() {}
    }

    @GET
    public TemplateInstance show(@PathParam("id") long id, UriInfo uri) {
        return plans.before(id, plans::planned, () -> page(Pages.existing(CraftClass.class, id), uri, null));
    }

    /** The code that opens this page on a phone. */
    @GET
    @Path("code.png")
    @Produces("image/png")
    public byte[] code(@PathParam("id") long id, UriInfo uri) {
        return SquareCode.png(onAPhone(id, uri).orElseThrow(NotFoundException::new));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response tell(@PathParam("id") long id, MultivaluedMap<String, String> form, UriInfo uri) {
        return plans.before(id, plans::planned, () -> told(id, form, uri));
    }

    private Response told(long id, MultivaluedMap<String, String> form, UriInfo uri) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        List<Tap> taps;
        try {
            taps = TapReader.read(form, days.now());
        } catch (IllegalArgumentException e) {
            return Pages.faulty(page(craftClass, uri, e.getMessage()));
        }
        return days.add(craftClass, taps) ? Pages.seeOther("/classes/%d/day".formatted(id)) : Pages.stale(Templates.unplanned(craftClass));
    }

    private Optional<String> onAPhone(long id, UriInfo uri) {
        return phones.of(uri.getBaseUri()).map(address -> "%s/classes/%d/day".formatted(address, id));
    }

    private TemplateInstance page(CraftClass craftClass, UriInfo uri, String fault) {
        LocalDateTime now = days.now();
        return days.log(craftClass)
                .map(log -> Templates.show(new DayView(craftClass, craftClass.setup(), log.course(), log.taps(), Running.of(log.course(), log.taps(), now), now,
                        onAPhone(craftClass.id(), uri).orElse(null), fault)))
                .orElseGet(() -> Templates.unplanned(craftClass));
    }
}
