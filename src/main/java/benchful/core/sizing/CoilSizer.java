package benchful.core.sizing;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Sentence;
import benchful.core.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Works out wound wire along its centre line: one turn takes pi x (mandrel + wire). Source: geometry. The rise of a close
 * coil adds less than 0.3 % for a mandrel of four wires or more and is left out; wire that springs open is not foreseen.
 */
public final class CoilSizer {
    private CoilSizer() {}

    public static Coil size(CoilRequest request) {
        Quantity turn = length(request.mandrel().plus(request.wire()).base().multiply(Quantity.PI));
        Quantity length = turn.times(request.turns()).plus(request.straight());
        Quantity mass = request.density() == null ? null : mass(length, request.wire(), request.density());
        return new Coil(turn, length, request.wire().times(request.turns()),
                request.mandrel().plus(request.wire().times(2)), mass, reasons(request, turn, length, mass));
    }

    /** Mass of round wire: length x pi / 4 x diameter squared x density. */
    public static Quantity mass(Quantity length, Quantity wire, Quantity density) {
        BigDecimal section = wire.base().pow(2).multiply(Quantity.PI).divide(BigDecimal.valueOf(4), Quantity.PRECISION);
        return new Quantity(length.base().multiply(section).multiply(density.base()).round(Quantity.PRECISION), Unit.G);
    }

    private static List<Sentence> reasons(CoilRequest request, Quantity turn, Quantity length, @Nullable Quantity mass) {
        List<Sentence> reasons = new ArrayList<>();
        reasons.add(Sentence.of("One turn takes %s: pi x (mandrel %s + wire %s).", turn, request.mandrel(), request.wire()));
        reasons.add(request.straight().signum() == 0
                ? Sentence.of("%s turns take %s.", request.turns().toPlainString(), length)
                : Sentence.of("%s turns and %s of straight wire take %s.", request.turns().toPlainString(), request.straight(), length));
        if (mass != null && request.density() != null) {
            reasons.add(Sentence.of("The wire weighs %s, at %s.", mass, request.density()));
        }
        return reasons;
    }

    private static Quantity length(BigDecimal base) {
        return new Quantity(base.round(Quantity.PRECISION), Unit.MM);
    }
}
