package benchful.catalogue;

import benchful.bin.EarlierVersions;
import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.core.quantity.Quantity;
import benchful.web.Renamed;
import benchful.web.SheetForm;
import benchful.web.SheetFormat;
import benchful.web.SheetPost;
import benchful.web.SheetReader;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.inject.Instance;
import jakarta.transaction.Transactional;
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
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The list of materials, and writing them down. The page of one material shows its stock and stands with the stock. */
@Path("/materials")
@Produces(MediaType.TEXT_HTML)
class MaterialsPages {
    private static final SheetReader<MaterialSheet> READER = new SheetReader<>(MaterialSheet.class, "material-1", MaterialRules::faults);

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
        static native TemplateInstance index(List<MaterialRow> rows, String sought, boolean low);

        static native TemplateInstance form(MaterialForm page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index(@QueryParam("name") String name, @QueryParam("low") boolean low) {
        String sought = name == null ? "" : name.strip();
        List<MaterialRow> rows = Material.all().stream()
                .filter(m -> m.name().toLowerCase(Locale.ROOT).contains(sought.toLowerCase(Locale.ROOT)))
                .map(MaterialRow::of)
                .filter(r -> !low || r.low() || r.negative())
                .toList();
        return Templates.index(rows, sought, low);
    }

    @GET
    @Path("new")
    public TemplateInstance fresh() {
        return page(SheetForm.of(SheetFormat.json().createObjectNode().put("unit", "pcs"), 0), null);
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
        Material material = Material.byId(id).orElseThrow(NotFoundException::new);
        return page(SheetForm.of(READER.written(formSheet(material)), material.version()), id);
    }

    @POST
    @Path("{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        return post(id).answer(form, target(existing(id)));
    }

    @POST
    @Path("{id}/earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@PathParam("id") long id, @PathParam("version") long version, MultivaluedMap<String, String> form) {
        EarlierVersions.Wanted wanted = earlier.wanted("material", id, version, form);
        return post(id).putBack(wanted.version().sheet(), wanted.fresh(), target(existing(id)));
    }

    @POST
    @Path("{id}/removal")
    @Transactional
    public Response delete(@PathParam("id") long id) {
        Material material = existing(id);
        return removals.removeUnused(Material.class, id, new Thing("material", material.name(), "/materials/" + id), "/materials", material::delete);
    }

    /** What the form shows of a material: stock is not edited there. */
    static MaterialSheet formSheet(Material material) {
        return material.toSheet(Quantity.zero(material.unit()));
    }

    private SheetPost<MaterialSheet> post(Long id) {
        return new SheetPost<>(READER, form -> page(form, id));
    }

    private MaterialTarget target(Material material) {
        return new MaterialTarget(material, rules, renames, LocalDate.now(clock));
    }

    private TemplateInstance page(SheetForm form, Long id) {
        Map<String, String> names = hazards.isResolvable() ? hazards.get().byId() : Map.of();
        return Templates.form(new MaterialForm(form, id, Supplier.all().stream().map(Supplier::name).toList(), names));
    }

    private static Material existing(long id) {
        return Material.toChange(id).orElseThrow(NotFoundException::new);
    }
}
