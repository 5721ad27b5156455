package benchful.backups;

import benchful.backups.BackupFolder.Kept;
import benchful.backups.archive.BackupFault;
import benchful.web.Pages;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** Putting a backup back: bring a file, or choose one of the folder; see what would go and come; say yes. */
@Path("/backups/files")
@Produces(MediaType.TEXT_HTML)
class RestoresPages {
    private final Restores restores;
    private final Backups backups;
    private final Clock clock;

    RestoresPages(Restores restores, Backups backups, Clock clock) {
        this.restores = restores;
        this.backups = backups;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "backups")
    static class Templates {
        static native TemplateInstance question(RestoreQuestion page);

        static native TemplateInstance restored(BackupsView.Line line);

        static native TemplateInstance bring(String fault);

        private Templates() {}
    }

    @GET
    public TemplateInstance bring() {
        return Templates.bring(null);
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response take(@RestForm("file") FileUpload upload) {
        if (upload == null || upload.size() == 0) {
            return Pages.faulty(Templates.bring("Choose a backup file first."));
        }
        try {
            return Pages.seeOther("/backups/files/" + restores.bring(upload.uploadedFile()));
        } catch (BackupFault e) {
            return Pages.faulty(Templates.bring(e.getMessage()));
        }
    }

    @GET
    @Path("{name}")
    public TemplateInstance show(@RestPath String name) {
        Kept kept = restores.file(name);
        String own = restores.ownPassphrase().orElse(null);
        if (kept.locked() && own == null) {
            return Templates.question(RestoreQuestion.unopened(kept, null));
        }
        try {
            return Templates.question(restores.question(name, own));
        } catch (BackupFault.WrongPassphrase e) {
            return Templates.question(RestoreQuestion.unopened(kept, null));
        } catch (BackupFault e) {
            return Templates.question(RestoreQuestion.unopened(kept, e.getMessage()));
        }
    }

    @POST
    @Path("{name}/opening")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response open(@RestPath String name, @RestForm String passphrase) {
        try {
            return Pages.again(Templates.question(restores.question(name, passphrase == null ? "" : passphrase)));
        } catch (BackupFault e) {
            return faulty(name, e);
        }
    }

    @POST
    @Path("{name}/restoration")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response restore(@RestPath String name, @RestForm String passphrase) {
        try {
            return Pages.seeOther("/backups/files/" + name + "/restorations/" + restores.restore(name, passphrase == null ? "" : passphrase));
        } catch (BackupFault e) {
            return faulty(name, e);
        }
    }

    @POST
    @Path("{name}/downloads")
    public Response download(@RestPath String name) {
        Kept kept = restores.file(name);
        return Download.of(backups.folder().path().resolve(name), kept, () -> backups.sent(kept), () -> {});
    }

    @GET
    @Path("{name}/restorations/{id}")
    public TemplateInstance done(@RestPath String name, @RestPath long id) {
        Backup line = QuarkusTransaction.requiringNew().call(() -> Backup.<Backup>findByIdOptional(id)).filter(b -> name.equals(b.file)).orElseThrow(NotFoundException::new);
        return Templates.restored(BackupsView.Line.of(line, clock.getZone()));
    }

    private Response faulty(String name, BackupFault e) {
        return Pages.faulty(Templates.question(RestoreQuestion.unopened(restores.file(name), e.getMessage())));
    }
}
