package benchful.batches;

import io.quarkus.qute.TemplateData;
import java.time.LocalDate;

/**
 * Kits for sale as a line of a list.
 *
 * @param kits    how many; null where what is stored can't be read
 * @param readyBy null for any day
 */
@TemplateData
record BatchLine(long id, String title, Integer kits, LocalDate readyBy) {
    static BatchLine of(KitBatch batch) {
        return new BatchLine(batch.id(), batch.title(), batch.stored().readable().map(BatchSpec::kits).orElse(null), batch.readyBy);
    }
}
