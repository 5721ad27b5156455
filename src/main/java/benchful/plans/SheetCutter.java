package benchful.plans;

import benchful.catalogue.MaterialSheet;
import benchful.catalogue.StockPiece;
import benchful.core.buying.Buyer;
import benchful.core.buying.PackOffer;
import benchful.core.buying.Want;
import benchful.core.cutting.NotCuttable;
import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetOutcome;
import benchful.core.cutting.SheetPlan;
import benchful.core.cutting.SheetPlanner;
import benchful.core.cutting.SheetStock;
import benchful.core.needs.Need;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
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
 * Plans the cutting of one material from sheets and what must be bought for it, as {@link Cutter} does for lengths. Offcuts
 * are kept that hold the smallest rectangle asked for.
 *
 * <p>Offcuts of known size are cut first. The rest of what is on hand is taken as whole sheets of the smallest on offer; what
 * remains has no known shape and is not cut.
 */
final class SheetCutter {
    private static final BigDecimal MOST_SHEETS = BigDecimal.valueOf(1_000);

    private final MaterialSheet material;
    private final Need need;
    private final CurrencyUnit currency;
    private final LocalDate arriveBy;
    private final List<SheetOffer> offers;

    /** @param offers packs with the sheet each holds */
    SheetCutter(MaterialSheet material, Need need, CurrencyUnit currency, LocalDate arriveBy, List<SheetOffer> offers) {
        this.material = material;
        this.need = need;
        this.currency = currency;
        this.arriveBy = arriveBy;
        this.offers = offers;
    }

    /** @param sheet one sheet of the pack */
    record SheetOffer(Extent sheet, PackOffer pack) {
        /** One sheet's part of the pack's price with VAT. */
        BigDecimal cost() {
            return pack.costOf(sheet.area());
        }
    }

    Cutting cut() {
        List<Extent> known = known();
        List<Extent> whole = whole();
        List<Extent> onHand = Stream.concat(known.stream(), whole.stream()).toList();
        List<SheetOutcome> outcomes = candidates().map(stocks -> Known.<Extent, SheetOutcome>first(known, whole, list -> SheetPlanner.plan(request(stocks, list)),
                outcome -> outcome instanceof SheetPlan plan ? plan.cost() : null)).toList();
        return outcomes.stream().filter(SheetPlan.class::isInstance).map(SheetPlan.class::cast)
                .map(plan -> Cutting.of(plan, wants(plan), CutUse.of(plan, onHand, all())))
                .min(Comparator.comparing(this::cost))
                .orElseGet(() -> Cutting.none(unmet(), ((NotCuttable) outcomes.get(0)).reason()));
    }

    /** All sheets together first, so that it is taken where another costs the same. */
    private Stream<List<SheetStock>> candidates() {
        List<SheetStock> all = offers.stream().map(SheetOffer::sheet).distinct().map(this::stock).toList();
        return all.size() < 2 ? Stream.of(all) : Stream.concat(Stream.of(all), all.stream().map(List::of));
    }

    private SheetStock stock(Extent sheet) {
        return new SheetStock(sheet, offers.stream().filter(o -> o.sheet().equals(sheet)).map(SheetOffer::cost).min(Comparator.naturalOrder()).orElseThrow());
    }

    private Money cost(Cutting cutting) {
        return cutting.wants().stream().map(want -> Buyer.alone(want, currency)).reduce(Money.zero(currency), Money::plus);
    }

    private List<Want> wants(SheetPlan plan) {
        List<Extent> sizes = plan.sheets().stream().filter(s -> s.bought()).map(s -> s.size()).distinct().toList();
        return sizes.stream().map(size -> {
            long number = plan.sheets().stream().filter(s -> s.bought() && s.size().equals(size)).count();
            List<PackOffer> packs = offers.stream().filter(o -> o.sheet().equals(size)).map(SheetOffer::pack).toList();
            return new Want(material.name(), size.area().times(number).in(material.unit()), Quantity.zero(material.unit()), packs, arriveBy);
        }).toList();
    }

    private Want unmet() {
        return new Want(material.name(), need.total(), Quantity.zero(material.unit()), List.of(), arriveBy);
    }

    private SheetCuttingRequest request(List<SheetStock> stocks, List<Extent> onHand) {
        List<Rectangle> pieces = need.cuts().stream().map(c -> new Rectangle(c.label(), c.rectangle(), c.grain(), c.count())).toList();
        Rectangle smallest = pieces.stream().min(Comparator.comparing(p -> p.size().area())).orElseThrow();
        Quantity loss = material.cutLoss() == null ? Quantity.zero(Unit.MM) : material.cutLoss();
        return new SheetCuttingRequest(pieces, onHand, stocks, loss, smallest);
    }

    private Quantity all() {
        return material.onHand() == null ? Quantity.zero(material.unit()) : material.onHand().in(material.unit());
    }

    /** Sheets of known size, as far as they are among what is on hand. */
    private List<Extent> known() {
        return Known.pieces(material).stream().map(StockPiece::sheet).toList();
    }

    private List<Extent> whole() {
        Quantity rest = known().stream().map(Extent::area).reduce(all(), Quantity::minus);
        return offers.stream().map(SheetOffer::sheet).min(Comparator.comparing(Extent::area)).map(each -> {
            int number = rest.base().max(BigDecimal.ZERO).divide(each.area().base(), 0, RoundingMode.FLOOR).min(MOST_SHEETS).intValueExact();
            return Collections.nCopies(number, each);
        }).orElse(List.of());
    }
}
