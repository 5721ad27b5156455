package benchful.stock.lists;

import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * What a row of a list would do.
 *
 * @param number as the spreadsheet counts
 * @param what it is about: "bead silk, 2 m from Harbour Cords"
 * @param change what it would change; empty for nothing
 * @param faults what is wrong with it
 * @param passedOver true where its material is not in the catalogue and is not to be added
 */
@TemplateData
public record ImportRow(int number, String what, String change, List<String> faults, boolean passedOver) {
    public ImportRow {
        faults = List.copyOf(faults);
    }

    public static ImportRow of(int number, String what, String change) {
        return new ImportRow(number, what, change, List.of(), false);
    }

    public static ImportRow faulty(int number, String what, List<String> faults) {
        return new ImportRow(number, what, "", faults, false);
    }

    public static ImportRow passedOver(int number, String what) {
        return new ImportRow(number, what, "", List.of(), true);
    }
}
