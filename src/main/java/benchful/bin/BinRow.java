package benchful.bin;

import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;

/**
 * An entry of the bin as its page shows it.
 *
 * @param until the last day on which it is kept for sure
 */
@TemplateData
record BinRow(BinEntry entry, LocalDateTime removed, LocalDate until) {
    static BinRow of(BinEntry entry, ZoneId zone) {
        LocalDateTime removed = LocalDateTime.ofInstant(entry.removedAt(), zone);
        return new BinRow(entry, removed, removed.plus(Bin.KEPT).toLocalDate());
    }
}
