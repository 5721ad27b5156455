package benchful.core.buying;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Buys what stock does not cover, for one class or many, so that packs, deliveries and VAT together cost least.
 *
 * <p>{@link FixedNeeds} meets needs as they are; where material is cut, {@link MixSearch} chooses also from which sizes.
 * Suppliers who can't deliver in time are passed over where another can.
 */
public final class Buyer {
    private final BuyingRequest request;
    private final List<Want> wants;

    private Buyer(BuyingRequest request) {
        this.request = request;
        this.wants = request.wants().stream().map(this::buyable).toList();
    }

    public static ShoppingList buy(BuyingRequest request) {
        return new Buyer(request).buy();
    }

    /** What one material costs bought alone, with VAT, deliveries left aside; what can't be had counts nothing. */
    public static Money alone(Want want, CurrencyUnit currency) {
        return PackChooser.choose(want, currency).price();
    }

    private ShoppingList buy() {
        Choice choice = request.assortments().isEmpty() ? FixedNeeds.choose(wants, request.currency(), new Effort())
                : new MixSearch(wants, request.assortments(), request.currency()).choose();
        return list(choice);
    }

    private ShoppingList list(Choice choice) {
        Selection selection = choice.selection();
        Map<String, SupplierOrder> orders = new TreeMap<>();
        selection.bySupplier().forEach((supplier, purchases) -> orders.put(supplier.name(), SupplierOrder.of(supplier, purchases, request.today())));
        List<Bought> materials = IntStream.range(0, wants.size())
                .mapToObj(w -> BoughtWords.bought(selection.wants().get(w), selection.purchases(w), request.currency())).toList();
        return new ShoppingList(List.copyOf(orders.values()), materials, choice.total(), choice.bound(), choice.proven());
    }

    /** Offers in the currency of the totals, and in time where any is. */
    private Want buyable(Want want) {
        List<PackOffer> comparable = want.offers().stream().filter(o -> o.supplier().currency().equals(request.currency())).toList();
        List<PackOffer> inTime = comparable.stream().filter(o -> !o.supplier().late(want.arriveBy(), request.today())).toList();
        return new Want(want.material(), want.need(), want.onHand(), inTime.isEmpty() ? comparable : inTime, want.arriveBy());
    }
}
