package benchful.hostile;

import benchful.hostile.HostileFiles.File;
import benchful.hostile.HostileFiles.Place;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.ImageIO;

/** Photographs that are broken, that are far larger than they look, or that tell more than they show. */
final class HostilePhotos {
    /** Stands in what must not be kept of a photograph. */
    static final String SECRET = "51.501N 0.142W";

    private static final int SIGNATURE = 8;
    private static final int HEAD_CHUNK = 25;
    private static final int MB = 1 << 20;

    private HostilePhotos() {}

    static byte[] good(String format) {
        BufferedImage picture = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
        IntStream.range(0, 2400).forEach(i -> picture.setRGB(i % 60, i / 60, i * 0x010307));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(picture, format, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    static Stream<File> all() {
        return Stream.of(chunks(), segments(), either("png"), either("jpeg")).flatMap(s -> s);
    }

    private static Stream<File> chunks() {
        byte[] png = good("png");
        return Stream.of(
                photo("png of 60,000 by 60,000 dots", true, sized(60_000, 60_000, 8, 2)),
                photo("png of all the dots there can be", true, sized(Integer.MAX_VALUE, Integer.MAX_VALUE, 8, 2)),
                photo("png of 99 million dots, of which none is there", true, sized(9_900, 9_900, 8, 6)),
                photo("png of no dots", true, sized(0, 40, 8, 2)),
                photo("png wider than nothing", true, sized(-60, 40, 8, 2)),
                photo("png of a depth that is none", true, sized(60, 40, 7, 2)),
                photo("png of a kind that is none", true, sized(60, 40, 8, 9)),
                photo("png with a wrong sum", false, flipped(png, SIGNATURE + HEAD_CHUNK - 1)),
                photo("png whose dots have a wrong sum", false, flipped(png, png.length - 13)),
                photo("png with a chunk longer than the file", true, after(png, "teXt", new byte[0], Integer.MAX_VALUE)),
                photo("png with a chunk shorter than nothing", true, after(png, "teXt", new byte[0], -5)),
                photo("png without its head", true, Damage.joined(Arrays.copyOf(png, SIGNATURE), Arrays.copyOfRange(png, SIGNATURE + HEAD_CHUNK, png.length))),
                photo("png with two heads", false, Damage.joined(Arrays.copyOf(png, SIGNATURE + HEAD_CHUNK), Arrays.copyOfRange(png, SIGNATURE, png.length))),
                photo("png with a palette of nothing", false, after(png, "PLTE", new byte[0], 0)),
                photo("png with a text that unpacks to 60 MB", false, after(png, "zTXt", bomb("a\0\0"))),
                photo("png with a profile that unpacks to 60 MB", false, after(png, "iCCP", bomb("a\0\0"))),
                photo("png with a profile that is none", false, after(png, "iCCP", bytes("a\0\0" + SECRET))),
                photo("png with a position", false, after(png, "eXIf", directory())),
                photo("png with a position in a text", false, after(png, "tEXt", bytes("Comment\0" + SECRET))),
                photo("png with a directory that refers to itself", false, after(png, "eXIf", new byte[] {'M', 'M', 0, 42, 0, 0, 0, 8, (byte) 0xFF, (byte) 0xFF, 0, 0, 0, 8})),
                photo("png with ten thousand chunks", false, Damage.joined(Arrays.copyOf(png, SIGNATURE + HEAD_CHUNK),
                        Damage.joined(IntStream.range(0, 10_000).mapToObj(i -> chunk("tEXt", bytes("a\0b"), 3)).toArray(byte[][]::new)), Arrays.copyOfRange(png, SIGNATURE + HEAD_CHUNK, png.length))));
    }

    private static Stream<File> segments() {
        byte[] jpeg = good("jpeg");
        return Stream.of(
                photo("jpeg of 65,535 by 65,535 dots", true, frame(jpeg, 65_535, 65_535)),
                photo("jpeg of no dots", true, frame(jpeg, 0, 0)),
                photo("jpeg of 9,900 by 9,900 dots that aren't there", false, frame(jpeg, 9_900, 9_900)),
                photo("jpeg with a position", false, segment(jpeg, 0xE1, Damage.joined(bytes("Exif\0\0"), directory()))),
                photo("jpeg with a position in a comment", false, segment(jpeg, 0xFE, bytes(SECRET))),
                photo("jpeg with a position in other words", false, segment(jpeg, 0xE1, bytes("http://ns.adobe.com/xap/1.0/\0<x>" + SECRET + "</x>"))),
                photo("jpeg whose directory lies outside it", false, segment(jpeg, 0xE1, Damage.joined(bytes("Exif\0\0II*\0"), new byte[] {(byte) 0xFF, (byte) 0xFF, (byte) 0xFF, 0x7F}))),
                photo("jpeg whose directory lies before it", false, segment(jpeg, 0xE1, Damage.joined(bytes("Exif\0\0MM\0*"), new byte[] {(byte) 0xFF, (byte) 0xFF, (byte) 0xFF, (byte) 0xF0}))),
                photo("jpeg whose notes are shorter than their length", true, Damage.joined(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE1, (byte) 0xFF, (byte) 0xFF}, bytes("Exif\0\0"))),
                photo("jpeg with a segment of no length", false, Damage.joined(Arrays.copyOf(jpeg, 2), new byte[] {(byte) 0xFF, (byte) 0xE1, 0, 0}, Arrays.copyOfRange(jpeg, 2, jpeg.length))),
                photo("jpeg with a profile in 255 parts, of which one is there", false, segment(jpeg, 0xE2, bytes("ICC_PROFILE\0\1\u00FF" + SECRET))),
                photo("jpeg of fill bytes", false, Damage.joined(Arrays.copyOf(jpeg, 2), fill(MB), Arrays.copyOfRange(jpeg, 2, jpeg.length / 2))),
                photo("jpeg that begins again and again", true, Damage.joined(IntStream.range(0, 5_000).mapToObj(i -> Arrays.copyOf(jpeg, 20)).toArray(byte[][]::new))),
                photo("jpeg of a beginning and an end", true, new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xD9}));
    }

