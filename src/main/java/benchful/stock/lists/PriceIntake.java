package benchful.stock.lists;

import benchful.catalogue.CatalogueRules;
import benchful.web.tables.Table;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;

/** Begins the import of a price list. */
@ApplicationScoped
public class PriceIntake {
    private final CatalogueRules rules;
    private final Clock clock;

    PriceIntake(CatalogueRules rules, Clock clock) {
        this.rules = rules;
        this.clock = clock;
    }

    /**
     * Works out what a list would change; to be called, and written, within one transaction.
     *
     * @param supplier of all rows that name none; null where each names its own
     * @param addsNew true where materials that are not in the catalogue are added
     */
    public PriceImport of(Table table, String supplier, boolean addsNew) {
        return new PriceImport(table, supplier, addsNew, rules, LocalDate.now(clock));
    }
}
