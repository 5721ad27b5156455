package benchful.orders;

import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Price;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Required;
import benchful.web.forms.fields.Spec;
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
 * @param deliverTo lines of the address to which it is sent; null for none
 * @param note remarks for the supplier
 */
@Spec(name = "order-1", title = "What can be changed in an order before it is sent; lines by their identifier")
public record OrderSpec(
        @Length(most = 2000) Map<@Filled(40) @Mend("Lines are named by their number.") String, Line> lines,
        @Price BigDecimal delivery,
        @Length(most = 400) @Mend("Write the address in at most 400 characters.") String deliverTo,
        @Length(most = 2000) @Mend("Write the remarks in at most 2,000 characters.") String note) {
    public OrderSpec {
        lines = lines == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(lines));
    }

    /** @param price of one pack before VAT */
    public record Line(
            @Required @Range(from = 0, to = 100_000) @Mend("Give how many packs, from 0 to 100,000; 0 takes the line out.") int packs,
            @Required @Price BigDecimal price) {}

    static OrderSpec of(PurchaseOrder order) {
        Map<String, Line> lines = new LinkedHashMap<>();
        order.lines.forEach(l -> lines.put(String.valueOf(l.id()), new Line(l.packs, l.price)));
        return new OrderSpec(lines, order.delivery.signum() == 0 ? null : order.delivery, order.deliverTo, order.note);
    }

    void into(PurchaseOrder order) {
        order.lines.removeIf(l -> of(l) != null && of(l).packs() == 0);
        order.lines.stream().filter(l -> of(l) != null).forEach(l -> {
            l.packs = of(l).packs();
            l.price = of(l).price();
        });
        order.delivery = Objects.requireNonNullElse(delivery, BigDecimal.ZERO);
        order.deliverTo = deliverTo;
        order.note = note;
    }

    private Line of(OrderLine line) {
        return lines.get(String.valueOf(line.id()));
    }
}
