package benchful.projects.pictures;

import java.awt.image.BufferedImage;
import java.util.Optional;

/**
 * How a picture is turned, and what is cut off afterwards.
 *
 * @param quarters turns to the right, from 0 to 3
 * @param left share of the width that goes, [%], from 0; left and right leave a tenth at the least
 * @param top share of the height that goes, [%], from 0; top and bottom leave a tenth at the least
 */
public record PictureEdit(int quarters, double left, double top, double right, double bottom) {
    public static final PictureEdit NONE = new PictureEdit(0, 0, 0, 0, 0);
    private static final double LARGEST_CUT = 90;

    public PictureEdit {
        if (quarters < 0 || quarters > 3 || !fits(left, right) || !fits(top, bottom)) {
            throw new IllegalArgumentException("A picture is turned by 0 to 3 quarters and keeps a tenth of its width and height.");
        }
    }

    /** Whether two margins, [%], leave enough of a picture. */
    public static boolean fits(double one, double other) {
        return one >= 0 && other >= 0 && one + other <= LARGEST_CUT;
    }

    /** A margin as it is written, "12.5" [%]; nothing where it is no such number. */
    public static Optional<Double> percent(String written) {
        return written.matches("\\d{1,2}(\\.\\d{1,3})?") ? Optional.of(Double.valueOf(written)) : Optional.empty();
    }

    public boolean isNone() {
        return equals(NONE);
    }

    /** @param content of a picture that is fit to be stored */
    public byte[] on(byte[] content, String mediaType) {
        if (isNone() || !mediaType.startsWith("image/")) {
            return content;
        }
        if (mediaType.equals("image/svg+xml")) {
            return DrawingEdit.on(content, this);
        }
        return PhotoFile.edited(content, mediaType.substring("image/".length()), this) instanceof PictureFile.Fit fit ? fit.content() : content;
    }

    /** Without its margins; at least a dot remains. */
    BufferedImage cut(BufferedImage whole) {
        int x = dots(whole.getWidth(), left);
        int y = dots(whole.getHeight(), top);
        int width = Math.max(1, whole.getWidth() - x - dots(whole.getWidth(), right));
        int height = Math.max(1, whole.getHeight() - y - dots(whole.getHeight(), bottom));
        return whole.getSubimage(Math.min(x, whole.getWidth() - width), Math.min(y, whole.getHeight() - height), width, height);
    }

    private static int dots(int of, double percent) {
        return (int) Math.round(of * percent / 100);
    }
}
