package benchful.core.buying;

import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Packs that cover all wants, and what is known of others.
 *
 * @param bound no other choice costs less
 * @param proven what lies between the total and the bound is rounding of lines
 */
record Choice(Selection selection, Money total, Money bound, boolean proven) {
    static Choice of(Selection selection, CurrencyUnit currency, Money bound, boolean proven) {
        Money total = selection.total(currency);
        return new Choice(selection, total, bound.isGreaterThan(total) ? total : bound, proven);
    }

    /** The one that suppliers take, where only one is; else the cheaper; of equal ones this. */
    Choice or(Choice other) {
        boolean taken = selection.meetsMinimums();
        boolean otherTaken = other.selection.meetsMinimums();
        boolean better = taken == otherTaken ? other.total.isLessThan(total) : otherTaken;
        return better ? other : this;
    }

    Choice known(Money least, boolean settled) {
        return new Choice(selection, total, least.isGreaterThan(total) ? total : least, settled);
    }
}
