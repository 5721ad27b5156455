package benchful.assessments;

import benchful.classes.CraftClass;
import benchful.core.Fault;
import benchful.web.FormTree;
import benchful.web.Pages;
import benchful.web.SheetForm;
import benchful.web.SheetReader;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
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
import java.util.List;

/** The risk assessment of a class: drafted, changed, signed. */
@Path("/classes/{id: \\d+}/assessment")
@Produces(MediaType.TEXT_HTML)
class AssessmentPages {
    private static final SheetReader<AssessmentSheet> READER = new SheetReader<>(AssessmentSheet.class, "assessment-1", AssessmentPages::disorder);

    private final Assessments assessments;

    AssessmentPages(Assessments assessments) {
        this.assessments = assessments;
    }

    @CheckedTemplate(basePath = "assessments")
    static class Templates {
        static native TemplateInstance form(AssessmentPage page);

        private Templates() {}
    }

    /** What the page shows. */
    @TemplateData
    record AssessmentPage(CraftClass craftClass, SheetForm form, List<AssessmentPrint> printed) {
        public boolean drafted() {
            return form.version() == 0;
        }

        public String documents() {
            return "/classes/" + craftClass.id() + "/documents";
        }
    }

    @GET
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        CraftClass craftClass = existing(id);
        SheetForm form = Assessment.of(craftClass)
                .map(a -> SheetForm.of(READER.written(a.sheet()), a.version()))
                .orElseGet(() -> SheetForm.of(READER.written(assessments.draft(craftClass).sheet()), 0));
        return page(craftClass, form);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> typed) {
        CraftClass craftClass = CraftClass.toChange(id).orElseThrow(NotFoundException::new);
        ObjectNode tree = new FormTree(READER.schema()).of(typed);
        long version = Pages.version(typed);
        if (FormTree.rearranged(typed, tree)) {
            return Pages.again(page(craftClass, SheetForm.of(tree, version)));
        }
        SheetReader.Reading<AssessmentSheet> reading = READER.tree(tree);
        if (reading instanceof SheetReader.Faulty<AssessmentSheet> f) {
            return Pages.faulty(page(craftClass, SheetForm.faulty(f.tree(), f.faults(), version)));
        }
        Assessment stored = Assessment.of(craftClass).orElse(null);
        if (stored != null && stored.version() != version) {
            return Pages.stale(page(craftClass, SheetForm.stale(reading.tree(), READER.written(stored.sheet()), stored.version())));
        }
        save(craftClass, stored, ((SheetReader.Read<AssessmentSheet>) reading).sheet());
        return Pages.seeOther("/classes/" + id + "/assessment");
    }

    private static void save(CraftClass craftClass, Assessment stored, AssessmentSheet sheet) {
        Assessment target = stored == null ? Assessment.of(craftClass, sheet) : stored;
        target.replace(sheet);
        target.persistAndFlush();
    }

    private static List<Fault> disorder(AssessmentSheet sheet) {
        try {
            sheet.bands();
            return List.of();
        } catch (IllegalArgumentException e) {
            return List.of(new Fault(sheet.highFrom() == null ? "/medium_from" : "/high_from", e.getMessage()));
        }
    }

    private TemplateInstance page(CraftClass craftClass, SheetForm form) {
        return Templates.form(new AssessmentPage(craftClass, form, assessments.printed(craftClass)));
    }

    private static CraftClass existing(long id) {
        return CraftClass.byId(id).orElseThrow(NotFoundException::new);
    }
}
