package benchful.plans.materials.cutting;

import benchful.core.buying.PackOffer;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.needs.CutNeed;
import benchful.core.needs.Need;
import benchful.core.quantity.Extent;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The lengths off a roll that are worth buying for some rectangles. At the least what their area takes that is not on hand; at the
 * most what they take laid in rows, each as deep as its deepest (next-fit decreasing height: Coffman, Garey, Johnson and Tarjan,
 * SIAM Journal on Computing 9, 1980). What the seller measures in whole steps is bought in whole steps.
 *
 * @param loss what a cut takes [um]
 */
record RollLengths(Need need, Quantity onHand, long loss) {
    /** More lengths than these would be weighed against each other for minutes; longer steps are taken then. */
    private static final int MOST = 24;
    private static final long LONGEST = 30_000_000;

    /** Where the pieces lie on the roll. */
    private record Piece(long along, long across, int count) {}

    /** True where a pack is so much of a roll, and not a sheet. */
    static boolean isRoll(StockCutter.Offer<Extent> offer) {
        return offer.pack().holds().unit().runs();
    }

    /** The same offers, each of a roll in all its lengths. */
    List<StockCutter.Offer<Extent>> of(List<StockCutter.Offer<Extent>> offers) {
        return offers.stream().flatMap(offer -> isRoll(offer) ? lengths(offer) : Stream.of(offer)).toList();
    }

    private Stream<StockCutter.Offer<Extent>> lengths(StockCutter.Offer<Extent> offer) {
        long step = Micrometres.down(offer.size().length());
        long width = Micrometres.down(offer.size().width());
        long most = Math.max(1, Math.min(steps(rows(width), step), LONGEST / step));
        long least = Math.max(1, Math.min(most, steps(onlyArea(width), step)));
        long by = (most - least) / MOST + 1;
        return IntStream.rangeClosed(0, (int) ((most - least) / by)).mapToObj(i -> times(offer, most - i * by));
    }

    /** One length is measured off as one piece, at the price of so many. */
    private static StockCutter.Offer<Extent> times(StockCutter.Offer<Extent> offer, long many) {
        int steps = (int) many;
        Extent size = new Extent(offer.size().length().times(steps), offer.size().width());
        PackOffer each = offer.pack();
        PackOffer pack = new PackOffer(each.supplier(), each.holds().times(steps), each.priceFor(steps).multipliedBy(steps), List.of());
        return new StockCutter.Offer<>(Micrometres.whole(size), pack.holds(), pack);
    }

    private static long steps(long length, long step) {
        return (length + step - 1) / step;
    }

    private long onlyArea(long width) {
        Quantity missing = need.cuts().stream().map(CutNeed::amount).reduce(Quantity::plus).orElseThrow().minus(onHand);
        return missing.signum() <= 0 ? 0 : missing.base().movePointRight(6).divideToIntegralValue(BigDecimal.valueOf(width)).longValue();
    }

    /** One after the other, the deepest first; a row that is full is closed. */
    private long rows(long width) {
        long depth = 0;
        long free = 0;
        for (Piece piece : pieces(width)) {
            int left = piece.count;
            while (left > 0) {
                if (free < piece.across) {
                    depth += piece.along + (depth == 0 ? 0 : loss);
                    free = width;
                }
                int beside = (int) Math.min(left, (free + loss) / (piece.across + loss));
                free -= beside * (piece.across + loss);
                left -= beside;
            }
        }
        return depth;
    }

    private List<Piece> pieces(long width) {
        List<Piece> pieces = new ArrayList<>();
        need.cuts().stream().map(cut -> piece(cut, width)).filter(Objects::nonNull).forEach(pieces::add);
        pieces.sort(Comparator.comparingLong(Piece::along).reversed());
        return pieces;
    }

    /** The longer edge across the roll where it may be and fits; null for what fits no way. */
    private static Piece piece(CutNeed cut, long width) {
        Extent lying = cut.grain() ? cut.rectangle() : cut.rectangle().upright();
        long length = Micrometres.up(lying.length());
        long other = Micrometres.up(lying.width());
        boolean turned = !cut.grain() && length <= width;
        return turned ? new Piece(other, length, cut.count()) : other <= width ? new Piece(length, other, cut.count()) : null;
    }
}
