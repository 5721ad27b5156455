package benchful.documents;

import benchful.assessments.AssessmentPrint;
import benchful.assessments.Assessments;
import benchful.classes.ClassFile;
import benchful.classes.CraftClass;
import benchful.core.Fault;
import benchful.core.Progress;
import benchful.documents.paper.LabelKind;
import benchful.documents.paper.LabelStock;
import benchful.documents.paper.PrintOptions;
import benchful.documents.paper.Version;
import benchful.documents.parts.HazardNotes;
import benchful.documents.parts.PrintSource;
import benchful.hazards.HazardLibrary;
import benchful.plans.Advice;
import benchful.plans.PlanParts;
import benchful.plans.stored.PlanService;
import benchful.projects.pictures.Picture;
import benchful.reviews.EarlierNotes;
import benchful.studio.Paper;
import benchful.studio.Studio;
import benchful.web.Formats;
import benchful.web.Pages;
import benchful.web.door.Costly;
import benchful.web.phones.PhoneAddress;
import benchful.web.tasks.BackgroundTask;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import jakarta.ws.rs.core.UriInfo;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** What can be printed for a class, how it is wanted, and the print-outs themselves. */
@Path("/classes/{id: \\d+}/documents")
class DocumentsPages {
    /** So many parts are typeset while the browser waits; more take a page that shows how far they are. */
    private static final int AT_A_GO = 6;
    private static final Duration AT_ONCE = Duration.ofMillis(1500);

    private final DocumentService documents;
    private final PlanService plans;
    private final HazardLibrary hazards;
    private final Assessments assessments;
    private final PrintJobs jobs;
    private final EarlierNotes notes;
    private final PhoneAddress phones;

    DocumentsPages(DocumentService documents, PlanService plans, HazardLibrary hazards, Assessments assessments, PrintJobs jobs, EarlierNotes notes, PhoneAddress phones) {
        this.documents = documents;
        this.plans = plans;
        this.hazards = hazards;
        this.assessments = assessments;
        this.jobs = jobs;
        this.notes = notes;
        this.phones = phones;
    }

    @CheckedTemplate(basePath = "documents")
    static class Templates {
        static native TemplateInstance index(DocumentsPage page);

        static native TemplateInstance progress(ProgressPage page);

        private Templates() {}
    }

    /**
     * What the page shows.
     *
     * @param unplanned true where the steps contradict each other, so that nothing with times can be printed
     * @param safety what should be settled before anything is printed
     * @param unreachable true where phones can't open the address that codes would carry
     */
    @TemplateData
    public record DocumentsPage(CraftClass craftClass, PrintForm form, boolean unplanned, List<Advice> safety, boolean unreachable) {
        public List<PrintOut> printOuts() {
            return List.of(PrintOut.values());
        }

        public List<Paper> papers() {
            return List.of(Paper.values());
        }

        public List<Version> versions() {
            return List.of(Version.values());
        }

        public List<LabelKind> kinds() {
            return List.of(LabelKind.values());
        }

        public List<LabelStock> sheets() {
            return LabelStock.COMMON;
        }
    }

    /** What the page shows while many parts are typeset. */
    @TemplateData
    public record ProgressPage(CraftClass craftClass, Wanted what, BackgroundTask<PrintedFile> task) {
        public String back() {
            return "/classes/%d/documents".formatted(craftClass.id());
        }

        public String stop() {
            return "/classes/%d/documents/%s/cancellation".formatted(craftClass.id(), what.slug());
        }
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    public TemplateInstance index(@PathParam("id") long id, UriInfo uri) {
        return plans.before(id, file -> plans.parts(file).advice(), () -> page(Pages.existing(CraftClass.class, id), PrintForm.of(uri.getQueryParameters(), address(uri), Studio.current())));
    }

    /** Gives up a long print-out that is under way. */
    @POST
    @Path("{name: [a-z]+}/cancellation")
    @Transactional
    public Response stop(@PathParam("id") long id, @PathParam("name") String name) {
        jobs.stop(Pages.existing(CraftClass.class, id), Wanted.of(name).orElseThrow(NotFoundException::new));
        return Pages.seeOther("/classes/" + id + "/documents");
    }

    @GET
    @Costly
    @Path("{name: [a-z]+}.pdf")
    @Produces({"application/pdf", MediaType.TEXT_HTML})
    public Response show(@PathParam("id") long id, @PathParam("name") String name, UriInfo uri) {
        Wanted what = Wanted.of(name).orElseThrow(NotFoundException::new);
        return plans.before(id, file -> what.prepare(plans.parts(file)), () -> printed(id, what, uri)).get();
    }

