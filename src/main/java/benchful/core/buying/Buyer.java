package benchful.core.buying;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Buys what stock does not cover: for each material the packs at the least price, gathered into one order a supplier with
 * its delivery. The bound takes every material at the least price and no delivery.
 */
public final class Buyer {
    private Buyer() {}

    public static ShoppingList buy(BuyingRequest request) {
        Map<Supplier, List<Purchase>> bySupplier = new LinkedHashMap<>();
        List<Bought> materials = new ArrayList<>();
        Money bound = Money.zero(request.currency());
        for (Want want : request.wants()) {
            List<Purchase> purchases = new ArrayList<>();
            PackChooser.Choice choice = PackChooser.choose(comparable(want, request), request.currency());
            bound = bound.plus(choice.bound());
            choice.packs().forEach((offer, packs) -> {
                Purchase purchase = Purchase.of(want.material(), offer, packs);
                purchases.add(purchase);
                bySupplier.computeIfAbsent(offer.supplier(), s -> new ArrayList<>()).add(purchase);
            });
            materials.add(bought(want, purchases));
        }
        return list(request, bySupplier, materials, bound);
    }

    /** What one material costs bought alone, with VAT, deliveries left aside; the need where it can't be met counts nothing. */
    public static Money alone(Want want, CurrencyUnit currency) {
        return PackChooser.choose(want, currency).price();
    }

    private static ShoppingList list(
            BuyingRequest request, Map<Supplier, List<Purchase>> bySupplier, List<Bought> materials, Money bound) {
        Map<String, SupplierOrder> orders = new TreeMap<>();
        bySupplier.forEach((supplier, purchases) -> orders.put(supplier.name(), SupplierOrder.of(supplier, purchases, request)));
        Money none = Money.zero(request.currency());
        Money total = orders.values().stream().map(SupplierOrder::total).reduce(none, Money::plus);
        return new ShoppingList(List.copyOf(orders.values()), materials, total, bound);
    }

    private static Want comparable(Want want, BuyingRequest request) {
        List<PackOffer> same = want.offers().stream().filter(o -> o.supplier().currency().equals(request.currency())).toList();
        return new Want(want.material(), want.need(), want.onHand(), same);
    }

    private static Bought bought(Want want, List<Purchase> purchases) {
        Quantity none = Quantity.zero(want.need().unit());
        Quantity bought = purchases.stream().map(Purchase::bought).reduce(none, Quantity::plus);
        Quantity balance = tidy(want.onHand().in(want.need().unit()).plus(bought).minus(want.need()));
        Quantity unmet = balance.signum() < 0 ? balance.times(-1) : none;
        return new Bought(want.material(), want.need(), want.onHand(), want.missing(), bought,
                balance.signum() > 0 ? balance : none, unmet, reasons(want, purchases, balance));
    }

    private static List<Sentence> reasons(Want want, List<Purchase> purchases, Quantity balance) {
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(want.onHand().signum() == 0
                ? Sentence.of("%s are needed and none is on hand.", want.need())
                : Sentence.of("%s are needed, %s are on hand, so %s are missing.", want.need(), want.onHand(), want.missing()));
        purchases.forEach(p -> reasons.add(Sentence.of("%s of %s at %s: %s before VAT.",
                p.packs() == 1 ? "1 pack" : p.packs() + " packs", p.holds(), p.price(), p.net())));
        if (balance.signum() < 0) {
            reasons.add(Sentence.of("No offer in the class's currency covers %s.", balance.times(-1)));
        } else {
            reasons.add(Sentence.of("%s are left over.", balance));
        }
        return reasons;
    }

    private static Quantity tidy(Quantity q) {
        return q.rounded(9, RoundingMode.HALF_UP);
    }
}
