package benchful.catalogue;

import benchful.core.Fault;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** What must agree within a supplier's sheet: a currency there is, and amounts in its smallest coin. */
public final class SupplierRules {
    private SupplierRules() {}

    public static List<Fault> faults(SupplierSpec sheet) {
        try {
            return amounts(sheet, CurrencyUnit.of(sheet.currency()));
        } catch (IllegalCurrencyException e) {
            return List.of(new Fault("/currency", "“%s” is no currency. Give its three letters, such as GBP, EUR or USD.".formatted(sheet.currency())));
        }
    }

    private static List<Fault> amounts(SupplierSpec sheet, CurrencyUnit currency) {
        List<Fault> faults = new ArrayList<>();
        coins(faults, "/minimum_order", sheet.minimumOrder(), currency);
        coins(faults, "/delivery", sheet.delivery(), currency);
        coins(faults, "/free_above", sheet.freeAbove(), currency);
        return List.copyOf(faults);
    }

    /** Adds a fault where an amount has parts of the smallest coin. */
    static void coins(List<Fault> faults, String at, BigDecimal amount, CurrencyUnit currency) {
        if (amount != null && amount.stripTrailingZeros().scale() > currency.getDecimalPlaces()) {
            faults.add(new Fault(at, "Give an amount in %s with at most %d decimals.".formatted(currency.getCode(), currency.getDecimalPlaces())));
        }
    }
}
