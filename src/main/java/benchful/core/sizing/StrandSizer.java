package benchful.core.sizing;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds the number of beads whose strand comes nearest to the finished length asked for.
 *
 * <p>length(n) = closure + sum of the n beads + (n - 1) x what a knot adds; it rises with n, so the two counts about the
 * target are compared. Of two equally near, the longer is taken: a strand is sooner worn long than short. Where a
 * tolerance is given, the nearest count that keeps the pattern whole goes before the nearest of all, as long as it lies within it.
 * Cost: n log n for n beads.
 */
public final class StrandSizer {
    private StrandSizer() {}

    public static Strand size(StrandRequest request) {
        return new Layout(request).nearest();
    }

    /** One request at work. */
    private record Layout(StrandRequest request, List<Integer> counts) {
        Layout(StrandRequest request) {
            this(request, IntStream.rangeClosed(1, request.reach() + 2).boxed()
                    .filter(n -> request.arrangement().allows(request.pattern(), n)).toList());
        }

        Strand nearest() {
            int free = nearestOf(counts);
            int held = held(counts, free);
            List<Integer> whole = counts.stream().filter(request::isWhole).filter(n -> request.maximum() == null || n <= request.maximum()).toList();
            int taken = request.tolerance() == null || whole.isEmpty() ? held : nearestOf(whole);
            boolean kept = request.tolerance() == null || gap(taken).compareTo(request.tolerance().base()) <= 0;
            int n = kept ? taken : held;
            List<Sentence> reasons = reasons(n, free);
            pattern(n, held, whole).ifPresent(sentence -> reasons.add(1, sentence));
            return strand(n, reasons);
        }

        private int held(List<Integer> allowed, int free) {
            return request.maximum() == null || free <= request.maximum() ? free
                    : allowed.stream().filter(n -> n <= request.maximum()).reduce((a, b) -> b).orElseThrow();
        }

        /** What the pattern had to say: that another count comes nearer but breaks it, or that this one does, and which would not. */
        private Optional<Sentence> pattern(int n, int nearest, List<Integer> whole) {
            if (request.tolerance() == null || whole.isEmpty()) {
                return Optional.empty();
            }
            if (request.isWhole(n)) {
                return n == nearest ? Optional.empty() : Optional.of(StrandWords.broken(nearest, length(nearest), request));
            }
            Optional<Integer> below = whole.stream().filter(c -> c < n).reduce((a, b) -> b);
            Optional<Integer> above = whole.stream().filter(c -> c > n).findFirst();
            return Optional.of(StrandWords.choice(Stream.of(below, above).flatMap(Optional::stream).toList(), this::length, request));
        }

        private int nearestOf(List<Integer> allowed) {
            int low = 0;
            int high = allowed.size() - 1;
            while (high - low > 1) {
                int middle = (low + high) / 2;
                boolean fits = length(allowed.get(middle)).compareTo(target()) <= 0;
                low = fits ? middle : low;
                high = fits ? high : middle;
            }
            boolean longer = gap(allowed.get(high)).compareTo(gap(allowed.get(low))) <= 0;
            return allowed.get(longer ? high : low);
        }

        private Strand strand(int n, List<Sentence> reasons) {
            List<PlacedBead> placed = placed(n);
            Map<String, Integer> byName = new LinkedHashMap<>();
            placed.forEach(bead -> byName.merge(bead.bead(), 1, Integer::sum));
            Quantity length = Quantity.ofBase(length(n), Unit.MM);
            return new Strand(placed, byName, knots(n), length, length.minus(request.target()), thread(n), reasons);
        }

        private List<PlacedBead> placed(int n) {
            List<PlacedBead> placed = new ArrayList<>();
            BigDecimal at = BigDecimal.ZERO;
            for (BeadRun bead : request.arrangement().sequence(request.pattern(), n)) {
                placed.add(new PlacedBead(bead.bead(), Quantity.ofBase(at, Unit.MM), bead.size()));
                at = at.add(bead.size().base()).add(knot());
            }
            return placed;
        }

        private BigDecimal length(int n) {
            BigDecimal beads = request.arrangement().sequence(request.pattern(), n).stream()
                    .map(bead -> bead.size().base()).reduce(BigDecimal.ZERO, BigDecimal::add);
            return request.closure().base().add(beads).add(knot().multiply(BigDecimal.valueOf(n - 1L)));
        }

        private BigDecimal gap(int n) {
            return length(n).subtract(target()).abs();
        }

        private BigDecimal target() {
            return request.target().base();
        }

        private BigDecimal knot() {
            return request.knots().between() ? request.knots().along().base() : BigDecimal.ZERO;
        }

        private int knots(int n) {
            return (request.knots().between() ? n - 1 : 0) + request.knots().ends();
        }

        private Quantity thread(int n) {
            BigDecimal straight = length(n).subtract(request.closure().base()).subtract(knot().multiply(BigDecimal.valueOf(n - 1L)));
            return Quantity.ofBase(straight.add(request.knots().takes().base().multiply(BigDecimal.valueOf(knots(n)))), Unit.MM);
        }

        private List<Sentence> reasons(int n, int free) {
            List<Sentence> reasons = new ArrayList<>();
            reasons.add(StrandWords.made(strand(n, List.of()), request));
            counts.stream().filter(c -> c < n).reduce((a, b) -> b)
                    .ifPresent(fewer -> reasons.add(StrandWords.other(n - fewer, "fewer", length(fewer))));
            counts.stream().filter(c -> c > n).findFirst()
                    .ifPresent(more -> reasons.add(StrandWords.other(more - n, "more", length(more))));
            StrandWords.limits(n, free, request).forEach(reasons::add);
            return reasons;
        }
    }
}
