package benchful.stock.lists;

import benchful.stock.StockLedger;
import benchful.web.tables.Table;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;

/** Reads price lists and stock lists: first what they would change, then, where that is still the same, all of it at once. */
@ApplicationScoped
class ListImports {
    private final PriceIntake prices;
    private final StockLedger ledger;
    private final Clock clock;

    ListImports(PriceIntake prices, StockLedger ledger, Clock clock) {
        this.prices = prices;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** What is missing for the table to be such a list; nothing where it is one. */
    Optional<String> missing(Table table, ListForm form) {
        return form.prices() ? PriceList.missing(table) : StockList.missing(table);
    }

    @Transactional
    ImportPreview preview(Table table, ListForm form) {
        return form.prices() ? prices(table, form).preview() : stock(table, form).preview();
    }

    /**
     * Imports the list, if what it does is what was seen.
     *
     * @return what it did, or would do where that is not what was seen: then nothing is imported
     */
    @Transactional
    ImportPreview write(Table table, ListForm form, String seen) {
        if (form.prices()) {
            PriceImport list = prices(table, form);
            return written(list.preview(), seen, list::write);
        }
        StockImport list = stock(table, form);
        return written(list.preview(), seen, list::write);
    }

    private static ImportPreview written(ImportPreview preview, String seen, Runnable write) {
        if (preview.ready() && preview.seen().equals(seen)) {
            write.run();
        }
        return preview;
    }

    private PriceImport prices(Table table, ListForm form) {
        return prices.of(table, form.supplier().isBlank() ? null : form.supplier(), form.addsNew());
    }

    private StockImport stock(Table table, ListForm form) {
        return new StockImport(table, form.addsNew(), ledger, LocalDate.now(clock));
    }
}
