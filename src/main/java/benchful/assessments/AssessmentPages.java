package benchful.assessments;

import benchful.bin.EarlierVersions;
import benchful.classes.CraftClass;
import benchful.core.Fault;
import benchful.web.Pages;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateData;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
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
    private static final SpecReader<AssessmentSpec> READER = new SpecReader<>(AssessmentSpec.class, AssessmentPages::disorder);

    private final Assessments assessments;
    private final EarlierVersions earlier;

    AssessmentPages(Assessments assessments, EarlierVersions earlier) {
        this.assessments = assessments;
        this.earlier = earlier;
    }

    @CheckedTemplate(basePath = "assessments")
    static class Templates {
        static native TemplateInstance form(AssessmentPage page);

        private Templates() {}
    }

    /** What the page shows. */
    @TemplateData
    record AssessmentPage(CraftClass craftClass, SpecForm form, List<AssessmentPrint> printed) {
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
        CraftClass craftClass = Pages.existing(CraftClass.class, id);
        SpecForm form = Assessment.of(craftClass)
                .map(a -> SpecForm.of(READER.written(a.sheet()), a.version()))
                .orElseGet(() -> SpecForm.of(READER.written(assessments.draft(craftClass).sheet()), 0));
        return page(craftClass, form);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> typed) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        return post(craftClass).answer(typed, target(craftClass));
    }

    @POST
    @Path("earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@PathParam("id") long id, @PathParam("version") long version, MultivaluedMap<String, String> form) {
        CraftClass craftClass = Pages.toChange(CraftClass.class, id);
        EarlierVersions.Wanted wanted = earlier.wanted("assessment", id, version, form);
        return post(craftClass).putBack(wanted.version().sheet(), wanted.fresh(), target(craftClass));
    }

    private SpecPost<AssessmentSpec> post(CraftClass craftClass) {
        return new SpecPost<>(READER, form -> page(craftClass, form));
    }

    private AssessmentTarget target(CraftClass craftClass) {
        return new AssessmentTarget(craftClass, Assessment.of(craftClass).orElse(null), () -> assessments.draft(craftClass).sheet());
    }

    private static List<Fault> disorder(AssessmentSpec sheet) {
        try {
            sheet.bands();
            return List.of();
        } catch (IllegalArgumentException e) {
            return List.of(new Fault(sheet.highFrom() == null ? "/medium_from" : "/high_from", e.getMessage()));
        }
    }

    private TemplateInstance page(CraftClass craftClass, SpecForm form) {
        return Templates.form(new AssessmentPage(craftClass, form, assessments.printed(craftClass)));
    }
}
