package benchful.projects.writing;

import benchful.bin.EarlierVersions;
import benchful.catalogue.HazardNames;
import benchful.projects.Project;
import benchful.projects.ProjectFiles;
import benchful.projects.ProjectSpec;
import benchful.projects.ProjectTarget;
import benchful.projects.pictures.EarlierPicture;
import benchful.web.Pages;
import benchful.web.forms.SentForm;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
import benchful.web.forms.SpecReader.Reading;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;

/** Writing a project: one form for its whole sheet. */
@Path("/projects")
@Produces(MediaType.TEXT_HTML)
class ProjectFormPages {
    private final Clock clock;
    private final HazardNames hazards;
    private final EarlierVersions earlier;
    private final FormShower shower;
    private final StartingPieces pieces;
    private final Previews previews;

    ProjectFormPages(Clock clock, HazardNames hazards, EarlierVersions earlier, FormShower shower, StartingPieces pieces, Previews previews) {
        this.clock = clock;
        this.hazards = hazards;
        this.earlier = earlier;
        this.shower = shower;
        this.pieces = pieces;
        this.previews = previews;
    }

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance fresh(@RestQuery String from) {
        return page(pieces.begun(from), null, Map.of(), Boxes.UNTOUCHED, Optional.empty());
    }

    @GET
    @Path("{id: \\d+}/edit")
    @Transactional
    public TemplateInstance edit(@RestPath long id) {
        Project project = Pages.existing(Project.class, id);
        return page(reader().form(project.stored(), project.version()), id, stored(project), Boxes.UNTOUCHED, Optional.empty());
    }

    /** Also where the sheet itself can't be read. */
    private static Map<String, String> stored(Project project) {
        return names(project.stored().tree()).stream().collect(Collectors.toMap(Function.identity(), Function.identity()));
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response create(MultipartFormDataInput input) {
        return save(null, ProjectFormFiller.of(SentForm.of(input), hazards.byId()));
    }

    @POST
    @Path("{id: \\d+}")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response update(@RestPath long id, MultipartFormDataInput input) {
        return save(id, ProjectFormFiller.of(SentForm.of(input), hazards.byId()));
    }

    /** An earlier version comes back with the pictures it had. */
    @POST
    @Path("{id: \\d+}/earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@RestPath long id, @RestPath long version, MultivaluedMap<String, String> form) {
        ProjectTarget target = target(id);
        EarlierVersions.Wanted wanted = earlier.wanted("project", id, version, form);
        ObjectNode tree = wanted.version().sheet().deepCopy();
        tree.path("pictures").forEach(p -> ((ObjectNode) p).remove("content"));
        Reading<ProjectSpec> reading = PictureIntake.fit(reader().tree(tree), names(tree)).with(sheet -> withContents(sheet, id, version));
        return new SpecPost<>(reader(), shown -> page(shown, id, stored(target.project()), Boxes.UNTOUCHED, Optional.empty())).putBack(reading, wanted.fresh(), target);
    }

    private static Set<String> names(JsonNode sheet) {
        return StreamSupport.stream(sheet.path("pictures").spliterator(), false).map(p -> p.path("name").asText()).collect(Collectors.toSet());
    }

    private static ProjectSpec withContents(ProjectSpec sheet, long id, long version) {
        return sheet.withPictures(sheet.pictures().stream().map(p -> EarlierPicture.content(id, p.name(), version).map(p::withContent).orElse(p)).toList());
    }

    private Response save(Long id, ProjectFormFiller forms) {
        if (forms.rearranged()) {
            Preview preview = forms.isToBePreviewed() ? previews.of(forms, id) : null;
            return Pages.again(shower.page(forms.shown(), id, forms.stored(), forms.boxes(), forms.draft(), preview));
        }
        Reading<ProjectSpec> reading = forms.read(reader(), id);
        return QuarkusTransaction.requiringNew().call(() -> {
            Response answer = new SpecPost<>(reader(), form -> page(form.withRemoved(forms.removed()), id, forms.stored(), forms.boxes(), forms.draft())).answer(reading, forms.version(), target(id));
            if (answer.getStatusInfo().getFamily() == Response.Status.Family.REDIRECTION) {
                ProjectDraft.done(forms.draft());
            }
            return answer;
        });
    }

    private SpecReader<ProjectSpec> reader() {
        return ProjectFiles.reader(hazards);
    }

    private ProjectTarget target(Long id) {
        return new ProjectTarget(id == null ? null : Pages.toChange(Project.class, id), clock.instant());
    }

    private TemplateInstance page(SpecForm form, Long id, Map<String, String> stored, Boxes boxes, Optional<Long> draft) {
        return shower.page(form, id, stored, boxes, draft);
    }
}
