package benchful.projects.pictures;

import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Matching;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.OneOf;
import benchful.web.forms.fields.Required;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * A drawing or photograph of the project.
 *
 * @param name as steps and the cover ask for it; the picture called {@code cover} is the piece itself
 * @param mediaType {@code image/svg+xml}, {@code image/png} or {@code image/jpeg}
 * @param alt what it shows, in words, for those who can't see it
 * @param content the bytes, base64 in files
 */
public record Picture(
        @Required @Matching("^[a-z0-9][a-z0-9_-]{0,59}$") @Mend("Name the picture in small letters, digits, - and _, such as “knot-close-up”.") String name,
        @Required @OneOf({"image/svg+xml", "image/png", "image/jpeg"}) @Mend("A picture is an SVG, PNG or JPEG file.") String mediaType,
        @Length(most = 300) @Mend("Say in up to 300 characters what the picture shows.") String alt,
        byte @Length(most = 4_200_000) @Mend("A picture has at most 3 MB. Shrink it first.") [] content) {
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

    /** As it may be drawn: a drawing is checked anew, since it may have been stored before a check was there. Nothing where it may not. */
    public Optional<Picture> drawable() {
        if (!mediaType.equals("image/svg+xml")) {
            return Optional.of(this);
        }
        return PictureFile.of(content) instanceof PictureFile.Fit fit ? Optional.of(new Picture(name, fit.mediaType(), alt, fit.content())) : Optional.empty();
    }

    public boolean hasContent() {
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
