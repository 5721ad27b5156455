package benchful;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Goods are counted as people handle them, on every page and print-out: nobody buys or lays out square centimetres. */
@QuarkusTest
class WaysToCountTest {
    private static final List<String> PRINTED = List.of("handout", "labels", "checklist", "packing", "shopping", "cutting", "review", "plan", "register");

    @TestHTTPResource("/") URL start;

    @Inject SampleData data;

    private Visitor tutor;

    @BeforeEach
    void begins() {
        data.onlySamples();
        tutor = new Visitor(start);
    }

    @ParameterizedTest
    @ValueSource(strings = {"First metal", "Saddle-stitched"})
    void saysNowhereCm2WhereAMaterialComesInSheets(String title) throws IOException {
        String page = "/classes/" + data.classTitled(title);
        List<String> said = new ArrayList<>();
        for (String path : List.of(page, page + "/reservation", page + "/packing", page + "/cutting", page + "/documents", page + "/review", "/materials", "/materials?page=2",
                "/materials/lists", "/orders/new?class=" + page.substring(page.lastIndexOf('/') + 1))) {
            told(path, said);
        }
        for (String link : new Visitor(start).open(page + "/reservation").page().select("th a[href^=/materials/]").eachAttr("href")) {
            told(link, said);
            told(link + "/edit", said);
        }
        for (String what : PRINTED) {
            printed("%s/documents/%s.pdf".formatted(page, what), said);
        }
        tutor.open("/orders/new?class=" + page.substring(page.lastIndexOf('/') + 1)).press("Write these orders");
        for (String order : new Visitor(start).open("/orders").page().select("main a[href^=/orders/]").eachAttr("href").stream().filter(o -> o.matches("/orders/\\d+")).distinct().toList()) {
            told(order, said);
            printed(order + "/order.pdf", said);
            said.addAll(where(order + "/order.csv", new String(tutor.open(order + "/order.csv").bytes(), StandardCharsets.UTF_8)));
        }
        assertThat(said).isEmpty();
    }

    private void told(String path, List<String> said) {
        tutor.open(path);
        assertThat(tutor.status()).as(path).isEqualTo(200);
        said.addAll(where(path, tutor.page().text() + " " + tutor.page().select("input[value]:not([type=hidden])").eachAttr("value") + tutor.page().select("textarea").eachText()));
    }

    private void printed(String path, List<String> said) throws IOException {
        try (PDDocument read = Loader.loadPDF(tutor.open(path).bytes())) {
            said.addAll(where(path, new PDFTextStripper().getText(read)));
        }
    }

    /** With some words around it. */
    private static List<String> where(String path, String text) {
        List<String> found = new ArrayList<>();
        for (String unit : List.of("cm2", "cm²", "mm2", "mm²")) {
            for (int at = text.indexOf(unit); at >= 0; at = text.indexOf(unit, at + 1)) {
                found.add("%s: …%s…".formatted(path, text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 20)).replaceAll("\\s+", " ")));
            }
        }
        return found;
    }

    @Test
    void takesAPackOfSheetsAsItIsSaidAndCountsInSheetsFromThenOn() {
        tutor.open("/materials/new").type("/name", "cover card 300 g").type("/unit", "sheets 70 x 50 cm").type("/minimum", "3 sheets")
                .type("/offers/0/supplier", "Gannet Row Stores").type("/offers/0/holds", "10 sheets").type("/offers/0/price", "8.40").press("Save");
        assertThat(tutor.status()).as(tutor.page().text()).isEqualTo(200);
        assertThat(tutor.page().text()).contains("3 sheets 70 × 50 cm", "10 sheets 70 × 50 cm", "£0.84 per sheet");
        String material = tutor.path();
        tutor.type("/kind", "received").type("/amount", "20 sheets").press("Write it down");
        assertThat(tutor.page().text()).contains("20 sheets 70 × 50 cm");
        tutor.type("/kind", "used").type("/amount", "1750 cm2").press("Write it down");
        assertThat(tutor.page().text()).contains("19.5 sheets 70 × 50 cm");
        tutor.type("/kind", "used").type("/amount", "2 cards").press("Write it down");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults().toString()).contains("this is counted in sheets 70 × 50 cm");
        assertThat(tutor.open(material + "/edit").field("/unit")).isEqualTo("sheet 70 cm x 50 cm");
        assertThat(tutor.field("/offers/0/holds")).isEqualTo("10 sheets 70 cm x 50 cm");
    }

    /** Off a roll, a length is asked for, bought, ordered, received and shown, and nothing else. */
    @Test
    void takesClothOffARollByItsLength() throws IOException {
        tutor.open("/classes/imports").pick("file", "class.yaml", "application/yaml", """
                project:
                  name: Bench apron
                  craft: sewing
                  level: beginner
                  sizes: [{name: one size}]
                  materials:
                  - {material: Apron cloth, amount: 60 cm, width: 40 cm, pieces: "1"}
                  - {material: Tie cloth, amount: 50 cm}
                  steps: [{id: sew, title: Sew it, kind: together, lasts: 1 h}]
                class:
                  title: Aprons
                  headcount: 4
                  level: beginner
                  meetings: [{date: "2027-03-06", starts: "10:00", ends: "12:00"}]
                  currency: GBP
                materials:
                - {name: Apron cloth, unit: m2, offers: [{supplier: Apron mill, holds: 0.1 m x 140 cm, price: 1.2}]}
                - {name: Tie cloth, unit: m x 90 cm, offers: [{supplier: Apron mill, holds: 10 cm, price: 0.5}]}
                suppliers: [{name: Apron mill, currency: GBP}]
                """.getBytes(StandardCharsets.UTF_8)).press("Import");
        String page = tutor.path();
        assertThat(page).as("%s", tutor).matches("/classes/\\d+");
        assertThat(tutor.page().select("#buy ~ .panel").text()).contains("Apron cloth 1 0.8 m × 140 cm £9.60", "Tie cloth 20 0.1 m × 90 cm £0.50");

        tutor.open("/orders/new?class=" + page.replaceAll("\\D", "")).press("Write these orders");
        String order = tutor.path();
        assertThat(tutor.open(order + "/order.csv").bytes()).asString(StandardCharsets.UTF_8).contains("0.8 m x 140 cm");
        try (PDDocument read = Loader.loadPDF(tutor.open(order + "/order.pdf").bytes())) {
            assertThat(new PDFTextStripper().getText(read).replaceAll("\\s+", " ")).contains("0.8 m × 140 cm", "2 m × 90 cm (20 packs of 0.1 m × 90 cm)");
        }
        try (PDDocument cut = Loader.loadPDF(tutor.open(page + "/documents/cutting.pdf").bytes())) {
            assertThat(cut.getNumberOfPages()).as("what is higher than wide stands below its heading").isEqualTo(1);
        }
        List<String> said = new ArrayList<>();
        for (String path : List.of(page, page + "/reservation", page + "/packing", page + "/cutting", "/materials", order)) {
            told(path, said);
        }
        for (String what : PRINTED) {
            printed("%s/documents/%s.pdf".formatted(page, what), said);
        }
        assertThat(said).isEmpty();
    }
}
