package benchful.hazards;

import benchful.bin.EarlierVersions;
import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.web.Pages;
import benchful.web.Trouble;
import benchful.web.Uses;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
import benchful.web.forms.TextList;
import io.quarkus.qute.CheckedTemplate;
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

/** The hazard library: reading it, changing its texts, adding to it, and going back to what it said. */
@Path("/hazards")
@Produces(MediaType.TEXT_HTML)
class HazardsPages {
    private static final SpecReader<HazardSpec> READER = new SpecReader<>(HazardSpec.class, sheet -> List.of());

    private final HazardLibrary library;
    private final Removals removals;
    private final EarlierVersions earlier;

    HazardsPages(HazardLibrary library, Removals removals, EarlierVersions earlier) {
        this.library = library;
        this.removals = removals;
        this.earlier = earlier;
    }

    @CheckedTemplate(basePath = "hazards")
    static class Templates {
        static native TemplateInstance index(List<HazardCard> cards, List<Trouble> troubles);

        static native TemplateInstance show(HazardCard card);

        static native TemplateInstance form(HazardForm page);

        private Templates() {}
    }

    @GET
    public TemplateInstance index() {
        return Templates.index(library.all().stream().map(sheet -> HazardCard.of(sheet, List.of())).toList(), library.broken());
    }

    @GET
    @Path("new")
    public TemplateInstance fresh() {
        return page(SpecForm.of(SpecFormat.json().createObjectNode(), 0), null);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response create(MultivaluedMap<String, String> form) {
        return saved(form, null, null);
    }

    @GET
    @Path("signs/{code}.svg")
    @Produces("image/svg+xml")
    public String sign(@PathParam("code") String code) {
        return Signs.svg(code).orElseThrow(NotFoundException::new);
    }

    @GET
    @Path("{id}")
    public TemplateInstance show(@PathParam("id") String id) {
        HazardSpec sheet = existing(id);
        return Templates.show(HazardCard.of(sheet, uses(sheet)));
    }

    @GET
    @Path("{id}/edit")
    @Transactional
    public TemplateInstance edit(@PathParam("id") String id) {
        return page(Hazard.byId(id).map(own -> READER.form(own.stored(), own.version())).orElseGet(() -> SpecForm.of(READER.written(existing(id)), 0)), id);
    }

    @POST
    @Path("{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") String id, MultivaluedMap<String, String> form) {
        Hazard own = Hazard.toChange(id).orElse(null);
        return saved(form, own == null ? existing(id).id() : id, own);
    }

    @POST
    @Path("{id}/earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@PathParam("id") String id, @PathParam("version") long version, MultivaluedMap<String, String> form) {
        EarlierVersions.Wanted wanted = earlier.wanted("hazard", id, version, form);
        Hazard own = Hazard.toChange(id).orElseThrow(NotFoundException::new);
        return new SpecPost<>(READER, again -> page(again, id)).putBack(wanted.version().sheet(), wanted.fresh(), new HazardTarget(id, own));
    }

    /** Back to the library's text. */
    @POST
    @Path("{id}/library-text")
    @Transactional
    public Response restore(@PathParam("id") String id) {
        String page = "/hazards/" + existing(id).id();
        return Hazard.toChange(id).filter(h -> HazardLibrary.brought(id))
                .map(own -> removals.remove(new Thing("text of a hazard", own.toSpec().name(), page), page, own::delete))
                .orElseGet(() -> Pages.seeOther(page));
    }

    /** Only an entry of the tutor's own can go; the library's stay. */
    @POST
    @Path("{id}/removal")
    @Transactional
    public Response delete(@PathParam("id") String id) {
        Hazard own = Hazard.toChange(id).filter(h -> !HazardLibrary.brought(h.id())).orElseThrow(NotFoundException::new);
        return removals.removeUnused(Hazard.class, id, new Thing("hazard", own.readable().map(HazardSpec::name).orElse(id), "/hazards/" + id), "/hazards", own::delete);
    }

    private static Response saved(MultivaluedMap<String, String> form, String id, Hazard hazard) {
        SpecPost<HazardSpec> post = new SpecPost<>(READER, again -> page(again, id));
        return post.answer(TextList.asFields(form, HazardForm.LISTS), new HazardTarget(id, hazard));
    }

    private List<Uses.Use> uses(HazardSpec sheet) {
        return removals.uses(Hazard.class, sheet.id(), sheet.name());
    }

    private HazardSpec existing(String id) {
        return library.find(id).orElseThrow(NotFoundException::new);
    }

    private static TemplateInstance page(SpecForm form, String id) {
        return Templates.form(new HazardForm(form, id));
    }
}
