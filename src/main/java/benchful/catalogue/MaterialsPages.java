package benchful.catalogue;

import benchful.bin.EarlierVersions;
import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.core.quantity.Quantity;
import benchful.web.Paged;
import benchful.web.Pages;
import benchful.web.Renamed;
import benchful.web.Sought;
import benchful.web.Trouble;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
import benchful.web.forms.TypedPrices;
import benchful.web.tasks.Tried;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** The list of materials, and writing them down. The page of one material shows its stock and stands with the stock. */
@Path("/materials")
@Produces(MediaType.TEXT_HTML)
public class MaterialsPages {
    private static final SpecReader<MaterialSpec> READER = new SpecReader<>(MaterialSpec.class, MaterialRules::faults)
            .pricedIn((sheet, place) -> TypedPrices.nearest(sheet, place, "supplier").flatMap(Supplier::byName).map(Supplier::currency));

    private final CatalogueRules rules;
    private final Instance<HazardNames> hazards;
    private final Removals removals;
    private final EarlierVersions earlier;
    private final Event<Renamed> renames;
    private final Clock clock;

    MaterialsPages(CatalogueRules rules, Instance<HazardNames> hazards, Removals removals, EarlierVersions earlier, Event<Renamed> renames, Clock clock) {
        this.rules = rules;
        this.hazards = hazards;
        this.removals = removals;
        this.earlier = earlier;
        this.renames = renames;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "catalogue")
    static class Templates {
        static native TemplateInstance index(Paged<MaterialRow> list, List<Trouble> troubles, boolean low);

        static native TemplateInstance form(MaterialForm page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index(@QueryParam("low") boolean low, UriInfo uri) {
        Sought sought = Sought.of(uri.getQueryParameters());
        Paged<Material> page = low ? Material.lowPage(sought) : Material.page(sought);
        List<Tried<MaterialRow>> rows = page.rows().stream().map(MaterialsPages::tried).toList();
        return Templates.index(page.with(Tried.worked(rows)), Tried.troubles(rows), low);
    }

    private static Tried<MaterialRow> tried(Material material) {
        Trouble.Mend mend = new Trouble.Mend("Change the material", "/materials/%d/edit".formatted(material.id()));
        return Tried.of(() -> MaterialRow.of(material), failure -> Trouble.of("The material “%s”".formatted(material.name()), List.of(mend), failure));
    }

    @GET
    @Path("new")
    public TemplateInstance fresh() {
        return page(SpecForm.of(SpecFormat.json().createObjectNode().put("unit", "pcs"), 0), null);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response create(MultivaluedMap<String, String> form) {
        return post(null).answer(form, target(null));
    }

    @GET
    @Path("{id}/edit")
    @Transactional
    public TemplateInstance edit(@PathParam("id") long id) {
        Material material = Pages.existing(Material.class, id);
        return page(form(material), id);
    }

    @POST
    @Path("{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        return post(id).answer(form, target(Pages.toChange(Material.class, id)));
    }

    @POST
    @Path("{id}/earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@PathParam("id") long id, @PathParam("version") long version, MultivaluedMap<String, String> form) {
        EarlierVersions.Wanted wanted = earlier.wanted("material", id, version, form);
        return post(id).putBack(wanted.version().sheet(), wanted.fresh(), target(Pages.toChange(Material.class, id)));
    }

    @POST
    @Path("{id}/removal")
    @Transactional
    public Response delete(@PathParam("id") long id) {
        Material material = Pages.toChange(Material.class, id);
        return removals.removeUnused(Material.class, id, new Thing("material", material.name(), "/materials/" + id), "/materials", material::delete);
    }

    /** Amounts are shown as they are written; where one can't be read its field says so. */
    private SpecForm form(Material material) {
        ObjectNode tree = (ObjectNode) READER.written(material.withoutAmounts());
        material.amounts().forEach((pointer, amount) -> put(tree, pointer, amount.text()));
        return READER.tree(tree) instanceof SpecReader.Read<MaterialSpec> read ? SpecForm.faulty(tree, rules.unknownHazards(read.sheet()), material.version())
                : READER.mending(tree, material.version());
    }

    private static void put(ObjectNode tree, String pointer, String text) {
        JsonPointer place = JsonPointer.compile(pointer);
        tree.withObject(place.head()).put(place.last().getMatchingProperty(), text);
    }

    /** What the form shows of a material: stock is not edited there. */
    public static MaterialSpec formSheet(Material material) {
        return material.own(Quantity.zero(material.unit()));
    }

    private SpecPost<MaterialSpec> post(Long id) {
        return new SpecPost<>(READER, form -> page(form, id));
    }

    private MaterialTarget target(Material material) {
        return new MaterialTarget(material, rules, renames, LocalDate.now(clock));
    }

    private TemplateInstance page(SpecForm form, Long id) {
        Map<String, String> names = hazards.isResolvable() ? hazards.get().byId() : Map.of();
        return Templates.form(new MaterialForm(form, id, Supplier.all().stream().map(Supplier::name).toList(), names));
    }
}
