package benchful.core.cutting.lengths;

import static java.util.Objects.requireNonNull;

import benchful.core.cutting.CutLength;
import benchful.core.cutting.CuttingOutcome;
import benchful.core.cutting.CuttingPlan;
import benchful.core.cutting.CuttingRequest;
import benchful.core.cutting.NotCuttable;
import benchful.core.cutting.Piece;
import benchful.core.cutting.Stock;
import benchful.core.cutting.StockFloor;
import benchful.core.cutting.patterns.ColumnGeneration;
import benchful.core.cutting.patterns.EqualLengths;
import benchful.core.cutting.patterns.Kinds;
import benchful.core.cutting.patterns.Micrometres;
import benchful.core.cutting.patterns.Pattern;
import benchful.core.cutting.patterns.Work;
import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Plans the cutting of pieces from lengths, so that the new lengths cost least; what is on hand costs nothing.
 * A piece and its cut take length + loss; a whole length gives stock + loss, since nothing is cut off at its end.
 */
public final class CuttingPlanner {
    private static final int MOST_PIECES = 20_000;

    private final CuttingRequest request;
    private final Kinds kinds;
    private final long loss;
    private final Work work;

    private CuttingPlanner(CuttingRequest request, Work work) {
        this.work = work;
        this.request = request;
        this.loss = Micrometres.up(request.loss());
        this.kinds = Kinds.of(request);
    }

    public static CuttingOutcome plan(CuttingRequest request) {
        return plan(request, Work.among(1));
    }

    /** @param work shared with other attempts at the same pieces */
    public static CuttingOutcome plan(CuttingRequest request, Work work) {
        return tooMany(request).or(() -> tooLong(request)).<CuttingOutcome>map(reason -> reason).orElseGet(() -> new CuttingPlanner(request, work).plan());
    }

    /** A floor under all plans for these pieces, of those that most raise what must be bought beside what is planned; empty where none is found. */
    public static Optional<StockFloor> floor(CuttingRequest request, Work work) {
        Kinds kinds = Kinds.of(request);
        return new ColumnGeneration(kinds, List.of(), work).floor().map(floor -> new StockFloor(request.stocks().stream()
                .map(stock -> floor.worths().get(kinds.of(Micrometres.down(stock.length()) + Micrometres.up(request.loss())))).toList(), floor.least()));
    }

    private static Optional<NotCuttable> tooMany(CuttingRequest request) {
        return NotCuttable.ifMore(request.pieces().stream().mapToLong(Piece::count).sum(), MOST_PIECES);
    }

    private CuttingOutcome plan() {
        return CuttingSearch.search(kinds, work).<CuttingOutcome>map(this::plan).orElseGet(() ->
                new NotCuttable(Sentence.of("No way was found to cut all pieces from the lengths on hand, and no new length is offered.")));
    }

    private CuttingPlan plan(CuttingSearch.Found found) {
        BigDecimal cost = cost(kinds.cost(found.patterns()));
        BigDecimal bound = cost(found.bound());
        List<CutLength> lengths = lengths(found.patterns());
        return new CuttingPlan(lengths, cost, bound, proof(cost, bound), List.of(made(lengths)));
    }

    private static BigDecimal cost(long tenThousandths) {
        return BigDecimal.valueOf(tenThousandths, 4);
    }

    private static Optional<NotCuttable> tooLong(CuttingRequest request) {
        long longest = Stream.of(request.onHand(), request.planned(), request.stocks().stream().map(Stock::length).toList())
                .flatMap(List::stream).mapToLong(Micrometres::down).max().orElse(0);
        return request.pieces().stream().filter(p -> Micrometres.up(p.length()) > longest).findFirst().map(p -> new NotCuttable(longest == 0
                ? Sentence.of("There is no length to cut the pieces for %s from, of %s each.", Sentence.named(p.label()), p.length())
                : Sentence.of("A piece for %s takes %s, but the longest length there is has %s. Offer a longer one, or join pieces.",
                        Sentence.named(p.label()), p.length(), Micrometres.quantity(longest))));
    }

    /** Gives each pattern's pieces their labels. */
    private List<CutLength> lengths(List<Pattern> patterns) {
        Map<Long, Deque<String>> labels = new TreeMap<>();
        request.pieces().forEach(p -> labels.computeIfAbsent(Micrometres.up(p.length()), l -> new ArrayDeque<>())
                .addAll(Collections.nCopies(p.count(), p.label())));
        return patterns.stream().sorted(Comparator.comparingInt(Pattern::length)).map(p -> cut(p, labels)).toList();
    }

    private CutLength cut(Pattern pattern, Map<Long, Deque<String>> labels) {
        List<CutLength.Cut> cuts = new ArrayList<>();
        long at = 0;
        for (int kind = 0; kind < kinds.kinds(); kind++) {
            long piece = kinds.sizes()[kind] - loss;
            for (int i = 0; i < pattern.counts()[kind]; i++) {
                cuts.add(new CutLength.Cut(requireNonNull(labels.get(piece)).remove(), Micrometres.quantity(piece), Micrometres.quantity(at)));
                at += piece + loss;
            }
        }
        EqualLengths lengths = kinds.lengths().get(pattern.length());
        Quantity offcut = Micrometres.quantity(Math.max(0, lengths.capacity() - loss - at));
        boolean kept = offcut.signum() > 0 && offcut.compareTo(request.keep()) >= 0;
        return new CutLength(Micrometres.quantity(lengths.capacity() - loss), lengths.bought(), cuts, offcut, kept);
    }

    private Sentence made(List<CutLength> lengths) {
        Map<Quantity, Long> bought = lengths.stream().filter(CutLength::bought)
                .collect(Collectors.groupingBy(CutLength::length, TreeMap::new, Collectors.counting()));
        long onHand = lengths.stream().filter(l -> !l.bought()).count();
        List<Object> parts = new ArrayList<>(List.of(counted(kinds.pieces(), "piece")));
        List<String> from = new ArrayList<>();
        if (onHand > 0) {
            from.add(counted(onHand, "length") + " on hand");
        }
        bought.forEach((length, number) -> {
            from.add(counted(number, "new length") + " of %s");
            parts.add(length);
        });
        parts.add(request.loss());
        return Sentence.of("%s are cut from " + String.join(" and ", from) + "; each cut loses %s.", parts.toArray());
    }

    private String proof(BigDecimal cost, BigDecimal bound) {
        boolean proven = cost.compareTo(bound) == 0;
        if (request.stocks().size() > 1) {
            return proven ? "Proven least: no other cutting costs less for new lengths, deliveries left aside."
                    : "Best cutting found; another might cost up to %s less for new lengths."
                            .formatted(cost.subtract(bound).stripTrailingZeros().toPlainString());
        }
        return proven ? "Proven least: no other cutting takes fewer new lengths." : "Best cutting found; another might take fewer new lengths.";
    }

    private static String counted(long n, String noun) {
        return n + " " + noun + (n == 1 ? "" : "s");
    }
}
