package benchful.bin;

import benchful.bin.RestorationOutcome.Back;
import benchful.bin.RestorationOutcome.Lacking;
import benchful.bin.RestorationOutcome.NameTaken;
import benchful.bin.RestorationOutcome.Taken;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What was removed in the last thirty days: looking through it, putting things back, and removing them for good. */
@Path("/bin")
@Produces(MediaType.TEXT_HTML)
class BinPages {
    private static final int PER_PAGE = 50;

    private final Restoration restoration;
    private final Clock clock;

    BinPages(Restoration restoration, Clock clock) {
        this.restoration = restoration;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "bin")
    static class Templates {
        static native TemplateInstance index(List<BinRow> rows, Long newer, Long older);

        static native TemplateInstance blocked(BinEntry entry, List<NameTaken> taken, List<BinEntry> lacking, boolean gone);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index(@QueryParam("page") String page) {
        int number = Pages.number(page).filter(n -> n > 0 && n <= Integer.MAX_VALUE / PER_PAGE).orElse(1L).intValue();
        List<BinEntry> shown = BinEntry.page(number - 1, PER_PAGE);
        boolean more = BinEntry.count() > (long) number * PER_PAGE;
        return Templates.index(shown.stream().map(e -> BinRow.of(e, clock.getZone())).toList(), number > 1 ? number - 1L : null, more ? number + 1L : null);
    }

    /** @param form holds other names for what can't have its own again, and whether what is lacking is to be put back too */
    @POST
    @Path("{id: \\d+}/restoration")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response restore(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        BinEntry entry = Pages.toChange(BinEntry.class, id);
        RestorationOutcome outcome = restoration.restore(entry, names(form));
        if (outcome instanceof Lacking lacking && form.containsKey("both")) {
            for (BinEntry other : lacking.entries()) {
                RestorationOutcome first = restoration.restore(Pages.toChange(BinEntry.class, other.id()), Map.of());
                if (!(first instanceof Back)) {
                    return answer(other, first);
                }
            }
            outcome = restoration.restore(entry, names(form));
        }
        return answer(entry, outcome);
    }

    @POST
    @Path("{id: \\d+}/removal")
    @Transactional
    public Response delete(@PathParam("id") long id) {
        Pages.toChange(BinEntry.class, id).delete();
        return Pages.seeOther("/bin");
    }

    private static Response answer(BinEntry entry, RestorationOutcome outcome) {
        if (outcome instanceof Back back) {
            return Pages.seeOther(back.address());
        }
        List<NameTaken> taken = outcome instanceof Taken t ? t.names() : List.of();
        List<BinEntry> lacking = outcome instanceof Lacking l ? l.entries() : List.of();
        return Pages.stale(Templates.blocked(entry, taken, lacking, outcome instanceof Lacking && lacking.isEmpty()));
    }

    private static Map<String, String> names(MultivaluedMap<String, String> form) {
        return form.keySet().stream().filter(k -> k.startsWith("name-") && !form.getFirst(k).isBlank())
                .collect(Collectors.toMap(k -> k, k -> shortened(form.getFirst(k).strip())));
    }

    private static String shortened(String name) {
        return name.length() > NameTaken.LONGEST ? name.substring(0, NameTaken.LONGEST) : name;
    }
}
