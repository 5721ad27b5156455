package benchful.catalogue;

import benchful.core.Fault;
import benchful.core.quantity.Unit;
import benchful.web.Formats;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;

/** What must agree between a sheet and everything else in the catalogue: free names, known suppliers and hazards. */
@ApplicationScoped
public class CatalogueRules {
    private final Instance<HazardNames> hazards;

    CatalogueRules(Instance<HazardNames> hazards) {
        this.hazards = hazards;
    }

    /** @param stored the material that takes the sheet; null for a new one */
    public List<Fault> faults(MaterialSpec sheet, Material stored) {
        return faults(sheet, stored, name -> Supplier.byName(name).map(Supplier::currency));
    }

    /** @param currencies of suppliers by name; empty for one that there is not */
    public List<Fault> faults(MaterialSpec sheet, Material stored, Function<String, Optional<String>> currencies) {
        List<Fault> faults = new ArrayList<>();
        Optional<Material> namesake = Material.byName(sheet.name());
        if (namesake.isPresent() && namesake.get() != stored) {
            faults.add(new Fault("/name", "There is a material called “%s” already. Give this one another name.".formatted(namesake.get().name())));
        }
        if (stored != null && stored.moved() && !sheet.unit().dimension().equals(stored.unit().dimension())) {
            faults.add(new Fault("/unit", "Stock of this material is counted as %s. Choose such a unit, or write a new material.".formatted(stored.unit().dimension().words())));
        }
        variant(faults, sheet, stored);
        faults.addAll(unknownHazards(sheet));
        offers(faults, sheet.offers(), currencies);
        return faults;
    }

    private static void variant(List<Fault> faults, MaterialSpec sheet, Material stored) {
        if (sheet.variantOf() == null) {
            return;
        }
        Optional<Material> material = Material.byName(sheet.variantOf());
        if (material.isEmpty() || material.get() == stored || material.get().variantOf != null || stored != null && !stored.variants().isEmpty()) {
            faults.add(new Fault("/variant_of", "“%s” is none of your materials that can have variants. Choose one that is no variant itself, or leave this empty.".formatted(sheet.variantOf())));
        } else if (!material.get().unit().dimension().equals(sheet.unit().dimension())) {
            faults.add(new Fault("/unit", "“%s” is counted in %s. Count its variants so too.".formatted(sheet.variantOf(), Formats.words(material.get().unit()))));
        }
    }

    List<Fault> unknownHazards(MaterialSpec sheet) {
        return hazards.isResolvable() ? HazardNames.unknown("/hazards", sheet.hazards(), hazards.get().byId().keySet()) : List.of();
    }

    private static void offers(List<Fault> faults, List<Offer> offers, Function<String, Optional<String>> currencies) {
        for (int i = 0; i < offers.size(); i++) {
            Offer offer = offers.get(i);
            Optional<String> currency = currencies.apply(offer.supplier());
            if (currency.isEmpty()) {
                faults.add(new Fault("/offers/" + i + "/supplier", "“%s” is not among the suppliers. Choose one, or add it there first.".formatted(offer.supplier())));
            } else {
                prices(faults, "/offers/" + i, offer, CurrencyUnit.of(currency.get()));
            }
        }
    }

    private static void prices(List<Fault> faults, String at, Offer offer, CurrencyUnit currency) {
        SupplierRules.coins(faults, at + "/price", offer.price(), currency);
        for (int i = 0; i < offer.breaks().size(); i++) {
            SupplierRules.coins(faults, at + "/breaks/" + i + "/price", offer.breaks().get(i).price(), currency);
        }
    }

    /** @param stored the supplier that takes the sheet; null for a new one */
    public List<Fault> faults(SupplierSpec sheet, Supplier stored) {
        Optional<Supplier> namesake = Supplier.byName(sheet.name());
        return namesake.isEmpty() || namesake.get() == stored
                ? List.of()
                : List.of(new Fault("/name", "There is a supplier called “%s” already. Give this one another name.".formatted(namesake.get().name())));
    }

    /** The units a material may be counted in, as they are written. */
    static List<String> units() {
        return Unit.measured().stream()
                .filter(MaterialRules::counts)
                .map(Unit::symbol)
                .toList();
    }
}
