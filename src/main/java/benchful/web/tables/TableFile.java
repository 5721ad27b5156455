package benchful.web.tables;

import benchful.web.Formats;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;

/**
 * Tables as files: CSV (RFC 4180, in UTF-8, parted by commas, semicolons or tabs) and XLSX (ECMA-376), of which the first
 * sheet is read. In both a name that a spreadsheet would run as a formula is guarded; see {@link GuardedCell}.
 */
public final class TableFile {
    private static final int LARGEST = 2 * 1024 * 1024;
    static final int MOST_ROWS = 5_000;
    static final int MOST_COLUMNS = 60;
    private static final int LONGEST_CELL = 1_000;
    private static final int MOST_NAMED = 10;
    private static final String TORN = "The first row names %s, but more cells are filled in row %s."
            + " Put what holds a comma, such as “2,60”, in quotation marks, or part the columns by semicolons.";
    private static final char MARK = '\uFEFF';

    private TableFile() {}

    /** The file can't be taken at all; the message is a sentence for its owner. */
    public static final class Unreadable extends Exception {
        Unreadable(String sentence) {
            super(sentence);
        }
    }

    public static Table read(byte[] bytes) throws Unreadable {
        if (bytes.length > LARGEST) {
            throw new Unreadable("The file has more than 2 MB. Part it into several.");
        }
        return bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K' ? table(Workbooks.rows(bytes)) : text(decoded(bytes));
    }

    private static String decoded(byte[] bytes) throws Unreadable {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw new Unreadable("The file is not in UTF-8. Save it again as CSV with the encoding UTF-8, or as XLSX.");
        }
    }

    /** @param csv with or without a byte order mark */
    public static Table text(String csv) throws Unreadable {
        if (csv.indexOf('\0') >= 0) {
            throw new Unreadable("The file is no text, or not in UTF-8. Save it again as CSV with the encoding UTF-8, or as XLSX.");
        }
        String text = !csv.isEmpty() && csv.charAt(0) == MARK ? csv.substring(1) : csv;
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter(text)).setIgnoreEmptyLines(false).get();
        List<List<String>> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (var row : parser) {
                add(rows, row.toList());
            }
        } catch (IOException | UncheckedIOException e) {
            throw new Unreadable("The file can't be read as a table: a quotation mark is not closed, or something stands behind one.");
        }
        Table table = table(rows);
        refuseTornCells(rows);
        return table;
    }

    /** A decimal comma without quotation marks tears a price in two: the rest of it must not go unseen. A first row of one cell is a title. */
    private static void refuseTornCells(List<List<String>> rows) throws Unreadable {
        int columns = rows.get(0).size();
        List<String> torn = IntStream.range(1, rows.size()).filter(i -> columns > 1 && rows.get(i).stream().skip(columns).anyMatch(c -> !c.isEmpty()))
                .mapToObj(i -> String.valueOf(i + 1)).toList();
        if (!torn.isEmpty()) {
            String named = torn.stream().limit(MOST_NAMED).collect(Collectors.joining(", ")) + (torn.size() > MOST_NAMED ? " and more" : "");
            throw new Unreadable(TORN.formatted(Formats.counted(columns, "column"), named));
        }
    }

    /** What parts the names of the columns most often. */
    private static char delimiter(String text) {
        String first = text.lines().findFirst().orElse("");
        return Stream.of(',', ';', '\t').max((a, b) -> Long.compare(count(first, a), count(first, b))).orElse(',');
    }

    private static long count(String text, char wanted) {
        return text.chars().filter(c -> c == wanted).count();
    }

    /** Takes a row into a table that is being read, within what a table may hold. */
    static void add(List<List<String>> rows, List<String> cells) throws Unreadable {
        if (rows.size() > MOST_ROWS) {
            throw new Unreadable("The table has more than 5,000 rows. Part it into several files.");
        }
        if (cells.size() > MOST_COLUMNS) {
            throw new Unreadable("Row %d has more than 60 cells. Save only the columns of the list.".formatted(rows.size() + 1));
        }
        for (int i = 0; i < cells.size(); i++) {
            if (cells.get(i) != null && cells.get(i).length() > LONGEST_CELL) {
                throw new Unreadable("Cell %d of row %d has more than 1,000 characters. Shorten it.".formatted(i + 1, rows.size() + 1));
            }
        }
        rows.add(cells.stream().map(c -> c == null ? "" : GuardedCell.read(c)).toList());
    }

    private static Table table(List<List<String>> rows) throws Unreadable {
        if (rows.isEmpty() || rows.get(0).stream().allMatch(String::isEmpty)) {
            throw new Unreadable("The first row is empty. It should name the columns.");
        }
        List<String> columns = rows.get(0).stream().map(c -> c.toLowerCase(Locale.ROOT)).toList();
        if (columns.size() == 1 && columns.get(0).contains("|")) {
            throw new Unreadable("The names in the first row are parted by “|”. Part the columns by commas, semicolons or tabs.");
        }
        refuseTwins(columns);
        List<Table.Row> read = new ArrayList<>();
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).stream().anyMatch(c -> !c.isEmpty())) {
                read.add(new Table.Row(i + 1, named(columns, rows.get(i))));
            }
        }
        return new Table(columns, read);
    }

    private static void refuseTwins(List<String> columns) throws Unreadable {
        for (String column : columns) {
            if (!column.isEmpty() && columns.indexOf(column) != columns.lastIndexOf(column)) {
                throw new Unreadable("Two columns are named “%s”. Take one out, or give it another name.".formatted(column));
            }
        }
    }

    private static Map<String, String> named(List<String> columns, List<String> cells) {
        Map<String, String> named = new HashMap<>();
        for (int i = 0; i < Math.min(columns.size(), cells.size()); i++) {
            named.putIfAbsent(columns.get(i), cells.get(i));
        }
        return named;
    }

    /** In UTF-8 with a byte order mark in front, by which spreadsheets know it. */
    public static String csv(Table table) {
        StringBuilder out = new StringBuilder().append(MARK);
        try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
            printer.printRecords(cells(table));
            return out.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @param name of the sheet */
    public static byte[] xlsx(String name, Table table) {
        return Workbooks.written(name, cells(table));
    }

    /** The names of the columns, then the rows, as they are written. */
    private static List<List<String>> cells(Table table) {
        return Stream.concat(Stream.of(table.columns()), table.rows().stream().map(row -> table.columns().stream().map(row::get).toList()))
                .map(row -> row.stream().map(GuardedCell::written).toList()).toList();
    }
}
