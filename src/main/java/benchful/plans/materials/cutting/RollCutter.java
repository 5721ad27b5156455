package benchful.plans.materials.cutting;

import benchful.catalogue.MaterialSpec;
import benchful.core.cutting.SheetPlan;
import benchful.core.cutting.StockFloor;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.cutting.patterns.Work;
import benchful.core.needs.CutNeed;
import benchful.core.needs.Need;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Cuts cloth, paper or leather off a roll: a strip of its width and of any length that the seller measures off is as one sheet. No
 * more is claimed of a plan than that no area costs less, since lengths between those that were tried might do.
 */
final class RollCutter extends SheetCutter {
    private static final int DECIMALS = 4;
    private final List<Offer<Extent>> sold;

    private RollCutter(MaterialSpec material, Need need, List<Offer<Extent>> sold, List<Offer<Extent>> lengths) {
        super(material, need, lengths);
        this.sold = sold;
    }

    /** @param sold packs of sheets, and of a roll the least that is measured off */
    static SheetCutter of(MaterialSpec material, Need need, List<Offer<Extent>> sold) {
        if (sold.stream().noneMatch(RollLengths::isRoll) && !material.unit().runs()) {
            return new SheetCutter(material, need, sold);
        }
        return new RollCutter(material, need, sold, new RollLengths(need, material.shelved(), Micrometres.up(loss(material))).of(sold));
    }

    @Override
    Attempt<SheetPlan> attempt(List<Extent> from, List<Extent> onHand, List<Extent> planned, Work work) {
        Attempt<SheetPlan> attempt = super.attempt(from, onHand, planned, work);
        if (attempt.plan() == null) {
            return attempt;
        }
        BigDecimal bound = least(planned).min(attempt.cost());
        return new Attempt<>(attempt.plan().offARoll(bound), attempt.cost(), bound, null);
    }

    /** What the area costs at least that is neither on hand nor planned. */
    private BigDecimal least(List<Extent> planned) {
        Quantity there = planned.stream().map(Extent::area).reduce(onHand(), Quantity::plus);
        BigDecimal missing = need.cuts().stream().map(CutNeed::amount).reduce(Quantity::plus).orElseThrow().minus(there).base().max(BigDecimal.ZERO);
        return sold.stream().map(offer -> missing.multiply(offer.cost()).divide(offer.size().area().base(), DECIMALS, RoundingMode.DOWN)).min(Comparator.naturalOrder()).orElse(BigDecimal.ZERO);
    }

    /** The linear programme knows only the lengths that were tried. */
    @Override
    Optional<StockFloor> floor(List<Extent> planned, Work work) {
        return Optional.empty();
    }

    /** Each length alone would be as many plans as there are lengths. */
    @Override
    List<List<Extent>> choices() {
        return Stream.concat(Stream.of(sizes()), bySupplier()).distinct().toList();
    }

    /** What is on hand of a roll lies in one length. */
    @Override
    List<Extent> rest() {
        if (!material.unit().runs()) {
            return super.rest();
        }
        Quantity rest = known().stream().map(Extent::area).reduce(onHand(), Quantity::minus).in(material.unit());
        return rest.signum() <= 0 ? List.of() : List.of(material.unit().counted().length(rest.amount()));
    }
}
