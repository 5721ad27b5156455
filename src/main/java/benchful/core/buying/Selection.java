package benchful.core.buying;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Packs for each want, reckoned exactly.
 *
 * @param packs for each want, by offer
 */
record Selection(List<Want> wants, List<Map<PackOffer, Integer>> packs) {
    List<Purchase> purchases(int want) {
        return packs.get(want).entrySet().stream().map(e -> Purchase.of(wants.get(want), e.getKey(), e.getValue())).toList();
    }

    Map<Supplier, List<Purchase>> bySupplier() {
        Map<Supplier, List<Purchase>> bySupplier = new LinkedHashMap<>();
        for (int w = 0; w < packs.size(); w++) {
            Want want = wants.get(w);
            packs.get(w).forEach((offer, n) ->
                    bySupplier.computeIfAbsent(offer.supplier(), s -> new ArrayList<>()).add(Purchase.of(want, offer, n)));
        }
        return bySupplier;
    }

    Money total(CurrencyUnit currency) {
        Money total = Money.zero(currency);
        for (Map.Entry<Supplier, List<Purchase>> order : bySupplier().entrySet()) {
            total = total.plus(SupplierOrder.of(order.getKey(), order.getValue(), null).total());
        }
        return total;
    }

    boolean meetsMinimums() {
        return bySupplier().entrySet().stream().allMatch(o -> SupplierOrder.of(o.getKey(), o.getValue(), null).shortOfMinimum() == null);
    }

    boolean covers(int want) {
        return purchases(want).stream().map(Purchase::bought).reduce((a, b) -> a.plus(b))
                .map(bought -> bought.compareTo(wants.get(want).missing()) >= 0)
                .orElse(wants.get(want).missing().signum() == 0 || wants.get(want).offers().isEmpty());
    }

    boolean coversAll() {
        for (int w = 0; w < wants.size(); w++) {
            if (!covers(w)) {
                return false;
            }
        }
        return true;
    }
}
