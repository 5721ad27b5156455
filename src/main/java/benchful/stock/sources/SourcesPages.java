package benchful.stock.sources;

import benchful.catalogue.Supplier;
import benchful.catalogue.suppliers.UsualCurrency;
import benchful.core.Fault;
import benchful.web.Pages;
import benchful.web.forms.FormTree;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecReader;
import benchful.web.forms.TypedPrices;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Takes where missing materials come from, and goes back to the page that missed them. */
@Path("/materials/sources")
@Produces(MediaType.TEXT_HTML)
class SourcesPages {
    private static final SpecReader<SourcesSpec> READER = new SpecReader<>(SourcesSpec.class, SourcesSpec::faults);
    private static final Pattern MISSES = Pattern.compile("/classes/\\d{1,18}|/batches/\\d{1,18}|/orders/new(?:\\?[\\w=&-]{0,2000})?");

    private final SourceBook book;
    private final SpecReader<SourcesSpec> reader;

    SourcesPages(SourceBook book, UsualCurrency usual) {
        this.book = book;
        this.reader = READER.pricedIn((sheet, place) -> TypedPrices.nearest(sheet, place, "seller").flatMap(Supplier::byName).map(Supplier::currency)
                .or(() -> TypedPrices.nearest(sheet, place, "currency")).or(() -> Optional.of(usual.code())));
    }

    @CheckedTemplate(basePath = "stock")
    static class Templates {
        static native TemplateInstance sources(Sources page);

        private Templates() {}
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response take(MultivaluedMap<String, String> form) {
        String back = back(form.getFirst("back"));
        SpecReader.Reading<SourcesSpec> reading = reader.tree(new FormTree(READER.schema()).of(form));
        List<Fault> faults = reading instanceof SpecReader.Read<SourcesSpec> read ? book.write(read.sheet()) : ((SpecReader.Faulty<SourcesSpec>) reading).faults();
        return faults.isEmpty() ? Pages.seeOther(back + "#buy")
                : Pages.faulty(Templates.sources(new Sources(SpecForm.faulty(reading.tree(), faults, 0), back)));
    }

    private static String back(String sent) {
        return sent != null && MISSES.matcher(sent).matches() ? sent : "/materials";
    }
}
