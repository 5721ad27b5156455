package benchful.web.tables;

import java.util.List;
import java.util.Map;

/**
 * A table as it stands in a spreadsheet: named columns, and rows with the numbers they have there.
 *
 * @param columns in small letters, in order
 */
public record Table(List<String> columns, List<Row> rows) {
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * A row.
     *
     * @param number as the spreadsheet counts; the names of the columns are row 1
     * @param cells by column; a blank cell is an empty text or not there
     */
    public record Row(int number, Map<String, String> cells) {
        public Row {
            cells = Map.copyOf(cells);
        }

        public String get(String column) {
            return cells.getOrDefault(column, "");
        }
    }

    /** The columns that are not among the known ones. */
    public List<String> unknown(List<String> known) {
        return columns.stream().filter(c -> !c.isEmpty() && !known.contains(c)).toList();
    }
}
