package benchful.projects.pictures;

import benchful.web.Blanks;
import benchful.web.Pages;
import jakarta.ws.rs.core.CacheControl;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;

/** One picture for pages and for whoever opens it by itself; a browser asks again but fetches only what changed. */
public final class PictureAnswer {
    private static final String NOTHING_ACTIVE = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; sandbox";

    private PictureAnswer() {}

    /** @param query how it is turned and cut: {@code turned} [degrees], {@code left}, {@code top}, {@code right}, {@code bottom} [%] */
    public static Response of(byte[] stored, String mediaType, MultivaluedMap<String, String> query, Request request) {
        byte[] edited = edit(query).on(stored, mediaType);
        byte[] content = mediaType.equals("image/svg+xml") ? named(edited) : edited;
        EntityTag tag = new EntityTag(UUID.nameUUIDFromBytes(content).toString());
        Response.ResponseBuilder unchanged = request.evaluatePreconditions(tag);
        CacheControl askAgain = new CacheControl();
        askAgain.setNoCache(true);
        return (unchanged == null ? Response.ok(content, type(content, mediaType)) : unchanged)
                .tag(tag)
                .cacheControl(askAgain)
                .header("Content-Security-Policy", NOTHING_ACTIVE)
                .header("X-Content-Type-Options", "nosniff")
                .build();
    }

    /** An edited picture of many dots may have become a JPEG. */
    private static String type(byte[] content, String mediaType) {
        return mediaType.equals("image/png") && (content[0] & 0xFF) == 0xFF ? "image/jpeg" : mediaType;
    }

    /** What can't be is left out: this is only shown. */
    private static PictureEdit edit(MultivaluedMap<String, String> query) {
        int quarters = Pages.number(query.getFirst("turned")).map(degrees -> (int) (degrees / 90 % 4)).orElse(0);
        double left = percent(query.getFirst("left"));
        double top = percent(query.getFirst("top"));
        double right = percent(query.getFirst("right"));
        double bottom = percent(query.getFirst("bottom"));
        boolean across = PictureEdit.fits(left, right);
        boolean down = PictureEdit.fits(top, bottom);
        return new PictureEdit(quarters, across ? left : 0, down ? top : 0, across ? right : 0, down ? bottom : 0);
    }

    private static double percent(String written) {
        return Optional.ofNullable(written).flatMap(PictureEdit::percent).orElse(0.0);
    }

    /** Where a drawing leaves an amount blank for each reader, a page without a reader says of what. */
    private static byte[] named(byte[] drawing) {
        return Blanks.drawn(new String(drawing, StandardCharsets.UTF_8), Optional::of).getBytes(StandardCharsets.UTF_8);
    }
}
