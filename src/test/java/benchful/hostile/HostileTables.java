package benchful.hostile;

import benchful.hostile.HostileFiles.File;
import benchful.hostile.HostileFiles.Place;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;

/** Price and stock lists as texts that no spreadsheet writes. */
final class HostileTables {
    private static final String GOOD = "material,pack,price,on the shelf,supplier\r\namazonite round 6 mm,100 pcs,2.60,5 pcs,Ninepin Bead Loft\r\n\"silk, “fine”\",2 m,1.20,3 m,Ninepin Bead Loft\r\n";
    private static final int MB = 1 << 20;

    private HostileTables() {}

    static byte[] good() {
        return bytes(GOOD);
    }

    static Stream<File> all() {
        return Stream.of(
                table("nothing", true, ""),
                table("blanks", true, " \n \n"),
                table("a mark and nothing", true, "\uFEFF"),
                table("NUL in a name", true, "material\0,pack,price\nx,1 pcs,1"),
                table("NUL in a cell", true, GOOD + "a\0b,1 pcs,1,1 pcs,x"),
                table("a line without end", true, GOOD + "x".repeat(MB)),
                table("a first line without end", true, "x".repeat(MB)),
                table("a first line of commas", true, ",".repeat(MB)),
                table("more than it may hold", true, "x".repeat(3 * MB)),
                table("lines without end", true, GOOD + "a,1 pcs,1,1 pcs,x\n".repeat(20_000)),
                table("empty lines without end", true, GOOD + "\n".repeat(MB)),
                table("a mark that is never closed", true, GOOD + "\"a,1 pcs,1,1 pcs,x\n".repeat(500)),
                table("a mark in the middle", true, GOOD + "\"a\"b,1 pcs,1,1 pcs,x\n"),
                table("marks without end", false, GOOD + "\"".repeat(100_000) + "\n"),
                table("returns without line ends", false, GOOD.replace("\r\n", "\r")),
                table("columns twice", true, "material,price,material\na,1,b"),
                table("sixty-one columns", true, "c,".repeat(61) + "\n"),
                table("a first line of a formula", true, "=cmd|' /C calc'!A0,pack,price\n"),
                table("formulas", false, GOOD + "=1+1,=2 pcs,=1,@SUM(A1),+x\n-1+1,\t=1,'=1,'',“\n"),
                table("marks of pages", false, GOOD + "<script>alert(1)</script>,{x},{#if},&amp;,\"'\n"),
                table("signs that can't be stored", false, GOOD + "a\uFFFE\uFFFF\u0001\u001B,1 pcs,1,1 pcs,\u202Ex\n"),
                table("numbers that are none", false, GOOD + "a,1e999999999 pcs,1e999999999,-0 pcs,x\nb,½ pcs,NaN,∞ pcs,x\nc,٣ pcs,１,1 pcs,x\n"),
                table("numbers without end", false, GOOD + "a," + "9".repeat(900) + " pcs," + "9".repeat(900) + "." + "9".repeat(90) + ",1 pcs,x\n"),
                table("the same row again and again", false, GOOD + "amazonite round 6 mm,100 pcs,2.60,5 pcs,Ninepin Bead Loft\n".repeat(400)),
                table("names that differ by their case", false, GOOD + "AMAZONITE ROUND 6 MM,100 pcs,2.60,5 pcs,Ninepin Bead Loft\nAmazonite Round 6 mm,100 pcs,2.60,6 pcs,Ninepin Bead Loft\n"),
                file("UTF-16", true, GOOD.getBytes(StandardCharsets.UTF_16)),
                file("Latin-1", true, GOOD.replace("silk", "Sëide").replaceAll("[“”]", "").getBytes(StandardCharsets.ISO_8859_1)),
                file("half a letter", true, Damage.joined(bytes(GOOD), new byte[] {(byte) 0xE2, (byte) 0x80})),
                file("half a pair", true, Damage.joined(bytes(GOOD), new byte[] {(byte) 0xED, (byte) 0xA0, (byte) 0x80})),
                file("bytes of a program", true, Damage.joined(new byte[] {0x7F, 'E', 'L', 'F', 2, 1, 1, 0}, new byte[5000])));
    }

    private static File table(String name, boolean refused, String text) {
        return file(name, refused, bytes(text));
    }

    private static File file(String name, boolean refused, byte[] content) {
        return new File("table: " + name, Place.LIST, content, refused);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
