package benchful.projects;

import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.catalogue.HazardNames;
import benchful.core.SkillLevel;
import benchful.web.Paged;
import benchful.web.Pages;
import benchful.web.Sought;
import benchful.web.Trouble;
import benchful.web.tasks.Tried;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The list of projects, each project's page, and what can be done with a whole one: copy, archive, remove, take as a file. */
@Path("/projects")
@Produces(MediaType.TEXT_HTML)
public class ProjectsPages {
    private final PieceWorking working;
    private final ProjectCopies copies;
    private final HazardNames hazards;
    private final Removals removals;
    private final Clock clock;

    ProjectsPages(PieceWorking working, ProjectCopies copies, HazardNames hazards, Removals removals, Clock clock) {
        this.working = working;
        this.copies = copies;
        this.hazards = hazards;
        this.removals = removals;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "projects")
    static class Templates {
        static native TemplateInstance index(Paged<ProjectView> projects, Paged<ProjectView> archived, List<Trouble> troubles, ProjectFilter filter,
                List<String> crafts, List<String> levels);

        static native TemplateInstance show(ProjectView view);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index(@RestQuery String words, @RestQuery String craft, @RestQuery String level, UriInfo uri) {
        ProjectFilter filter = new ProjectFilter(words, craft, level);
        Paged<Project> offered = Project.page(filter, false, Sought.of(uri.getQueryParameters(), "words", "page"));
        Paged<Project> archived = Project.page(filter, true, Sought.of(uri.getQueryParameters(), "words", "archived"));
        List<Tried<ProjectView>> shown = offered.rows().stream().map(this::tried).toList();
        List<Tried<ProjectView>> away = archived.rows().stream().map(this::tried).toList();
        return Templates.index(offered.with(Tried.worked(shown)), archived.with(Tried.worked(away)),
                Stream.of(shown, away).flatMap(all -> Tried.troubles(all).stream()).toList(), filter, Project.crafts(), SkillLevel.names());
    }

    @GET
    @Path("{id: \\d+}")
    @Transactional
    public TemplateInstance show(@RestPath long id) {
        return Templates.show(view(Pages.existing(Project.class, id)));
    }

    @POST
    @Path("{id: \\d+}/copies")
    public Response copy(@RestPath long id) {
        return Pages.seeOther(copies.of(Pages.existing(Project.class, id)) + "/edit");
    }

    /** Writes down in the catalogue what the project names and is not there. */
    @POST
    @Path("{id: \\d+}/materials")
    @Transactional
    public Response addMaterials(@RestPath long id) {
        NamedMaterials.of(view(Pages.toChange(Project.class, id))).add(LocalDate.now(clock));
        return Pages.seeOther("/projects/" + id + "#materials");
    }

    @POST
    @Path("{id: \\d+}/archive")
    @Transactional
    public Response archive(@RestPath long id) {
        Pages.existing(Project.class, id).archive(true);
        return Pages.seeOther("/projects/" + id);
    }

    @POST
    @Path("{id: \\d+}/archive/removal")
    @Transactional
    public Response bringBack(@RestPath long id) {
        Pages.existing(Project.class, id).archive(false);
        return Pages.seeOther("/projects/" + id);
    }

    @POST
    @Path("{id: \\d+}/removal")
    @Transactional
    public Response delete(@RestPath long id) {
        Project project = Pages.existing(Project.class, id);
        return removals.removeUnused(Project.class, id, new Thing("project", project.name(), "/projects/" + id), "/projects", project::delete);
    }

    @GET
    @Path("{id: \\d+}/file")
    @Produces("application/yaml")
    @Transactional
    public Response file(@RestPath long id) {
        Project project = Pages.existing(Project.class, id);
        return Response.ok(ProjectFiles.READER.yaml(project.toFullSheet()), "application/yaml;charset=UTF-8")
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"%s\"".formatted(ProjectFiles.fileName(project.name())))
                .build();
    }

    private Tried<ProjectView> tried(Project project) {
        Trouble.Mend mend = new Trouble.Mend("Change the project", "/projects/%d/edit".formatted(project.id()));
        return Tried.of(() -> view(project), failure -> Trouble.of("The project “%s”".formatted(project.name()), List.of(mend), failure));
    }

    private ProjectView view(Project project) {
        return ProjectView.of(project, working, hazards.byId());
    }
}
