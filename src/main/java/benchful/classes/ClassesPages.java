package benchful.classes;

import benchful.projects.Project;
import benchful.projects.ProjectLine;
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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;

/** The list of classes, and setting one up. The page of a class itself shows its plan and stands with the plans. */
@Path("/classes")
@Produces(MediaType.TEXT_HTML)
class ClassesPages {
    private final SetupForms forms;
    private final Clock clock;

    ClassesPages(SetupForms forms, Clock clock) {
        this.forms = forms;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "classes")
    static class Templates {
        static native TemplateInstance index(List<CraftClass> coming, List<CraftClass> past);

        static native TemplateInstance choice(List<ProjectLine> projects);

        static native TemplateInstance form(ClassForm page);

        private Templates() {}
    }

    @GET
    TemplateInstance index() {
        LocalDateTime now = LocalDateTime.now(clock);
        return Templates.index(CraftClass.from(now), CraftClass.before(now));
    }

    @GET
    @Path("new")
    TemplateInstance fresh(@QueryParam("project") Long project) {
        return project == null ? Templates.choice(Project.offered()) : Templates.form(forms.fresh(found(project)));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    Response create(MultivaluedMap<String, String> form) {
        Project project = found(number(form.getFirst("project")));
        return saved(CraftClass.of(project), form);
    }

    @GET
    @Path("{id}/edit")
    TemplateInstance edit(@PathParam("id") long id) {
        return Templates.form(forms.of(existing(id)));
    }

    @POST
    @Path("{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        return saved(existing(id), form);
    }

    @POST
    @Path("{id}/copies")
    @Transactional
    Response copy(@PathParam("id") long id) {
        CraftClass original = existing(id);
        CraftClass copy = CraftClass.of(original.project());
        copy.plan(original.setup(), original.venue());
        copy.persistAndFlush();
        return Pages.seeOther("/classes/" + copy.id() + "/edit");
    }

    @POST
    @Path("{id}/removal")
    @Transactional
    Response delete(@PathParam("id") long id) {
        existing(id).delete();
        return Pages.seeOther("/classes");
    }

    private Response saved(CraftClass target, MultivaluedMap<String, String> form) {
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

    private static Project found(long id) {
        return Project.byId(id).orElseThrow(NotFoundException::new);
    }

    private static Venue venue(String id) {
        return id == null || id.isBlank() ? null : Venue.byId(number(id)).orElseThrow(NotFoundException::new);
    }

    private static long number(String text) {
        if (text == null || !text.matches("\\d{1,18}")) {
            throw new NotFoundException();
        }
        return Long.parseLong(text);
    }
}
