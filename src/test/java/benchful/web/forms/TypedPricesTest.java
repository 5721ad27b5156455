package benchful.web.forms;

import static org.assertj.core.api.Assertions.assertThat;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.SupplierRules;
import benchful.catalogue.SupplierSpec;
import benchful.core.Fault;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;

class TypedPricesTest {
    private static final SpecReader<SupplierSpec> SUPPLIERS = new SpecReader<>(SupplierSpec.class, SupplierRules::faults);
    private static final SpecReader<CatalogueSpec> CATALOGUES = new SpecReader<>(CatalogueSpec.class, sheet -> List.of());

    @Test
    void areReadInTheCurrencyThatTheSheetNames() {
        assertThat(SUPPLIERS.tree(tree("{'name': '£5 shop', 'currency': 'EUR', 'delivery': '4,50 €', 'minimum_order': 'EUR 1.234,50', 'free_above': '12'}")))
                .isInstanceOfSatisfying(SpecReader.Read.class, read -> {
                    SupplierSpec sheet = (SupplierSpec) read.sheet();
                    assertThat(sheet.delivery()).isEqualByComparingTo("4.50");
                    assertThat(sheet.minimumOrder()).isEqualByComparingTo("1234.50");
                    assertThat(sheet.name()).isEqualTo("£5 shop");
                });
    }

    @Test
    void keepTheirSignsWhileAnythingIsAtFault() {
        assertThat(SUPPLIERS.tree(tree("{'name': '', 'currency': 'EUR', 'delivery': '€4.50', 'minimum_order': '£10', 'free_above': '€1.200'}"))).isInstanceOfSatisfying(SpecReader.Faulty.class, faulty -> {
            assertThat(faulty.faults()).contains(new Fault("/minimum_order", "“£10” is not in EUR, as this price is. Give it in EUR, such as 4.50."),
                    new Fault("/free_above", "“€1.200” may be a thousand and more or a little over one. Write it as 1200 or as 1.200.")).hasSize(3);
            assertThat(faulty.tree().at("/delivery").textValue()).isEqualTo("€4.50");
            assertThat(faulty.tree().at("/minimum_order").textValue()).isEqualTo("£10");
        });
    }

    @Test
    void areRefusedWhereTheCurrencyIsNotKnown() {
        assertThat(SUPPLIERS.tree(tree("{'name': 'Shop', 'delivery': '€4.50'}"))).isInstanceOfSatisfying(SpecReader.Faulty.class, faulty ->
                assertThat(faulty.faults()).contains(new Fault("/delivery", "“€4.50”: it is not known yet in which currency this is counted. Give a number alone, such as 4.50.")));
    }

    @Test
    void areInTheCurrencyOfTheirSupplierWithinAFile() {
        String file = "{'suppliers': [{'name': 'A', 'currency': 'GBP'}, {'name': 'B', 'currency': 'EUR'}], 'materials': [{'name': 'silk', 'unit': 'm', 'offers': [%s]}]}";
        assertThat(CATALOGUES.tree(tree(file.formatted("{'supplier': 'B', 'holds': '2 m', 'price': '€2'}, {'supplier': 'A', 'holds': '2 m', 'price': '£2', 'breaks': [{'packs': 3, 'price': '£1.80'}]}"))))
                .isInstanceOf(SpecReader.Read.class);
        assertThat(CATALOGUES.tree(tree(file.formatted("{'supplier': 'B', 'holds': '2 m', 'price': '2', 'breaks': [{'packs': 3, 'price': '£1.80'}]}")))).isInstanceOfSatisfying(SpecReader.Faulty.class,
                faulty -> assertThat(faulty.faults()).extracting("pointer").containsExactly("/materials/0/offers/0/breaks/0/price"));
    }

    private static JsonNode tree(String text) {
        try {
            return SpecFormat.json().readTree(text.replace('\'', '"'));
        } catch (JsonProcessingException e) {
            throw new AssertionError(e);
        }
    }
}
