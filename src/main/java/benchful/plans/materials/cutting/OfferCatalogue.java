package benchful.plans.materials.cutting;

import benchful.catalogue.CatalogueSpec;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.Offer;
import benchful.catalogue.SupplierSpec;
import benchful.core.Fault;
import benchful.core.buying.PackOffer;
import benchful.core.buying.Supplier;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.joda.money.Money;

/** Suppliers and the packs they sell, as buying takes them. Offers of a supplier who is not among them are left out. */
final class OfferCatalogue {
    /** ISO 4217's code where no currency is involved: nobody sells anything and no currency is set. */
    private static final CurrencyUnit NONE = CurrencyUnit.of("XXX");

    private final List<MaterialSpec> materials;
    private final String code;
    private final List<Fault> faults;
    private final List<Sentence> warnings;
    private final Map<String, Supplier> suppliers = new LinkedHashMap<>();

    /**
     * @param code of the currency of the totals; null for the first supplier's
     * @param faults takes what can't be read
     * @param warnings takes the offers that are left out
     */
    OfferCatalogue(CatalogueSpec catalogue, String code, List<Fault> faults, List<Sentence> warnings) {
        this.materials = catalogue.materials();
        this.code = code;
        this.faults = faults;
        this.warnings = warnings;
        for (int i = 0; i < catalogue.suppliers().size(); i++) {
            read(catalogue.suppliers().get(i), "/suppliers/" + i);
        }
    }

    /** The currency that is set; the first supplier's where none is. */
    CurrencyUnit currency() {
        if (code != null && !code.isBlank()) {
            try {
                return CurrencyUnit.of(code);
            } catch (IllegalCurrencyException e) {
                Fault fault = new Fault("/class/currency", "“%s” is no currency here. Give its three letters, such as GBP.".formatted(code));
                if (!faults.contains(fault)) {
                    faults.add(fault);
                }
            }
        }
        return suppliers.values().stream().map(Supplier::currency).findFirst().orElse(NONE);
    }

    List<PackOffer> packs(MaterialSpec material) {
        return material.offers().stream().filter(o -> known(material, o)).map(this::pack).toList();
    }

    /** Packs of things cut to length, with the stock length they come in. */
    List<StockCutter.Offer<Quantity>> lengths(MaterialSpec material) {
        List<StockCutter.Offer<Quantity>> lengths = new ArrayList<>();
        for (Offer offer : material.offers()) {
            if (known(material, offer)) {
                BigDecimal each = offer.holds().base().divide(BigDecimal.valueOf(offer.lengths() == null ? 1 : offer.lengths()), Quantity.PRECISION);
                Quantity length = Quantity.ofBase(each, offer.holds().unit());
                lengths.add(new StockCutter.Offer<>(Micrometres.whole(length), length, pack(offer)));
            }
        }
        return lengths;
    }

    /** Packs of sheets, with the size of each, and so much of a roll, as a sheet; packs that do not tell it are left out. */
    List<StockCutter.Offer<Extent>> sheets(MaterialSpec material) {
        List<StockCutter.Offer<Extent>> sheets = new ArrayList<>();
        for (Offer offer : material.offers()) {
            Extent size = size(offer);
            if (size == null) {
                warnings.add(Sentence.of("“%s” from “%s” has no size of sheet, so no rectangles can be planned on it; that offer is left out.",
                        material.name(), offer.supplier()));
            } else if (known(material, offer)) {
                sheets.add(new StockCutter.Offer<>(Micrometres.whole(size), size.area(), pack(offer)));
            }
        }
        return sheets;
    }

    private static Extent size(Offer offer) {
        boolean roll = offer.sheet() == null && offer.holds().unit().runs();
        return roll ? offer.holds().unit().counted().length(offer.holds().amount()) : offer.sheet();
    }

    String pointer(MaterialSpec material) {
        return "/materials/" + materials.indexOf(material);
    }

    private boolean known(MaterialSpec material, Offer offer) {
        Supplier supplier = suppliers.get(offer.supplier());
        if (supplier == null) {
            warnings.add(Sentence.of("“%s” is offered by “%s”, who is not among the suppliers; that offer is left out.", material.name(), offer.supplier()));
        } else if (!supplier.currency().equals(currency())) {
            warnings.add(Sentence.of("“%s” sells “%s” in %s, which is not compared with %s; that offer is left out.",
                    offer.supplier(), material.name(), supplier.currency(), currency()));
            return false;
        }
        return supplier != null;
    }

    private PackOffer pack(Offer offer) {
        Supplier supplier = suppliers.get(offer.supplier());
        return new PackOffer(supplier, offer.holds(), BigMoney.of(supplier.currency(), offer.price()), offer.breaks().stream()
                .map(b -> new PackOffer.Break(b.packs(), BigMoney.of(supplier.currency(), b.price()))).toList());
    }

    private void read(SupplierSpec sheet, String pointer) {
        try {
            CurrencyUnit currency = CurrencyUnit.of(sheet.currency());
            suppliers.put(sheet.name(), new Supplier(sheet.name(), money(currency, sheet.minimumOrder()), money(currency, sheet.delivery()),
                    sheet.freeAbove() == null ? null : money(currency, sheet.freeAbove()), sheet.lead(),
                    sheet.vat() == null ? BigDecimal.ZERO : sheet.vat()));
        } catch (IllegalCurrencyException e) {
            faults.add(new Fault(pointer + "/currency", "“%s” is no currency here. Give its three letters, such as GBP.".formatted(sheet.currency())));
        } catch (IllegalArgumentException e) {
            faults.add(new Fault(pointer, e.getMessage()));
        }
    }

    private static Money money(CurrencyUnit currency, BigDecimal amount) {
        return amount == null ? Money.zero(currency) : Money.of(currency, amount, RoundingMode.HALF_UP);
    }
}
