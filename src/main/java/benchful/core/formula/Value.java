package benchful.core.formula;

import benchful.core.quantity.Dimension;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;

/** A number in base units with its dimension: what a formula works with between its signs. */
record Value(BigDecimal number, Dimension dimension) {
    static Value of(Quantity q) {
        return new Value(q.base(), q.dimension());
    }

    static Value count(BigDecimal number) {
        return new Value(number, Dimension.COUNT);
    }

    boolean isCount() {
        return dimension.equals(Dimension.COUNT);
    }
}
