package benchful.catalogue.suppliers;

import benchful.bin.EarlierVersions;
import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.catalogue.CatalogueRules;
import benchful.catalogue.Supplier;
import benchful.catalogue.SupplierOffer;
import benchful.catalogue.SupplierRules;
import benchful.catalogue.SupplierSpec;
import benchful.web.Paged;
import benchful.web.Pages;
import benchful.web.Sought;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecFormat;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
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
import java.util.Map;

/** The list of those who sell materials, with their terms, and writing them down. */
@Path("/suppliers")
@Produces(MediaType.TEXT_HTML)
class SuppliersPages {
    private static final SpecReader<SupplierSpec> READER = new SpecReader<>(SupplierSpec.class, SupplierRules::faults);

    private final CatalogueRules rules;
    private final Removals removals;
    private final EarlierVersions earlier;
    private final UsualCurrency currency;

    SuppliersPages(CatalogueRules rules, Removals removals, EarlierVersions earlier, UsualCurrency currency) {
        this.rules = rules;
        this.removals = removals;
        this.earlier = earlier;
        this.currency = currency;
    }

    @CheckedTemplate(basePath = "suppliers")
    static class Templates {
        static native TemplateInstance index(Paged<SupplierRow> list);

        static native TemplateInstance form(SpecForm form, Long id);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index(UriInfo uri) {
        Paged<Supplier> page = Supplier.page(Sought.of(uri.getQueryParameters()));
        Map<Long, Long> offers = SupplierOffer.counts(page.rows());
        return Templates.index(page.shown(s -> SupplierRow.of(s, offers.getOrDefault(s.id(), 0L))));
    }

    @GET
    @Path("new")
    @Transactional
    public TemplateInstance fresh() {
        return Templates.form(SpecForm.of(SpecFormat.json().createObjectNode().put("currency", currency.code()), 0), null);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response create(MultivaluedMap<String, String> form) {
        return post(null).answer(form, new SupplierTarget(null, rules));
    }

    @GET
    @Path("{id}/edit")
    @Transactional
    public TemplateInstance edit(@PathParam("id") long id) {
        Supplier supplier = Pages.toChange(Supplier.class, id);
        return Templates.form(SpecForm.of(READER.written(supplier.toSpec()), supplier.version()), id);
    }

    @POST
    @Path("{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        return post(id).answer(form, new SupplierTarget(Pages.toChange(Supplier.class, id), rules));
    }

    @POST
    @Path("{id}/earlier/{version: \\d+}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response putBack(@PathParam("id") long id, @PathParam("version") long version, MultivaluedMap<String, String> form) {
        EarlierVersions.Wanted wanted = earlier.wanted("supplier", id, version, form);
        return post(id).putBack(wanted.version().sheet(), wanted.fresh(), new SupplierTarget(Pages.toChange(Supplier.class, id), rules));
    }

    @POST
    @Path("{id}/removal")
    @Transactional
    public Response delete(@PathParam("id") long id) {
        Supplier supplier = Pages.toChange(Supplier.class, id);
        return removals.removeUnused(Supplier.class, id, new Thing("supplier", supplier.name(), "/suppliers/" + id + "/edit"), "/suppliers", supplier::delete);
    }

    private static SpecPost<SupplierSpec> post(Long id) {
        return new SpecPost<>(READER, form -> Templates.form(form, id));
    }
}
