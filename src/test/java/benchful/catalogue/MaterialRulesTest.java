package benchful.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.core.Fault;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class MaterialRulesTest {

    @Test
    void acceptsACordWithAPackInLengthsAndFallingPrices() {
        assertThat(MaterialRules.faults(cord(Unit.M, "2 m", 2, List.of(at(5, "3.90"), at(10, "3.90"))))).isEmpty();
    }

    @Test
    void refusesAPackOfAnotherKindThanTheMaterialIsCountedIn() {
        assertThat(MaterialRules.faults(cord(Unit.M, "20 g", null, List.of())))
                .containsExactly(new Fault("/offers/0/holds", "“20 g” is a mass. Give a length, such as 2 m."));
    }

    @Test
    void refusesAnEmptyPack() {
        assertThat(MaterialRules.faults(cord(Unit.M, "0 m", null, List.of())))
                .containsExactly(new Fault("/offers/0/holds", "A pack holds something. Give an amount above 0."));
    }

    @Test
    void refusesMorePacksThatCostMoreAndNumbersOutOfOrder() {
        assertThat(MaterialRules.faults(cord(Unit.M, "2 m", null, List.of(at(5, "3.90"), at(5, "4.00")))))
                .containsExactly(
                        new Fault("/offers/0/breaks/1/packs", "Write the lower prices by rising number of packs: this is to be more than 5."),
                        new Fault("/offers/0/breaks/1/price", "More packs can't cost more each: give at most 3.90."));
    }

    @Test
    void refusesAUnitThatCountsNothing() {
        assertThat(MaterialRules.faults(cord(Unit.PERCENT, "2 m", null, List.of()))).extracting(Fault::pointer).containsExactly("/unit");
        assertThat(MaterialRules.faults(cord(Unit.G_PER_CM3, "2 m", null, List.of()))).extracting(Fault::pointer).containsExactly("/unit");
    }

    @Test
    void refusesLengthsOfWhatIsNotCountedByLength() {
        assertThat(MaterialRules.faults(cord(Unit.G, "20 g", 2, List.of()))).extracting(Fault::pointer).containsExactly("/offers/0/lengths");
    }

    @Test
    void refusesSheetsOfWhatIsNotCountedByArea() {
        Offer sheets = Offer.of("Harbour", Quantity.parse("20 g"), BigDecimal.ONE)
                .withSheet(new Extent(Quantity.parse("10 cm"), Quantity.parse("20 cm")));
        assertThat(MaterialRules.faults(MaterialSpec.of("copper", Unit.G).withOffers(List.of(sheets))))
                .containsExactly(new Fault("/offers/0/sheet/length", "Only a material counted by area comes in sheets. Leave this empty, or count it in sheets, such as “sheets 70 x 50 cm”."));
    }

    @Test
    void refusesAMassOfWhichAWholeSheetWouldBeMoreThanAnyScaleHolds() {
        Offer sheets = Offer.of("Harbour", Quantity.parse("20000 cm2"), BigDecimal.ONE)
                .withSheet(new Extent(Quantity.parse("10 cm"), Quantity.parse("20 cm")));
        MaterialSpec card = MaterialSpec.of("card", Unit.CM2).withOffers(List.of(sheets));

        assertThat(MaterialRules.faults(card.withUnitMass(Quantity.parse("5000 kg")))).isEmpty();
        assertThat(MaterialRules.faults(card.withUnitMass(Quantity.parse("5001 kg")))).containsExactly(new Fault("/unit_mass",
                "So much for 1 cm2, a whole sheet is too heavy. That is more than anything is planned with here. Give at most 1000000 kg."));
    }

    private static Offer.PriceBreak at(int packs, String price) {
        return new Offer.PriceBreak(packs, new BigDecimal(price));
    }

    private static MaterialSpec cord(Unit unit, String holds, Integer lengths, List<Offer.PriceBreak> breaks) {
        Offer offer = Offer.of("Harbour", Quantity.parse(holds), new BigDecimal("4.20")).withLengths(lengths).withBreaks(breaks);
        return MaterialSpec.of("cord", unit).withOffers(List.of(offer));
    }
}
