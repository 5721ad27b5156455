package benchful.projects.pictures;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.awt.image.ColorConvertOp;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.InflaterInputStream;

/**
 * The colours that a camera or editor meant: pictures with a profile of their own are brought to sRGB, in which they are shown
 * and printed, so that they look the same without it.
 * Source: PNG, ISO/IEC 15948, 11.3.3.3 "iCCP".
 */
final class ColourProfile {
    private static final int LARGEST = 2 * 1024 * 1024;

    private ColourProfile() {}

    /** @param bytes the file that the picture was read from */
    static BufferedImage plain(BufferedImage picture, byte[] bytes, String format) {
        ColorSpace own = format.equals("png") ? ofPng(bytes) : picture.getColorModel().getColorSpace();
        if (own == null || own.isCS_sRGB() || own.getType() != ColorSpace.TYPE_RGB) {
            return picture;
        }
        BufferedImage meant = format.equals("png") ? in(own, picture) : picture;
        BufferedImage plain = new BufferedImage(picture.getWidth(), picture.getHeight(),
                picture.getColorModel().hasAlpha() ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        return new ColorConvertOp(null).filter(meant, plain);
    }

    /** The same dots, taken for colours of another space. */
    private static BufferedImage in(ColorSpace own, BufferedImage picture) {
        boolean clear = picture.getColorModel().hasAlpha();
        BufferedImage dots = new BufferedImage(picture.getWidth(), picture.getHeight(), clear ? BufferedImage.TYPE_4BYTE_ABGR : BufferedImage.TYPE_3BYTE_BGR);
        dots.getGraphics().drawImage(picture, 0, 0, null);
        ColorModel model = new ComponentColorModel(own, clear, false, dots.getColorModel().getTransparency(), dots.getRaster().getTransferType());
        return new BufferedImage(model, dots.getRaster(), false, null);
    }

    /** The reader of PNG leaves the profile unread; null where there is none, or none that can be read. */
    private static ColorSpace ofPng(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        for (int at = 8; at + 12 <= in.limit() && in.getInt(at) >= 0 && in.getInt(at) <= in.limit() - at - 12; at += 12 + in.getInt(at)) {
            if (new String(bytes, at + 4, 4, StandardCharsets.ISO_8859_1).equals("iCCP")) {
                return read(bytes, at + 8, in.getInt(at));
            }
        }
        return null;
    }

    private static ColorSpace read(byte[] bytes, int at, int length) {
        int name = at;
        while (name < at + length && bytes[name] != 0) {
            name++;
        }
        try (InflaterInputStream in = new InflaterInputStream(new ByteArrayInputStream(bytes, name + 2, Math.max(0, at + length - name - 2)))) {
            return new ICC_ColorSpace(ICC_Profile.getInstance(in.readNBytes(LARGEST)));
        } catch (IOException | IllegalArgumentException e) {
            return null;
        }
    }
}
