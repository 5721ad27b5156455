package benchful.projects.writing;

import benchful.catalogue.HazardNames;
import benchful.projects.Project;
import benchful.projects.ProjectCopies;
import benchful.projects.ProjectFiles;
import benchful.projects.ProjectKeeper;
import benchful.projects.ProjectSpec;
import benchful.web.Pages;
import benchful.web.forms.SentForm;
import benchful.web.forms.SpecReader.Faulty;
import benchful.web.forms.SpecReader.Read;
import benchful.web.forms.SpecReader.Reading;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Base64;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;

/** Bringing a project in from its file. Where its name is taken, the tutor decides: a copy, or in place of what is here. */
@Path("/projects/imports")
@Produces(MediaType.TEXT_HTML)
class ProjectImportPages {
    private final ProjectKeeper keeper;
    private final ProjectCopies copies;
    private final HazardNames hazards;

    ProjectImportPages(ProjectKeeper keeper, ProjectCopies copies, HazardNames hazards) {
        this.hazards = hazards;
        this.keeper = keeper;
        this.copies = copies;
    }

    @CheckedTemplate(basePath = "projects")
    static class Templates {
        static native TemplateInstance imports(ProjectImport page);

        private Templates() {}
    }

    @GET
    public TemplateInstance show() {
        return Templates.imports(ProjectImport.blank());
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response create(MultipartFormDataInput input) {
        SentForm form = SentForm.of(input);
        return file(form).map(file -> read(file, form))
                .orElseGet(() -> Pages.faulty(Templates.imports(ProjectImport.faulty("Choose a file first."))));
    }

    /** The picked file, or the one held since the last answer. */
    private static Optional<byte[]> file(SentForm form) {
        if (form.file("file").isPresent()) {
            return Optional.of(form.file("file").get().content());
        }
        try {
            return Optional.ofNullable(form.fields().getFirst("held")).map(Base64.getDecoder()::decode);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private Response read(byte[] file, SentForm form) {
        Reading<ProjectSpec> reading = PictureIntake.fit(ProjectFiles.reader(hazards).file(file), Set.of());
        if (reading instanceof Faulty<ProjectSpec> f) {
            return Pages.faulty(Templates.imports(ProjectImport.faulty(f)));
        }
        ProjectSpec sheet = ((Read<ProjectSpec>) reading).sheet();
        String decision = Optional.ofNullable(form.fields().getFirst("as")).orElse("");
        if (decision.equals("copy")) {
            return Pages.seeOther(copies.of(sheet));
        }
        Optional<Project> clash = Project.byName(sheet.name());
        if (clash.isEmpty()) {
            return answer(keeper.create(sheet), sheet, file);
        }
        return decision.equals("replacement")
                ? answer(keeper.replace(clash.get().id(), Pages.version(form.fields()), sheet), sheet, file)
                : undecided(clash.get(), sheet, file);
    }

    private static Response answer(Optional<String> kept, ProjectSpec sheet, byte[] file) {
        return kept.map(Pages::seeOther)
                .or(() -> Project.byName(sheet.name()).map(other -> undecided(other, sheet, file)))
                .orElseGet(() -> Pages.faulty(Templates.imports(ProjectImport.faulty("The project was removed meanwhile. Pick the file again."))));
    }

    private static Response undecided(Project other, ProjectSpec sheet, byte[] file) {
        return Pages.stale(Templates.imports(ProjectImport.clash(other, sheet, file)));
    }
}
