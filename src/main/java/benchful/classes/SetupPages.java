package benchful.classes;

import benchful.bin.EarlierVersions;
import benchful.projects.Size;
import benchful.venues.Venue;
import benchful.web.Pages;
import benchful.web.StoredEntity;
import benchful.web.forms.SpecPost;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
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

/** All that the tutor decides about a class, in one form. */
@Path("/classes/{id: \\d+}/setup")
@Produces(MediaType.TEXT_HTML)
class SetupPages {
    private final SetupForms forms;
    private final EarlierVersions earlier;

    SetupPages(SetupForms forms, EarlierVersions earlier) {
        this.forms = forms;
        this.earlier = earlier;
    }

    @CheckedTemplate(basePath = "classes")
    static class Templates {
        static native TemplateInstance form(ClassForm page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        return Templates.form(forms.of(Pages.existing(CraftClass.class, id)));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        return save(Pages.existing(CraftClass.class, id), form);
    }

    @POST
    @Path("earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@PathParam("id") long id, @PathParam("version") long version, MultivaluedMap<String, String> form) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        EarlierVersions.Wanted wanted = earlier.wanted("craft_class", id, version, form);
        ObjectNode setup = wanted.version().sheet().deepCopy();
        JsonNode room = setup.remove(CraftClass.ROOM);
        Venue venue = room == null ? null : venue(room.asText());
        return post(craftClass, venue).putBack(setup, wanted.fresh(), new SetupTarget(craftClass, venue));
    }

    /** Stores a new or changed class, or shows the form again. */
    Response save(CraftClass target, MultivaluedMap<String, String> form) {
        Venue venue = venue(form.getFirst("venue"));
        List<String> sizes = target.project().toSpec().sizes().stream().map(Size::name).toList();
        return post(target, venue).answer(new PastedStudents(sizes).asRows(form), new SetupTarget(target, venue));
    }

    private SpecPost<ClassSetup> post(CraftClass target, Venue venue) {
        return new SpecPost<>(SetupRules.reader(target.project().toSpec()), f -> Templates.form(forms.page(f, target, venue)));
    }

    private static Venue venue(String id) {
        return Pages.number(id).flatMap(n -> StoredEntity.byId(Venue.class, n)).orElse(null);
    }
}
