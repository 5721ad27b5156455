package benchful.core.buying;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.joda.money.Money;

/** Value added tax, line by line, each rounded half up to the currency's smallest unit. */
public final class Vat {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private Vat() {}

    /** The tax on a net amount. */
    public static Money on(Money net, BigDecimal percent) {
        return net.toBigMoney().multipliedBy(percent.movePointLeft(2)).toMoney(RoundingMode.HALF_UP);
    }

    /** The tax within a gross amount: gross x percent / (100 + percent); at 20 % one sixth. */
    public static Money in(Money gross, BigDecimal percent) {
        return Money.of(gross.getCurrencyUnit(),
                gross.getAmount().multiply(percent).divide(HUNDRED.add(percent), gross.getScale(), RoundingMode.HALF_UP));
    }
}
