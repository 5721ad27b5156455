package benchful.home;

import benchful.backups.Backups;
import benchful.samples.Samples;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;

/** The first page: a welcome where nothing is stored yet, else what to do next. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
public class HomePages {
    private final Agenda agenda;
    private final Samples samples;
    private final Backups backups;

    HomePages(Agenda agenda, Samples samples, Backups backups) {
        this.agenda = agenda;
        this.samples = samples;
        this.backups = backups;
    }

    @CheckedTemplate(basePath = "home")
    static class Templates {
        static native TemplateInstance welcome();

        static native TemplateInstance show(Agenda.Today today, Backups.Notice notice, boolean samplesPresent);

        private Templates() {}
    }

    @GET
    public TemplateInstance show() {
        return agenda.nothingStored() ? Templates.welcome() : Templates.show(agenda.today(), backups.notice(), samples.present());
    }
}
