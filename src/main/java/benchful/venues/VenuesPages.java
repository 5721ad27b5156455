package benchful.venues;

import benchful.bin.EarlierVersions;
import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.catalogue.HazardNames;
import benchful.web.Paged;
import benchful.web.Pages;
import benchful.web.Sought;
import benchful.web.Trouble;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
import benchful.web.tasks.Tried;
import io.quarkus.qute.CheckedTemplate;
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
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;

/** The rooms classes are held in. */
@Path("/venues")
@Produces(MediaType.TEXT_HTML)
class VenuesPages {
    private static final SpecReader<VenueSpec> READER = new SpecReader<>(VenueSpec.class, sheet -> List.of());

    private final Removals removals;
    private final EarlierVersions earlier;
    private final ToolList tools;
    private final HazardNames hazards;

    VenuesPages(Removals removals, EarlierVersions earlier, ToolList tools, HazardNames hazards) {
        this.hazards = hazards;
        this.tools = tools;
        this.removals = removals;
        this.earlier = earlier;
    }

    @CheckedTemplate(basePath = "venues")
    static class Templates {
        static native TemplateInstance index(Paged<VenueCard> cards, List<Trouble> troubles);

        static native TemplateInstance show(VenueCard card, Map<String, String> hazards);

        static native TemplateInstance form(VenueForm page);

        static native TemplateInstance tools(List<ToolList.Row> tools);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index(UriInfo uri) {
        Paged<Venue> page = Venue.page(Sought.of(uri.getQueryParameters()));
        List<Tried<VenueCard>> all = page.rows().stream().map(VenuesPages::tried).toList();
        return Templates.index(page.with(Tried.worked(all)), Tried.troubles(all));
    }

    private static Tried<VenueCard> tried(Venue venue) {
        return Tried.of(() -> VenueCard.of(venue, List.of()), failure -> Trouble.of("The venue “%s”".formatted(venue.name()), List.of(), failure));
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
        return post(null).answer(ToolRows.asFields(form), new VenueTarget(null, hazards));
    }

    @GET
    @Path("tools")
    public TemplateInstance tools() {
        return Templates.tools(tools.rows());
    }

    @GET
    @Path("{id}")
    @Transactional
    public TemplateInstance show(@PathParam("id") long id) {
        Venue venue = Pages.existing(Venue.class, id);
        return Templates.show(VenueCard.of(venue, removals.uses(Venue.class, id, venue.name())), hazards.byId());
    }

    @GET
    @Path("{id}/edit")
    @Transactional
    public TemplateInstance edit(@PathParam("id") long id) {
        Venue venue = Pages.existing(Venue.class, id);
        return page(READER.form(venue.stored(), venue.version()), id);
    }

    @POST
    @Path("{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        return post(id).answer(ToolRows.asFields(form), new VenueTarget(Pages.toChange(Venue.class, id), hazards));
    }

    @POST
    @Path("{id}/earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@PathParam("id") long id, @PathParam("version") long version, MultivaluedMap<String, String> form) {
        EarlierVersions.Wanted wanted = earlier.wanted("venue", id, version, form);
        return post(id).putBack(wanted.version().sheet(), wanted.fresh(), new VenueTarget(Pages.toChange(Venue.class, id), hazards));
    }

    @POST
    @Path("{id}/removal")
    @Transactional
    public Response delete(@PathParam("id") long id) {
        Venue venue = Pages.toChange(Venue.class, id);
        return removals.removeUnused(Venue.class, id, new Thing("venue", venue.name(), "/venues/" + id), "/venues", venue::delete);
    }

    private SpecPost<VenueSpec> post(Long id) {
        return new SpecPost<>(READER, form -> page(form, id));
    }

    private TemplateInstance page(SpecForm form, Long id) {
        return Templates.form(new VenueForm(form, id, hazards.byId()));
    }
}
