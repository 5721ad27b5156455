package benchful.packing;

import benchful.classes.CraftClass;
import benchful.web.Pages;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Packing the kits of a class and ticking them off. */
@Path("/classes/{id: \\d+}/packing")
@Produces(MediaType.TEXT_HTML)
class PackingPages {
    private final Packer packer;

    PackingPages(Packer packer) {
        this.packer = packer;
    }

    @CheckedTemplate(basePath = "packing")
    static class Templates {
        static native TemplateInstance show(long id, String title, PackingList list);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        CraftClass craftClass = CraftClass.byId(id).orElseThrow(NotFoundException::new);
        return Templates.show(id, craftClass.title(), packer.list(craftClass));
    }

    /**
     * Follows only what the packer changed on the form: what was ticked and is not any more is put back, what was not and
     * is now is packed. What somebody else ticked meanwhile stays.
     */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        CraftClass craftClass = CraftClass.toChange(id).orElseThrow(NotFoundException::new);
        String kit = Optional.ofNullable(form.getFirst("kit")).orElse("");
        List<String> was = form.getOrDefault("was", List.of());
        boolean whole = form.containsKey("whole");
        List<String> ticked = new ArrayList<>(form.getOrDefault(whole ? "material" : "ticked", List.of()));
        packer.change(craftClass, kit, without(ticked, was), whole ? List.of() : without(was, ticked));
        return Pages.seeOther("/classes/" + id + "/packing" + place(form.getFirst("place")));
    }

    private static List<String> without(List<String> all, List<String> some) {
        return all.stream().filter(m -> !some.contains(m)).toList();
    }

    private static String place(String place) {
        return Pages.number(place).map(n -> "#box-" + n).orElse("");
    }
}
