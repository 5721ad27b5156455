package benchful.projects;

import java.util.Arrays;
import java.util.Objects;

/**
 * A drawing or photograph of the project.
 *
 * @param name as steps and the cover ask for it; the picture called {@code cover} is the piece itself
 * @param mediaType {@code image/svg+xml}, {@code image/png} or {@code image/jpeg}
 * @param alt what it shows, in words, for those who can't see it
 * @param content the bytes, base64 in files
 */
public record Picture(String name, String mediaType, String alt, byte[] content) {
    public Picture {
        content = content == null ? new byte[0] : content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }

    public Picture withContent(byte[] bytes) {
        return new Picture(name, mediaType, alt, bytes);
    }

    public Picture withoutContent() {
        return withContent(null);
    }

    boolean hasContent() {
        return content.length > 0;
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Picture p
                && Objects.equals(name, p.name)
                && Objects.equals(mediaType, p.mediaType)
                && Objects.equals(alt, p.alt)
                && Arrays.equals(content, p.content);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, mediaType, alt, Arrays.hashCode(content));
    }
}
