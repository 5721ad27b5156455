package benchful.plans.materials.cutting;

import benchful.catalogue.MaterialSpec;
import benchful.core.cutting.CutLength;
import benchful.core.cutting.CuttingOutcome;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.NotCuttable;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Stock;
import benchful.core.cutting.StockFloor;
import benchful.core.cutting.lengths.CuttingPlanner;
import benchful.core.cutting.patterns.Work;
import benchful.core.needs.CutNeed;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Cuts a material from lengths. Offcuts are kept from the shortest piece on.
 *
 * <p>How the rest of what is on hand divides into lengths is not recorded, so it is taken as lengths of the shortest on offer and
 * one remainder: what is longer on the shelf can only serve better.
 */
final class LengthCutter extends StockCutter<Quantity, CuttingPlan> {
    /** Stock is rounded to what can be measured; whole lengths stay whole. */
    private static final Quantity ROUNDED = Quantity.of("0.01", Unit.MM);
    private static final BigDecimal MOST_LENGTHS = BigDecimal.valueOf(10_000);

    LengthCutter(MaterialSpec material, Need need, List<Offer<Quantity>> offers) {
        super(material, need, offers);
    }

    @Override
    Attempt<CuttingPlan> attempt(List<Quantity> from, List<Quantity> onHand, List<Quantity> planned, Work work) {
        CuttingOutcome outcome = CuttingPlanner.plan(request(from, onHand, planned), work);
        return outcome instanceof CuttingPlan plan ? new Attempt<>(plan, plan.cost(), plan.bound(), null) : new Attempt<>(null, null, null, ((NotCuttable) outcome).reason());
    }

    @Override
    Optional<StockFloor> floor(List<Quantity> planned, Work work) {
        return CuttingPlanner.floor(request(sizes(), allOnHand(), planned), work);
    }

    private CuttingRequest request(List<Quantity> from, List<Quantity> onHand, List<Quantity> planned) {
        List<Piece> pieces = need.cuts().stream().map(c -> new Piece(c.label(), c.length(), c.count())).toList();
        Quantity shortest = need.cuts().stream().map(CutNeed::length).min(Comparator.naturalOrder()).orElseThrow();
        Quantity loss = material.cutLoss() == null ? Quantity.zero(material.unit()) : material.cutLoss();
        return new CuttingRequest(pieces, onHand, planned, from.stream().map(length -> new Stock(length, cost(length))).toList(), loss, shortest);
    }

    @Override
    List<Quantity> known() {
        return KnownPieces.pieces(material).stream().map(p -> p.length().in(material.unit())).toList();
    }

    /** What is left over first, then lengths as they are sold. */
    @Override
    List<Quantity> rest() {
        Quantity rest = known().stream().reduce(onHand(), Quantity::minus);
        if (rest.signum() <= 0) {
            return List.of();
        }
        Quantity each = offers.stream().map(Offer::size).min(Comparator.naturalOrder()).orElse(rest).in(material.unit());
        int number = rest.plus(ROUNDED).amount().divide(each.amount(), 0, RoundingMode.FLOOR).min(MOST_LENGTHS).intValueExact();
        Quantity last = rest.minus(each.times(number));
        return Stream.concat(Stream.of(last).filter(q -> q.compareTo(ROUNDED) > 0), Collections.nCopies(number, each).stream()).toList();
    }

    @Override
    Map<Quantity, Long> bought(CuttingPlan plan) {
        return plan.lengths().stream().filter(CutLength::bought).collect(Collectors.groupingBy(CutLength::length, LinkedHashMap::new, Collectors.counting()));
    }

    @Override
    CuttingPlan amongPurchases(CuttingPlan plan, BigDecimal cost, BigDecimal bound) {
        return plan.amongPurchases(cost, bound);
    }

    @Override
    Cutting cutting(CuttingPlan plan) {
        return Cutting.of(plan, CutUse.of(plan, allOnHand(), material.unit()));
    }
}
