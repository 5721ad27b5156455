package benchful.projects.pictures;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A picture as somebody hands it in, made fit to be stored and shown: what it is is read from its bytes, not from its name.
 * Drawings are checked for anything that could act or fetch; photographs are decoded, turned upright, shrunk and freed of
 * the place and time a camera writes into them. One that is fit already is kept byte for byte.
 */
public sealed interface PictureFile {
    int LARGEST = 3 * 1024 * 1024;

    /** @param mediaType as found in the bytes */
    record Fit(String mediaType, byte[] content) implements PictureFile {}

    /** @param sentence what is wrong and how to mend it */
    record Unfit(String sentence) implements PictureFile {}

    static PictureFile of(byte[] bytes) {
        PictureFile fit;
        if (starts(bytes, 0x89, 'P', 'N', 'G')) {
            fit = PhotoFile.of(bytes, "png");
        } else if (starts(bytes, 0xFF, 0xD8, 0xFF)) {
            fit = PhotoFile.of(bytes, "jpeg");
        } else {
            fit = looksLikeXml(bytes) ? DrawingFile.of(bytes) : new Unfit("This is no SVG, PNG or JPEG picture. Save it as one of these and pick it again.");
        }
        return fit instanceof Fit f && f.content().length > LARGEST
                ? new Unfit("This picture has more than 3 MB even when shrunk. Make it smaller and pick it again.")
                : fit;
    }

    /** A photograph in the same way; a drawing is none. */
    static PictureFile photo(byte[] bytes) {
        PictureFile file = of(bytes);
        return file instanceof Fit fit && fit.mediaType().equals("image/svg+xml") ? new Unfit("This is a drawing. Pick a photograph, a PNG or JPEG file.") : file;
    }

    /** Whether a stored photograph holds more than its dots. */
    static boolean tells(String mediaType, byte[] content) {
        return mediaType.equals("image/png") && !BarePicture.is(content, "png") || mediaType.equals("image/jpeg") && !BarePicture.is(content, "jpeg");
    }

    private static boolean starts(byte[] bytes, int... first) {
        return bytes.length > first.length
                && Arrays.equals(first, IntStream.range(0, first.length).map(i -> bytes[i] & 0xFF).toArray());
    }

    /** Anything whose first sign, after blanks and a byte order mark, opens a tag. */
    private static boolean looksLikeXml(byte[] bytes) {
        int i = starts(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        while (i < bytes.length && Character.isWhitespace(bytes[i])) {
            i++;
        }
        return i < bytes.length && bytes[i] == '<';
    }
}
