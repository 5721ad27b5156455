package benchful.classes;

import benchful.web.forms.fields.Length;
import benchful.web.forms.fields.Mend;
import benchful.web.forms.fields.OneOf;
import benchful.web.forms.fields.Required;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.Arrays;
import java.util.Objects;

/**
 * A photograph of finished pieces, as the file of its class carries it.
 *
 * @param caption in the tutor's words; null for none
 * @param mediaType {@code image/png} or {@code image/jpeg}
 * @param content the bytes, base64 in files
 */
public record PhotoSpec(
        @JsonInclude(JsonInclude.Include.NON_NULL) @Length(most = 200) @Mend("Say in at most 200 letters what the photograph shows.") String caption,
        @Required @OneOf({"image/png", "image/jpeg"}) @Mend("A photograph is a PNG or JPEG file.") String mediaType,
        byte @Length(most = 4_200_000) @Mend("A photograph has at most 3 MB. Shrink it first.") [] content) {
    public PhotoSpec {
        content = content == null ? new byte[0] : content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof PhotoSpec p && Objects.equals(caption, p.caption) && Objects.equals(mediaType, p.mediaType) && Arrays.equals(content, p.content);
    }

    @Override
    public int hashCode() {
        return Objects.hash(caption, mediaType, Arrays.hashCode(content));
    }
}
