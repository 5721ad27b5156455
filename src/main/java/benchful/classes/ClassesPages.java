package benchful.classes;

import benchful.projects.Project;
import benchful.projects.ProjectLine;
import benchful.web.Paged;
import benchful.web.Pages;
import benchful.web.Sought;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;

/** The list of classes, and planning a new one. The page of a class itself shows its plan and stands with the plans. */
@Path("/classes")
@Produces(MediaType.TEXT_HTML)
class ClassesPages {
    private final SetupForms forms;
    private final SetupPages saving;
    private final Clock clock;

    ClassesPages(SetupForms forms, SetupPages saving, Clock clock) {
        this.forms = forms;
        this.saving = saving;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "classes")
    static class Templates {
        static native TemplateInstance index(Paged<ClassLine> coming, Paged<ClassLine> past);

        static native TemplateInstance choice(List<ProjectLine> projects);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index(UriInfo uri) {
        LocalDateTime now = LocalDateTime.now(clock);
        return Templates.index(CraftClass.coming(now, Sought.of(uri.getQueryParameters())), CraftClass.past(now, Sought.of(uri.getQueryParameters(), "find", "past")));
    }

    /**
     * @param project of a class to be planned from nothing; none to choose it first
     * @param like a class to be planned again for others
     */
    @GET
    @Path("new")
    @Transactional
    public TemplateInstance fresh(@QueryParam("project") String project, @QueryParam("like") String like) {
        if (like != null) {
            return SetupPages.Templates.form(forms.like(Pages.named(CraftClass.class, like)));
        }
        return project == null ? Templates.choice(Project.offered()) : SetupPages.Templates.form(forms.fresh(found(project)));
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response create(MultivaluedMap<String, String> form) {
        return saving.save(CraftClass.of(found(form.getFirst("project"))), form);
    }

    private static Project found(String id) {
        return Pages.named(Project.class, id);
    }
}
