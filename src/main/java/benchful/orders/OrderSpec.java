package benchful.orders;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * What can be changed in a draft.
 *
 * @param lines by their identifier; 0 packs take a line out
 * @param delivery charge before VAT; null for none
 */
public record OrderSpec(Map<String, Line> lines, BigDecimal delivery, String note) {
    public OrderSpec {
        lines = lines == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(lines));
    }

    /** @param price of one pack before VAT */
    public record Line(int packs, BigDecimal price) {}

    static OrderSpec of(PurchaseOrder order) {
        Map<String, Line> lines = new LinkedHashMap<>();
        order.lines.forEach(l -> lines.put(String.valueOf(l.id()), new Line(l.packs, l.price)));
        return new OrderSpec(lines, order.delivery.signum() == 0 ? null : order.delivery, order.note);
    }

    void into(PurchaseOrder order) {
        order.lines.removeIf(l -> of(l) != null && of(l).packs() == 0);
        order.lines.stream().filter(l -> of(l) != null).forEach(l -> {
            l.packs = of(l).packs();
            l.price = of(l).price();
        });
        order.delivery = Objects.requireNonNullElse(delivery, BigDecimal.ZERO);
        order.note = note;
    }

    private Line of(OrderLine line) {
        return lines.get(String.valueOf(line.id()));
    }
}
