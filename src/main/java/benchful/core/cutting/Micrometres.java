package benchful.core.cutting;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as whole micrometres. */
final class Micrometres {
    private Micrometres() {}

    static long up(Quantity length) {
        return of(length, RoundingMode.CEILING);
    }

    static long down(Quantity length) {
        return of(length, RoundingMode.FLOOR);
    }

    static Quantity quantity(long micrometres) {
        return new Quantity(BigDecimal.valueOf(micrometres, 3), Unit.MM);
    }

    private static long of(Quantity length, RoundingMode mode) {
        return length.in(Unit.MM).amount().movePointRight(3).setScale(0, mode).longValueExact();
    }
}
