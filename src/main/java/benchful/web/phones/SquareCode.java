package benchful.web.phones;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * Square codes (QR, ISO/IEC 18004) that a phone opens, as small pictures with several dots to a module: the PDF engine takes them in
 * much faster than drawings, which matters on sheets of hundreds.
 */
public final class SquareCode {
    /** Quiet zone on each side [modules]; four by the standard. */
    private static final int QUIET = 4;
    /** Dots to the side of a module. */
    private static final int DOTS = 3;

    private SquareCode() {}

    /**
     * A PNG in black and white.
     *
     * @throws IllegalArgumentException if the address is too long for a code
     */
    public static byte[] png(String address) {
        BitMatrix modules = matrix(address);
        int side = modules.getWidth() * DOTS;
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_BINARY);
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                image.setRGB(x, y, modules.get(x / DOTS, y / DOTS) ? 0xFF000000 : 0xFFFFFFFF);
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException("A code can't be written to memory.", e);
        }
        return out.toByteArray();
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
