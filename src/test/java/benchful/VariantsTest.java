package benchful;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Colours and sizes of one material are planned, cut, bought, packed and printed apart, from the catalogue to the order. */
@QuarkusTest
class VariantsTest {
    private static final String FRAMES = """
            project:
              name: Framed print
              craft: paper
              level: beginner
              sizes:
                - {name: Large, takes: [{of: frame, use: "frame, A3"}]}
                - {name: Small, takes: [{of: frame, use: "frame, A4"}]}
                - {name: Unframed, takes: [{of: frame}]}
              materials:
                - {material: frame, amount: "1"}
                - {material: print, amount: "1"}
              steps:
                - {id: print, title: Print it, kind: make, student: {quick: 10 min, usual: 15 min, slow: 20 min}}
            class:
              title: Frames on Friday
              meetings: [{date: 2027-03-05, starts: "10:00", ends: "12:00"}]
              headcount: 6
              level: beginner
              sizes: {Large: 1, Small: 3, Unframed: 2}
              currency: GBP
            materials:
              - name: frame
                unit: pcs
                offers: [{supplier: Frame yard, holds: 1 pcs, price: 4.00}]
              - {name: "frame, A3", unit: pcs, variant_of: frame, offers: [{supplier: Frame yard, holds: 1 pcs, price: 6.50, article: FY-3}]}
              - {name: "frame, A4", unit: pcs, variant_of: frame}
              - name: print
                unit: pcs
                offers: [{supplier: Frame yard, holds: 10 pcs, price: 3.00}]
            suppliers:
              - {name: Frame yard, currency: GBP, lead_days: 2}
            """;

    @TestHTTPResource("/") URL start;

    @Inject SampleData data;

    private Visitor tutor;

    @BeforeEach
    void begins() {
        data.onlySamples();
        tutor = new Visitor(start);
    }

    @Test
    void plansCutsBuysPacksAndPrintsTheStrandByColourWithNoWarningAboutItself() throws IOException {
        String page = "/classes/" + data.classTitled("Knotted strand, Saturday");
        assertThat(tutor.open(page).page().text()).contains("bead silk 0.6 mm, ivory", "bead silk 0.6 mm, grey", "bead silk 0.6 mm, sea green")
                .doesNotContain("cut and bought as one").doesNotContain("have not chosen");
        assertThat(tutor.open(page + "/cutting").page().select("section h2").eachText()).contains("bead silk 0.6 mm, ivory", "bead silk 0.6 mm, grey", "bead silk 0.6 mm, sea green");
        assertThat(tutor.open(page + "/packing").page().text()).contains("bead silk 0.6 mm, sea green");
        assertThat(printed(page + "/documents/packing.pdf")).contains("bead silk 0.6 mm, sea green");
        assertThat(printed(page + "/documents/shopping.pdf")).contains("bead silk 0.6 mm, ivory", "bead silk 0.6 mm, grey", "bead silk 0.6 mm, sea green");
        assertThat(printed(page + "/documents/cutting.pdf")).contains("bead silk 0.6 mm, ivory", "Proven least").doesNotContain("Cut each from its own length");
        assertThat(printed(page + "/documents/labels.pdf")).contains("bead silk 0.6 mm, sea green");

        String letter = ordered(page, "Ninepin Bead Loft");
        assertThat(letter).contains("bead silk 0.6 mm, ivory", "bead silk 0.6 mm, grey", "bead silk 0.6 mm, sea green").containsPattern("\\d packs? of 2 m");
    }

    @Test
    void namesTheSizesOfFramesOnTheOrder() throws IOException {
        tutor.open("/classes/imports").pick("file", "frames.yaml", "application/yaml", FRAMES.getBytes(StandardCharsets.UTF_8)).press("Import");
        assertThat(tutor.status()).as(tutor.page().text()).isEqualTo(200);
        String page = tutor.path();
        assertThat(tutor.page().text()).contains("frame, A3", "frame, A4");
        String letter = ordered(page, "Frame yard");
        assertThat(letter).contains("frame, A3", "1 pack of 1 pcs", "FY-3", "frame, A4", "3 packs of 1 pcs", "print");
        assertThat(tutor.open("/materials?find=frame").page().text()).contains("frame, A3", "frame, A4");
    }

    @Test
    void addsVariantsInPlaceEachWithAShelfOfItsOwn() {
        tutor.open("/materials/new").type("/name", "felt").type("/unit", "sheets 30 x 20 cm").type("/offers/0/supplier", "Gannet Row Stores").type("/offers/0/holds", "5 sheets")
                .type("/offers/0/price", "4.00").press("Save");
        String felt = tutor.path();
        tutor.type("/words", "red\nblue\nred").press("Add them");
        assertThat(tutor.page().select("#variants + div tbody th").eachText()).containsExactly("red", "blue");
        tutor.follow("blue");
        assertThat(tutor.page().text()).contains("A variant of felt", "5 sheets 30 × 20 cm");
        tutor.type("/kind", "received").type("/amount", "4 sheets").press("Write it down");
        assertThat(tutor.open(felt).page().select("#variants + div tbody td").eachText()).containsExactly("0 sheets 30 × 20 cm", "4 sheets 30 × 20 cm");
        tutor.open(felt + "/edit").type("/name", "wool felt").press("Save");
        assertThat(tutor.open("/materials?find=felt").page().text()).contains("wool felt, blue", "wool felt, red");
        tutor.open(felt).press("Remove this material");
        assertThat(tutor.open("/materials?find=felt").page().select("tbody th").eachText()).as("its variants go with it").isEmpty();
    }

    @Test
    void putsWhatAProjectNamesInTheCatalogueAtOnceAndSaysWhatItLacks() {
        tutor.open("/projects/imports").pick("file", "plait.yaml", "application/yaml", """
                name: Plait
                craft: cord
                level: beginner
                sizes: [{name: One}]
                materials:
                  - {material: plaiting cord, amount: 40 cm, pieces: "3"}
                  - {material: cord glue, amount: 5 ml, shared: true}
                steps: [{id: plait, title: Plait, kind: make, student: {quick: 5 min, usual: 8 min, slow: 12 min}}]
                """.getBytes(StandardCharsets.UTF_8)).press("Import");
        assertThat(tutor.page().text()).contains("Not among your materials yet: plaiting cord; cord glue.");
        tutor.press("Add them to my materials");
        assertThat(tutor.page().text()).contains("No pack is written down yet for").doesNotContain("Not among your materials yet");
        tutor.follow("cord glue");
        assertThat(tutor.field("/unit")).isEqualTo("ml");
    }

    /** Writes the orders of a class and reads the one to this supplier back from paper. */
    private String ordered(String page, String supplier) throws IOException {
        tutor.open("/orders/new?class=" + page.substring(page.lastIndexOf('/') + 1)).press("Write these orders");
        String order = tutor.open("/orders").page().select("main a[href^=/orders/]:contains(%s)".formatted(supplier)).first().attr("href");
        return printed(order + "/order.pdf");
    }

    private String printed(String path) throws IOException {
        try (PDDocument read = Loader.loadPDF(tutor.open(path).bytes())) {
            return new PDFTextStripper().getText(read).replaceAll("[\\s\u00a0]+", " ");
        }
    }
}
