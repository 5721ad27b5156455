package benchful.orders;

import benchful.bin.Bin;
import benchful.bin.Thing;
import benchful.bin.Undo;
import benchful.core.Fault;
import benchful.web.forms.FaultCollector;
import benchful.web.forms.SpecPost;
import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import org.joda.money.CurrencyUnit;

/**
 * A draft that takes changed packs and prices from its form.
 *
 * @param then what the button does beside: nothing, one more line, sending; never without what was typed
 */
record DraftTarget(PurchaseOrder order, Bin bin, Clock clock, Consumer<PurchaseOrder> then) implements SpecPost.Target<OrderSpec> {
    /** What the bin calls lines that were taken out of a draft. */
    static final String LINE = "line of an order";

    @Override
    public long version() {
        return order.version();
    }

    @Override
    public OrderSpec stored() {
        return OrderSpec.of(order);
    }

    @Override
    public List<Fault> faults(OrderSpec sheet) {
        FaultCollector faults = new FaultCollector();
        faults.require(order.status() == OrderStatus.DRAFT, "", "This order was sent, so it can't be changed any more.");
        faults.require(order.lines.stream().anyMatch(l -> packs(sheet, l) > 0), "", "An order needs a line. Remove the draft instead.");
        int places = CurrencyUnit.of(order.currency).getDecimalPlaces();
        faults.require(sheet.delivery() == null || sheet.delivery().stripTrailingZeros().scale() <= places, "/delivery",
                "Give the delivery in at most %d decimals.", places);
        return faults.list();
    }

    private static int packs(OrderSpec sheet, OrderLine line) {
        OrderSpec.Line changed = sheet.lines().get(String.valueOf(line.id()));
        return changed == null ? line.packs : changed.packs();
    }

    @Override
    public String save(OrderSpec sheet) {
        List<String> out = order.lines.stream().filter(l -> packs(sheet, l) == 0).map(l -> l.material).toList();
        String page = "/orders/" + order.id();
        if (out.isEmpty()) {
            change(sheet);
            return page;
        }
        Thing lines = new Thing(LINE, "%s of order %d".formatted(String.join(", ", out), order.id()), page);
        return Undo.offeredAt(page, bin.keep(lines, () -> change(sheet)));
    }

    private void change(OrderSpec sheet) {
        sheet.into(order);
        then.accept(order);
        order.changed(clock.instant());
        PurchaseOrder.flush();
    }
}
