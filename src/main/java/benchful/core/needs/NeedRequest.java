package benchful.core.needs;

import benchful.core.quantity.Quantity;
import benchful.core.quantity.Unit;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * What a class asks of one material.
 *
 * @param unit what the material is counted in
 */
public record NeedRequest(String material, Unit unit, List<NeedLine> lines) {
    public NeedRequest {
        Objects.requireNonNull(unit, "unit");
        lines = List.copyOf(lines);
        lines.stream().flatMap(NeedRequest::amounts).forEach(q -> q.in(unit));
    }

    private static Stream<Quantity> amounts(NeedLine line) {
        return Stream.concat(line.takes().stream().map(Take::each), Stream.ofNullable(line.shared()));
    }
}
