package benchful.plans;

import benchful.catalogue.MaterialSheet;
import benchful.core.buying.Buyer;
import benchful.core.buying.PackOffer;
import benchful.core.buying.Want;
import benchful.core.cutting.CutLength;
import benchful.core.cutting.CuttingOutcome;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.CuttingPlanner;
import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.NotCuttable;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Stock;
import benchful.core.needs.CutNeed;
import benchful.core.needs.Need;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Plans the cutting of one material and what must be bought for it. All stock lengths on offer are weighed against each
 * other at what one of each costs; each alone is planned too, and the plan whose whole packs cost least is taken.
 * Offcuts are kept from the shortest piece on.
 *
 * <p>Offcuts of known length are cut first. How the rest of what is on hand divides into lengths is not recorded, so it is taken
 * as lengths of the shortest on offer and one remainder: what is longer on the shelf can only serve better.
 */
final class Cutter {
    private static final BigDecimal MOST_LENGTHS = BigDecimal.valueOf(10_000);

    private final MaterialSheet material;
    private final Need need;
    private final CurrencyUnit currency;
    private final LocalDate arriveBy;
    private final List<LengthOffer> offers;

    /** @param offers packs with the stock length each comes in */
    Cutter(MaterialSheet material, Need need, CurrencyUnit currency, LocalDate arriveBy, List<LengthOffer> offers) {
        this.material = material;
        this.need = need;
        this.currency = currency;
        this.arriveBy = arriveBy;
        this.offers = offers;
    }

    /** @param length one stock length of the pack */
    record LengthOffer(Quantity length, PackOffer pack) {
        /** One length's part of the pack's price with VAT. */
        BigDecimal cost() {
            return pack.costOf(length);
        }
    }

    Cutting cut() {
        List<Quantity> known = known();
        List<Quantity> rest = rest();
        List<Quantity> onHand = Stream.concat(known.stream(), rest.stream()).toList();
        List<CuttingOutcome> outcomes = candidates().map(stocks -> Known.<Quantity, CuttingOutcome>first(known, rest, list -> CuttingPlanner.plan(request(stocks, list)),
                outcome -> outcome instanceof CuttingPlan plan ? plan.cost() : null)).toList();
        return outcomes.stream().filter(CuttingPlan.class::isInstance).map(CuttingPlan.class::cast)
                .map(plan -> Cutting.of(plan, wants(plan), CutUse.of(plan, onHand, material.unit())))
                .min(Comparator.comparing(this::cost))
                .orElseGet(() -> Cutting.none(unmet(), ((NotCuttable) outcomes.get(0)).reason()));
    }

    /** All stock lengths together first, so that it is taken where another costs the same. */
    private Stream<List<Stock>> candidates() {
        List<Stock> all = offers.stream().map(LengthOffer::length).distinct().map(this::stock).toList();
        return all.size() < 2 ? Stream.of(all) : Stream.concat(Stream.of(all), all.stream().map(List::of));
    }

    private Stock stock(Quantity length) {
        BigDecimal cost = offers.stream().filter(o -> o.length().equals(length)).map(LengthOffer::cost).min(Comparator.naturalOrder()).orElseThrow();
        return new Stock(length, cost);
    }

    private Money cost(Cutting cutting) {
        return cutting.wants().stream().map(want -> Buyer.alone(want, currency)).reduce(Money.zero(currency), Money::plus);
    }

    private List<Want> wants(CuttingPlan plan) {
        List<Quantity> lengths = plan.lengths().stream().filter(CutLength::bought).map(CutLength::length).distinct().toList();
        return lengths.stream().map(length -> {
            long number = plan.lengths().stream().filter(l -> l.bought() && l.length().equals(length)).count();
            List<PackOffer> packs = offers.stream().filter(o -> o.length().equals(length)).map(LengthOffer::pack).toList();
            return new Want(material.name(), length.times(number).in(material.unit()), Quantity.zero(material.unit()), packs, arriveBy);
        }).toList();
    }

    private Want unmet() {
        return new Want(material.name(), need.total(), Quantity.zero(material.unit()), List.of(), arriveBy);
    }

    private CuttingRequest request(List<Stock> stocks, List<Quantity> onHand) {
        List<Piece> pieces = need.cuts().stream().map(c -> new Piece(c.label(), c.length(), c.count())).toList();
        Quantity shortest = need.cuts().stream().map(CutNeed::length).min(Comparator.naturalOrder()).orElseThrow();
        Quantity loss = material.cutLoss() == null ? Quantity.zero(material.unit()) : material.cutLoss();
        return new CuttingRequest(pieces, onHand, stocks, loss, shortest);
    }

    /** Pieces of known size, as far as they are among what is on hand. */
    private List<Quantity> known() {
        return Known.pieces(material).stream().map(p -> p.length().in(material.unit())).toList();
    }

    private Quantity all() {
        return material.onHand() == null ? Quantity.zero(material.unit()) : material.onHand().in(material.unit());
    }

    /** What is left of the rest first, then lengths as they are sold. */
    private List<Quantity> rest() {
        Quantity rest = known().stream().reduce(all(), Quantity::minus);
        if (rest.signum() <= 0) {
            return List.of();
        }
        Quantity each = offers.stream().map(LengthOffer::length).min(Comparator.naturalOrder()).orElse(rest).in(material.unit());
        int number = rest.amount().divide(each.amount(), 0, RoundingMode.FLOOR).min(MOST_LENGTHS).intValueExact();
        Quantity last = rest.minus(each.times(number));
        return Stream.concat(Stream.of(last).filter(q -> q.signum() > 0), Collections.nCopies(number, each).stream()).toList();
    }
}
