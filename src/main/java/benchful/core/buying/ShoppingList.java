package benchful.core.buying;

import java.util.List;
import org.joda.money.Money;

/**
 * What to buy where.
 *
 * @param orders one for each supplier, by name
 * @param materials what becomes of each want, in the order asked
 * @param total of all orders, VAT and delivery included
 * @param bound no other choice of packs and suppliers can cost less than this
 */
public record ShoppingList(List<SupplierOrder> orders, List<Bought> materials, Money total, Money bound) {
    public ShoppingList {
        orders = List.copyOf(orders);
        materials = List.copyOf(materials);
        if (bound.isGreaterThan(total)) {
            throw new IllegalArgumentException("The bound %s lies above the total %s.".formatted(bound, total));
        }
    }

    public boolean isProven() {
        return bound.isEqual(total);
    }

    /** How much cheaper another choice might be at most. */
    public Money gap() {
        return total.minus(bound);
    }

    public String proof() {
        return isProven() ? "Proven least: no other choice of packs and suppliers costs less."
                : "Best choice found; another might cost up to %s less.".formatted(gap());
    }
}