    /** What is waited for is waited for after the transaction. */
    private Supplier<Response> printed(long id, Wanted what, UriInfo uri) {
        CraftClass craftClass = Pages.existing(CraftClass.class, id);
        PrintForm form = PrintForm.of(uri.getQueryParameters(), address(uri), Studio.current());
        OptionsReader reader = new OptionsReader(form, Studio.current());
        PrintOptions options = reader.read("/classes/" + id + "/documents");
        PrintSource source = source(craftClass, what.holds(PrintOut.ASSESSMENT) ? assessment(craftClass, form.value("kept")) : null);
        List<Fault> faults = what.needsLesson() && source.lesson() == null
                ? List.of(new Fault("", "Nothing with times can be printed until the plan's contradictions are mended.")) : reader.faults();
        if (!faults.isEmpty()) {
            TemplateInstance again = page(craftClass, form.with(faults));
            return () -> Pages.faulty(again);
        }
        if (what.needsLesson()) {
            plans.keep(craftClass, source.file(), "printed");
        }
        if (form.value("kit").isEmpty() && documents.parts(what, source, options).size() > AT_A_GO) {
            return () -> awaited(craftClass, what, jobs.of(craftClass, what, source, options));
        }
        StreamingOutput pages = pages(what, source, options, form);
        return () -> pdf(what, id, pages);
    }

    /** The file once it is finished; until then how far it is, on a page that asks again. */
    private static Response awaited(CraftClass craftClass, Wanted what, BackgroundTask<PrintedFile> task) {
        return task.result(AT_ONCE).map(printed -> pdf(what, craftClass.id(), printed::copyTo))
                .orElseGet(() -> Response.ok(Templates.progress(new ProgressPage(craftClass, what, task)), MediaType.TEXT_HTML_TYPE).build());
    }

    private StreamingOutput pages(Wanted what, PrintSource source, PrintOptions options, PrintForm form) {
        String kit = form.value("kit");
        if (kit.isEmpty() || what.isAll() || !what.holds(PrintOut.HANDOUT)) {
            return out -> documents.write(what, source, options, out, Progress.NONE);
        }
        int number = kit.matches("\\d{1,4}") ? Integer.parseInt(kit) : 0;
        if (source.needs().kits().stream().noneMatch(k -> k.number() == number)) {
            throw new NotFoundException();
        }
        return out -> documents.writeHandout(source, options, number, out);
    }

    private static Response pdf(Wanted what, long id, StreamingOutput pages) {
        return Response.ok(pages, "application/pdf")
                .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"class-%d-%s.pdf\"".formatted(id, what.slug()))
                .build();
    }

    private TemplateInstance page(CraftClass craftClass, PrintForm form) {
        PlanParts plan = plans.parts(plans.file(craftClass));
        List<Advice> safety = plan.advice().stream().filter(Advice::isSafety).toList();
        return Templates.index(new DocumentsPage(craftClass, form, plan.timing().lesson() == null, safety, PhoneAddress.isOwnMachine(form.value("address"))));
    }

    private PrintSource source(CraftClass craftClass, AssessmentPrint assessment) {
        ClassFile file = plans.file(craftClass);
        List<Picture> pictures = craftClass.project().toFullSheet().pictures();
        return new PrintSource(file, plans.parts(file), pictures.stream().filter(picture -> picture.content().length > 0).collect(Collectors.toMap(Picture::name, picture -> picture)),
                HazardNotes.of(hazards.all()), assessment).of(Studio.current(), Studio.sign()).withNotes(notes(craftClass));
    }

    private List<String> notes(CraftClass craftClass) {
        return notes.of(craftClass.project().id()).stream().filter(n -> n.craftClass() != craftClass.id())
                .map(n -> "%s: %s".formatted(Formats.words(n.day()), n.words())).toList();
    }

    /** @param kept id of a version that was printed before; empty for what is saved now */
    private AssessmentPrint assessment(CraftClass craftClass, String kept) {
        return kept.isEmpty() ? assessments.print(craftClass)
                : assessments.printed(craftClass).stream().filter(print -> kept.equals(String.valueOf(print.id()))).findFirst().orElseThrow(NotFoundException::new);
    }

    /** Where phones reach the program; empty where only this machine does. */
    private String address(UriInfo uri) {
        return phones.of(uri.getBaseUri()).orElse("");
    }
}
