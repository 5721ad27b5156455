package benchful.findings;

import benchful.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
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
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** What the classes of a project showed of its minutes and materials: taken by one press, all or one by one, or refused. */
@Path("/projects/{id: \\d+}/findings")
@Produces(MediaType.TEXT_HTML)
class FindingsPages {
    private final Findings findings;
    private final Clock clock;

    FindingsPages(Findings findings, Clock clock) {
        this.findings = findings;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "findings")
    static class Templates {
        static native TemplateInstance show(FindingsPage page);

        private Templates() {}
    }

    /**
     * What the page shows.
     *
     * @param stale whether it is shown because something had changed, so that nothing was taken
     */
    @TemplateData
    public record FindingsPage(ProjectFindings findings, Clock clock, boolean stale) {
        /** A decision in words, with its day. */
        @TemplateData
        public record Line(LocalDateTime at, String title, boolean taken, String before, String after, int classes) {}

        public List<Line> history() {
            return findings.history().stream().map(d -> new Line(at(d.at()), d.title(), d.taken(), d.before().words(), d.after().words(), d.classes())).toList();
        }

        private LocalDateTime at(Instant instant) {
            return LocalDateTime.ofInstant(instant, clock.getZone());
        }
    }

    @GET
    public TemplateInstance show(@PathParam("id") long id) {
        return page(existing(id), false);
    }

    /** Takes what is proposed for one step or material, or for all; a class that asked for it is shown with it. */
    @POST
    @Path("taken")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response take(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        ProjectFindings found = existing(id);
        if (!isOf(found, form) || !findings.take(found, asked(found, form))) {
            return Pages.stale(page(existing(id), true));
        }
        return Pages.seeOther(Pages.number(form.getFirst("class")).map(c -> "/classes/" + c).orElse("/projects/%d/findings".formatted(id)));
    }

    /** Nothing of it is proposed again before there is new data. */
    @POST
    @Path("refused")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response refuse(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        ProjectFindings found = existing(id);
        if (!isOf(found, form)) {
            return Pages.stale(page(found, true));
        }
        findings.refuse(found, asked(found, form));
        return Pages.seeOther("/projects/%d/findings".formatted(id));
    }

    /** Whether the form was made of these proposals, for the project as it is. */
    private static boolean isOf(ProjectFindings found, MultivaluedMap<String, String> form) {
        return Pages.number(form.getFirst("version")).equals(Optional.of(found.version())) && found.fingerprint().equals(form.getFirst("fingerprint"));
    }

    private static List<Learned> asked(ProjectFindings found, MultivaluedMap<String, String> form) {
        String about = form.getFirst("about");
        List<Learned> asked = found.open().stream().filter(l -> about == null || about.equals(l.key())).toList();
        if (asked.isEmpty()) {
            throw new NotFoundException();
        }
        return asked;
    }

    private TemplateInstance page(ProjectFindings found, boolean stale) {
        return Templates.show(new FindingsPage(found, clock, stale));
    }

    private ProjectFindings existing(long id) {
        return findings.of(id).orElseThrow(NotFoundException::new);
    }
}
