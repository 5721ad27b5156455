package benchful.plans.materials.cutting;

import benchful.catalogue.MaterialSpec;
import benchful.catalogue.StockPiece;
import benchful.core.quantity.Quantity;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Pieces of known size among what is on hand, and cutting from them before anything whole is opened. */
final class KnownPieces {
    private KnownPieces() {}

    /** The smallest first; those beyond what is on hand are not there any more and are left out. */
    static List<StockPiece> pieces(MaterialSpec material) {
        Quantity left = material.shelved();
        List<StockPiece> pieces = new ArrayList<>();
        for (StockPiece piece : material.pieces().stream().sorted(Comparator.comparing(StockPiece::amount)).toList()) {
            if (piece.amount().compareTo(left) <= 0) {
                pieces.add(piece);
                left = left.minus(piece.amount());
            }
        }
        return pieces;
    }

    /**
     * The plan that opens the fewest whole ones of those that cost least. What costs no more with so many whole ones costs no
     * more with one more, so that number is found by halving.
     *
     * @param plan from what is on hand
     * @param cost of a plan; null where there is none
     */
    static <S, P> P first(List<S> known, List<S> whole, Function<List<S>, P> plan, Function<P, BigDecimal> cost) {
        P best = plan.apply(onHand(known, whole, whole.size()));
        if (known.isEmpty() || cost.apply(best) == null) {
            return best;
        }
        int low = 0;
        int high = whole.size();
        while (low < high) {
            int middle = (low + high) / 2;
            P fewer = plan.apply(onHand(known, whole, middle));
            boolean does = cost.apply(fewer) != null && cost.apply(fewer).compareTo(cost.apply(best)) <= 0;
            best = does ? fewer : best;
            high = does ? middle : high;
            low = does ? low : middle + 1;
        }
        return best;
    }

    private static <S> List<S> onHand(List<S> known, List<S> whole, int number) {
        return Stream.concat(known.stream(), whole.stream().limit(number)).toList();
    }
}
