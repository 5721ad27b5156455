package benchful.stock.sources;

import benchful.catalogue.CatalogueRules;
import benchful.catalogue.Material;
import benchful.catalogue.MaterialRules;
import benchful.catalogue.MaterialSpec;
import benchful.catalogue.MaterialsPages;
import benchful.catalogue.Offer;
import benchful.catalogue.Supplier;
import benchful.catalogue.SupplierSpec;
import benchful.catalogue.suppliers.UsualCurrency;
import benchful.core.Fault;
import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import benchful.stock.Cause;
import benchful.stock.MovementSpec;
import benchful.stock.StockLedger;
import benchful.web.Pages;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Writes down where missing materials come from: what was found is counted as on the shelf, who sells it becomes an offer. A
 * material and a seller that are not written down yet are so from then on.
 */
@ApplicationScoped
class SourceBook {
    private static final String NEARBY = "Shop nearby";

    private final CatalogueRules rules;
    private final StockLedger ledger;
    private final UsualCurrency usual;
    private final Clock clock;

    SourceBook(CatalogueRules rules, StockLedger ledger, UsualCurrency usual, Clock clock) {
        this.rules = rules;
        this.ledger = ledger;
        this.usual = usual;
        this.clock = clock;
    }

    /** Writes all of them down, or nothing. */
    List<Fault> write(SourcesSpec sheet) {
        Taker taker = new Taker(sheet.currency() == null ? usual.code() : sheet.currency());
        List<SourcesSpec.Source> sources = sheet.sources();
        List<Fault> faults = IntStream.range(0, sources.size()).boxed().filter(i -> sources.get(i).says())
                .flatMap(i -> taker.faults("/sources/" + i, sources.get(i))).toList();
        if (faults.isEmpty()) {
            sources.stream().filter(SourcesSpec.Source::says).forEach(taker::write);
        }
        return faults;
    }

    /** Which field of the row a fault of the material's sheet is mended in. */
    private static String place(String pointer, SourcesSpec.Source source) {
        return pointer.endsWith("/price") ? "/price" : pointer.endsWith("/supplier") ? "/seller"
                : pointer.startsWith("/offers/") || source.found() == null ? "/holds" : "/found";
    }

    private static Unit counted(SourcesSpec.Source source) {
        return source.found() != null ? source.found().unit() : source.holds().unit();
    }

    /** What was counted by area and was found in sheets is counted in sheets from now on: only so it is known how it lies. */
    private static MaterialSpec inSheets(MaterialSpec sheet, Quantity found) {
        boolean way = found.unit().counted() != null && found.dimension().equals(Dimension.AREA) && sheet.unit().counted() == null && sheet.unit().dimension().equals(Dimension.AREA);
        return way ? sheet.withUnit(found.unit()) : sheet;
    }

    /** Takes the rows of one plan. */
    private final class Taker {
        private final String currency;

        Taker(String currency) {
            this.currency = currency;
        }

        private Stream<Fault> faults(String at, SourcesSpec.Source source) {
            Optional<Material> known = Material.byName(source.material());
            MaterialSpec sheet = sheet(source, known);
            Optional<String> unlike = Optional.ofNullable(source.found()).flatMap(found -> MovementSpec.unlike(found, sheet.unit()));
            if (unlike.isPresent()) {
                return Stream.of(new Fault(at + "/found", unlike.get()));
            }
            return Stream.concat(MaterialRules.faults(sheet).stream(), rules.faults(sheet, known.orElse(null), this::coin).stream())
                    .map(fault -> new Fault(at + place(fault.pointer(), source), fault.detail()));
        }

        private Optional<String> coin(String seller) {
            return Optional.of(Supplier.byName(seller).map(Supplier::currency).orElseGet(() -> currency));
        }

        /** The material as it will be. */
        private MaterialSpec sheet(SourcesSpec.Source source, Optional<Material> known) {
            MaterialSpec sheet = known.map(MaterialsPages::formSheet).orElseGet(() -> MaterialSpec.of(source.material().strip(), counted(source)));
            return source.sold() ? sheet.withOffers(Stream.concat(sheet.offers().stream(), Stream.of(Offer.of(seller(source), source.holds(), source.price()))).toList())
                    : inSheets(sheet, source.found());
        }

        /** A shop nearby sells in one currency. */
        private String seller(SourcesSpec.Source source) {
            return source.seller() != null ? source.seller().strip() : Supplier.byName(NEARBY).filter(s -> !s.currency().equals(currency)).map(s -> NEARBY + ", " + currency).orElse(NEARBY);
        }

        private void write(SourcesSpec.Source source) {
            Optional<Material> known = Material.byName(source.material()).map(m -> Pages.toChange(Material.class, m.id()));
            MaterialSpec sheet = sheet(source, known);
            LocalDate today = LocalDate.now(clock);
            Material material = known.orElseGet(() -> Material.stored(sheet, this::seller, false, today));
            known.filter(m -> !sheet.equals(MaterialsPages.formSheet(m))).ifPresent(m -> m.replace(sheet, this::seller, today));
            Material.flush();
            if (source.found() != null) {
                Quantity there = ledger.balance(material.id()).onHand();
                ledger.count(material.id(), there.plus(source.found().sized(material.unit()).in(material.unit())), Cause.note("Was here already"));
            }
        }

        private Supplier seller(String name) {
            return Supplier.byName(name).orElseGet(() -> Supplier.stored(new SupplierSpec(name, currency, null, null, null, 0, false, null, null, null), false));
        }
    }
}
