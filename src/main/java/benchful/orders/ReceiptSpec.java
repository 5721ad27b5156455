package benchful.orders;

import benchful.core.Fault;
import benchful.web.forms.FaultCollector;
import benchful.web.forms.fields.Filled;
import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.Range;
import benchful.web.forms.fields.Spec;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What came in one parcel.
 *
 * @param packs by the identifier of the order's line
 */
@Spec(name = "receipt-1", title = "What came of an order: packs by the identifier of the line")
public record ReceiptSpec(
        @Length(most = 2000) Map<@Filled(40) @Mend("Lines are named by their number.") String,
                @Range(from = 0, to = 100_000) @Mend("Give how many packs came, as a whole number; 0 or nothing for none.") Integer> packs) {
    public ReceiptSpec {
        packs = packs == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(packs));
    }

    /** All that has not come yet. */
    static ReceiptSpec rest(PurchaseOrder order) {
        Map<String, Integer> packs = new LinkedHashMap<>();
        order.lines().stream().filter(l -> l.outstanding() > 0).forEach(l -> packs.put(String.valueOf(l.id()), l.outstanding()));
        return new ReceiptSpec(packs);
    }

    int of(OrderLine line) {
        return packs.getOrDefault(String.valueOf(line.id()), 0);
    }

    List<Fault> faults(PurchaseOrder order) {
        FaultCollector faults = new FaultCollector();
        faults.require(order.status().awaited(), "", "Nothing is expected of this order, so nothing can be received.");
        order.lines().forEach(l -> faults.require(of(l) <= l.outstanding(), "/packs/" + l.id(),
                "Of “%s” %d are still to come. Give at most so many; write down what came beyond them at the material.", l.material(), l.outstanding()));
        faults.require(order.lines().stream().anyMatch(l -> of(l) > 0), "", "Say of at least one line how many packs came.");
        return faults.list();
    }
}
