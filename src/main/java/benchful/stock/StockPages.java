package benchful.stock;

import benchful.bin.Removals;
import benchful.bin.Thing;
import benchful.catalogue.Material;
import benchful.core.Fault;
import benchful.core.quantity.Quantity;
import benchful.web.Paged;
import benchful.web.Pages;
import benchful.web.Sought;
import benchful.web.forms.FormTree;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecFormat;
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
import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;

/** The page of a material as it lies on the shelf, and writing down what came and went. */
@Path("/materials")
@Produces(MediaType.TEXT_HTML)
class StockPages {
    private final StockLedger ledger;
    private final Offcuts offcuts;
    private final Removals removals;
    private final Clock clock;

    StockPages(StockLedger ledger, Offcuts offcuts, Removals removals, Clock clock) {
        this.ledger = ledger;
        this.offcuts = offcuts;
        this.removals = removals;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "stock")
    static class Templates {
        static native TemplateInstance show(StockCard card);

        private Templates() {}
    }

    @GET
    @Path("{id}")
    @Transactional
    public TemplateInstance show(@PathParam("id") long id, UriInfo uri) {
        return page(Pages.existing(Material.class, id), empty(), VariantLines.NONE, Sought.of(uri.getQueryParameters()));
    }

    @POST
    @Path("{id}/movements")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response move(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        Material material = Pages.existing(Material.class, id);
        SpecReader<MovementSpec> reader = reader(material);
        SpecReader.Reading<MovementSpec> reading = reader.tree(new FormTree(reader.schema()).of(form));
        if (reading instanceof SpecReader.Read<MovementSpec> read) {
            write(id, read.sheet().amount().sized(material.unit()), read.sheet());
            return Pages.seeOther("/materials/" + id + "#stock");
        }
        List<Fault> faults = ((SpecReader.Faulty<MovementSpec>) reading).faults();
        return Pages.faulty(page(material, SpecForm.faulty(reading.tree(), faults, 0), VariantLines.NONE, new Sought("", 1)));
    }

    @POST
    @Path("{id}/offcuts/{offcut}/removal")
    @Transactional
    public Response forget(@PathParam("id") long id, @PathParam("offcut") long offcut) {
        Material material = Pages.existing(Material.class, id);
        return removals.remove(new Thing("offcut", "An offcut of " + material.name(), "/materials/" + id + "#stock"), "/materials/" + id + "#stock",
                () -> offcuts.forget(id, offcut));
    }

    /** Writes down variants, a line each; those that are there stay as they are. */
    @POST
    @Path("{id}/variants")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response addVariants(@PathParam("id") long id, MultivaluedMap<String, String> form) {
        Material material = Pages.toChange(Material.class, id);
        VariantLines lines = VariantLines.of(form.getFirst("/words"), material);
        if (!lines.faults().isEmpty()) {
            return Pages.faulty(page(material, empty(), lines, new Sought("", 1)));
        }
        lines.words().forEach(word -> material.variant(word, LocalDate.now(clock)));
        return Pages.seeOther("/materials/" + id + "#variants");
    }

    private void write(long id, Quantity amount, MovementSpec sheet) {
        if (sheet.kind() == MovementKind.COUNTED) {
            ledger.count(id, amount, Cause.note(sheet.note()));
        } else {
            ledger.move(id, sheet.kind(), amount, Cause.note(sheet.note()));
        }
    }

    private TemplateInstance page(Material material, SpecForm form, VariantLines variants, Sought sought) {
        Balance balance = ledger.balance(material.id());
        Paged<StockMovement> page = StockMovement.latest(material, sought);
        BigDecimal since = page.rows().stream().findFirst().map(StockMovement::changedSince).orElse(BigDecimal.ZERO);
        Paged<MovementRow> rows = page.with(MovementRow.of(page.rows(), balance.onHand().in(material.held()).amount().subtract(since), clock.getZone()));
        return Templates.show(StockCard.of(
                material, balance, removals.uses(Material.class, material.id(), material.name()), rows, offcuts.lying(material), form, variants.form(), LocalDate.now(clock)));
    }

    private static SpecForm empty() {
        return SpecForm.of(SpecFormat.json().createObjectNode(), 0);
    }

    private static SpecReader<MovementSpec> reader(Material material) {
        return new SpecReader<>(MovementSpec.class, sheet -> sheet.faults(material.unit()));
    }
}
