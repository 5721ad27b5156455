package benchful.core.sizing;

import static java.util.Objects.requireNonNull;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** The sentences that go with a strand. */
final class StrandWords {
    private StrandWords() {}

    static Sentence made(Strand strand, StrandRequest request) {
        int sign = strand.difference().signum();
        String against = sign == 0 ? "just the %s asked for."
                : "%s " + (sign > 0 ? "longer" : "shorter") + " than the %s asked for.";
        String words = "%s and %s%s make %s, " + against;
        String beads = counted(strand.beads().size(), "bead");
        String closure = request.closure().signum() == 0 ? "" : " with the closure";
        String knots = counted(strand.knots(), "knot");
        return sign == 0
                ? Sentence.of(words, beads, knots, closure, strand.length(), request.target())
                : Sentence.of(words, beads, knots, closure, strand.length(), absolute(strand.difference()), request.target());
    }

    static Sentence other(int beads, String way, BigDecimal length) {
        return Sentence.of("%s %s would make %s.", counted(beads, "bead"), way, Quantity.ofBase(length, Unit.MM));
    }

    /** Why a count that comes nearer was not taken. */
    static Sentence broken(int beads, BigDecimal length, StrandRequest request) {
        return Sentence.of("%s would come nearer, %s, but break the pattern %s.", counted(beads, "bead"), Quantity.ofBase(length, Unit.MM), place(request));
    }

    /** That the pattern is broken, and the counts about it that would keep it whole. */
    static Sentence choice(List<Integer> whole, IntFunction<BigDecimal> lengths, StrandRequest request) {
        List<Object> values = new ArrayList<>(List.of(place(request), requireNonNull(request.tolerance())));
        whole.forEach(n -> {
            values.add(counted(n, "bead"));
            values.add(Quantity.ofBase(lengths.apply(n), Unit.MM));
        });
        String choices = whole.size() == 1 ? "%s with %s" : "%s with %s or %s with %s";
        return Sentence.of("The pattern breaks %s: no count within %s of the length keeps it whole. Whole are " + choices + ".", values.toArray());
    }

    private static String place(StrandRequest request) {
        return request.closed() && request.arrangement() != Arrangement.MIRRORED ? "at the join" : "in the middle";
    }

    /** What keeps the strand from its length or its pattern from being whole. */
    static List<Sentence> limits(int beads, int free, StrandRequest request) {
        List<Sentence> limits = new ArrayList<>();
        if (request.maximum() != null && free > request.maximum()) {
            limits.add(Sentence.of("There are only %s beads; %s would come nearest.", request.maximum(), free));
        }
        int whole = request.pattern().stream().mapToInt(BeadRun::count).sum();
        if (request.arrangement() == Arrangement.REPEATED && beads % whole != 0 && !(request.closed() && request.tolerance() != null)) {
            limits.add(Sentence.of("The last repeat holds %s of its %s beads.", beads % whole, whole));
        }
        if (request.knots().between()) {
            limits.add(Sentence.of("Each knot adds %s along the strand and takes %s of cord.",
                    request.knots().along(), request.knots().takes()));
        }
        return limits;
    }

    static String counted(int n, String noun) {
        return n + " " + noun + (n == 1 ? "" : "s");
    }

    private static Quantity absolute(Quantity q) {
        return q.signum() < 0 ? q.times(-1) : q;
    }
}
