package benchful.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.web.Visitor;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@QuarkusTest
class MaterialsPagesTest {
    @TestHTTPResource("/") URL start;

    private Visitor tutor;

    @BeforeEach
    void opensABrowser() {
        tutor = new Visitor(start);
    }

    @Test
    void writesDownAMaterialWithItsOffer() {
        supplier("Quay Beads");
        tutor.open("/materials/new").type("/name", "Quay silk").type("/unit", "m").type("/minimum", "6 m").type("/waste/beginner", "10")
                .type("/offers/0/supplier", "Quay Beads").type("/offers/0/holds", "2 m").type("/offers/0/price", "2.40")
                .type("/offers/0/breaks/0/packs", "10").type("/offers/0/breaks/0/price", "2.10").press("Save");

        assertThat(tutor.page().selectFirst("h1").text()).isEqualTo("Quay silk");
        assertThat(tutor.page().select(".panel.warn").text()).contains("0 m free; you want at least 6 m");
        assertThat(tutor.rows("main")).anyMatch(row -> row.startsWith("Quay Beads | 2 m | £2.40 £1.20 per m | £2.10 from 10 packs | 3 days"));
        assertThat(tutor.open("/materials?find=quay&low=true").rows("main"))
                .contains("Quay silk low | 0 m | 0 m | 6 m | 2 m at £2.40 from Quay Beads");
    }

    @Test
    void writesDownSheetsAndRefusesPacksThatHoldNoWholeNumberOfThem() {
        supplier("Sheet works");
        tutor.open("/materials/new").type("/name", "Quay copper").type("/unit", "cm2").type("/offers/0/supplier", "Sheet works").type("/offers/0/holds", "310 cm2")
                .type("/offers/0/price", "9.80").type("/offers/0/sheet/length", "300 mm").press("Save");
        assertThat(tutor.faults()).contains("Give the width, such as 100 mm.");
        tutor.type("/offers/0/sheet/width", "100 mm").press("Save");
        assertThat(tutor.faults()).contains("A pack of 310 cm2 does not hold a whole number of sheets of 300 mm x 100 mm. Mend the one or the other.");
        tutor.type("/offers/0/holds", "600 cm2").press("Save");

        assertThat(tutor.rows("main")).anyMatch(row -> row.startsWith("Sheet works | 2 sheets 300 × 100 mm | £9.80"));
        tutor.open(tutor.path() + "/edit").type("/offers/0/sheet/length", "").type("/offers/0/sheet/width", "").press("Save");
        assertThat(tutor.rows("main")).anyMatch(row -> row.startsWith("Sheet works | 2 sheets 300 × 100 mm | £9.80 £4.90 per sheet"));
    }

