package benchful.web.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableFileTest {
    private static final Table SILK = new Table(List.of("material", "price"), List.of(
            new Table.Row(2, Map.of("material", "silk, \"size 6\"", "price", "4,20")), new Table.Row(4, Map.of("material", "żółta nić", "price", ""))));

    @ParameterizedTest
    @ValueSource(strings = {
        "Material,Price\r\n\"silk, \"\"size 6\"\"\",\"4,20\"\r\n,\r\nżółta nić,\r\n",
        "material;price\n\"silk, \"\"size 6\"\"\"; 4,20\n\nżółta nić",
        "\uFEFFMATERIAL\tPRICE\n\"silk, \"\"size 6\"\"\"\t4,20\n\t\nżółta nić\t"
    })
    void readsTheSameTableWhateverPartsItsCells(String csv) throws TableFile.Unreadable {
        Table table = TableFile.read(csv.getBytes(StandardCharsets.UTF_8));
        assertThat(table.columns()).isEqualTo(SILK.columns());
        assertThat(table.rows()).extracting(Table.Row::number).containsExactly(2, 4);
        assertThat(table.rows()).extracting(r -> r.get("material")).containsExactly("silk, \"size 6\"", "żółta nić");
        assertThat(table.rows()).extracting(r -> r.get("price")).containsExactly("4,20", "");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void readsBackWhatItWroteAsCsvAndAsXlsx(long seed) throws TableFile.Unreadable {
        Table table = anyTable(new SplittableRandom(seed));
        assertThat(TableFile.text(TableFile.csv(table))).isEqualTo(table);
        assertThat(TableFile.read(TableFile.xlsx("list", table))).isEqualTo(table);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=cmd|' /C calc'!A0", "+1+1", "-1+1", "@SUM(A1)", "= 1", "\uFF1D1+1", "'=1", "=1\n=2"})
    void guardsANameThatASpreadsheetWouldRun(String name) throws TableFile.Unreadable {
        Table table = new Table(List.of("material"), List.of(new Table.Row(2, Map.of("material", name))));
        assertThat(TableFile.csv(table)).contains("'" + name);
        assertThat(TableFile.text(TableFile.csv(table))).isEqualTo(table);
        assertThat(TableFile.read(TableFile.xlsx("list", table))).isEqualTo(table);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-5", "+0.25", "-1,5", "'tis", "a=b"})
    void leavesNumbersAndOtherNamesAsTheyAre(String name) {
        assertThat(TableFile.csv(new Table(List.of("x"), List.of(new Table.Row(2, Map.of("x", name)))))).doesNotContain("'" + name);
    }

    @Test
    void saysWhatIsWrongWithAFileThatIsNoTableOfText() {
        assertThatThrownBy(() -> TableFile.read("a\0b".getBytes(StandardCharsets.UTF_8))).hasMessageContaining("The file is no text, or not in UTF-8");
        assertThatThrownBy(() -> TableFile.read("material,price".getBytes(StandardCharsets.UTF_16))).hasMessageContaining("not in UTF-8");
        assertThatThrownBy(() -> TableFile.read("material,price".getBytes(StandardCharsets.UTF_16LE))).hasMessageContaining("not in UTF-8");
        assertThatThrownBy(() -> TableFile.text("material|price\nsilk|2\n")).hasMessageContaining("parted by “|”");
        assertThatThrownBy(() -> TableFile.text("a\n" + "x".repeat(1001))).hasMessage("Cell 1 of row 2 has more than 1,000 characters. Shorten it.");
        assertThatThrownBy(() -> TableFile.text("a" + ",".repeat(2_000_000))).hasMessageContaining("Row 1 has more than 60 cells");
    }

    @Test
    void saysHowToMendAFileInAnotherEncoding() {
        assertThatThrownBy(() -> TableFile.read("Preis;10 €".getBytes(java.nio.charset.Charset.forName("windows-1252"))))
                .isInstanceOf(TableFile.Unreadable.class)
                .hasMessage("The file is not in UTF-8. Save it again as CSV with the encoding UTF-8, or as XLSX.");
    }

    @Test
    void refusesATableThatIsTooLongOrHasAQuotationMarkLeftOpen() {
        assertThatThrownBy(() -> TableFile.text("a\n" + "x\n".repeat(5001))).hasMessageContaining("more than 5,000 rows");
        assertThatThrownBy(() -> TableFile.text("a,b\n\"x,y\n")).hasMessageContaining("a quotation mark is not closed");
        assertThatThrownBy(() -> TableFile.text("\n1,2")).hasMessageContaining("The first row is empty");
        assertThatThrownBy(() -> TableFile.read(new byte[3 * 1024 * 1024])).hasMessageContaining("more than 2 MB");
    }

    @Test
    void refusesAWorkbookThatIsDamagedOrUnpacksToFarMore() throws IOException {
        assertThatThrownBy(() -> TableFile.read("PK no workbook".getBytes(StandardCharsets.UTF_8))).isInstanceOf(TableFile.Unreadable.class);
        assertThatThrownBy(() -> TableFile.read(zeros(41))).hasMessageContaining("unpacks to more than 40 MB");
        assertThatThrownBy(() -> TableFile.read(zeros(1))).hasMessageContaining("no XLSX table");
    }

    @Test
    void refusesAPriceTornByItsDecimalComma() {
        assertThatThrownBy(() -> TableFile.text("material,pack,price\nsilk,2 m,2.60\ncord,2 m,2,60\n"))
                .hasMessage("The first row names 3 columns, but more cells are filled in row 3."
                        + " Put what holds a comma, such as “2,60”, in quotation marks, or part the columns by semicolons.");
        assertThatThrownBy(() -> TableFile.text("a,b\n" + "x,y,z\n".repeat(12))).hasMessageContaining("in row 2, 3, 4, 5, 6, 7, 8, 9, 10, 11 and more.");
    }

    @Test
    void refusesTwoColumnsOfOneName() {
        assertThatThrownBy(() -> TableFile.text("material,Price,price\nsilk,2.60,3.12\n"))
                .hasMessage("Two columns are named “price”. Take one out, or give it another name.");
    }

    @Test
    void readsNumbersAsASpreadsheetShowsThemAndErrorsByTheirCode() throws IOException, TableFile.Unreadable {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Test", "1.0")) {
            Worksheet sheet = book.newWorksheet("prices");
            sheet.value(0, 0, "price");
            sheet.value(1, 0, 1.3 + 1.3 - 4.440892098500626E-16);
            sheet.value(2, 0, 0.035);
            sheet.value(3, 0, 1e-4);
        }
        assertThat(TableFile.read(out.toByteArray()).rows()).extracting(r -> r.get("price")).containsExactly("2.6", "0.035", "0.0001");
        byte[] computed = edited(out.toByteArray(), "<v>0.035</v>", "<f>0.07/2</f><v>3.5000000000000003E-2</v>");
        assertThat(TableFile.read(computed).rows()).extracting(r -> r.get("price")).containsExactly("2.6", "0.035", "0.0001");
        byte[] broken = edited(out.toByteArray(), "<c r=\"A3\" t=\"n\"><v>0.035</v>", "<c r=\"A3\" t=\"e\"><v>#N/A</v>");
        assertThat(TableFile.read(broken).rows()).extracting(r -> r.get("price")).containsExactly("2.6", "#N/A", "0.0001");
    }

    @ParameterizedTest
    @CsvSource({"ZZZZZZ2, a cell ZZZZZZ2; spreadsheets end at XFD1048576", "A99999999999, a cell A99999999999", "BJ2, Cell BJ2 of the sheet “prices” lies beyond the 60 columns",
        "XFD2, Cell XFD2 of the sheet “prices” lies beyond the 60 columns", "A9999, more than 5`000 rows"})
    void namesACellThatLiesTooFarOut(String cell, String words) throws IOException {
        byte[] far = edited(price(2.6), "r=\"A2\"", "r=\"%s\"".formatted(cell));
        byte[] book = cell.equals("A9999") ? edited(far, "<row r=\"2\"", "<row r=\"9999\"") : far;
        assertThatThrownBy(() -> TableFile.read(book)).isInstanceOf(TableFile.Unreadable.class).hasMessageContaining(words.replace('`', ','));
    }

    @Test
    void takesAFramedCellFarOutForNone() throws IOException, TableFile.Unreadable {
        byte[] framed = edited(price(2.6), "</row></sheetData>", "<c r=\"XFD2\"/></row></sheetData>");
        assertThat(TableFile.read(framed).rows()).extracting(r -> r.get("price")).containsExactly("2.6");
    }

    @Test
    void refusesAFormulaWithoutItsResultAndReadsADayAsOne() throws IOException, TableFile.Unreadable {
        assertThatThrownBy(() -> TableFile.read(edited(price(2.6), "<v>2.6</v>", "<f>1.3*2</f>")))
                .hasMessageContaining("Cell A2 of the sheet “prices” holds a formula without its result");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Test", "1.0")) {
            Worksheet sheet = book.newWorksheet("prices");
            sheet.value(0, 0, "price");
            sheet.value(1, 0, LocalDate.of(2027, 5, 1));
            sheet.style(1, 0).format("yyyy-mm-dd").set();
            sheet.value(2, 0, 2.6);
            sheet.style(2, 0).format("#,##0.00 [$GBP];[Red]-0").set();
        }
        assertThat(TableFile.read(out.toByteArray()).rows()).extracting(r -> r.get("price")).containsExactly("2027-05-01", "2.6");
    }

    @Test
    void refusesAWorkbookWithoutSheetsOrWithBrokenParts() throws IOException {
        byte[] book = price(2.6);
        assertThatThrownBy(() -> TableFile.read(edited(book, "xl/workbook.xml", "<sheets>.*</sheets>", "<sheets/>"))).hasMessageContaining("no sheet");
        assertThatThrownBy(() -> TableFile.read(edited(book, "xl/workbook.xml", "<sheets>.*</sheets>", ""))).isInstanceOf(TableFile.Unreadable.class);
        for (String part : List.of("xl/workbook.xml", "xl/worksheets/sheet1.xml", "xl/styles.xml", "xl/_rels/workbook.xml.rels", "[Content_Types].xml", "xl/sharedStrings.xml")) {
            for (String broken : List.of("", "<", "<a/>", "<!DOCTYPE a [<!ENTITY b \"c\">]><a>&b;</a>")) {
                try {
                    TableFile.read(edited(book, part, "(?s).*", broken));
                } catch (TableFile.Unreadable e) {
                    assertThat(e.getMessage()).as(part).containsAnyOf("ave it again", "The first row is empty");
                }
            }
        }
    }

    private static byte[] price(double price) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Test", "1.0")) {
            Worksheet sheet = book.newWorksheet("prices");
            sheet.value(0, 0, "price");
            sheet.value(1, 0, price);
        }
        return out.toByteArray();
    }

    /** The workbook with a part of its sheet replaced. */
    private static byte[] edited(byte[] book, String part, String other) throws IOException {
        return edited(book, "xl/worksheets/sheet1.xml", Pattern.quote(part), Matcher.quoteReplacement(other));
    }

    private static byte[] edited(byte[] book, String entry, String part, String other) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipFile in = ZipFile.builder().setByteArray(book).get(); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (ZipArchiveEntry found : Collections.list(in.getEntries())) {
                String text = new String(in.getInputStream(found).readAllBytes(), StandardCharsets.UTF_8);
                zip.putNextEntry(new ZipEntry(found.getName()));
                boolean meant = found.getName().equals(entry);
                assertThat(!meant || Pattern.compile(part).matcher(text).find()).as("%s in %s", part, text).isTrue();
                zip.write((meant ? text.replaceFirst(part, other) : text).getBytes(StandardCharsets.UTF_8));
            }
        }
        return out.toByteArray();
    }

    private static byte[] zeros(int megabytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("xl/sharedStrings.xml"));
            for (int i = 0; i < megabytes; i++) {
                zip.write(new byte[1024 * 1024]);
            }
        }
        return out.toByteArray();
    }

    private static Table anyTable(SplittableRandom random) {
        List<String> columns = List.of("material", "unit", "pack", "price");
        List<String> words = List.of("silk", "a, b", "4;5", "say \"knot\"", "two\nlines", "ñandú 珠", "12", "0.50", "=1+1", "tab\tbed",
                "=cmd|' /C calc'!A0", "+44 1632", "-2 m", "-5", "@who", "'=quoted", "'''-", "'tis", "＝wide", "+", "-1,5");
        List<Table.Row> rows = new ArrayList<>();
        for (int i = 0; i < random.nextInt(1, 30); i++) {
            Map<String, String> cells = new HashMap<>();
            columns.forEach(c -> cells.put(c, words.get(random.nextInt(words.size()))));
            rows.add(new Table.Row(i + 2, cells));
        }
        return new Table(columns, rows);
    }
}
