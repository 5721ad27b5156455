package benchful.plans.materials.cutting;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.StockPiece;
import benchful.core.cutting.CutSheet;
import benchful.core.cutting.NotCuttable;
import benchful.core.cutting.Rectangle;
import benchful.core.cutting.SheetCuttingRequest;
import benchful.core.cutting.SheetOutcome;
import benchful.core.cutting.SheetPlan;
import benchful.core.cutting.SheetStock;
import benchful.core.cutting.StockFloor;
import benchful.core.cutting.patterns.Work;
import benchful.core.cutting.sheets.SheetPlanner;
import benchful.core.needs.Need;
import benchful.core.quantity.Counted;
import benchful.core.quantity.Extent;
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

/**
 * Cuts a material from sheets. Offcuts are kept that hold the smallest rectangle asked for.
 *
 * <p>The rest of what is on hand is taken as whole sheets of the smallest on offer, or as they are counted where none is; what remains has no known shape and is not cut.
 */
class SheetCutter extends StockCutter<Extent, SheetPlan> {
    /** Stock is rounded to what can be measured; whole sheets stay whole [mm2]. */
    private static final BigDecimal ROUNDED = BigDecimal.ONE;
    private static final BigDecimal MOST_SHEETS = BigDecimal.valueOf(1_000);

    SheetCutter(MaterialSpec material, Need need, List<Offer<Extent>> offers) {
        super(material, need, offers);
    }

    @Override
    Attempt<SheetPlan> attempt(List<Extent> from, List<Extent> onHand, List<Extent> planned, Work work) {
        SheetOutcome outcome = SheetPlanner.plan(request(from, onHand, planned), work);
        return outcome instanceof SheetPlan plan ? new Attempt<>(plan, plan.cost(), plan.bound(), null) : new Attempt<>(null, null, null, ((NotCuttable) outcome).reason());
    }

    @Override
    Optional<StockFloor> floor(List<Extent> planned, Work work) {
        return SheetPlanner.floor(request(sizes(), allOnHand(), planned), work);
    }

    private SheetCuttingRequest request(List<Extent> from, List<Extent> onHand, List<Extent> planned) {
        List<Rectangle> pieces = need.cuts().stream().map(c -> new Rectangle(c.label(), c.rectangle(), c.grain(), c.count())).toList();
        Rectangle smallest = pieces.stream().min(Comparator.comparing(p -> p.size().area())).orElseThrow();
        return new SheetCuttingRequest(pieces, onHand, planned, from.stream().map(sheet -> new SheetStock(sheet, cost(sheet))).toList(), loss(material), smallest);
    }

    /** What a cut takes. */
    static Quantity loss(MaterialSpec material) {
        return material.cutLoss() == null ? Quantity.zero(Unit.MM) : material.cutLoss();
    }

    @Override
    List<Extent> known() {
        return KnownPieces.pieces(material).stream().map(StockPiece::sheet).toList();
    }

    @Override
    List<Extent> rest() {
        Quantity rest = known().stream().map(Extent::area).reduce(onHand(), Quantity::minus);
        return offers.stream().map(Offer::size).min(Comparator.comparing(Extent::area)).or(this::counted).map(each -> {
            int number = rest.base().add(ROUNDED).max(BigDecimal.ZERO).divide(each.area().base(), 0, RoundingMode.FLOOR).min(MOST_SHEETS).intValueExact();
            return Collections.nCopies(number, each);
        }).orElse(List.of());
    }

    /** The sheets that it is counted in, where nobody sells any. */
    private Optional<Extent> counted() {
        return Optional.ofNullable(material.unit().counted()).map(Counted::sheet);
    }

    @Override
    Map<Extent, Long> bought(SheetPlan plan) {
        return plan.sheets().stream().filter(CutSheet::bought).collect(Collectors.groupingBy(CutSheet::size, LinkedHashMap::new, Collectors.counting()));
    }

    @Override
    SheetPlan amongPurchases(SheetPlan plan, BigDecimal cost, BigDecimal bound) {
        return plan.amongPurchases(cost, bound);
    }

    @Override
    Cutting cutting(SheetPlan plan) {
        return Cutting.of(plan, CutUse.of(plan, allOnHand(), onHand()));
    }
}
