package benchful.stock.lists;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import benchful.web.tables.TableFile;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class ListsPagesTest {
    @TestHTTPResource("/") URL start;

    private Visitor tutor;

    @BeforeEach
    void opensABrowser() {
        tutor = new Visitor(start);
    }

    @Test
    void showsWhatAPriceListWouldChangeAndThenDoesAllOfIt() {
        supplier("List Beads");
        String page = material("List silk", "List Beads", "2.40");
        preview("prices", "List Beads", true, """
                Material;Pack;Price;From packs;Colour
                list SILK;2 m;2,60;;white
                List silk;2 m;2,20;10;white
                List silk;20 m;19.00;;white
                List bead;100 pcs;3.10;;red
                """);
        assertThat(tutor.status()).isEqualTo(200);
        assertThat(tutor.page().text()).contains("Rows that change something: 4", "Columns that are not used: “colour”");
        assertThat(tutor.rows("main")).containsExactly("Row | What | Change", "2 | list SILK, 2 m from List Beads | 2.4 → 2.6",
                "3 | List silk, 2 m from List Beads from 10 packs | new lower price 2.2", "4 | List silk, 20 m from List Beads | new offer at 19",
                "5 | List bead, 100 pcs from List Beads | new material, new offer at 3.1");
        assertThat(new Visitor(start).open(page).page().text()).contains("£2.40").doesNotContain("£2.60");

        tutor.press("Import all of it");
        assertThat(tutor.path()).isEqualTo("/materials");
        assertThat(tutor.open("/materials?find=List").page().text()).contains("List bead", "100 pcs at £3.10 from List Beads");
        assertThat(tutor.open(page).rows("main")).anyMatch(r -> r.startsWith("List Beads | 2 m | £2.60 £1.30 per m | £2.20 from 10 packs"))
                .anyMatch(r -> r.startsWith("List Beads | 20 m | £19.00"));
    }

    @Test
    void importsNothingWhereOneRowIsAtFaultAndNamesEach() {
        supplier("Fault Beads");
        String page = material("Fault silk", "Fault Beads", "2.40");
        preview("prices", "", false, """
                material,supplier,pack,price,from packs
                Fault silk,Fault Beads,2 m,£9.99,
                Fault silk,Nobody Beads,2 m,1.00,
                Fault silk,Fault Beads,5 g,1.00,
                Fault silk,Fault Beads,2 m,cheap,
                Fault silk,Fault Beads,3 m,1.00,5
                ,Fault Beads,2 m,1.00,
                Fault cord,Fault Beads,2 m,"1,234",
                Fault cord,Fault Beads,2 m,"2,40 €",
                """);
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".summary li").eachText())
                .anyMatch(f -> f.startsWith("Row 4") && f.contains("“5 g” is a mass. Give a length, such as 2 m."))
                .anyMatch(f -> f.startsWith("Row 5") && f.contains("price: “cheap” is no price."))
                .anyMatch(f -> f.startsWith("Row 6") && f.contains("the price of a single pack is missing"))
                .anyMatch(f -> f.startsWith("Row 7") && f.contains("material: give a name"))
                .anyMatch(f -> f.startsWith("Row 8") && f.contains("price: “1,234” may be a thousand and more or a little over one. Write it as 1234 or as 1.234."))
                .anyMatch(f -> f.startsWith("Row 9") && f.contains("price: “2,40 €” is not in GBP, as this price is. Give it in GBP, such as 4.50."));
        assertThat(tutor.page().select("button").eachText()).doesNotContain("Import all of it");
        assertThat(tutor.open(page).page().text()).contains("£2.40").doesNotContain("£9.99");
    }

    @Test
    void passesOverMaterialsThatAreNotInTheCatalogueUnlessTheyAreToBeAdded() {
        supplier("Pass Beads");
        preview("prices", "Pass Beads", false, "material,pack,price\nPass bead,10 pcs,1.00\n");
        assertThat(tutor.page().text()).contains("There is nothing to import", "Row 2, Pass bead, 10 pcs from Pass Beads");
        preview("prices", "Pass Beads", true, "material,pack,price\nPass bead,10 pcs,1.00\n");
        assertThat(tutor.page().select("button").eachText()).contains("Import all of it");
    }

    @Test
    void countsByAStockListAndWritesTheDifferenceDown() {
        supplier("Count Beads");
        String page = material("Count silk", "Count Beads", "2.40");
        tutor.open(page).type("/kind", "received").type("/amount", "10 m").press("Write it down");
        preview("stock", "", false, "material,on the shelf,at least\nCount silk,9.5,3 m\n");
        assertThat(tutor.rows("main")).contains("2 | Count silk | 10 m → 9.5 m, at least 3 m");
        tutor.press("Import all of it").open(page);
        assertThat(tutor.page().select(".facts dd").eachText()).startsWith("9.5 m", "9.5 m", "3 m");
        assertThat(tutor.rows("main")).anyMatch(r -> r.endsWith("counted | −0.5 m | 9.5 m | Stock list"));
    }

    @Test
    void showsThePreviewAgainWhereTheStockMovedMeanwhile() {
        supplier("Moved Beads");
        String page = material("Moved silk", "Moved Beads", "2.40");
        preview("stock", "", false, "material,on the shelf\nMoved silk,4 m\n");
        new Visitor(start).open(page).type("/kind", "received").type("/amount", "1 m").press("Write it down");
        tutor.press("Import all of it");
        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.rows("main")).contains("2 | Moved silk | 1 m → 4 m");
        tutor.press("Import all of it");
        assertThat(tutor.open(page).page().select(".facts dd").eachText()).startsWith("4 m");
    }

    @Test
    void readsBackItsOwnListsWithoutChangingAnything() throws TableFile.Unreadable {
        supplier("Round Beads");
        material("Round silk", "Round Beads", "2.40");
        countOverdrawnAsNothing();
        for (String list : new String[] {"prices", "stock"}) {
            byte[] csv = tutor.open("/materials/lists/" + list + ".csv").bytes();
            byte[] xlsx = tutor.open("/materials/lists/" + list + ".xlsx").bytes();
            assertThat(TableFile.read(csv)).isEqualTo(TableFile.read(xlsx));
            preview(list, "", true, new String(csv, StandardCharsets.UTF_8));
            assertThat(tutor.page().text()).as(list).contains("There is nothing to import");
            tutor.open("/materials/lists").type("kind", list).pick("file", list + ".xlsx", "application/octet-stream", xlsx).press("Show what it would change");
            assertThat(tutor.page().text()).as(list).contains("There is nothing to import");
        }
    }

    /** A list can't say that less than nothing lies on the shelf; read back, it sets that right. */
    private void countOverdrawnAsNothing() {
        preview("stock", "", false, new String(tutor.open("/materials/lists/stock.csv").bytes(), StandardCharsets.UTF_8));
        if (!tutor.page().text().contains("There is nothing to import")) {
            assertThat(tutor.rows("main tbody")).isNotEmpty().allMatch(row -> row.matches(".* −.* → 0 .*"));
            tutor.press("Import all of it");
        }
    }

    @Test
    void saysWhatIsWrongWithTheFile() {
        preview("stock", "", false, "name,how many\nsilk,3\n");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".summary").text())
                .contains("The first row should name the columns. Missing: material, on the shelf. Found: name, how many.");
        preview("prices", "", false, "Spring prices\n\nmaterial,pack,price\nsilk,2 m,2.60\n");
        assertThat(tutor.page().select(".summary").text())
                .contains("The first row should name the columns. Missing: material, pack, price. Found: spring prices.");
        tutor.open("/materials/lists").press("Show what it would change");
        assertThat(tutor.page().select(".summary").text()).contains("Choose a file first.");
    }

    private void preview(String kind, String supplier, boolean addsNew, String csv) {
        tutor.open("/materials/lists").type("kind", kind).type("supplier", supplier).type("adds-new", addsNew ? "true" : null)
                .pick("file", "list.csv", "text/csv", csv.getBytes(StandardCharsets.UTF_8)).press("Show what it would change");
    }

    private void supplier(String name) {
        tutor.open("/suppliers/new").type("/name", name).press("Save");
    }

    private String material(String name, String supplier, String price) {
        tutor.open("/materials/new").type("/name", name).type("/unit", "m").type("/offers/0/supplier", supplier)
                .type("/offers/0/holds", "2 m").type("/offers/0/price", price).press("Save");
        return tutor.path();
    }
}
