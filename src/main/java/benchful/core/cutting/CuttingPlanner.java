package benchful.core.cutting;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Plans the cutting of pieces from lengths, so that the fewest new lengths are bought; what is on hand costs nothing.
 * A piece and its cut take length + loss; a whole length gives stock + loss, since nothing is cut off at its end.
 */
public final class CuttingPlanner {
    private final CuttingRequest request;
    private final Kinds kinds;
    private final long loss;

    private CuttingPlanner(CuttingRequest request) {
        this.request = request;
        this.loss = Micrometres.up(request.loss());
        this.kinds = Kinds.of(request, request.stock() == null ? longest(request) : Micrometres.down(request.stock()));
    }

    public static CuttingOutcome plan(CuttingRequest request) {
        return tooLong(request).<CuttingOutcome>map(reason -> reason).orElseGet(() -> new CuttingPlanner(request).plan());
    }

    private CuttingOutcome plan() {
        CuttingSearch.Found found = CuttingSearch.search(kinds);
        List<CutLength> lengths = lengths(found.patterns());
        CuttingPlan plan = new CuttingPlan(lengths, found.bound(), List.of());
        if (request.stock() == null && plan.bought() > 0) {
            return new NotCuttable(Sentence.of("The lengths on hand do not reach for all pieces, and no new length is offered."));
        }
        return new CuttingPlan(lengths, found.bound(), List.of(made(plan), Sentence.of("%s", plan.proof())));
    }

    private static long longest(CuttingRequest request) {
        return Stream.concat(request.onHand().stream(), Stream.ofNullable(request.stock())).mapToLong(Micrometres::down).max().orElse(0);
    }

    private static Optional<NotCuttable> tooLong(CuttingRequest request) {
        long longest = longest(request);
        return request.pieces().stream().filter(p -> Micrometres.up(p.length()) > longest).findFirst().map(p -> new NotCuttable(longest == 0
                ? Sentence.of("There is no length to cut %s (%s) from.", p.length(), p.label())
                : Sentence.of("The piece of %s (%s) is longer than the longest length there is, %s. Offer a longer one, or join pieces.",
                        p.length(), p.label(), Micrometres.quantity(longest))));
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
                cuts.add(new CutLength.Cut(labels.get(piece).remove(), Micrometres.quantity(piece), Micrometres.quantity(at)));
                at += piece + loss;
            }
        }
        long length = kinds.capacity(pattern.length()) - loss;
        Quantity offcut = Micrometres.quantity(Math.max(0, length - at));
        boolean kept = offcut.signum() > 0 && offcut.compareTo(request.keep()) >= 0;
        return new CutLength(Micrometres.quantity(length), kinds.isNew(pattern.length()), cuts, offcut, kept);
    }

    private Sentence made(CuttingPlan plan) {
        int pieces = kinds.pieces();
        int onHand = plan.lengths().size() - plan.bought();
        String from = onHand == 0 ? "" : onHand == 1 ? "1 length on hand" : onHand + " lengths on hand";
        if (plan.bought() == 0) {
            return Sentence.of("%s are cut from %s; each cut loses %s.", pieces(pieces), from, request.loss());
        }
        return Sentence.of("%s are cut from %s%s of %s; each cut loses %s.", pieces(pieces), onHand == 0 ? "" : from + " and ",
                plan.bought() == 1 ? "1 new length" : plan.bought() + " new lengths", request.stock(), request.loss());
    }

    private static String pieces(int n) {
        return n == 1 ? "1 piece" : n + " pieces";
    }
}
