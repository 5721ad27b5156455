package benchful.core.buying;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What to buy where.
 *
 * @param orders one for each supplier, by name
 * @param materials what becomes of each want, in the order asked
 * @param total of all orders, VAT and delivery included
 * @param bound no other choice of packs and suppliers can cost less than this
 * @param proven whether the search was complete: the total is then least, but for what rounding of lines can account for
 */
public record ShoppingList(List<SupplierOrder> orders, List<Bought> materials, Money total, Money bound, boolean proven) {
    public ShoppingList {
        orders = List.copyOf(orders);
        materials = List.copyOf(materials);
        if (bound.isGreaterThan(total)) {
            throw new IllegalArgumentException("The bound %s lies above the total %s.".formatted(bound, total));
        }
    }

    /** The earliest day on which one of the orders must be sent; null where no day is set. */
    public @Nullable LocalDate orderBy() {
        return orders.stream().map(SupplierOrder::orderBy).filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null);
    }

    /** How much cheaper another choice might be at most. */
    public Money gap() {
        return total.minus(bound);
    }

    public String proof() {
        if (gap().isZero()) {
            return "Proven least: no other choice of packs and suppliers costs less.";
        }
        return proven ? "Proven least, but for the rounding of lines, which may make another choice up to %s cheaper.".formatted(gap())
                : "Best choice found; another might cost up to %s less.".formatted(gap());
    }
}
