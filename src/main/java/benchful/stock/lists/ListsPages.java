package benchful.stock.lists;

import benchful.catalogue.CatalogueService;
import benchful.catalogue.Material;
import benchful.catalogue.Supplier;
import benchful.web.Pages;
import benchful.web.forms.SentForm;
import benchful.web.tables.Table;
import benchful.web.tables.TableFile;
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
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jboss.resteasy.reactive.server.multipart.MultipartFormDataInput;

/** Price lists and stock lists as files: out to be filled in or kept, in with a preview first. */
@Path("/materials/lists")
@Produces(MediaType.TEXT_HTML)
class ListsPages {
    private static final String XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private final ListImports imports;
    private final CatalogueService catalogue;

    ListsPages(ListImports imports, CatalogueService catalogue) {
        this.imports = imports;
        this.catalogue = catalogue;
    }

    @CheckedTemplate(basePath = "stock")
    static class Templates {
        static native TemplateInstance lists(ListForm form, List<String> suppliers, String fault);

        static native TemplateInstance preview(ListForm form, ImportPreview preview, String csv, boolean changed);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance show() {
        return page(ListForm.BLANK, null);
    }

    /** Reads a file and shows what it would change. */
    @POST
    @Path("previews")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response preview(MultipartFormDataInput input) {
        SentForm sent = SentForm.of(input);
        ListForm form = ListForm.of(sent.fields());
        if (sent.file("file").isEmpty()) {
            return faulty(form, "Choose a file first.");
        }
        try {
            return previewed(TableFile.read(sent.file("file").get().content()), form);
        } catch (TableFile.Unreadable e) {
            return faulty(form, e.getMessage());
        }
    }

    private Response previewed(Table table, ListForm form) {
        Optional<String> missing = imports.missing(table, form);
        if (missing.isPresent()) {
            return faulty(form, missing.get());
        }
        ImportPreview preview = imports.preview(table, form);
        TemplateInstance page = Templates.preview(form, preview, TableFile.csv(table), false);
        return preview.faulty().isEmpty() ? Pages.again(page) : Pages.faulty(page);
    }

    /** Imports what was previewed. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response create(MultivaluedMap<String, String> fields) {
        ListForm form = ListForm.of(fields);
        String csv = Objects.requireNonNullElse(fields.getFirst("csv"), "");
        try {
            Table table = TableFile.text(csv);
            Optional<String> missing = imports.missing(table, form);
            return missing.isPresent() ? faulty(form, missing.get()) : written(table, form, csv, fields.getFirst("seen"));
        } catch (TableFile.Unreadable e) {
            return faulty(form, e.getMessage());
        }
    }

    private Response written(Table table, ListForm form, String csv, String seen) {
        ImportPreview preview = imports.write(table, form, seen);
        return preview.ready() && preview.seen().equals(seen)
                ? Pages.seeOther("/materials")
                : Pages.stale(Templates.preview(form, preview, csv, true));
    }

    @GET
    @Path("{list}.{format}")
    @Transactional
    public Response file(@PathParam("list") String list, @PathParam("format") String format) {
        Table table = switch (list) {
            case "prices" -> PriceList.of(catalogue.own());
            case "stock" -> StockList.of(Material.all());
            default -> throw new NotFoundException();
        };
        return switch (format) {
            case "csv" -> download(list + ".csv", "text/csv;charset=UTF-8", TableFile.csv(table));
            case "xlsx" -> download(list + ".xlsx", XLSX, TableFile.xlsx(list, table));
            default -> throw new NotFoundException();
        };
    }

    private static Response download(String name, String type, Object content) {
        return Response.ok(content, type).header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"%s\"".formatted(name)).build();
    }

    private Response faulty(ListForm form, String sentence) {
        return Pages.faulty(page(form, sentence));
    }

    private static TemplateInstance page(ListForm form, String fault) {
        return Templates.lists(form, Supplier.all().stream().map(Supplier::name).toList(), fault);
    }
}
