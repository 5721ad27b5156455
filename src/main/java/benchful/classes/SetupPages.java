package benchful.classes;

import benchful.venues.Venue;
import benchful.web.FormTree;
import benchful.web.Pages;
import benchful.web.SheetForm;
import benchful.web.SheetReader;
import com.fasterxml.jackson.databind.JsonNode;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;

/** All that the tutor decides about a class, in one form. */
@Path("/classes/{id: \\d+}/setup")
@Produces(MediaType.TEXT_HTML)
class SetupPages {
    private final SetupForms forms;

    SetupPages(SetupForms forms) {
        this.forms = forms;
    }

    @CheckedTemplate(basePath = "classes")
    static class Templates {
        static native TemplateInstance form(ClassForm page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        return Templates.form(forms.of(existing(id)));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        return save(existing(id), form);
    }

    /** Stores a new or changed class, or shows the form again. */
    Response save(CraftClass target, MultivaluedMap<String, String> form) {
        ObjectNode tree = forms.tree(form);
        Venue venue = venue(form.getFirst("venue"));
        long version = Pages.version(form);
        if (FormTree.rearranged(form, tree)) {
            return Pages.again(Templates.form(forms.page(SheetForm.of(tree, version), target, venue)));
        }
        SheetReader.Reading<ClassSetup> reading = forms.read(tree, target.project());
        if (reading instanceof SheetReader.Faulty<ClassSetup> f) {
            return Pages.faulty(Templates.form(forms.page(SheetForm.faulty(f.tree(), f.faults(), version), target, venue)));
        }
        if (version != target.version()) {
            JsonNode theirs = forms.written(target.setup());
            return Pages.stale(Templates.form(forms.page(SheetForm.stale(reading.tree(), theirs, target.version()), target, venue)));
        }
        target.plan(((SheetReader.Read<ClassSetup>) reading).sheet(), venue);
        target.persistAndFlush();
        return Pages.seeOther("/classes/" + target.id());
    }

    private static CraftClass existing(long id) {
        return CraftClass.byId(id).orElseThrow(NotFoundException::new);
    }

    private static Venue venue(String id) {
        return Pages.number(id).flatMap(Venue::byId).orElse(null);
    }
}
