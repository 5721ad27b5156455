package benchful.projects;

import benchful.catalogue.HazardNames;
import benchful.catalogue.Material;
import benchful.core.Fault;
import benchful.web.Pages;
import benchful.web.SentForm;
import benchful.web.SheetForm;
import benchful.web.SheetReader.Faulty;
import benchful.web.SheetReader.Read;
import benchful.web.SheetReader.Reading;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;

/** Writing a project: one form for its whole sheet. */
@Path("/projects")
@Produces(MediaType.TEXT_HTML)
class ProjectFormPages {
    private final ProjectKeeper keeper;
    private final HazardNames hazards;

    ProjectFormPages(ProjectKeeper keeper, HazardNames hazards) {
        this.keeper = keeper;
        this.hazards = hazards;
    }

    @CheckedTemplate(basePath = "projects")
    static class Templates {
        static native TemplateInstance form(ProjectForm page);

        private Templates() {}
    }

    @GET
    @Path("new")
    public TemplateInstance fresh() {
        return page(ProjectForms.blank(), null, Map.of());
    }

    @GET
    @Path("{id: \\d+}/edit")
    @Transactional
    public TemplateInstance edit(@RestPath long id) {
        Project project = ProjectsPages.found(id);
        Map<String, String> stored = project.toSheet().pictures().stream().collect(Collectors.toMap(Picture::name, Picture::name));
        return page(SheetForm.of(ProjectFiles.READER.written(project.toSheet()), project.version()), id, stored);
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response create(MultipartFormDataInput input) {
        return save(null, ProjectForms.of(SentForm.of(input)));
    }

    @POST
    @Path("{id: \\d+}")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response update(@RestPath long id, MultipartFormDataInput input) {
        return save(id, ProjectForms.of(SentForm.of(input)));
    }

    private Response save(Long id, ProjectForms forms) {
        if (forms.rearranged()) {
            return Pages.again(page(forms.shown(), id, forms.stored()));
        }
        Reading<ProjectSheet> reading = forms.read();
        if (reading instanceof Faulty<ProjectSheet> f) {
            return Pages.faulty(page(SheetForm.faulty(f.tree(), f.faults(), forms.version()), id, forms.stored()));
        }
        ProjectSheet sheet = ((Read<ProjectSheet>) reading).sheet();
        return answer(id, forms, reading, id == null
                ? keeper.create(sheet)
                : keeper.replace(id, forms.version(), forms.withRenamedPictures(id, sheet)));
    }

    private Response answer(Long id, ProjectForms forms, Reading<ProjectSheet> reading, ProjectKeeper.Outcome outcome) {
        if (outcome instanceof ProjectKeeper.Kept kept) {
            return Pages.seeOther("/projects/" + kept.id());
        }
        if (outcome instanceof ProjectKeeper.NameTaken) {
            Fault taken = new Fault("/name", "There is another project of this name. Choose a name of its own.");
            return Pages.faulty(page(SheetForm.faulty(reading.tree(), List.of(taken), forms.version()), id, forms.stored()));
        }
        if (outcome instanceof ProjectKeeper.Changed c) {
            SheetForm both = SheetForm.stale(reading.tree(), ProjectFiles.READER.written(c.theirs()), c.version());
            return Pages.stale(page(both, id, forms.stored()));
        }
        throw new NotFoundException();
    }

    private TemplateInstance page(SheetForm form, Long id, Map<String, String> stored) {
        return Templates.form(new ProjectForm(form, id, stored, choices()));
    }

    private ProjectForm.Choices choices() {
        List<String> materials = Material.getEntityManager()
                .createQuery("select name from Material order by lower(name)", String.class).getResultList();
        return new ProjectForm.Choices(Project.crafts(), materials, hazards.byId());
    }
}
