package benchful.studio;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.SampleData;
import benchful.documents.PrintOut;
import benchful.hazards.HazardSpec;
import benchful.hazards.LibraryFile;
import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Follows every link of a studio that writes as Americans do, and prints everything of its classes. */
@QuarkusTest
class AmericanWritingTest {
    private static final String BRITISH_STEM = "\\p{L}*(?:colour|jewell|grey|centre|metre|litre|mould|labell|licence|catalogue|judgement|practis|cheque|alumini|fibre|sulph|neighbour|vapour|draught"
            + "|favour|behaviour|odour|honour|organis|recognis|cancelled|cancelling|sensitis|neutralis|pressuris|oxidis|minimis|towards|tyre|programme)\\p{L}*|VAT";
    private static final String MONTH = "(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Sept|Oct|Nov|Dec)";

    /** A 24-hour clock, a day before its month, or a British word, each with what stands beside it. */
    private static final Pattern FOREIGN = Pattern.compile("(?:\\S+ )?\\b(?:(?:[01]?\\d|2[0-3]):[0-5]\\d\\b(?![\u00a0 ][AP]M)|\\d{1,2} " + MONTH + "\\b|(?<![-\\p{L}])(?i:" + BRITISH_STEM + "))\\S*(?: \\S+)?");

    @TestHTTPResource("/") URL start;

    @Inject SampleData data;

    private Visitor tutor;
    private String typed;

    @BeforeEach
    void readsWhatOthersWrote() throws IOException {
        data.onlySamples();
        tutor = new Visitor(start);
        try (Stream<Path> files = Files.walk(Path.of("sample-classes"))) {
            typed = files.filter(f -> f.toString().matches(".*\\.(yaml|json|svg)")).map(AmericanWritingTest::text).collect(Collectors.joining("\n"));
        }
        typed = plain(typed + LibraryFile.byId().values().stream().map(AmericanWritingTest::official).collect(Collectors.joining("\n")));
    }

    @AfterEach
    void writesAsBefore() {
        write("");
    }

    @Test
    void leavesNoBritishWritingOnAnyPage() {
        write("american");
        List<String> foreign = new ArrayList<>();
        Set<String> kinds = new HashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of("/", "/projects/new", "/classes/new?project=1"));
        while (!open.isEmpty()) {
            String path = open.poll();
            if (kinds.add(path.replaceAll("\\?.*", "").replaceAll("\\d+", "N"))) {
                Document page = tutor.open(path).page();
                if (page == null) {
                    continue;
                }
                assertThat(page.select("html").attr("lang")).as(path).isEqualTo("en-US");
                foreign(shown(page)).forEach(found -> foreign.add(path + ": " + found));
                page.select("a[href^=/]").eachAttr("href").stream().filter(link -> !link.matches(".*\\.(pdf|zip|yaml|json|csv|xlsx|svg|png|webp)\\b.*|/(studio|licences|api|stop)\\b.*")).forEach(open::add);
            }
        }
        assertThat(kinds).contains("/", "/classes/N", "/classes/N/documents", "/classes/N/review", "/orders/new", "/materials/lists", "/words", "/hazards/solvent-vapour");
        assertThat(foreign).isEmpty();
    }

    @Test
    void leavesNoBritishWritingOnAnyPrintOut() throws IOException {
        write("american");
        List<String> foreign = new ArrayList<>();
        for (String title : List.of("Knotted strand, Saturday", "Pamphlet notebook")) {
            String page = "/classes/" + data.classTitled(title) + "/documents/";
            for (PrintOut what : PrintOut.values()) {
                foreign(printed(page + what.slug() + ".pdf?paper=letter")).forEach(found -> foreign.add(what + ": " + found));
            }
        }
        assertThat(foreign).isEmpty();
    }

    /** Nothing is kept of the other writing. */
    @Test
    void writesAsBeforeOnceItIsPutBack() throws IOException {
        String page = "/classes/" + data.classTitled("Knotted strand, Saturday");
        List<String> before = read(page);
        write("american");
        List<String> american = read(page);
        write("");
        assertThat(read(page)).isEqualTo(before);
        for (int i = 0; i < before.size(); i++) {
            assertThat(american.get(i)).isNotEqualTo(before.get(i));
        }
        assertThat(american.get(0)).contains("Sat, Mar 6, 2027", "12:30 PM to 6:00 PM");
    }

    /** Files and programs are told the same in any writing. */
    @Test
    void changesNothingThatProgramsRead() {
        List<String> before = exchanged();
        write("american");
        assertThat(exchanged()).isEqualTo(before);
    }

    private List<String> exchanged() {
        String page = "/classes/" + data.classTitled("Pamphlet notebook");
        String file = RestAssured.get(start + page.substring(1) + "/file").asString();
        String plan = RestAssured.given().contentType("application/json").body(file).post(start + "api/plan?suggestions=true").asString();
        assertThat(plan).contains("\"lesson\"", "\"suggestions\"");
        return List.of(file, plan, RestAssured.get(start + "materials/lists/prices.csv").asString());
    }

    private List<String> read(String page) throws IOException {
        return List.of(tutor.open(page).page().text(), printed(page + "/documents/checklist.pdf?paper=a4"), tutor.open("/hazards/solvent-vapour").page().text());
    }

    private void write(String writing) {
        tutor.open("/studio").type("/writing", writing).press("Save");
    }

    private String printed(String path) throws IOException {
        try (PDDocument file = Loader.loadPDF(tutor.open(path).bytes())) {
            return new PDFTextStripper().getText(file);
        }
    }

    /** What a page says by itself, without what fills its fields. */
    private static String shown(Document page) {
        Document own = page.clone();
        own.select("textarea, option, datalist, script, style, code, pre, input").forEach(Element::remove);
        return own.text();
    }

    /** The variants and choices of the samples, which the program puts together, are left out. */
    private List<String> foreign(String text) {
        return FOREIGN.matcher(text.replaceAll("[ \\r\\n\\t]+", " ").replaceAll("(?:bead )?silk 0[.]6\\smm, grey|0[.]6\u00a0mm, grey|(?:another|choose|of|[^ ]+:) colour\\b", "")).results().map(found -> found.group()).filter(words -> !isTyped(words)).distinct().toList();
    }

    /** Whether somebody wrote it so: it stands in the samples beside the same word before it, or after it. */
    private boolean isTyped(String words) {
        String[] all = plain(words).split(" ");
        for (int i = 0; i + 1 < all.length; i++) {
            if (typed.contains(all[i] + " " + all[i + 1])) {
                return true;
            }
        }
        return all.length == 1 && typed.contains(all[0]);
    }

    private static String plain(String text) {
        return text.replaceAll("[\\s*_\\\\\"'“”’#>:;,.()-]+", " ").strip();
    }

    /** Statements of labels, and titles of sources. */
    private static String official(HazardSpec hazard) {
        return Stream.of(hazard.ghs().stream().map(HazardSpec.Statement::text), hazard.precautions().stream().map(HazardSpec.Statement::text),
                hazard.signs().stream().map(HazardSpec.Sign::name), hazard.sources().stream()).flatMap(texts -> texts).collect(Collectors.joining("\n", "\n", ""));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
