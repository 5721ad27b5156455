package benchful.findings;

import benchful.classes.ClassFile;
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
import jakarta.ws.rs.QueryParam;
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
     * @param asking the class from whose page it was asked for; null for none
     * @param stale whether it is shown because something had changed, so that nothing was taken
     */
    @TemplateData
    public record FindingsPage(ProjectFindings findings, Findings.Asking asking, Clock clock, boolean stale) {
        /** A decision in words, with its day. */
        @TemplateData
        public record Line(LocalDateTime at, String title, boolean taken, String before, String after, int classes) {}

        /** What should be changed, here and in the class that asked. */
        public List<Learned> open() {
            return findings.open(file(asking));
        }

        /** Whether it can be taken here: what each class has for itself, only where that class asks. */
        public boolean takes(Learned one) {
            return open().stream().anyMatch(l -> l.key().equals(one.key()));
        }

        /** The same as it concerns the class that asked. */
        public Learned here(ForClass one) {
            return asking == null ? one : one.of(asking.file());
        }

        public String fingerprint() {
            return findings.fingerprint(file(asking));
        }

        /** Null for none. */
        public Long craftClass() {
            return asking == null ? null : asking.craftClass();
        }

        public List<Line> history() {
            return findings.history().stream().map(d -> new Line(at(d.at()), d.title(), d.taken(), d.before().words(), d.after().words(), d.classes())).toList();
        }

        private LocalDateTime at(Instant instant) {
            return LocalDateTime.ofInstant(instant, clock.getZone());
        }
    }

    @GET
    public TemplateInstance show(@PathParam("id") long id, @QueryParam("class") String craftClass) {
        return page(existing(id), asking(id, craftClass), false);
    }

    /** Null where no class of the project asks. */
    private Findings.Asking asking(long id, String craftClass) {
        return Pages.number(craftClass).flatMap(c -> findings.asking(c, id)).orElse(null);
    }

    private static ClassFile file(Findings.Asking asking) {
        return asking == null ? null : asking.file();
    }

    /** Takes what is proposed for one thing, or for all; a class that asked for all is shown with it. */
    @POST
    @Path("taken")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response take(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        ProjectFindings found = existing(id);
        Findings.Asking asking = asking(id, form.getFirst("class"));
        if (!isOf(found, asking, form) || !findings.take(found, asked(found.open(file(asking)), form), asking)) {
            return Pages.stale(page(existing(id), asking(id, form.getFirst("class")), true));
        }
        return Pages.seeOther(asking != null && form.getFirst("about") == null ? "/classes/" + asking.craftClass() : address(id, asking));
    }

    private static String address(long id, Findings.Asking asking) {
        return "/projects/%d/findings%s".formatted(id, asking == null ? "" : "?class=" + asking.craftClass());
    }

    /** Nothing of it is proposed again before there is new data. */
    @POST
    @Path("refused")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response refuse(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        ProjectFindings found = existing(id);
        Findings.Asking asking = asking(id, form.getFirst("class"));
        if (!isOf(found, asking, form)) {
            return Pages.stale(page(found, asking, true));
        }
        findings.refuse(found, asked(found.openAnywhere(), form));
        return Pages.seeOther(address(id, asking));
    }

    /** Whether the form was made of these proposals, for the project as it is. */
    private static boolean isOf(ProjectFindings found, Findings.Asking asking, MultivaluedMap<String, String> form) {
        return Pages.number(form.getFirst("version")).equals(Optional.of(found.version())) && found.fingerprint(file(asking)).equals(form.getFirst("fingerprint"));
    }

    private static List<Learned> asked(List<Learned> open, MultivaluedMap<String, String> form) {
        String about = form.getFirst("about");
        List<Learned> asked = open.stream().filter(l -> about == null || about.equals(l.key())).toList();
        if (asked.isEmpty()) {
            throw new NotFoundException();
        }
        return asked;
    }

    private TemplateInstance page(ProjectFindings found, Findings.Asking asking, boolean stale) {
        return Templates.show(new FindingsPage(found, asking, clock, stale));
    }

    private ProjectFindings existing(long id) {
        return findings.of(id).orElseThrow(NotFoundException::new);
    }
}
