package benchful.stock;

import benchful.core.quantity.Quantity;
import benchful.web.Formats;
import io.quarkus.qute.TemplateData;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * A line of the ledger as it is read.
 *
 * @param amount with its sign in front
 * @param after what lay on the shelf afterwards
 * @param classId the class it was for; null for none
 */
@TemplateData
public record MovementRow(LocalDateTime at, String kind, String amount, Quantity after, String note, Long classId, Long orderId) {

    /**
     * The running balance is worked backwards from what lies there now, so that the latest lines need no earlier ones.
     *
     * @param latest the newest first
     */
    static List<MovementRow> of(List<StockMovement> latest, BigDecimal onHand, ZoneId zone) {
        List<MovementRow> rows = new ArrayList<>();
        BigDecimal after = onHand;
        for (StockMovement m : latest) {
            rows.add(of(m, after, zone));
            after = m.kind.physical() ? after.subtract(m.amount) : after;
        }
        return rows;
    }

    private static MovementRow of(StockMovement m, BigDecimal after, ZoneId zone) {
        return new MovementRow(LocalDateTime.ofInstant(m.happenedAt, zone), kind(m), signed(m.material.shown(m.amount)),
                m.material.shown(after), m.note, m.classId, m.orderId);
    }

    private static String kind(StockMovement m) {
        return m.kind == MovementKind.RESERVED && m.amount.signum() > 0 ? "released" : Formats.word(m.kind);
    }

    private static String signed(Quantity amount) {
        Quantity size = amount.signum() < 0 ? amount.times(-1) : amount;
        return (amount.signum() < 0 ? "−" : "+") + Formats.words(size);
    }
}
