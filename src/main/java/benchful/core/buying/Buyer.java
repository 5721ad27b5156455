package benchful.core.buying;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Buys what stock does not cover, for one class or many, so that packs, deliveries and VAT together cost least.
 *
 * <p>Each material alone at its least price is the start and, deliveries left aside, a bound. Where suppliers charge
 * delivery or set a minimum, {@link OrderSolver} weighs them against each other; the cheaper of both choices is taken.
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
        List<PackChooser.Choice> alone = wants.stream().map(w -> PackChooser.choose(w, request.currency())).toList();
        Money bound = alone.stream().map(PackChooser.Choice::bound).reduce(Money.zero(request.currency()), Money::plus);
        Selection apart = new Selection(wants, alone.stream().map(PackChooser.Choice::packs).toList());
        if (apart.total(request.currency()).isEqual(bound) && apart.meetsMinimums()) {
            return list(apart, bound, true);
        }
        return together(apart, bound);
    }

    private ShoppingList together(Selection apart, Money bound) {
        int[] open = IntStream.range(0, wants.size()).filter(w -> wants.get(w).missing().signum() > 0 && !wants.get(w).offers().isEmpty()).toArray();
        Optional<OrderSolver.Solution> solution = OrderSolver.solve(IntStream.of(open).mapToObj(wants::get).toList());
        if (solution.isEmpty()) {
            return list(apart, bound, false);
        }
        Selection joint = joint(open, solution.get());
        boolean better = !apart.meetsMinimums() || joint.total(request.currency()).isLessThan(apart.total(request.currency()));
        Money least = Money.ofMinor(request.currency(), solution.get().bound());
        return list(joint.coversAll() && better ? joint : apart, least.isGreaterThan(bound) ? least : bound, solution.get().proven());
    }

    private Selection joint(int[] open, OrderSolver.Solution solution) {
        List<Map<PackOffer, Integer>> packs = new ArrayList<>(Collections.nCopies(wants.size(), Map.of()));
        for (int i = 0; i < open.length; i++) {
            packs.set(open[i], solution.packs().get(i));
        }
        return new Selection(wants, packs);
    }

    private ShoppingList list(Selection selection, Money bound, boolean proven) {
        Map<String, SupplierOrder> orders = new TreeMap<>();
        selection.bySupplier().forEach((supplier, purchases) -> orders.put(supplier.name(), SupplierOrder.of(supplier, purchases, request.today())));
        List<Bought> materials = IntStream.range(0, wants.size()).mapToObj(w -> BoughtWords.bought(wants.get(w), selection.purchases(w), request.currency())).toList();
        Money total = orders.values().stream().map(SupplierOrder::total).reduce(Money.zero(request.currency()), Money::plus);
        return new ShoppingList(List.copyOf(orders.values()), materials, total, bound.isGreaterThan(total) ? total : bound, proven);
    }

    /** Offers in the currency of the totals, and in time where any is. */
    private Want buyable(Want want) {
        List<PackOffer> comparable = want.offers().stream().filter(o -> o.supplier().currency().equals(request.currency())).toList();
        List<PackOffer> inTime = comparable.stream().filter(o -> !o.supplier().late(want.arriveBy(), request.today())).toList();
        return new Want(want.material(), want.need(), want.onHand(), inTime.isEmpty() ? comparable : inTime, want.arriveBy());
    }
}
