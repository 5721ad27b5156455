package benchful.hostile;

import benchful.hostile.HostileFiles.File;
import benchful.hostile.HostileFiles.Place;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Price and stock lists as workbooks that lie about themselves. Parts as ECMA-376 names them, written from memory. */
final class HostileWorkbooks {
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";
    private static final String MAIN = " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKAGE = " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"";
    private static final String SHEET = "xl/worksheets/sheet1.xml";
    private static final String TEXTS = "xl/sharedStrings.xml";
    private static final String BOOK = "xl/workbook.xml";
    private static final String LINKS = "xl/_rels/workbook.xml.rels";
    private static final String FORMATS = "xl/styles.xml";
    private static final String FIRST_ROW = "<row r=\"1\">" + text("A1", "material") + text("B1", "pack") + text("C1", "price") + text("D1", "on the shelf") + text("E1", "supplier") + "</row>";
    private static final int MB = 1 << 20;

    private HostileWorkbooks() {}

    static byte[] good() {
        return Zipped.of(parts());
    }

    static Stream<File> all() {
        return Stream.of(packed(), linked(), celled(), texted(), formatted()).flatMap(s -> s);
    }

    private static Stream<File> packed() {
        return Stream.of(
                book("a sheet that unpacks to 80 MB", true, p -> put(p, SHEET, sheet(FIRST_ROW + " ".repeat(80 * MB)))),
                book("a part beside the sheet that unpacks to 80 MB", true, p -> p.put("xl/media/a.bin", new byte[80 * MB])),
                book("five thousand parts", true, p -> IntStream.range(0, 5000).forEach(i -> p.put("xl/x" + i + ".xml", new byte[0]))),
                book("paths out of the archive", false, p -> p.put("../../../../tmp/evil.xml", bytes("<a/>"))),
                file("the sheet twice", false, new Zipped().with(SHEET, sheet("")).with(BOOK, bookOf(1)).with(LINKS, links(1)).with(SHEET, sheet(FIRST_ROW)).bytes()),
                file("an archive within", true, new Zipped().with("list.xlsx", good()).bytes()),
                file("an archive of nothing", true, new Zipped().bytes()),
                file("cut short", true, Arrays.copyOf(good(), good().length / 2)),
                file("without its list of parts", true, Arrays.copyOf(good(), good().length - 40)),
                file("only the first two letters", true, bytes("PK")),
                file("an older workbook", true, Damage.joined(new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1}, new byte[4096])),
                file("something before the archive", false, Damage.joined(bytes("PK at your service "), good())));
    }

    private static Stream<File> linked() {
        return Stream.of(
                book("no workbook", true, p -> p.remove(BOOK)),
                book("no links", true, p -> p.remove(LINKS)),
                book("no sheet where the link leads", true, p -> p.remove(SHEET)),
                book("no list of types", false, p -> p.remove("[Content_Types].xml")),
                book("a link out of the archive", true, p -> put(p, LINKS, links(1).replace("worksheets/sheet1.xml", "../../../../../etc/passwd"))),
                book("a link to elsewhere", true, p -> put(p, LINKS, links(1).replace("worksheets/sheet1.xml", "http://elsewhere.example/a.xml\" TargetMode=\"External"))),
                book("a link to the links", true, p -> put(p, LINKS, links(1).replace("worksheets/sheet1.xml", "_rels/workbook.xml.rels"))),
                book("links that are no XML", true, p -> put(p, LINKS, "{}")),
                book("no sheets", true, p -> put(p, BOOK, bookOf(0))),
                book("five thousand sheets", false, p -> {
                    put(p, BOOK, bookOf(5000));
                    put(p, LINKS, links(5000));
                }),
                book("a sheet without a name", false, p -> put(p, BOOK, bookOf(1).replaceAll("name=\"\\w+\"", ""))),
                book("a sheet whose number is none", false, p -> put(p, BOOK, bookOf(1).replaceAll("sheetId=\"1\"", "sheetId=\"-99999999999999999999\""))));
    }

    private static Stream<File> celled() {
        return Stream.of(
                cells("a million rows by their dimension", false, "<dimension ref=\"A1:XFD1048576\"/><sheetData>" + FIRST_ROW + "</sheetData>"),
                cells("columns without end", false, "<cols><col min=\"1\" max=\"2147483647\" width=\"1e308\"/></cols><sheetData>" + FIRST_ROW + "</sheetData>"),
                cells("merged over everything", false, "<sheetData>" + FIRST_ROW + "</sheetData><mergeCells>" + "<mergeCell ref=\"A1:XFD1048576\"/>".repeat(2000) + "</mergeCells>"),
                rows("a cell in the last place", true, "<row r=\"1048576\">" + text("XFD1048576", "x") + "</row>"),
                rows("a cell far beyond the last column", true, "<row r=\"2\">" + text("ZZZZZZ2", "x") + "</row>"),
                rows("a cell far beyond the last row", true, "<row r=\"99999999999\">" + text("A99999999999", "x") + "</row>"),
                rows("a row below nothing", false, "<row r=\"-7\">" + text("A-7", "x") + "</row>"),
                rows("a row whose number is a word", false, "<row r=\"two\">" + text("Atwo", "x") + "</row>"),
                rows("a cell without a place", false, "<row><c t=\"inlineStr\"><is><t>x</t></is></c></row>"),
                rows("a cell whose place is a digit", false, "<row r=\"2\">" + text("2", "x") + "</row>"),
                rows("a cell whose place is empty", false, "<row r=\"2\">" + text("", "x") + "</row>"),
                rows("rows in no order", false, "<row r=\"9\">" + text("A9", "x") + "</row><row r=\"3\">" + text("A3", "y") + "</row><row r=\"3\">" + text("A3", "z") + "</row>"),
                rows("rows without end", true, IntStream.range(2, 9000).mapToObj(i -> "<row r=\"%d\">%s</row>".formatted(i, text("A" + i, "x"))).collect(Collectors.joining())),
                rows("a row of twenty thousand cells", true, "<row r=\"2\">" + text("A2", "x").repeat(20_000) + "</row>"),
                rows("elements within elements", false, "<row r=\"2\"><c r=\"A2\">" + "<v>".repeat(100_000)),
                rows("an attribute of a megabyte", false, "<row r=\"2\" spans=\"" + "1".repeat(MB) + "\">" + text("A2", "x") + "</row>"),
                rows("a text of a megabyte", true, "<row r=\"2\">" + text("A2", "x".repeat(MB)) + "</row>"));
    }

    private static Stream<File> texted() {
        return Stream.of(
                texts("a text that is not there", "7", "<si><t>a</t></si>"),
                texts("a text below nothing", "-1", "<si><t>a</t></si>"),
                texts("a text of a number that is too long", "99999999999999999999", "<si><t>a</t></si>"),
                texts("a text whose number is a word", "one", "<si><t>a</t></si>"),
                texts("a text whose number is empty", "", "<si><t>a</t></si>"),
                texts("texts that begin anew", "0", "<si><si><t>a</t></si>"),
                texts("rich texts within rich texts", "0", "<si>" + "<r><t>a</t>".repeat(20_000) + "</si>"),
                book("no texts where one is meant", false, p -> put(p, SHEET, sheet(FIRST_ROW + "<row r=\"2\"><c r=\"A2\" t=\"s\"><v>0</v></c></row>"))),
                book("a laugh told a billion times", false, p -> put(p, TEXTS, laughs() + "<sst" + MAIN + "><si><t>&l9;</t></si></sst>")),
                book("a laugh in the sheet", false, p -> put(p, SHEET, laughs() + sheet("<row r=\"1\">" + text("A1", "&l9;") + "</row>").substring(HEAD.length()))),
                book("a file of the machine", true, p -> put(p, SHEET, "<?xml version=\"1.0\"?><!DOCTYPE a [<!ENTITY e SYSTEM \"file:///etc/passwd\">]>" + sheet("<row r=\"1\">" + text("A1", "&e;") + "</row>").substring(HEAD.length()))),
                book("a sheet in another encoding", false, p -> p.put(SHEET, sheet(FIRST_ROW).replace("UTF-8", "UTF-16").getBytes(StandardCharsets.UTF_16))),
                book("a sheet that says a wrong encoding", false, p -> p.put(SHEET, sheet(FIRST_ROW).replace("UTF-8", "nothing-1").getBytes(StandardCharsets.UTF_8))),
                book("a sheet that is no text", true, p -> p.put(SHEET, new byte[] {0, 1, 2, (byte) 0xFF, (byte) 0xFE})));
    }

    private static Stream<File> formatted() {
        return Stream.of(
                rows("a formula without its result", true, "<row r=\"2\"><c r=\"A2\"><f>1+1</f></c></row>"),
                rows("a formula that calls a program", false, "<row r=\"2\"><c r=\"A2\" t=\"str\"><f>cmd|' /C calc'!A0</f><v>=cmd|' /C calc'!A0</v></c></row>"),
                rows("a formula of a megabyte", false, "<row r=\"2\"><c r=\"A2\"><f>" + "1+".repeat(MB / 2) + "1</f><v>2</v></c></row>"),
                rows("a formula shared with everything", false, "<row r=\"2\"><c r=\"A2\"><f t=\"shared\" ref=\"A1:XFD1048576\" si=\"99999999999\">A1</f><v>2</v></c></row>"),
                rows("errors in place of numbers", false, "<row r=\"2\"><c r=\"A2\" t=\"e\"><v>#REF!</v></c><c r=\"B2\" t=\"b\"><v>7</v></c><c r=\"C2\" t=\"zz\"><v>1</v></c></row>"),
                rows("numbers that are none", false, "<row r=\"2\"><c r=\"A2\"><v>NaN</v></c><c r=\"B2\"><v>1e999999999</v></c><c r=\"C2\"><v>0x1p3</v></c></row>"),
                rows("a number that is long to write out", false, "<row r=\"2\"><c r=\"A2\"><v>1e30000000</v></c><c r=\"C2\"><v>1E-99</v></c></row>"),
                rows("a style that is not there", false, "<row r=\"2\"><c r=\"A2\" s=\"99999\"><v>1</v></c><c r=\"B2\" s=\"-1\"><v>1</v></c></row>"),
                days("a day beyond all days", "yyyy-mm-dd", "1e18"),
                days("a day before all days", "yyyy-mm-dd", "-99999999"),
                days("a day that is no number", "yyyy-mm-dd", "tomorrow"),
                days("a format without end", "\"".repeat(100_000) + "[".repeat(100_000), "1"));
    }

    private static File days(String name, String format, String day) {
        return book(name, false, p -> {
            put(p, FORMATS, HEAD + "<styleSheet" + MAIN + "><numFmts count=\"1\"><numFmt numFmtId=\"170\" formatCode=\"%s\"/></numFmts><cellXfs count=\"1\"><xf numFmtId=\"170\"/></cellXfs></styleSheet>"
                    .formatted(format.replace("\"", "&quot;")));
            put(p, SHEET, sheet(FIRST_ROW + "<row r=\"2\"><c r=\"A2\" s=\"0\"><v>%s</v></c></row>".formatted(day)));
        });
    }

    private static File texts(String name, String number, String texts) {
        return book(name, false, p -> {
            put(p, TEXTS, HEAD + "<sst" + MAIN + " count=\"2147483647\" uniqueCount=\"2147483647\">" + texts + "</sst>");
            put(p, SHEET, sheet(FIRST_ROW + "<row r=\"2\"><c r=\"A2\" t=\"s\"><v>%s</v></c></row>".formatted(number)));
        });
    }

    private static File rows(String name, boolean refused, String rows) {
        return book(name, refused, p -> put(p, SHEET, sheet(FIRST_ROW + rows)));
    }

    private static File cells(String name, boolean refused, String inside) {
        return book(name, refused, p -> put(p, SHEET, HEAD + "<worksheet" + MAIN + ">" + inside + "</worksheet>"));
    }

    private static File book(String name, boolean refused, Consumer<Map<String, byte[]>> edit) {
        Map<String, byte[]> parts = parts();
        edit.accept(parts);
        return file(name, refused, Zipped.of(parts));
    }

    private static File file(String name, boolean refused, byte[] content) {
        return new File("workbook: " + name, Place.LIST, content, refused);
    }

    private static Map<String, byte[]> parts() {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        put(parts, "[Content_Types].xml", HEAD + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"xml\" ContentType=\"application/xml\"/></Types>");
        put(parts, "_rels/.rels", HEAD + "<Relationships" + PACKAGE + "><Relationship Id=\"r1\" Type=\"" + OFFICE + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
        put(parts, BOOK, bookOf(1));
        put(parts, LINKS, links(1));
        put(parts, SHEET, sheet(FIRST_ROW + "<row r=\"2\">" + text("A2", "amazonite round 6 mm") + text("B2", "100 pcs") + "<c r=\"C2\"><v>2.6</v></c>" + text("D2", "5 pcs") + text("E2", "Ninepin Bead Loft") + "</row>"));
        return parts;
    }

    private static String bookOf(int sheets) {
        return HEAD + "<workbook" + MAIN + " xmlns:r=\"" + OFFICE + "\"><sheets>"
                + IntStream.rangeClosed(1, sheets).mapToObj(i -> "<sheet name=\"s%d\" sheetId=\"%d\" r:id=\"r%d\"/>".formatted(i, i, i)).collect(Collectors.joining()) + "</sheets></workbook>";
    }

    private static String links(int sheets) {
        return HEAD + "<Relationships" + PACKAGE + ">" + IntStream.rangeClosed(1, sheets)
                .mapToObj(i -> "<Relationship Id=\"r%d\" Type=\"%s/worksheet\" Target=\"worksheets/sheet1.xml\"/>".formatted(i, OFFICE)).collect(Collectors.joining()) + "</Relationships>";
    }

    private static String sheet(String rows) {
        return HEAD + "<worksheet" + MAIN + "><sheetData>" + rows + "</sheetData></worksheet>";
    }

    private static String text(String place, String text) {
        return "<c r=\"%s\" t=\"inlineStr\"><is><t>%s</t></is></c>".formatted(place, text);
    }

    private static String laughs() {
        return "<?xml version=\"1.0\"?><!DOCTYPE a [<!ENTITY l0 \"ha\">" + IntStream.rangeClosed(1, 9)
                .mapToObj(i -> "<!ENTITY l%d \"%s\">".formatted(i, ("&l" + (i - 1) + ";").repeat(10))).collect(Collectors.joining()) + "]>";
    }

    private static void put(Map<String, byte[]> parts, String path, String text) {
        parts.put(path, bytes(text));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
