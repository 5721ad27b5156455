package benchful.documents.parts;

import benchful.projects.pictures.Picture;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;

/**
 * Pictures of a project made ready for paper: photographs no larger than a page can show, and drawings with a size of their
 * own, which the PDF engine asks for. A picture that can't be read is left as it is; the engine then leaves its place empty.
 */
final class PrintPictures {
    /** Across 110 mm, the widest a picture is printed, this is 250 dots per inch. */
    private static final int WIDEST = 1080;
    private static final Pattern HEAD = Pattern.compile("<svg\\s[^>]*+");
    private static final Pattern FRAME = Pattern.compile("\\sviewBox=[\"']([^\"']*+)");

    private PrintPictures() {}

    static byte[] sized(Picture picture) {
        return picture.mediaType().equals("image/svg+xml") ? drawing(picture.content()) : photograph(picture);
    }

    private static byte[] photograph(Picture picture) {
        try {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.content()));
            int longest = image == null ? 0 : Math.max(image.getWidth(), image.getHeight());
            return longest <= WIDEST ? picture.content() : encoded(scaled(image, (double) WIDEST / longest), picture.mediaType());
        } catch (IOException | RuntimeException e) {
            return picture.content();
        }
    }

    private static BufferedImage scaled(BufferedImage image, double factor) {
        int width = Math.max(1, (int) Math.round(image.getWidth() * factor));
        int height = Math.max(1, (int) Math.round(image.getHeight() * factor));
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = small.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        graphics.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
        graphics.drawImage(image, 0, 0, width, height, Color.WHITE, null);
        graphics.dispose();
        return small;
    }

    private static byte[] encoded(BufferedImage image, String mediaType) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, mediaType.equals("image/png") ? "png" : "jpeg", out);
        } catch (IOException e) {
            throw new UncheckedIOException("A picture can't be written to memory.", e);
        }
        return out.toByteArray();
    }

    /** A drawing that states only its view box is given that box as its size. */
    private static byte[] drawing(byte[] content) {
        String svg = new String(content, StandardCharsets.UTF_8);
        Matcher head = HEAD.matcher(svg);
        Matcher frame = head.find() ? FRAME.matcher(head.group()) : null;
        if (frame == null || !frame.find() || head.group().matches("(?s).*\\swidth=.*")) {
            return content;
        }
        String[] box = frame.group(1).strip().split("[\\s,]+");
        if (box.length != 4) {
            return content;
        }
        String size = " width=\"%s\" height=\"%s\"".formatted(box[2], box[3]);
        return (svg.substring(0, head.start() + 4) + size + svg.substring(head.start() + 4)).getBytes(StandardCharsets.UTF_8);
    }
}
