package benchful.core.cutting.patterns;

import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as whole micrometres, what can be bought and what is on hand rounded down, what is needed rounded up. */
public final class Micrometres {
    /** Half a metre counted in feet is half a metre, although its division did not end. */
    private static final int GUARD = 6;

    private Micrometres() {}

    public static long up(Quantity length) {
        return of(length, RoundingMode.CEILING);
    }

    public static long down(Quantity length) {
        return of(length, RoundingMode.FLOOR);
    }

    /** A stock length as plans count it and name it in their answers. */
    public static Quantity whole(Quantity stock) {
        return quantity(down(stock));
    }

    /** A sheet as plans count it and name it in their answers. */
    public static Extent whole(Extent stock) {
        return new Extent(whole(stock.length()), whole(stock.width()));
    }

    public static Quantity quantity(long micrometres) {
        return new Quantity(BigDecimal.valueOf(micrometres, 3), Unit.MM);
    }

    private static long of(Quantity length, RoundingMode mode) {
        BigDecimal micrometres = length.in(Unit.MM).amount().movePointRight(3);
        return micrometres.setScale(GUARD, RoundingMode.HALF_UP).setScale(0, mode).longValueExact();
    }
}