    private static Stream<File> either(String format) {
        byte[] good = good(format);
        return Stream.of(
                photo(format + " cut short", false, Arrays.copyOf(good, good.length * 2 / 3)),
                photo(format + " of its first bytes", true, Arrays.copyOf(good, 12)),
                photo(format + " with something behind its end", false, Damage.joined(good, bytes(SECRET))),
                photo(format + " that is an archive too", false, Damage.joined(good, new Zipped().with("a.txt", SECRET).bytes())),
                photo(format + " that is a page too", false, Damage.joined(good, bytes("<html><script>alert('" + SECRET + "')</script></html>"))),
                photo(format + " behind a blank", true, Damage.joined(bytes(" "), good)),
                photo(format + " with a second one behind it", false, Damage.joined(good, good)));
    }

    private static byte[] sized(int width, int height, int depth, int kind) {
        byte[] png = good("png");
        ByteBuffer.wrap(png).putInt(16, width).putInt(20, height).put(24, (byte) depth).put(25, (byte) kind);
        CRC32 sum = new CRC32();
        sum.update(png, 12, 17);
        ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());
        return png;
    }

    private static byte[] after(byte[] png, String type, byte[] content) {
        return after(png, type, content, content.length);
    }

    private static byte[] after(byte[] png, String type, byte[] content, int length) {
        return Damage.joined(Arrays.copyOf(png, SIGNATURE + HEAD_CHUNK), chunk(type, content, length), Arrays.copyOfRange(png, SIGNATURE + HEAD_CHUNK, png.length));
    }

    private static byte[] chunk(String type, byte[] content, int length) {
        byte[] inside = Damage.joined(bytes(type), content);
        CRC32 sum = new CRC32();
        sum.update(inside);
        return ByteBuffer.allocate(inside.length + 8).putInt(length).put(inside).putInt((int) sum.getValue()).array();
    }

    private static byte[] bomb(String before) {
        Deflater deflater = new Deflater();
        deflater.setInput(new byte[60 * MB]);
        deflater.finish();
        byte[] packed = new byte[MB];
        int length = deflater.deflate(packed);
        deflater.end();
        return Damage.joined(bytes(before), Arrays.copyOf(packed, length));
    }

    private static byte[] frame(byte[] jpeg, int width, int height) {
        byte[] changed = jpeg.clone();
        int at = IntStream.range(0, jpeg.length - 1).filter(i -> jpeg[i] == (byte) 0xFF && jpeg[i + 1] == (byte) 0xC0).findFirst().orElseThrow();
        ByteBuffer.wrap(changed).putShort(at + 5, (short) height).putShort(at + 7, (short) width);
        return changed;
    }

    private static byte[] segment(byte[] jpeg, int marker, byte[] content) {
        byte[] head = {(byte) 0xFF, (byte) marker, (byte) ((content.length + 2) >> 8), (byte) (content.length + 2)};
        return Damage.joined(Arrays.copyOf(jpeg, 2), head, content, Arrays.copyOfRange(jpeg, 2, jpeg.length));
    }

    /** A directory of one text. */
    private static byte[] directory() {
        byte[] text = bytes(SECRET + "\0");
        return ByteBuffer.allocate(26 + text.length).put(bytes("MM\0*")).putInt(8).putShort((short) 1)
                .putShort((short) 0x010E).putShort((short) 2).putInt(text.length).putInt(26).putInt(0).put(text).array();
    }

    private static byte[] flipped(byte[] bytes, int at) {
        byte[] flipped = bytes.clone();
        flipped[at] ^= 0x55;
        return flipped;
    }

    private static byte[] fill(int length) {
        byte[] fill = new byte[length];
        Arrays.fill(fill, (byte) 0xFF);
        return fill;
    }

    private static File photo(String name, boolean refused, byte[] content) {
        return new File("photograph: " + name, Place.PICTURE, content, refused);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
