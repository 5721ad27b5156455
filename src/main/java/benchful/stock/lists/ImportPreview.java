package benchful.stock.lists;

import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * What importing a list would do, before anything is done.
 *
 * @param unused columns that are not known here
 */
@TemplateData
public record ImportPreview(List<ImportRow> rows, List<String> unused) {
    public ImportPreview {
        rows = List.copyOf(rows);
        unused = List.copyOf(unused);
    }

    public List<ImportRow> faulty() {
        return rows.stream().filter(r -> !r.faults().isEmpty()).toList();
    }

    public List<ImportRow> changing() {
        return rows.stream().filter(r -> r.faults().isEmpty() && !r.change().isEmpty()).toList();
    }

    public long unchanged() {
        return rows.stream().filter(r -> r.faults().isEmpty() && r.change().isEmpty() && !r.passedOver()).count();
    }

    public List<ImportRow> passedOver() {
        return rows.stream().filter(ImportRow::passedOver).toList();
    }

    /** True where it can be imported and would do something. */
    public boolean ready() {
        return faulty().isEmpty() && !changing().isEmpty();
    }

    /** Tells whether what was previewed is still what would happen. */
    public String seen() {
        return Integer.toHexString(rows.toString().hashCode());
    }
}
