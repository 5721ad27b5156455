package benchful.plans;

import benchful.catalogue.MaterialSheet;
import benchful.core.buying.Buyer;
import benchful.core.buying.PackOffer;
import benchful.core.buying.Want;
import benchful.core.cutting.CuttingOutcome;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.CuttingPlanner;
import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.NotCuttable;
import benchful.core.cutting.Piece;
import benchful.core.needs.CutNeed;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Plans the cutting of one material and what must be bought for it: every stock length on offer is planned, and the one
 * whose packs cost least is taken. What is on hand counts as one length. Offcuts are kept from the shortest piece on.
 */
final class Cutter {
    private final MaterialSheet material;
    private final Need need;
    private final CurrencyUnit currency;
    private final LocalDate arriveBy;

    Cutter(MaterialSheet material, Need need, CurrencyUnit currency, LocalDate arriveBy) {
        this.material = material;
        this.need = need;
        this.currency = currency;
        this.arriveBy = arriveBy;
    }

    /**
     * @param plan null where it can't be cut
     * @param want what to buy for it
     * @param problem why it can't be cut; null where it can
     */
    record Cutting(CuttingPlan plan, Want want, Sentence problem) {}

    /** @param offers packs with the stock length each comes in */
    Cutting cut(List<LengthOffer> offers) {
        List<Cutting> plans = new ArrayList<>();
        List<Cutting> problems = new ArrayList<>();
        for (Quantity length : offers.stream().map(LengthOffer::length).distinct().toList()) {
            List<PackOffer> packs = offers.stream().filter(o -> o.length().equals(length)).map(LengthOffer::pack).toList();
            add(CuttingPlanner.plan(request(length)), length, packs, plans, problems);
        }
        if (offers.isEmpty()) {
            add(CuttingPlanner.plan(request(null)), null, List.of(), plans, problems);
        }
        Optional<Cutting> best = plans.stream().min(Comparator.comparing(this::cost).thenComparing(c -> c.plan().bought()));
        return best.orElseGet(() -> problems.get(0));
    }

    private void add(CuttingOutcome outcome, Quantity length, List<PackOffer> packs, List<Cutting> plans, List<Cutting> problems) {
        if (outcome instanceof CuttingPlan plan) {
            Quantity bought = length == null ? Quantity.zero(material.unit()) : length.times(plan.bought());
            plans.add(new Cutting(plan, want(bought, Quantity.zero(material.unit()), packs), null));
        } else if (outcome instanceof NotCuttable not) {
            problems.add(new Cutting(null, want(need.total(), onHand(), List.of()), not.reason()));
        }
    }

    private Money cost(Cutting cutting) {
        return Buyer.alone(cutting.want(), currency);
    }

    private Want want(Quantity amount, Quantity onHand, List<PackOffer> packs) {
        return new Want(material.name(), amount, onHand, packs, arriveBy);
    }

    private CuttingRequest request(Quantity stock) {
        List<Piece> pieces = need.cuts().stream().map(c -> new Piece(c.label(), c.length(), c.count())).toList();
        Quantity shortest = need.cuts().stream().map(CutNeed::length).min(Comparator.naturalOrder()).orElseThrow();
        Quantity loss = material.cutLoss() == null ? Quantity.zero(material.unit()) : material.cutLoss();
        return new CuttingRequest(pieces, List.of(onHand()), stock, loss, shortest);
    }

    private Quantity onHand() {
        return material.onHand() == null ? Quantity.zero(material.unit()) : material.onHand();
    }

    /** @param length one stock length of the pack */
    record LengthOffer(Quantity length, PackOffer pack) {}
}
