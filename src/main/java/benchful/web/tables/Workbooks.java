package benchful.web.tables;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/** Tables in XLSX workbooks (ECMA-376). */
final class Workbooks {
    private static final ReadingOptions WITH_FORMATS = new ReadingOptions(true, false);
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,15}(\\.\\d{1,20})?(E-?\\d{1,2})?");
    /** Cells hold binary fractions: 2.6 may be stored as 2.5999999999999996. All spreadsheets show 15 digits. */
    private static final MathContext SHOWN = new MathContext(15);

    private static final int LONGEST_FORMAT = 200;
    private static final Pattern BESIDE = Pattern.compile("\\[[^\\]]*+]|\"[^\"]*+\"|\\\\.|_.");

    private Workbooks() {}

    /** The cells of the first sheet, row by row from row 1; rows left out in the file are empty. */
    static List<List<String>> rows(byte[] bytes) throws TableFile.Unreadable {
        WorkbookBounds.check(bytes);
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(bytes), WITH_FORMATS)) {
            Sheet sheet = book.getSheets().findFirst()
                    .orElseThrow(() -> new TableFile.Unreadable("The workbook has no sheet. Put the table on its first sheet and save it again."));
            return rows(sheet);
        } catch (IOException | RuntimeException e) {
            throw new TableFile.Unreadable("The file is no XLSX table that can be read. Save it again as XLSX or CSV.");
        }
    }

    private static List<List<String>> rows(Sheet sheet) throws IOException, TableFile.Unreadable {
        List<List<String>> rows = new ArrayList<>();
        try (Stream<Row> found = sheet.openStream()) {
            for (Row row : (Iterable<Row>) found::iterator) {
                List<String> cells = cells(sheet, row);
                if (!cells.stream().allMatch(String::isBlank)) {
                    lay(rows, row.getRowNum() - 1, cells);
                }
            }
        }
        return rows;
    }

    private static void lay(List<List<String>> rows, int before, List<String> cells) throws TableFile.Unreadable {
        while (rows.size() < Math.min(before, TableFile.MOST_ROWS + 1)) {
            TableFile.add(rows, List.of());
        }
        TableFile.add(rows, cells);
    }

    /** A cell that is only coloured or framed may stand anywhere; one that says something must be one of the table's. */
    private static List<String> cells(Sheet sheet, Row row) throws TableFile.Unreadable {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.getCellCount(); i++) {
            String shown = row.hasCell(i) ? shown(sheet, row.getCell(i)) : "";
            if (i < TableFile.MOST_COLUMNS) {
                cells.add(shown);
            } else if (!shown.isBlank()) {
                throw new TableFile.Unreadable("%s lies beyond the 60 columns that a table has here. Save only the table itself.".formatted(name(sheet, row.getCell(i))));
            }
        }
        return cells;
    }

    private static String name(Sheet sheet, Cell cell) {
        return "Cell %s of the sheet “%s”".formatted(cell.getAddress(), sheet.getName());
    }

    /** A number or day as a spreadsheet shows it; an error by its code, so that it is not taken for a blank cell. */
    private static String shown(Sheet sheet, Cell cell) throws TableFile.Unreadable {
        if (cell.getType() == CellType.FORMULA && cell.getRawValue() == null) {
            throw new TableFile.Unreadable("%s holds a formula without its result. Open the file in a spreadsheet and save it again, or put the result in place of the formula."
                    .formatted(name(sheet, cell)));
        }
        return switch (cell.getType()) {
            case EMPTY -> "";
            case NUMBER -> isDay(cell.getDataFormatString()) ? cell.asDate().toLocalDate().toString() : shown(cell.asNumber());
            case ERROR, FORMULA -> shown(Objects.requireNonNullElse(cell.getRawValue(), ""));
            default -> cell.getText();
        };
    }

    /** Formats of days have a year in them, such as {@code yyyy-mm-dd}, or a day and a month; texts in quotes and brackets do not count. */
    private static boolean isDay(String format) {
        if (format == null || format.length() > LONGEST_FORMAT) {
            return false;
        }
        String bare = BESIDE.matcher(format.toLowerCase(Locale.ROOT)).replaceAll("");
        return bare.contains("y") || bare.contains("d") && bare.contains("m");
    }

    private static String shown(String result) {
        return NUMBER.matcher(result).matches() ? shown(new BigDecimal(result)) : result;
    }

    private static String shown(BigDecimal number) {
        return number.round(SHOWN).stripTrailingZeros().toPlainString();
    }

    /**
     * @param name of the sheet
     * @param rows the first of them names the columns
     */
    static byte[] written(String name, List<List<String>> rows) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Benchful", "1.0")) {
            Worksheet sheet = book.newWorksheet(name);
            for (int row = 0; row < rows.size(); row++) {
                for (int column = 0; column < rows.get(row).size(); column++) {
                    sheet.value(row, column, rows.get(row).get(column));
                }
            }
            IntStream.range(0, rows.get(0).size()).forEach(column -> sheet.style(0, column).bold().set());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