    @Test
    void keepsTypedValuesWhenInvalidAndNamesEachPlace() {
        supplier("Keep Beads");
        tutor.open("/materials/new").type("/name", "Keep silk").type("/unit", "m").type("/minimum", "a lot").type("/waste/beginner", "99")
                .type("/offers/0/supplier", "Keep Beads").type("/offers/0/holds", "2 m").type("/offers/0/price", "cheap").press("Save");

        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.field("/minimum")).isEqualTo("a lot");
        assertThat(tutor.field("/offers/0/price")).isEqualTo("cheap");
        assertThat(tutor.faults()).contains("Give a percentage from 0 to 95.", "Give an amount with its unit, such as 42 cm or 12 pcs.",
                "Give a price from 0 to 1,000,000, such as 4.50.");
    }

    @Test
    void refusesATakenNameWhateverItsCaseAndPricesBelowThePenny() {
        supplier("Twin Beads");
        material("Twin silk", "Twin Beads");
        tutor.open("/materials/new").type("/name", "TWIN silk").type("/offers/0/supplier", "Twin Beads").type("/offers/0/holds", "3 pcs")
                .type("/offers/0/price", "1.005").press("Save");

        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.faults()).contains("There is a material called “Twin silk” already. Give this one another name.",
                "Give an amount in GBP with at most 2 decimals.");
    }

    @Test
    void takesTheSignOfTheSuppliersCurrencyAndRefusesAnother() {
        supplier("Sign Beads");
        String page = material("Sign silk", "Sign Beads");
        tutor.open(page + "/edit").type("/offers/0/price", "€2.60").type("/offers/0/breaks/0/packs", "10").type("/offers/0/breaks/0/price", "GBP 2,10").press("Save");
        assertThat(tutor.status()).isEqualTo(422);
        assertThat(tutor.page().select(".fault").eachText()).containsExactly("“€2.60” is not in GBP, as this price is. Give it in GBP, such as 4.50.");
        assertThat(tutor.field("/offers/0/price")).isEqualTo("€2.60");
        tutor.type("/offers/0/price", "£2.60").press("Save");
        assertThat(tutor.status()).isEqualTo(200);
        tutor.open(page + "/edit");
        assertThat(tutor.field("/offers/0/price")).isEqualTo("2.60");
        assertThat(tutor.field("/offers/0/breaks/0/price")).isEqualTo("2.10");
    }

    @Test
    void showsBothVersionsToTheSecondOfTwoEditors() {
        supplier("Both Beads");
        String page = material("Both silk", "Both Beads");
        Visitor other = new Visitor(start).open(page + "/edit").type("/offers/0/price", "2.60");
        tutor.open(page + "/edit");
        other.press("Save");
        tutor.type("/offers/0/price", "2.50").press("Save");

        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.rows(".summary")).contains("offers 1, price | 2.60 | 2.50");
        assertThat(tutor.field("/offers/0/price")).isEqualTo("2.50");
        assertThat(tutor.press("Save").status()).isEqualTo(200);
        assertThat(tutor.page().text()).contains("£2.50");
    }

    @Test
    void addsAndRemovesOffersWithoutSaving() {
        supplier("Row Beads");
        tutor.open(material("Row silk", "Row Beads") + "/edit").press("Add another offer");
        assertThat(tutor.page().select("fieldset legend").eachText()).containsExactly("Offer 1", "Offer 2");
        tutor.press(tutor.page().selectFirst("button[name=remove]"));
        assertThat(tutor.page().select("option[selected]").eachText()).doesNotContain("Row Beads");
        tutor.press("Undo");
        assertThat(tutor.page().select("option[selected]").eachText()).contains("Row Beads");
        assertThat(tutor.open("/materials?find=row+silk").page().text()).contains("from Row Beads");
    }

    @Test
    void keepsASupplierWhoseOffersAreInUseAndNamesThem() {
        supplier("Used Beads");
        material("Used silk", "Used Beads");
        tutor.open("/suppliers?find=used").open(tutor.page().selectFirst("a:containsOwn(Used Beads)").attr("href")).press("Remove this supplier");

        assertThat(tutor.status()).isEqualTo(409);
        assertThat(tutor.page().select("main li").eachText()).containsExactly("the material Used silk");
        assertThat(tutor.open("/suppliers?find=used").page().select("main a").eachText()).contains("Used Beads");
    }

    @Test
    void removesWhatNothingUses() {
        supplier("Gone Beads");
        tutor.open(material("Gone silk", "Gone Beads")).press("Remove this material");
        assertThat(tutor.path()).isEqualTo("/materials");
        assertThat(tutor.open("/materials").page().text()).doesNotContain("Gone silk");
    }

    @Test
    void answersNotFoundForWhatIsNotThere() {
        assertThat(tutor.open("/materials/999999").status()).isEqualTo(404);
        assertThat(tutor.open("/materials/nonsense").status()).isEqualTo(404);
        assertThat(tutor.open("/suppliers/999999/edit").status()).isEqualTo(404);
    }

    private void supplier(String name) {
        tutor.open("/suppliers/new").type("/name", name).type("/lead_days", "3").type("/delivery", "3.95").type("/free_above", "40").press("Save");
        assertThat(tutor.path()).isEqualTo("/suppliers");
        assertThat(tutor.page().text()).contains("£3.95, free from £40.00");
    }

    /** @return the path of its page */
    private String material(String name, String supplier) {
        tutor.open("/materials/new").type("/name", name).type("/unit", "m").type("/offers/0/supplier", supplier)
                .type("/offers/0/holds", "2 m").type("/offers/0/price", "2.40").press("Save");
        assertThat(tutor.status()).isEqualTo(200);
        return tutor.path();
    }
}
