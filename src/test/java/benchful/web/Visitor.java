package benchful.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jsoup.Connection;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;
import org.jsoup.parser.ParseError;
import org.jsoup.parser.Parser;

/**
 * Somebody at a browser without JavaScript: opens pages, fills forms as they stand on the page and presses their buttons.
 * Cookies are kept and redirects followed. Every page met must parse without an error and hold no identifier twice.
 */
public final class Visitor {
    private final URL start;
    private final Connection session = Jsoup.newSession().ignoreHttpErrors(true).ignoreContentType(true).maxBodySize(0).timeout(60_000);
    private final Map<String, String> typed = new LinkedHashMap<>();
    private final Map<String, Upload> picked = new LinkedHashMap<>();
    private Connection.Response answer;
    private Document page;

    private record Upload(String fileName, String mediaType, byte[] content) {}

    /** @param start the address of the running program */
    public Visitor(URL start) {
        this.start = Objects.requireNonNull(start);
    }

    public Visitor open(String path) {
        return take(session.newRequest(absolute(path)));
    }

    /** Types into a field of the next form sent; a null leaves the field out, as an unticked box does. */
    public Visitor type(String field, String value) {
        typed.put(field, value);
        return this;
    }

    public Visitor pick(String field, String fileName, String mediaType, byte[] content) {
        picked.put(field, new Upload(fileName, mediaType, content));
        return this;
    }

    /** @param words of a link on the page */
    public Visitor follow(String words) {
        return open(page.select("a").stream().filter(a -> a.text().equals(words)).findFirst()
                .orElseThrow(() -> new AssertionError("No link “%s” on %s".formatted(words, path()))).attr("href"));
    }

    /**
     * Presses a button of the page, which sends its form.
     *
     * @param words on the button
     */
    public Visitor press(String words) {
        Element button = page.select("button").stream().filter(b -> b.text().equals(words)).findFirst()
                .orElseThrow(() -> new AssertionError("No button “%s” on %s, but %s"
                        .formatted(words, path(), page.select("button").eachText())));
        return press(button);
    }

    public Visitor press(Element button) {
        FormElement form = (FormElement) (button.hasAttr("form") ? page.getElementById(button.attr("form")) : button.closest("form"));
        String action = button.hasAttr("formaction") ? button.absUrl("formaction") : form.absUrl("action");
        Connection request = session.newRequest(action.isEmpty() ? page.location() : action).method(Connection.Method.valueOf(
                form.attr("method").isEmpty() ? "GET" : form.attr("method").toUpperCase(java.util.Locale.ROOT)));
        if (form.attr("enctype").equals("multipart/form-data")) {
            request.header("Content-Type", "multipart/form-data");
        }
        fill(request, form);
        if (button.hasAttr("name")) {
            request.data(button.attr("name"), button.attr("value"));
        }
        return take(request);
    }

    private void fill(Connection request, FormElement form) {
        List<String> files = form.select("input[type=file]").eachAttr("name");
        form.formData().stream().filter(d -> !typed.containsKey(d.key()) && !files.contains(d.key()))
                .forEach(d -> request.data(d.key(), d.value()));
        page.select("select[form=\"%s\"]".formatted(form.id())).stream().filter(beside -> !typed.containsKey(beside.attr("name")))
                .forEach(beside -> request.data(beside.attr("name"), beside.select("option[selected]").text()));
        typed.forEach((field, value) -> {
            assertThat(form.select("[name=\"%s\"]".formatted(field)).isEmpty() ? page.select("[form=\"%s\"][name=\"%s\"]".formatted(form.id(), field)) : form.getAllElements()).as("the form has a field %s", field).isNotEmpty();
            if (value != null) {
                request.data(field, value);
            }
        });
        files.forEach(field -> upload(request, field, picked.getOrDefault(field, new Upload("", "application/octet-stream", new byte[0]))));
        typed.clear();
        picked.clear();
    }

    private static void upload(Connection request, String field, Upload file) {
        request.data(field, file.fileName(), new ByteArrayInputStream(file.content()), file.mediaType());
    }

    private Visitor take(Connection request) {
        try {
            answer = request.execute();
            page = isPage() ? parsed(answer) : null;
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Document parsed(Connection.Response answer) throws IOException {
        Parser parser = Parser.htmlParser().setTrackErrors(20);
        Document page = Jsoup.parse(answer.body(), answer.url().toString(), parser);
        assertThat(parser.getErrors()).extracting(ParseError::toString).as("HTML of %s", answer.url()).isEmpty();
        List<String> ids = page.select("[id]").eachAttr("id");
        assertThat(ids).as("identifiers of %s", answer.url()).doesNotHaveDuplicates();
        return page;
    }

    private boolean isPage() {
        return answer.contentType() != null && answer.contentType().startsWith("text/html");
    }

    public int status() {
        return answer.statusCode();
    }

    /** Of the page after redirects, without its query. */
    public String path() {
        return answer.url().getPath();
    }

    public Document page() {
        return page;
    }

    public Connection.Response answer() {
        return answer;
    }

    public byte[] bytes() {
        return answer.bodyAsBytes();
    }

    /** What stands in a field of the page. */
    public String field(String name) {
        Element field = page.selectFirst("[name=\"%s\"]".formatted(name));
        assertThat(field).as("field %s on %s, which has %s", name, path(), page.select("[name]").eachAttr("name")).isNotNull();
        return field.is("select") ? field.select("option[selected]").attr("value") : field.val();
    }

    /** The sentences under the page's fields and in its summary, in order. */
    public List<String> faults() {
        return page.select(".summary.faulty a, .summary.faulty li").eachText().stream().distinct().toList();
    }

    /** Says what the page's tables hold, row by row, cells parted by a bar. */
    public List<String> rows(String table) {
        return page.select(table + " tr").stream()
                .map(row -> String.join(" | ", row.select("th, td").eachText()))
                .toList();
    }

    private String absolute(String path) {
        return start.toString().replaceAll("/$", "") + path;
    }

    @Override
    public String toString() {
        return Arrays.asList(status(), path()) + "\n" + (page == null ? "" : page.text());
    }
}
