package benchful.projects.pictures;

import java.awt.geom.AffineTransform;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * What a camera wrote into a file beside the picture: which way it was held, and, not read here, where and when.
 * Source: Exif 2.3 (JEITA CP-3451C), 4.5.4 and 4.6.4 A "Orientation"; JPEG, ITU-T T.81, annex B.
 */
final class CameraNotes {
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    private static final int ORIENTATION = 0x0112;
    private static final Turn UPRIGHT = Turn.of(1);

    private CameraNotes() {}

    /**
     * How a stored picture is brought upright.
     *
     * @param quarters turns to the right; after one or three width and height change places
     * @param mirrored left and right change places first
     */
    record Turn(int quarters, boolean mirrored) {
        /** @param orientation 1 to 8, as in Exif; any other is upright */
        static Turn of(int orientation) {
            return switch (orientation) {
                case 2 -> new Turn(0, true);
                case 3 -> new Turn(2, false);
                case 4 -> new Turn(2, true);
                case 5 -> new Turn(3, true);
                case 6 -> new Turn(1, false);
                case 7 -> new Turn(1, true);
                case 8 -> new Turn(3, false);
                default -> new Turn(0, false);
            };
        }

        boolean aside() {
            return quarters % 2 == 1;
        }

        /** From the stored picture, {@code width} by {@code height}, to the upright one: first mirrored, then turned clockwise. */
        AffineTransform transform(int width, int height) {
            AffineTransform all = new AffineTransform();
            all.translate((aside() ? height : width) / 2.0, (aside() ? width : height) / 2.0);
            all.quadrantRotate(quarters);
            all.scale(mirrored ? -1 : 1, 1);
            all.translate(-width / 2.0, -height / 2.0);
            return all;
        }
    }

    /** How the picture is brought upright. */
    static Turn turn(byte[] bytes, String format) {
        return format.equals("jpeg") ? jpeg(ByteBuffer.wrap(bytes)) : png(ByteBuffer.wrap(bytes));
    }

    /** How many colours a dot of a JPEG is mixed from; 0 where it does not say. */
    static int colours(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        for (int at = 2; isSegment(in, at); at += 2 + length(in, at)) {
            int marker = in.get(at + 1) & 0xFF;
            if (marker >= 0xC0 && marker <= 0xC2 && fits(in, at, 10)) {
                return in.get(at + 9) & 0xFF;
            }
        }
        return 0;
    }

    /** Walks the segments before the picture's data. */
    private static Turn jpeg(ByteBuffer in) {
        Turn turn = UPRIGHT;
        for (int at = 2; isSegment(in, at) && turn.equals(UPRIGHT); at += 2 + length(in, at)) {
            turn = (in.get(at + 1) & 0xFF) == 0xE1 ? turn(in, at + 4, length(in, at) - 2) : turn;
        }
        return turn;
    }

    private static boolean isSegment(ByteBuffer in, int at) {
        return at + 4 <= in.limit() && (in.get(at) & 0xFF) == 0xFF && (in.get(at + 1) & 0xFF) != 0xDA;
    }

    private static int length(ByteBuffer in, int at) {
        return in.getShort(at + 2) & 0xFFFF;
    }

    /** A PNG holds the same directory in a chunk of its own. */
    private static Turn png(ByteBuffer in) {
        for (int at = 8; fits(in, at, 12) && in.getInt(at) >= 0 && in.getInt(at) <= in.limit() - at - 12; at += 12 + in.getInt(at)) {
            if (Arrays.equals("eXIf".getBytes(StandardCharsets.US_ASCII), bytes(in, at + 4, 4)) && in.getInt(at) >= 8) {
                return directory(in.slice(at + 8, in.getInt(at)));
            }
        }
        return UPRIGHT;
    }

    private static Turn turn(ByteBuffer in, int at, int length) {
        if (at + length > in.limit() || length < EXIF.length + 8 || !Arrays.equals(EXIF, bytes(in, at, EXIF.length))) {
            return UPRIGHT;
        }
        return directory(in.slice(at + EXIF.length, length - EXIF.length));
    }

    private static Turn directory(ByteBuffer tiff) {
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        int entries = fits(tiff, directory, 2) ? tiff.getShort(directory) & 0xFFFF : 0;
        for (int i = 0, entry = directory + 2; i < entries && fits(tiff, entry, 12); i++, entry += 12) {
            if ((tiff.getShort(entry) & 0xFFFF) == ORIENTATION) {
                return Turn.of(tiff.getShort(entry + 8));
            }
        }
        return UPRIGHT;
    }

    private static boolean fits(ByteBuffer in, int at, int length) {
        return at >= 0 && at <= in.limit() - length;
    }

    private static byte[] bytes(ByteBuffer in, int at, int length) {
        byte[] bytes = new byte[length];
        in.get(at, bytes);
        return bytes;
    }
}
