package benchful.reviews;

import io.quarkus.qute.TemplateData;
import java.time.LocalDateTime;

/**
 * A photograph of finished pieces as pages show it.
 *
 * @param startsAt of its class
 * @param caption in the tutor's words; empty for none
 */
@TemplateData
public record PhotoLine(long id, long craftClass, LocalDateTime startsAt, String caption) {
    public String src() {
        return "/classes/%d/photos/%d".formatted(craftClass, id);
    }

    /** Where it is removed, below the classes. */
    public String removal() {
        return "photos/%d/removal".formatted(id);
    }

    /** What it shows, for those who can't see it. */
    public String alt() {
        return caption.isEmpty() ? "Finished pieces" : caption;
    }
}
