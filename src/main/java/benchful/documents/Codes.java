package benchful.documents;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Square codes (QR, ISO/IEC 18004) that a phone opens, drawn as one path so that they stay sharp at any size. */
final class Codes {
    /** Quiet zone on each side [modules]; four by the standard. */
    private static final int QUIET = 4;

    private Codes() {}

    /** @throws IllegalArgumentException if the address is too long for a code */
    static byte[] svg(String address) {
        BitMatrix modules = matrix(address);
        int side = modules.getWidth();
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                int from = x;
                while (x < side && modules.get(x, y)) {
                    x++;
                }
                if (x > from) {
                    path.append("M%d %dh%dv1h-%dz".formatted(from, y, x - from, x - from));
                }
            }
        }
        return """
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$d" height="%1$d" viewBox="0 0 %1$d %1$d">\
                <rect width="%1$d" height="%1$d" fill="#fff"/><path d="%2$s" fill="#000"/></svg>"""
                .formatted(side, path).getBytes(StandardCharsets.UTF_8);
    }

    private static BitMatrix matrix(String address) {
        try {
            return new QRCodeWriter().encode(address, BarcodeFormat.QR_CODE, 0, 0, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8",
                    EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, QUIET));
        } catch (WriterException e) {
            throw new IllegalArgumentException("The address “%s” does not fit into a code.".formatted(address), e);
        }
    }
}
