package benchful.core.buying;

import java.math.BigDecimal;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * What an order comes to. VAT is reckoned line by line and on the delivery, each rounded half up, and then added.
 *
 * @param goods value of the lines before VAT
 * @param delivery before VAT
 * @param vat of all lines and of the delivery
 * @param total goods, delivery and VAT
 */
public record Totals(Money goods, Money delivery, Money vat, Money total) {

    /** @param percent of VAT on the delivery */
    public static Totals of(List<Purchase> lines, Money delivery, BigDecimal percent) {
        Money goods = goods(lines, delivery.getCurrencyUnit());
        Money vat = lines.stream().map(Purchase::vat).reduce(Vat.on(delivery, percent), Money::plus);
        return new Totals(goods, delivery, vat, goods.plus(delivery).plus(vat));
    }

    static Money goods(List<Purchase> lines, CurrencyUnit currency) {
        return lines.stream().map(Purchase::net).reduce(Money.zero(currency), Money::plus);
    }
}
