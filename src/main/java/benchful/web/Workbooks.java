package benchful.web;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/** Tables in XLSX workbooks (ECMA-376). */
final class Workbooks {
    private static final int LARGEST_UNPACKED = 40 * 1024 * 1024;
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,15}(\\.\\d{1,20})?(E-?\\d{1,2})?");
    /** Cells hold binary fractions: 2.6 may be stored as 2.5999999999999996. All spreadsheets show 15 digits. */
    private static final MathContext SHOWN = new MathContext(15);

    private Workbooks() {}

    /** The cells of the first sheet, row by row from row 1; rows left out in the file are empty. */
    static List<List<String>> rows(byte[] bytes) throws TableFile.Unreadable {
        refuseBomb(bytes);
        List<List<String>> rows = new ArrayList<>();
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(bytes));
                Stream<Row> found = book.getFirstSheet().openStream()) {
            for (Row row : (Iterable<Row>) found::iterator) {
                while (rows.size() < Math.min(row.getRowNum() - 1, TableFile.MOST_ROWS)) {
                    TableFile.add(rows, List.of());
                }
                TableFile.add(rows, cells(row));
            }
        } catch (IOException | ExcelReaderException e) {
            throw new TableFile.Unreadable("The file is no XLSX table that can be read. Save it again as XLSX or CSV.");
        }
        return rows;
    }

    private static List<String> cells(Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < Math.min(row.getCellCount(), TableFile.MOST_COLUMNS); i++) {
            cells.add(row.getOptionalCell(i).map(Workbooks::shown).orElse(""));
        }
        return cells;
    }

    /** A number as a spreadsheet shows it; an error by its code, so that it is not taken for a blank cell. */
    private static String shown(Cell cell) {
        return switch (cell.getType()) {
            case EMPTY -> "";
            case NUMBER -> shown(cell.asNumber());
            case ERROR, FORMULA -> shown(Objects.requireNonNullElse(cell.getRawValue(), ""));
            default -> cell.getText();
        };
    }

    private static String shown(String result) {
        return NUMBER.matcher(result).matches() ? shown(new BigDecimal(result)) : result;
    }

    private static String shown(BigDecimal number) {
        return number.round(SHOWN).stripTrailingZeros().toPlainString();
    }

    /** A small file can unpack to a huge one: it is unpacked once for its size, before it is read. */
    private static void refuseBomb(byte[] bytes) throws TableFile.Unreadable {
        long left = LARGEST_UNPACKED;
        try (ZipFile zip = ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes)).get()) {
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                try (InputStream in = zip.getInputStream(entry)) {
                    left -= in.skip(left + 1);
                }
                if (left < 0) {
                    throw new TableFile.Unreadable("The file unpacks to more than 40 MB. Save only the table itself.");
                }
            }
        } catch (IOException e) {
            throw new TableFile.Unreadable("The file is damaged. Save it again as XLSX or CSV.");
        }
    }

    /** @param name of the sheet */
    static byte[] written(String name, Table table) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Benchful", "1.0")) {
            Worksheet sheet = book.newWorksheet(name);
            for (int column = 0; column < table.columns().size(); column++) {
                String key = table.columns().get(column);
                sheet.value(0, column, key);
                sheet.style(0, column).bold().set();
                for (int row = 0; row < table.rows().size(); row++) {
                    sheet.value(row + 1, column, table.rows().get(row).get(key));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
