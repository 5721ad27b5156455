package benchful.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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

    /** The workbook with a part of its sheet replaced. */
    private static byte[] edited(byte[] book, String part, String other) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipFile in = ZipFile.builder().setByteArray(book).get(); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (ZipArchiveEntry entry : Collections.list(in.getEntries())) {
                String text = new String(in.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
                zip.putNextEntry(new ZipEntry(entry.getName()));
                if (entry.getName().endsWith("sheet1.xml")) {
                    assertThat(text).contains(part);
                }
                zip.write(text.replace(part, other).getBytes(StandardCharsets.UTF_8));
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
        List<String> words = List.of("silk", "a, b", "4;5", "say \"knot\"", "two\nlines", "ñandú 珠", "12", "0.50", "=1+1", "tab\tbed");
        List<Table.Row> rows = new ArrayList<>();
        for (int i = 0; i < random.nextInt(1, 30); i++) {
            Map<String, String> cells = new HashMap<>();
            columns.forEach(c -> cells.put(c, words.get(random.nextInt(words.size()))));
            rows.add(new Table.Row(i + 2, cells));
        }
        return new Table(columns, rows);
    }
}
