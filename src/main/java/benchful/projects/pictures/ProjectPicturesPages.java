package benchful.projects.pictures;

import benchful.web.Blanks;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.CacheControl;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The pictures of projects, for pages and for whoever opens one by itself; a browser asks again but fetches only what changed. */
@Path("/projects/{id: \\d+}/pictures")
class ProjectPicturesPages {
    private static final String NOTHING_ACTIVE = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; sandbox";

    @GET
    @Path("{name}")
    @Transactional
    public Response show(@RestPath long id, @RestPath String name, @Context Request request) {
        ProjectPicture picture = ProjectPicture.byName(id, name).orElseThrow(NotFoundException::new);
        byte[] content = named(picture);
        EntityTag tag = new EntityTag(UUID.nameUUIDFromBytes(content).toString());
        Response.ResponseBuilder unchanged = request.evaluatePreconditions(tag);
        CacheControl askAgain = new CacheControl();
        askAgain.setNoCache(true);
        return (unchanged == null ? Response.ok(content, picture.mediaType()) : unchanged)
                .tag(tag)
                .cacheControl(askAgain)
                .header("Content-Security-Policy", NOTHING_ACTIVE)
                .header("X-Content-Type-Options", "nosniff")
                .build();
    }

    /** Where a drawing leaves an amount blank for each reader, a page without a reader says of what. */
    private static byte[] named(ProjectPicture picture) {
        return picture.mediaType().equals("image/svg+xml")
                ? Blanks.drawn(new String(picture.content(), StandardCharsets.UTF_8), Optional::of).getBytes(StandardCharsets.UTF_8) : picture.content();
    }
}
