package benchful.projects.pictures;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;

/**
 * PNG and JPEG files: decoded as proof that they are pictures, at most 1600 dots on the longer side, upright. One that holds more
 * than its dots is written anew, so that nothing of where, when and by whom it was taken stays.
 */
final class PhotoFile {
    static final int LONGEST_SIDE = 1600;

    private static final long MOST_DOTS = 100_000_000;
    private static final String PRESS = "This picture is in the four colours of a printing press (CMYK). Save it in the colours of a screen (RGB) and pick it again.";
    private static final String DAMAGED = "This picture is damaged or of a rare kind. Save it again as an ordinary PNG or JPEG file.";
    private static final float QUALITY = 0.85f;

    private final byte[] bytes;
    private final String format;

    private PhotoFile(byte[] bytes, String format) {
        this.bytes = bytes;
        this.format = format;
    }

    /** @param format {@code png} or {@code jpeg}, as its first bytes say */
    static PictureFile of(byte[] bytes, String format) {
        return new PhotoFile(bytes, format).fit();
    }

    /** @param bytes of a picture that is fit already */
    static PictureFile edited(byte[] bytes, String format, PictureEdit edit) {
        try {
            BufferedImage whole = ImageIO.read(new ByteArrayInputStream(bytes));
            return new PhotoFile(bytes, format).written(edit.cut(upright(whole, new CameraNotes.Turn(edit.quarters(), false))));
        } catch (IOException | RuntimeException e) {
            return new PictureFile.Unfit(DAMAGED);
        }
    }

    private PictureFile fit() {
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
            try {
                reader.setInput(in, true, true);
                return fit(reader);
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException e) {
            return new PictureFile.Unfit(DAMAGED);
        }
    }

    private PictureFile fit(ImageReader reader) throws IOException {
        int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
        if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_DOTS) {
            return new PictureFile.Unfit("This picture has more than 100 million dots. Make it smaller and pick it again.");
        }
        if (format.equals("jpeg") && CameraNotes.colours(bytes) == 4) {
            return new PictureFile.Unfit(PRESS);
        }
        ImageReadParam coarse = reader.getDefaultReadParam();
        int every = Math.max(1, longest / (2 * LONGEST_SIDE));
        coarse.setSourceSubsampling(every, every, 0, 0);
        BufferedImage picture = reader.read(0, coarse);
        boolean fitAlready = longest <= LONGEST_SIDE && bytes.length <= PictureFile.LARGEST && BarePicture.is(bytes, format);
        return fitAlready
                ? new PictureFile.Fit("image/" + format, bytes)
                : written(upright(ColourProfile.plain(picture, bytes, format), CameraNotes.turn(bytes, format)));
    }

    /** A photograph stored as PNG may stay too large; it is written as JPEG then. */
    private PictureFile written(BufferedImage picture) {
        byte[] png = format.equals("png") ? encoded(picture, "png") : new byte[0];
        return png.length > 0 && png.length <= PictureFile.LARGEST
                ? new PictureFile.Fit("image/png", png)
                : new PictureFile.Fit("image/jpeg", encoded(opaque(picture), "jpeg"));
    }

    private static BufferedImage upright(BufferedImage picture, CameraNotes.Turn turn) {
        double scale = Math.min(1, (double) LONGEST_SIDE / Math.max(picture.getWidth(), picture.getHeight()));
        int width = Math.max(1, (int) Math.round(picture.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(picture.getHeight() * scale));
        boolean clear = picture.getColorModel().hasAlpha();
        BufferedImage drawn = new BufferedImage(turn.aside() ? height : width, turn.aside() ? width : height,
                clear ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        AffineTransform placed = turn.transform(width, height);
        placed.scale((double) width / picture.getWidth(), (double) height / picture.getHeight());
        Graphics2D pen = drawn.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.drawImage(picture, placed, null);
        pen.dispose();
        return drawn;
    }

    private static BufferedImage opaque(BufferedImage picture) {
        BufferedImage flat = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = flat.createGraphics();
        pen.drawImage(picture, 0, 0, Color.WHITE, null);
        pen.dispose();
        return flat;
    }

    private static byte[] encoded(BufferedImage picture, String format) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName(format).next();
        ImageWriteParam quality = writer.getDefaultWriteParam();
        if (format.equals("jpeg")) {
            quality.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            quality.setCompressionQuality(QUALITY);
        }
        try (var stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(picture, null, null), quality);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}
