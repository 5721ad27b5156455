package benchful.projects.pictures;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * Whether a photograph's file holds nothing but its dots: no notes of cameras, editors or places, no colour profile, no
 * second picture, and nothing behind its end. Anything else, known or not, is lost when the picture is written anew.
 * Sources: JPEG, ITU-T T.81, annex B; JFIF, ITU-T T.871, 10.1; PNG, ISO/IEC 15948, 5 and 11.
 */
final class BarePicture {
    private static final Set<String> CHUNKS = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");
    private static final Set<Integer> SEGMENTS = Set.of(0xC0, 0xC1, 0xC2, 0xC4, 0xDA, 0xDB, 0xDD);
    private static final int FILE_HEAD = 0xE0;
    private static final int LENGTH_OF_BARE_FILE_HEAD = 16;
    private static final int SCAN = 0xDA;
    private static final int END = 0xD9;

    private BarePicture() {}

    /** @param format {@code png} or {@code jpeg} */
    static boolean is(byte[] bytes, String format) {
        return format.equals("png") ? png(ByteBuffer.wrap(bytes)) : jpeg(ByteBuffer.wrap(bytes));
    }

    private static boolean png(ByteBuffer in) {
        String type = "";
        int at = 8;
        while (at + 12 <= in.limit() && !type.equals("IEND")) {
            byte[] letters = new byte[4];
            in.get(at + 4, letters);
            type = new String(letters, StandardCharsets.ISO_8859_1);
            int length = in.getInt(at);
            if (!CHUNKS.contains(type) || length < 0 || length > in.limit() - at - 12) {
                return false;
            }
            at += 12 + length;
        }
        return type.equals("IEND") && at == in.limit();
    }

    private static boolean jpeg(ByteBuffer in) {
        int at = 2;
        while (at + 4 <= in.limit() && (in.get(at) & 0xFF) == 0xFF) {
            int marker = in.get(at + 1) & 0xFF;
            int length = in.getShort(at + 2) & 0xFFFF;
            boolean fileHead = marker == FILE_HEAD && length == LENGTH_OF_BARE_FILE_HEAD;
            if (!SEGMENTS.contains(marker) && !fileHead || length < 2) {
                return false;
            }
            at += 2 + length;
            at = marker == SCAN ? afterScan(in, at) : at;
        }
        return at + 2 == in.limit() && (in.get(at) & 0xFF) == 0xFF && (in.get(at + 1) & 0xFF) == END;
    }

    /** In the dots themselves a 255 is followed by 0, or by a restart mark. */
    private static int afterScan(ByteBuffer in, int from) {
        int at = from;
        while (at + 1 < in.limit()) {
            int next = in.get(at + 1) & 0xFF;
            if ((in.get(at) & 0xFF) == 0xFF && next != 0 && (next < 0xD0 || next > 0xD7)) {
                return at;
            }
            at++;
        }
        return in.limit();
    }
}
