package benchful.stock.lists;

import benchful.web.tables.Table;
import java.util.List;
import java.util.Optional;

/** Checks that a table has the columns that a list needs. */
public final class ImportColumns {
    private ImportColumns() {}

    /** A sentence that names what is missing; nothing where all are there. */
    public static Optional<String> missing(Table table, List<String> needed) {
        List<String> missing = needed.stream().filter(c -> !table.columns().contains(c)).toList();
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of("The first row should name the columns. Missing: %s. Found: %s."
                        .formatted(String.join(", ", missing), String.join(", ", table.columns())));
    }
}
