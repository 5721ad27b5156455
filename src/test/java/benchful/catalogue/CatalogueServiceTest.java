package benchful.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchful.SampleData;
import benchful.core.SkillLevel;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.stock.Cause;
import benchful.stock.MovementKind;
import benchful.stock.StockLedger;
import benchful.web.StoredEntity;
import io.quarkus.test.TestTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hibernate.exception.ConstraintViolationException;
import org.junit.jupiter.api.Test;

@QuarkusTest
@TestTransaction
class CatalogueServiceTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 6);
    private static final SupplierSpec HARBOUR = new SupplierSpec(
            "Catalogue harbour", "GBP", new BigDecimal("10"), new BigDecimal("3.95"), new BigDecimal("40"), 3, false, new BigDecimal("20"), "by post", null);

    @Inject CatalogueService catalogue;
    @Inject StockLedger ledger;
    @Inject SampleData data;

    @Test
    void givesBackAMaterialAsItWasWrittenWithWhatItsMovementsAddUpTo() {
        data.onlySamples();
        long id = stored(cord("Catalogue cord", new BigDecimal("4.20")));
        ledger.move(id, MovementKind.RECEIVED, Quantity.parse("5 m"), Cause.NONE);
        ledger.move(id, MovementKind.SPOILT, Quantity.parse("30 cm"), Cause.note("frayed"));
        ledger.reserve(data.classTitled("Knotted strand, Saturday"), Map.of("catalogue CORD", Quantity.parse("70 cm")), null);
        Material.getEntityManager().clear();

        CatalogueSpec sheets = catalogue.sheets(List.of("CATALOGUE cord", "not there"));
        assertThat(sheets.materials()).containsExactly(withOnHand(cord("Catalogue cord", new BigDecimal("4.20")), "4 m"));
        assertThat(sheets.suppliers()).contains(HARBOUR);
        assertThat(StoredEntity.byId(Material.class, id).orElseThrow().onHand()).isEqualTo(Quantity.parse("4.7 m"));
    }

    @Test
    void keepsAnOfferTheSameWhenItsPriceChanges() {
        Supplier harbour = Supplier.stored(HARBOUR, false);
        Material material = Material.stored(cord("Catalogue cord", new BigDecimal("4.20")), name -> harbour, false, TODAY);
        Material.flush();
        long offer = material.offers().get(0).id();

        material.replace(cord("Catalogue cord", new BigDecimal("4.80")), name -> harbour, TODAY.plusDays(1));
        Material.flush();
        assertThat(material.offers()).singleElement().satisfies(o -> {
            assertThat(o.id()).isEqualTo(offer);
            assertThat(o.toSpec().price()).isEqualByComparingTo("4.80");
            assertThat(o.pricedOn()).isEqualTo(TODAY.plusDays(1));
        });
    }

    @Test
    void keepsThePricesAnOfferHadBefore() {
        long id = stored(cord("Catalogue cord of three prices", new BigDecimal("4.20")));
        Material material = Material.findById(id);
        replace(material, "4.50", TODAY.plusDays(10));
        replace(material, "4.55", TODAY.plusDays(10));
        replace(material, "4.75", TODAY.plusDays(400));
        OfferRow row = OfferRow.of(material.offers().get(0), TODAY.plusDays(400));
        assertThat(row.price()).isEqualTo("£4.75");
        assertThat(row.past()).extracting(p -> p.split(" ")[0]).containsExactlyInAnyOrder("£4.20", "£4.55");
        assertThat(row.old()).isFalse();
        assertThat(OfferRow.of(material.offers().get(0), TODAY.plusDays(400).plusYears(1).plusDays(1)).old()).isTrue();
    }

    private static void replace(Material material, String price, LocalDate today) {
        material.replace(cord(material.name(), new BigDecimal(price)), name -> Supplier.byName(name).orElseThrow(), today);
        Material.flush();
    }

    @Test
    void refusesASecondMaterialOfTheSameName() {
        stored(cord("Catalogue cord", BigDecimal.ONE));
        assertThatThrownBy(() -> Material.stored(cord("CATALOGUE CORD", BigDecimal.ONE),
                        name -> Supplier.byName(name).orElseThrow(), false, TODAY))
                .isInstanceOf(ConstraintViolationException.class);
    }

    private static long stored(MaterialSpec sheet) {
        Supplier harbour = Supplier.stored(HARBOUR, false);
        Material material = Material.stored(sheet, name -> harbour, false, TODAY);
        Material.flush();
        return material.id();
    }

    static MaterialSpec cord(String name, BigDecimal price) {
        Offer offer = Offer.of(HARBOUR.name(), Quantity.parse("2 m"), price).withBreaks(List.of(new Offer.PriceBreak(5, new BigDecimal("3.90"))));
        return MaterialSpec.of(name, Unit.M).withWaste(Map.of(SkillLevel.BEGINNER, new BigDecimal("10")))
                .withConfidence(new BigDecimal("0.95")).withCutLoss(Quantity.parse("5 mm")).withUnitMass(Quantity.parse("4 g"))
                .withMinimum(Quantity.parse("3 m")).withHazards(List.of("sharp-tools")).withOffers(List.of(offer))
                .withNote("with needle");
    }

    private static MaterialSpec withOnHand(MaterialSpec s, String amount) {
        return s.withOnHand(Quantity.parse(amount));
    }
}
