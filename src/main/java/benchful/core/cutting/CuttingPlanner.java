package benchful.core.cutting;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Plans the cutting of pieces from lengths, so that the fewest new lengths are bought.
 *
 * <p>The longest piece goes first, onto the first length that still takes it, those on hand before new ones. A piece and its
 * cut take length + loss; a whole length gives stock + loss, since nothing is cut off at its end.
 */
public final class CuttingPlanner {
    private CuttingPlanner() {}

    public static CuttingOutcome plan(CuttingRequest request) {
        List<Bin.Item> items = items(request);
        Optional<NotCuttable> failure = tooLong(request, items);
        if (failure.isPresent()) {
            return failure.get();
        }
        List<Bin> bins = new ArrayList<>();
        long loss = Micrometres.up(request.loss());
        request.onHand().stream().map(Micrometres::down).sorted().forEach(l -> bins.add(new Bin(l, false, loss)));
        for (Bin.Item item : items) {
            Optional<Bin> bin = bins.stream().filter(b -> b.takes(item, loss)).findFirst();
            if (bin.isEmpty() && request.stock() == null) {
                return lacking(item);
            }
            bin.orElseGet(() -> open(bins, request, loss)).put(item, loss);
        }
        return plan(request, bins, CuttingBound.of(request));
    }

    private static Bin open(List<Bin> bins, CuttingRequest request, long loss) {
        Bin bin = new Bin(Micrometres.down(request.stock()), true, loss);
        bins.add(bin);
        return bin;
    }

    static List<Bin.Item> items(CuttingRequest request) {
        return request.pieces().stream()
                .flatMap(p -> Collections.nCopies(p.count(), new Bin.Item(p.label(), Micrometres.up(p.length()))).stream())
                .sorted(Comparator.comparingLong(Bin.Item::length).reversed())
                .toList();
    }

    private static Optional<NotCuttable> tooLong(CuttingRequest request, List<Bin.Item> items) {
        long longest = Stream.concat(request.onHand().stream(), Stream.ofNullable(request.stock()))
                .mapToLong(Micrometres::down).max().orElse(0);
        return items.stream().filter(item -> item.length() > longest).findFirst().map(item -> new NotCuttable(longest == 0
                ? Sentence.of("There is no length to cut %s (%s) from.", Micrometres.quantity(item.length()), item.label())
                : Sentence.of("The piece of %s (%s) is longer than the longest length there is, %s. Offer a longer one, or join pieces.",
                        Micrometres.quantity(item.length()), item.label(), Micrometres.quantity(longest))));
    }

    private static NotCuttable lacking(Bin.Item item) {
        return new NotCuttable(Sentence.of("The lengths on hand do not reach for the piece of %s (%s), and no new length is offered.",
                Micrometres.quantity(item.length()), item.label()));
    }

    private static CuttingPlan plan(CuttingRequest request, List<Bin> bins, int bound) {
        List<CutLength> lengths = bins.stream().filter(b -> !b.items.isEmpty()).map(b -> cut(b, request)).toList();
        long pieces = lengths.stream().mapToLong(l -> l.cuts().size()).sum();
        CuttingPlan plan = new CuttingPlan(lengths, bound, List.of());
        Sentence made = request.stock() == null
                ? Sentence.of("%s pieces are cut from %s lengths on hand.", pieces, lengths.size())
                : Sentence.of("%s pieces are cut from %s lengths on hand and %s new ones of %s; each cut loses %s.",
                        pieces, lengths.size() - plan.bought(), plan.bought(), request.stock(), request.loss());
        return new CuttingPlan(lengths, bound, List.of(made, Sentence.of("%s", plan.proof())));
    }

    private static CutLength cut(Bin bin, CuttingRequest request) {
        List<CutLength.Cut> cuts = new ArrayList<>();
        long loss = Micrometres.up(request.loss());
        long at = 0;
        for (Bin.Item item : bin.items) {
            cuts.add(new CutLength.Cut(item.label(), Micrometres.quantity(item.length()), Micrometres.quantity(at)));
            at += item.length() + loss;
        }
        Quantity offcut = Micrometres.quantity(Math.max(0, bin.length - at));
        return new CutLength(Micrometres.quantity(bin.length), bin.bought, cuts, offcut, offcut.signum() > 0 && offcut.compareTo(request.keep()) >= 0);
    }
}
